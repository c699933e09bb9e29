namespace Rostrum.Lessons.Page;

/// <summary>What one reading of an open clause would give.</summary>
/// <param name="Name">The reading's name, such as <c>cracked joins</c>.</param>
/// <param name="Gives">The total or verdict under it, such as <c>37</c>.</param>
/// <param name="Says">The reading as a sentence; empty if its name says it.</param>
public sealed record SlipReading(string Name, string Gives, string Says = "");
