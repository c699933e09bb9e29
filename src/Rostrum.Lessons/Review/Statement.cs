using System.Collections.Immutable;
using Rostrum.Sheets.ReadBack;

namespace Rostrum.Lessons.Review;

/// <summary>A sentence of the sheet that somebody may say, with its numbers.</summary>
/// <param name="Clause">The clause that says it.</param>
/// <param name="Variant">The variant that brings it; null for the game itself.</param>
/// <param name="Words">The ideas in it that tell which rule is meant, each with its weight: rare ones weigh more. Units of numbers included; in order, so that sums come out alike in every run.</param>
/// <param name="Slots">Its numbers, in order.</param>
internal sealed record Statement(ReadClause Clause, string? Variant, ImmutableSortedDictionary<string, double> Words, ImmutableArray<Slot> Slots)
{
    /// <summary>The ideas in it that are words of a variant's name: it is said where the variant is taught.</summary>
    public ImmutableHashSet<string> OfVariant { get; init; } = [];

    /// <summary>What all its words weigh together.</summary>
    public double Weight { get; } = Words.Values.Sum();
}

/// <summary>A number in a statement.</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">The idea that it counts, such as <c>stick</c>; null where the sentence does not say.</param>
/// <param name="Key">A number that must be said beside it: the row of a table. Null for none.</param>
/// <param name="IsBare">True where nothing is said but how many there are of something.</param>
internal sealed record Slot(long Value, string? Unit, long? Key, bool IsBare)
{
    /// <summary>True for a place in an order, such as the third storm.</summary>
    public bool IsOrdinal { get; init; }

    /// <summary>What the key of a row counts, such as bowls; null for none.</summary>
    public string? KeyUnit { get; init; }

    /// <summary>True for a number that may be said here, and that no other one has to be.</summary>
    public bool IsOnlyRight { get; init; }

    /// <summary>True where so many of each kind are told.</summary>
    public bool IsOfEach { get; init; }

    /// <summary>True for points that are lost.</summary>
    public bool IsMinus { get; init; }

    /// <summary>The ideas right around it: they tell it from the other numbers of its statement.</summary>
    public ImmutableHashSet<string> Near { get; init; } = [];
}
