using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Published;

namespace Rostrum.Cli.Reports;

/// <summary>What <c>check --published --json</c> writes.</summary>
/// <param name="Format">Always 1.</param>
/// <param name="Game">The game.</param>
/// <param name="Videos">Every video, with how many of its minutes are wrong and the lines for its description.</param>
/// <param name="Published">Every minute that is wrong now, by video, then by time.</param>
/// <param name="Notes">What changed and makes nothing wrong.</param>
internal sealed record PublishedCheckReport(int Format, string Game, IReadOnlyList<PublishedVideoItem> Videos, IReadOnlyList<PublishedItem> Published, IReadOnlyList<PublishedNoteItem> Notes)
{
    /// <summary>The report of a game.</summary>
    public static PublishedCheckReport Of(string game, PublishedReport report) => new(
        ReportJson.Format,
        game,
        [.. report.Videos.Select(v => new PublishedVideoItem(v.Title, v.Date, v.Address, report.Findings.Where(f => ReferenceEquals(f.Video, v)).DistinctBy(f => f.Time.At).Count(), report.CorrectionsOf(v)))],
        [.. report.Findings.Select(PublishedItem.Of)],
        [.. report.Notes.Select(n => new PublishedNoteItem(n.Video.Title, n.About, n.Says, n.Line is { } line ? PublishedItem.LineOf(line) : ""))]);
}

/// <summary>A video; <c>corrections</c> are the lines for its description, empty where nothing is wrong.</summary>
internal sealed record PublishedVideoItem(string Title, string Date, string Address, int Wrong, string Corrections);

/// <summary>A minute that is wrong now; <c>kind</c> is <c>value</c>, <c>rule</c>, <c>gone</c>, <c>decided</c> or <c>opened</c>.</summary>
internal sealed record PublishedItem(string Video, string Date, string Time, bool Estimated, string Clause, string Kind, string Then, string Now, string Cite, string Correction, string Because)
{
    /// <summary>A minute as it is reported.</summary>
    public static PublishedItem Of(PublishedFinding finding) => new(
        finding.Video.Title,
        finding.Video.Date,
        FilmTime.Write(finding.Time.At),
        finding.Time.IsEstimated,
        finding.Clause,
        finding.Kind.ToString().ToLowerInvariant(),
        finding.Then,
        finding.Now,
        finding.Cite,
        LineOf(new Correction(finding.Time.At, finding.Correction)),
        finding.Because);

    /// <summary>A correction as one line of a description.</summary>
    public static string LineOf(Correction correction) => CorrectionLines.Write([correction]).Split('\n')[1];
}

/// <summary>Something that changed and makes nothing wrong: a rule, source or position, and what is new; <c>line</c> may be added to the description, and is empty for most.</summary>
internal sealed record PublishedNoteItem(string Video, string About, string Says, string Line);
