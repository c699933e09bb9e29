namespace Rostrum.Lessons.Page;

/// <summary>What one reading of an open clause would give.</summary>
/// <param name="Name">The reading in words, such as <c>a cracked ware still joins</c>.</param>
/// <param name="Gives">The total or verdict under it, such as <c>37</c>.</param>
/// <param name="IsFollowed">True for the reading that the lesson follows.</param>
public sealed record SlipReading(string Name, string Gives, bool IsFollowed = false);
