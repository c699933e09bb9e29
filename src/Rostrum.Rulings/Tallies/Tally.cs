using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tallies;

/// <summary>What a position scores for one seat, and why: a derivation whose lines add up to the total.</summary>
/// <remarks>Where every line is certain, the total is their sum, and each line is the sum of its parts; both are established in
/// the reckoner and the explainer and held by property tests. All open readings are at their first alternative.</remarks>
/// <param name="Seat">The 0-based seat that is counted.</param>
/// <param name="Total">The total; bounds where facts are not given or not modelled. Lines named in <paramref name="Without"/> are left out of it.</param>
/// <param name="Lines">One for each scoring clause, in the order of the sheet.</param>
/// <param name="Without">The clauses of which nothing is known, not even a bound: the total is without them. Usually empty.</param>
/// <param name="Readings">The alternatives of each open choice that makes a difference here; empty where none does.</param>
/// <param name="NotModelled">What the sheet does not say and the tally would need.</param>
/// <param name="NotGiven">What the position does not say and the tally would need.</param>
public sealed record Tally(
    int Seat,
    Points Total,
    ImmutableArray<TallyLine> Lines,
    ImmutableArray<string> Without,
    ImmutableArray<TallyReading> Readings,
    ImmutableArray<string> NotModelled,
    ImmutableArray<string> NotGiven)
{
    /// <summary>The total as a person says it: <c>35</c>, <c>at least 20</c>, <c>31 without bowls</c>.</summary>
    public string TotalInWords => Without.IsEmpty ? Total.InWords : $"{Total.InWords} without {Rostrum.Text.Prose.And(Without)}";

    /// <summary>The step of the rating that the total reaches; null where the sheet has no rating.</summary>
    public TallyRating? Rating { get; init; }

    /// <summary>Why the total's bounds are narrower than the sums of the lines' bounds, as a sentence; null where they are not.</summary>
    public string? TogetherInWords
    {
        get
        {
            TallyLine[] counted = [.. Lines.Where(l => !Without.Contains(l.Clause))];
            bool isBelow = counted.All(l => l.Points.High is not null) && Total.High < counted.Sum(l => l.Points.High);
            bool isAbove = counted.All(l => l.Points.Low is not null) && Total.Low > counted.Sum(l => l.Points.Low);
            return (isBelow, isAbove) switch
            {
                (true, true) => "The lines cannot all be at their highest at once, nor all at their lowest.",
                (true, false) => "The lines cannot all be at their highest at once.",
                (false, true) => "The lines cannot all be at their lowest at once.",
                _ => null,
            };
        }
    }

    /// <summary>Counts a position.</summary>
    /// <param name="position">What lies where; facts may be missing.</param>
    /// <param name="seat">The 0-based seat that is counted.</param>
    public static Tally Of(Position position, int seat) => Of(position, seat, null);

    /// <summary>Counts some clauses of a position only: what nobody asks need not be worked out.</summary>
    /// <param name="position">What lies where; facts may be missing.</param>
    /// <param name="seat">The 0-based seat that is counted.</param>
    /// <param name="only">The names of the clauses; null for all.</param>
    public static Tally Of(Position position, int seat, IReadOnlySet<string>? only)
    {
        ArgumentNullException.ThrowIfNull(position);
        ArgumentOutOfRangeException.ThrowIfNegative(seat);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(seat, position.Seats);
        return new TallyBuilder(position, seat, only).Build();
    }
}

/// <summary>How a total is rated.</summary>
/// <param name="Step">The name of the step; of the lowest and the highest where the total is not certain; <c>unknown</c> where nobody can say.</param>
/// <param name="Credit">What variants that are on add before rating, 0 for nothing.</param>
/// <param name="Cite">Where the rules say so; null where the sheet names no page.</param>
public sealed record TallyRating(string Step, long Credit, Citation? Cite)
{
    /// <summary>The rating of a total.</summary>
    internal static TallyRating? Of(Sheet sheet, Points total, bool isWhole)
    {
        if (sheet.Rating.IsEmpty)
        {
            return null;
        }

        long credit = sheet.RatingCredit.Where(c => sheet.VariantsOn.Contains(c.Variant)).Sum(c => c.Points);
        string? lowest = isWhole && total.Low is { } low ? StepOf(sheet, low + credit) : null;
        string? highest = isWhole && total.High is { } high ? StepOf(sheet, high + credit) : null;
        return new TallyRating(lowest is null || highest is null ? "unknown" : lowest == highest ? lowest : $"{lowest} to {highest}", credit, sheet.RatingCite);
    }

    private static string StepOf(Sheet sheet, long total) => sheet.Rating.Last(s => s.From is null || s.From <= total).Name;
}

/// <summary>What one scoring clause gives.</summary>
/// <remarks>Its reasons are worked out when they are first asked for.</remarks>
public sealed class TallyLine
{
    private readonly Lazy<ImmutableArray<TallyPart>> _because;

    internal TallyLine(string clause, string sentence, Citation? cite, Points points, Func<ImmutableArray<TallyPart>> because)
    {
        Clause = clause;
        Sentence = sentence;
        Cite = cite;
        Points = points;
        _because = new Lazy<ImmutableArray<TallyPart>>(because);
    }

    /// <summary>The name of the clause.</summary>
    public string Clause { get; }

    /// <summary>The author's sentence, else that of its idiom, else its formula.</summary>
    public string Sentence { get; }

    /// <summary>Where the rules say so; null where the sheet names no page.</summary>
    public Citation? Cite { get; }

    /// <summary>What it gives.</summary>
    public Points Points { get; }

    /// <summary>The parts, which add up to <see cref="Points"/> where that is certain; never empty.</summary>
    public ImmutableArray<TallyPart> Because => _because.Value;

    /// <summary>The citation in words; <c>no page</c> where there is none.</summary>
    public string CiteInWords => Citation.Tell(Cite);
}

/// <summary>A part of a line.</summary>
/// <param name="Text">Why, as a sentence without a full stop.</param>
/// <param name="Spaces">The names of the spaces that it points at; may be empty.</param>
/// <param name="Points">What it gives.</param>
public sealed record TallyPart(string Text, ImmutableArray<string> Spaces, Points Points);

/// <summary>What a clause and the total would be by one alternative of an open choice, the other open choices at their first.</summary>
/// <param name="Clause">The scoring clause.</param>
/// <param name="Name">The name of the alternative.</param>
/// <param name="Points">What the clause gives.</param>
/// <param name="Total">The total.</param>
/// <param name="Choice">The choice.</param>
public sealed record TallyReading(string Clause, string Name, Points Points, Points Total, Choice Choice);
