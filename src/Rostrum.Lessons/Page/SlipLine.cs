using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>One line of a tally.</summary>
/// <param name="Words">The clause, such as <c>bowls</c>, or what counted, such as <c>A2 and A3: a run of two</c>.</param>
/// <param name="Points">Whole points; may be negative.</param>
public sealed record SlipLine(string Words, long Points)
{
    /// <summary>Source and page, such as <c>book 8</c>; empty if the slip or the line above says it.</summary>
    public string Cite { get; init; } = "";

    /// <summary>The parts of this line. With any part, their points add up to <see cref="Points"/>; parts of parts are not shown.</summary>
    public ImmutableArray<SlipLine> Because { get; init; } = [];
}
