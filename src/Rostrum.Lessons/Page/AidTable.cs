using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>A small table of the player aid: a number or name, and the number that stands there.</summary>
/// <param name="Title">What it is called, such as <c>Run points</c>.</param>
/// <param name="Columns">In the order of the sheet; at least two.</param>
public sealed record AidTable(string Title, ImmutableArray<(string Key, string Value)> Columns);
