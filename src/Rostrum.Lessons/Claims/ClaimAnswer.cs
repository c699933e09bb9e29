using Rostrum.Lessons.Page;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

namespace Rostrum.Lessons.Claims;

/// <summary>What the sheet answers to a statement. Closed.</summary>
public abstract record ClaimAnswer
{
    private ClaimAnswer()
    {
    }

    /// <summary>How the answer is known: worked out, simulated, counted in the presenter's own plays, or stated by the author of the sheet.</summary>
    public abstract FigureKind Basis { get; }

    /// <summary>A tally.</summary>
    /// <param name="Whole">The whole derivation.</param>
    /// <param name="Line">The clause that the statement speaks of; null for the total.</param>
    /// <param name="Points">The points by the reading that the statement takes.</param>
    /// <param name="IsReading">True where the statement names a reading.</param>
    public sealed record OfTally(Tally Whole, TallyLine? Line, Points Points, bool IsReading) : ClaimAnswer
    {
        /// <inheritdoc />
        public override FigureKind Basis => FigureKind.Exact;
    }

    /// <summary>A ruling.</summary>
    public sealed record OfRuling(Ruling Ruling) : ClaimAnswer
    {
        /// <inheritdoc />
        public override FigureKind Basis => FigureKind.Exact;
    }

    /// <summary>A fact of the sheet.</summary>
    public sealed record OfFact(Fact Fact) : ClaimAnswer
    {
        /// <inheritdoc />
        public override FigureKind Basis => FigureKind.Stated;
    }

    /// <summary>A formula without a position.</summary>
    /// <param name="Number">What it gives.</param>
    /// <param name="Cite">Where the rules say so; null where nobody knows.</param>
    /// <param name="Formula">The formula.</param>
    public sealed record OfValue(long Number, Citation? Cite, string Formula) : ClaimAnswer
    {
        /// <summary>The table that is asked; null for another formula.</summary>
        public string? Table { get; init; }

        /// <inheritdoc />
        public override FigureKind Basis => FigureKind.Exact;
    }
}

/// <summary>How a statement came out.</summary>
public enum ClaimStatus
{
    /// <summary>The sheet gives the same.</summary>
    Right,

    /// <summary>The sheet gives something else.</summary>
    Wrong,

    /// <summary>The sheet does not say, or readings disagree.</summary>
    Unsettled,

    /// <summary>It could not be asked: a name is unknown, or the target says nothing.</summary>
    Unasked,
}
