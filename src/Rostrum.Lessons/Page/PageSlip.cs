using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>An answer with its reasons, shown as a narrow slip of paper.</summary>
/// <param name="Id">The name that values point to, such as <c>E1/total</c>; unique on the page.</param>
/// <param name="Title">What was asked, such as <c>Bowls</c> or <c>Place copper jug on B2</c>.</param>
/// <param name="Answer">The verdict, the total or the fact.</param>
/// <param name="Basis">How the answer is known.</param>
public sealed record PageSlip(string Id, string Title, SlipAnswer Answer, SlipBasis Basis)
{
    /// <summary>The table that was asked about, such as <c>Copper beside ash</c>; empty where the answer needs none.</summary>
    public string Where { get; init; } = "";

    /// <summary>The table drawn; null where the page shows it beside its text.</summary>
    public PageBlock.Figure? Figure { get; init; }

    /// <summary>Title and table, which tell a slip from every other: <c>Bowls: A chamber after the firing</c>.</summary>
    public string FullTitle => Where.Length == 0 ? Title : $"{Title}: {Where}";

    /// <summary>Source and page of the answer as a whole, such as <c>book 8</c>; empty if each line has its own.</summary>
    public string Cite { get; init; } = "";

    /// <summary>Why: for a ruling every clause that forbids, in the order of the sheet.</summary>
    public ImmutableArray<SlipReason> Reasons { get; init; } = [];

    /// <summary>The lines of a tally. With any line, their points add up to the total.</summary>
    public ImmutableArray<SlipLine> Lines { get; init; } = [];

    /// <summary>The open readings of a clause, each with what it would give.</summary>
    public ImmutableArray<SlipReading> Readings { get; init; } = [];

    /// <summary>Rules that the sheet leaves out on purpose and that bear on this answer.</summary>
    public ImmutableArray<string> NotModelled { get; init; } = [];

    /// <summary>Facts about the position that nobody gave and that bear on this answer.</summary>
    public ImmutableArray<string> NotGiven { get; init; } = [];

    /// <summary>True for a slip that lies open when the page is first seen.</summary>
    public bool IsOpenAtFirst { get; init; }

    /// <summary>True if the slip says no more than one fact with its page, so that it fits on a line.</summary>
    public bool IsPlain => Answer is SlipAnswer.Fact && Reasons.IsEmpty && Lines.IsEmpty && Readings.IsEmpty && NotModelled.IsEmpty && NotGiven.IsEmpty;
}
