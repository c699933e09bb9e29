using System.Collections.Immutable;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Review;
using Rostrum.Sheets.Model;

namespace Rostrum.Cli.Reports;

/// <summary>What <c>review --json</c> writes.</summary>
/// <param name="Format">Always 1.</param>
/// <param name="Game">The game.</param>
/// <param name="Captions">The caption file as the user named it.</param>
/// <param name="Refused">Why the recording was not held against the rules; null where it was.</param>
/// <param name="Findings">What is certainly wrong, then what to listen to, each by time, rules that were never said last.</param>
/// <param name="Coverage">Every rule with the time at which it is said.</param>
/// <param name="Topics">The topics in the order in which they were filmed.</param>
/// <param name="NotFilmed">Headings of topics that were not heard.</param>
/// <param name="Words">How many words were heard.</param>
/// <param name="Seconds">From the first to the last of them.</param>
/// <param name="WordsAMinute">The pace of the whole.</param>
/// <param name="Corrections">The lines for the description of the video, their heading first; empty where there is nothing to correct.</param>
/// <param name="Files">The files that were written; empty without <c>-o</c>.</param>
internal sealed record ReviewReport(
    int Format,
    string Game,
    string Captions,
    string? Refused,
    IReadOnlyList<HeardItem> Findings,
    IReadOnlyList<RuleHeardItem> Coverage,
    IReadOnlyList<FilmedItem> Topics,
    IReadOnlyList<string> NotFilmed,
    int Words,
    int Seconds,
    int WordsAMinute,
    IReadOnlyList<string> Corrections,
    IReadOnlyList<string> Files)
{
    /// <summary>A review as it is reported.</summary>
    public static ReviewReport Of(string game, string captions, RecordingReport report, string corrections, ImmutableArray<string> files) => new(
        ReportJson.Format,
        game,
        captions,
        report.Refused,
        [.. report.Certain.Select(f => HeardItem.Of(f, "certain")), .. report.Listen.Select(f => HeardItem.Of(f, "listen"))],
        [.. report.Coverage.Select(RuleHeardItem.Of)],
        [.. report.Topics.Topics.Select(FilmedItem.Of)],
        report.Topics.NotFound,
        report.Words,
        (int)report.Length.TotalSeconds,
        (int)Math.Round(report.WordsAMinute),
        corrections.Split('\n', StringSplitOptions.RemoveEmptyEntries),
        files);
}

/// <summary>A finding of a recording; <c>time</c> and <c>seconds</c> are null for what was never said, <c>heard</c> and <c>right</c> for all but numbers.</summary>
internal sealed record HeardItem(
    string? Time, double? Seconds, string Said, string Sheet, string Clause, string Cite, string Kind, double Confidence, string List, string Because, long? Heard, long? Right)
{
    private const int Places = 2;

    /// <summary>A finding as it is reported.</summary>
    public static HeardItem Of(Finding finding, string list) => new(
        finding.Time is { } time ? FilmTime.Write(time) : null,
        finding.Time?.TotalSeconds,
        finding.Said,
        finding.Sheet,
        finding.Clause,
        Citation.Tell(finding.Cite),
        InWords(finding.Kind),
        Math.Round(finding.Confidence, Places),
        list,
        finding.Because,
        finding.Heard,
        finding.Right);

    /// <summary>What a finding is about, as a person says it.</summary>
    public static string InWords(FindingKind kind) => kind switch
    {
        FindingKind.WrongValue => "wrong value",
        FindingKind.NeverSaid => "never said",
        FindingKind.RowMissing => "row missing",
        _ => "wrong term",
    };
}

/// <summary>A rule, how much of it was said at its best place, and when; <c>time</c> is null where it was not said.</summary>
internal sealed record RuleHeardItem(string Clause, string Section, double Said, string? Time)
{
    /// <summary>A rule as it is reported.</summary>
    public static RuleHeardItem Of(RuleHeard rule) => new(rule.Clause, rule.Section, Math.Round(rule.Said, 2), rule.Time is { } time ? FilmTime.Write(time) : null);
}

/// <summary>A topic as it was filmed; <c>moved</c> where the lesson has it at another place, <c>again</c> where the film returns to it.</summary>
internal sealed record FilmedItem(string Topic, string Time, int Seconds, int Words, int WordsAMinute, bool Moved, bool Again)
{
    /// <summary>A topic as it is reported.</summary>
    public static FilmedItem Of(FilmedTopic topic) => new(topic.Title, FilmTime.Write(topic.Start), (int)(topic.End - topic.Start).TotalSeconds, topic.Words, (int)Math.Round(topic.WordsAMinute), topic.IsMoved, topic.IsAgain);
}
