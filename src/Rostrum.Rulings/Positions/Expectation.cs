using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <summary>What the author of a position expects of one clause or one ruling; checked where answers are made.</summary>
/// <param name="Subject">The name of the clause, the action's phrase, or the truth, blanks folded.</param>
/// <param name="SubjectAt">Where that stands.</param>
/// <param name="ValueAt">Where the expected answer stands.</param>
/// <param name="Because">The author's reason, or null.</param>
/// <param name="Cite">Where the rules say so, as written, or null.</param>
public abstract record Expectation(string Subject, SourceSpan SubjectAt, SourceSpan ValueAt, string? Because, string? Cite)
{
    /// <summary>The name of the whole tally among the clauses.</summary>
    public const string Total = "total";

    /// <summary>The points of a scoring clause, or of the whole tally where the subject is <see cref="Total"/>.</summary>
    /// <param name="Clause">Its name.</param>
    /// <param name="Points">What is expected.</param>
    /// <param name="ClauseAt">Where the name stands.</param>
    /// <param name="PointsAt">Where the points stand.</param>
    /// <param name="Because">The author's reason, or null.</param>
    /// <param name="Cite">Where the rules say so, as written, or null.</param>
    public sealed record Tally(string Clause, ExpectedPoints Points, SourceSpan ClauseAt, SourceSpan PointsAt, string? Because, string? Cite)
        : Expectation(Clause, ClauseAt, PointsAt, Because, Cite)
    {
        /// <summary>The 0-based seat that is counted; null for the one whose turn it is.</summary>
        public int? Seat { get; init; }
    }

    /// <summary>The ruling on an action, or the answer to a truth.</summary>
    /// <param name="Phrase">The action's phrase, or the truth.</param>
    /// <param name="Verdict">What is expected.</param>
    /// <param name="Breaches">The laws that forbid it, all of them in any order; empty where the author names none.</param>
    /// <param name="PhraseAt">Where the phrase stands.</param>
    /// <param name="VerdictAt">Where the verdict or the list of laws stands.</param>
    /// <param name="Because">The author's reason, or null.</param>
    /// <param name="Cite">Where the rules say so, as written, or null.</param>
    public sealed record Rule(string Phrase, ExpectedVerdict Verdict, ImmutableArray<ExpectedLaw> Breaches, SourceSpan PhraseAt, SourceSpan VerdictAt, string? Because, string? Cite)
        : Expectation(Phrase, PhraseAt, VerdictAt, Because, Cite);
}

/// <summary>A law that is expected to forbid something.</summary>
/// <param name="Name">Its name, blanks folded.</param>
/// <param name="At">Where the position names it.</param>
public readonly record struct ExpectedLaw(string Name, SourceSpan At);

/// <summary>An expected answer.</summary>
public enum ExpectedVerdict
{
    /// <summary>Every law allows it.</summary>
    Legal,

    /// <summary>At least one law forbids it.</summary>
    Illegal,

    /// <summary>The sheet or the position does not say.</summary>
    Unsettled,

    /// <summary>The truth holds.</summary>
    Yes,

    /// <summary>The truth does not hold.</summary>
    No,
}

/// <summary>Expected points.</summary>
public abstract record ExpectedPoints
{
    private ExpectedPoints()
    {
    }

    /// <summary>So many, under every open reading.</summary>
    public sealed record Exactly(long Points) : ExpectedPoints;

    /// <summary>So many under each open reading.</summary>
    /// <param name="Readings">By the name of the reading; never empty.</param>
    public sealed record ByReading(ImmutableArray<ReadingPoints> Readings) : ExpectedPoints;

    /// <summary>No fewer than so many: part of it is not modelled.</summary>
    public sealed record AtLeast(long Points) : ExpectedPoints;

    /// <summary>No number can be told.</summary>
    public sealed record Unsettled : ExpectedPoints;
}

/// <summary>Points under one reading.</summary>
/// <param name="Reading">The reading's name, blanks folded.</param>
/// <param name="Points">So many.</param>
/// <param name="At">Where the position says so.</param>
public readonly record struct ReadingPoints(string Reading, long Points, SourceSpan At);
