using System.Collections.Immutable;

namespace Rostrum.Play.Course;

/// <summary>One legal thing that a player can decide: which alternative, and what stands in the gaps of its phrase.</summary>
/// <param name="Alternative">The alternative.</param>
/// <param name="Chosen">By choice of the action: a number as nodes give it; 0 for a set.</param>
/// <param name="Sets">By choice of the action: the set; null for a single value.</param>
internal sealed record Option(Alternative Alternative, ImmutableArray<int> Chosen, ImmutableArray<int[]?> Sets)
{
    /// <summary>The powers that together make it legal, and whose prices are paid, in the order of the sheet; none where no law is broken.</summary>
    public ImmutableArray<PowerPlan> Powers { get; init; } = [];

    /// <summary>An option without gaps.</summary>
    public static Option Of(Alternative alternative) => new(alternative, [], []);
}
