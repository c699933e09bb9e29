using System.Collections.Immutable;

namespace Rostrum.Rulings.Positions;

/// <summary>What lies on one space, in one slot or in one heap.</summary>
/// <param name="Things">Lowest first; for a heap in the order in which they were named. Empty where nothing lies there or where it is not given.</param>
/// <param name="IsGiven">False where the position does not say what lies there (<c>?</c> in a drawing, or a place that is not named at all).</param>
public sealed record Stack(ImmutableArray<Thing> Things, bool IsGiven = true)
{
    /// <summary>Nothing lies there.</summary>
    public static Stack Empty { get; } = new([]);

    /// <summary>The position does not say what lies there.</summary>
    public static Stack NotGiven { get; } = new([], false);

    /// <inheritdoc />
    public bool Equals(Stack? other) => other is not null && IsGiven == other.IsGiven && Things.AsSpan().SequenceEqual(other.Things.AsSpan());

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(IsGiven, Things.Length);
}
