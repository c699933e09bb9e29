using Rostrum.Rulings.Tallies;

namespace Rostrum.Cli.Reports;

/// <summary>What <c>tally --json</c> writes.</summary>
internal sealed record TallyReport(int Format, string Game, string Position, IReadOnlyList<string> Variants, IReadOnlyList<SeatItem> Seats);

/// <summary>The tally of a seat under the first of every open reading.</summary>
/// <param name="Seat">1-based.</param>
/// <param name="Total">The sum of the points of the lines, always; those in <paramref name="Without"/> count nothing.</param>
/// <param name="AtLeast">True where the real total may be more.</param>
/// <param name="TotalAtMost">The greatest total; null where nobody can say.</param>
/// <param name="InWords">As a person says it, such as <c>at least 20</c>.</param>
/// <param name="Without">The clauses of which not even the least is known.</param>
/// <param name="Lines">One for each scoring clause.</param>
/// <param name="Readings">The alternatives of each open choice that matters here.</param>
/// <param name="Rating">The step of the sheet's rating that the total reaches; null where it has none.</param>
/// <param name="NotModelled">What the sheet does not say and the tally would need.</param>
/// <param name="NotGiven">What the position does not say and the tally would need.</param>
internal sealed record SeatItem(
    int Seat,
    long Total,
    bool AtLeast,
    long? TotalAtMost,
    string InWords,
    IReadOnlyList<string> Without,
    string? Rating,
    IReadOnlyList<LineItem> Lines,
    IReadOnlyList<TallyReadingItem> Readings,
    IReadOnlyList<string> NotModelled,
    IReadOnlyList<string> NotGiven)
{
    /// <summary>A tally as it is reported.</summary>
    public static SeatItem Of(Tally tally) => new(
        tally.Seat + 1,
        tally.Lines.Sum(l => l.Points.Low ?? 0),
        tally.Total.Low is not null && !tally.Total.IsCertain,
        tally.Without.IsEmpty ? tally.Total.High : null,
        tally.TotalInWords,
        [.. tally.Lines.Where(l => l.Points.Low is null).Select(l => l.Clause)],
        tally.Rating?.Step,
        [.. tally.Lines.Select(LineItem.Of)],
        [.. tally.Readings.Select(TallyReadingItem.Of)],
        tally.NotModelled,
        tally.NotGiven);
}

/// <summary>What a clause gives.</summary>
/// <param name="Clause">Its name.</param>
/// <param name="Says">The author's sentence, else what the sheet's words mean.</param>
/// <param name="Points">The points, or the least that they can be; null where not even that is known.</param>
/// <param name="AtMost">The most that they can be; null where nobody can say.</param>
/// <param name="Cite">Source and page; <c>no page</c> where the sheet names none.</param>
/// <param name="Because">The parts, which add up to the points where these are certain.</param>
internal sealed record LineItem(string Clause, string Says, long? Points, long? AtMost, string Cite, IReadOnlyList<PartItem> Because)
{
    /// <summary>A line as it is reported.</summary>
    public static LineItem Of(TallyLine line) => new(
        line.Clause, line.Sentence, line.Points.Low, line.Points.High, line.CiteInWords, [.. line.Because.Select(PartItem.Of)]);
}

/// <summary>A part of a line.</summary>
internal sealed record PartItem(string Text, IReadOnlyList<string> Spaces, long? Points, long? AtMost)
{
    /// <summary>A part as it is reported.</summary>
    public static PartItem Of(TallyPart part) => new(part.Text, part.Spaces, part.Points.Low, part.Points.High);
}

/// <summary>What a clause and the total would be by one alternative; null where not even the least is known.</summary>
internal sealed record TallyReadingItem(string Clause, string Name, long? Points, long? Total)
{
    /// <summary>An alternative as it is reported.</summary>
    public static TallyReadingItem Of(TallyReading reading) => new(reading.Clause, reading.Name, reading.Points.Low, reading.Total.Low);
}
