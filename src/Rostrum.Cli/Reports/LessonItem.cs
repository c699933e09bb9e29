using System.Text.Json.Serialization;
using Rostrum.Lessons;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Findings;
using Rostrum.Lessons.Numbers;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using Rostrum.Text;

namespace Rostrum.Cli.Reports;

/// <summary>What <c>lesson --json</c> writes.</summary>
/// <param name="Format">Always 1.</param>
/// <param name="Game">The game.</param>
/// <param name="Title">The lesson's title.</param>
/// <param name="Claims">How many statements came out how.</param>
/// <param name="Shots">How many shots can be drawn.</param>
/// <param name="ShotsWanted">How many shots the lesson asks for.</param>
/// <param name="WordsAMinute">The pace that the seconds rest on.</param>
/// <param name="Topics">The topics in order.</param>
/// <param name="Unchecked">The numbers that are said without a check, in order.</param>
/// <param name="Findings">What is wrong with values and shots, by place, then what the script lacks, the weightiest first.</param>
/// <param name="Dismissed">What was found and let stand, with the presenter's note.</param>
/// <param name="Clauses">Every rule with the way in which the lesson deals with it.</param>
/// <param name="Order">The best order of the topics.</param>
/// <param name="Figures">How many checked values are known in which way.</param>
/// <param name="ReadingEase">Flesch reading ease of the whole; null where nothing is said.</param>
/// <param name="Grade">Flesch-Kincaid grade of the whole; null where nothing is said.</param>
internal sealed record LessonItem(
    int Format,
    string Game,
    string Title,
    ClaimCounts Claims,
    int Shots,
    int ShotsWanted,
    int WordsAMinute,
    IReadOnlyList<TopicItem> Topics,
    IReadOnlyList<UncheckedItem> Unchecked,
    IReadOnlyList<FindingItem> Findings,
    IReadOnlyList<DismissedItem> Dismissed,
    IReadOnlyList<CoverItem> Clauses,
    OrderItem Order,
    FigureCounts Figures,
    double? ReadingEase,
    double? Grade)
{
    /// <summary>A checked lesson as it is reported.</summary>
    public static LessonItem Of(string game, LessonReport report, int wordsAMinute) => new(
        ReportJson.Format,
        game,
        report.Lesson.Title,
        ClaimCounts.Of(report),
        report.Shots.Count(s => s.Problem is null),
        report.Shots.Length,
        wordsAMinute,
        [.. report.Lesson.Topics.Select((t, i) => TopicItem.Of(report, t, i, wordsAMinute))],
        [.. report.Unchecked.Select(UncheckedItem.Of)],
        [.. report.Problems.Select(p => FindingItem.Of(new ScriptFinding(p, ""))), .. report.Script.Findings.Select(FindingItem.Of)],
        [.. report.Script.Dismissed.Select(d => new DismissedItem(d.Finding.Problem.Id, d.Finding.Concerns, d.Dismissal.Because))],
        [.. report.Script.Clauses.Select(c => CoverItem.Of(c, report.Lesson))],
        OrderItem.Of(report),
        FigureCounts.Of(report),
        Rounded(report.Script.Whole.Ease),
        Rounded(report.Script.Whole.Grade));

    /// <summary>A readability figure to one place: the formulas are not sharper.</summary>
    internal static double? Rounded(double? figure) => figure is { } number ? Math.Round(number, 1) : null;
}

/// <summary>A number that is said without a check; <c>write</c> is the check that is proposed, null where none is.</summary>
internal sealed record UncheckedItem(int Line, int Column, int EndLine, int EndColumn, string Said, string? Write)
{
    /// <summary>A number as it is reported.</summary>
    public static UncheckedItem Of(UncheckedNumber number)
    {
        (LinePosition start, LinePosition end) = (number.At.StartPosition, number.At.EndPosition);
        return new UncheckedItem(start.Line, start.Column, end.Line, end.Column, number.Said, number.Write);
    }
}

/// <summary>How many statements of a lesson came out how.</summary>
internal sealed record ClaimCounts(int Right, int Wrong, int Unsettled, int Unasked)
{
    /// <summary>All of them.</summary>
    [JsonIgnore]
    public int All => Right + Wrong + Unsettled + Unasked;

    /// <summary>The counts of a checked lesson.</summary>
    public static ClaimCounts Of(LessonReport report)
    {
        ILookup<ClaimStatus, CheckedClaim> by = report.Claims.ToLookup(c => c.Status);
        return new ClaimCounts(by[ClaimStatus.Right].Count(), by[ClaimStatus.Wrong].Count(), by[ClaimStatus.Unsettled].Count(), by[ClaimStatus.Unasked].Count());
    }
}

/// <summary>A topic: its heading, how long it lasts when read aloud without pauses, how many words are spoken, how easily they are followed, which rules it says.</summary>
internal sealed record TopicItem(string Topic, int Seconds, int Words, double? ReadingEase, double? Grade, IReadOnlyList<string> Clauses)
{
    /// <summary>A topic as it is reported.</summary>
    public static TopicItem Of(LessonReport report, LessonTopic topic, int index, int wordsAMinute)
    {
        Readability? read = index < report.Script.Readability.Length ? report.Script.Readability[index] : null;
        return new TopicItem(
            topic.Title, Pace.Seconds(topic.Words, wordsAMinute), topic.Words, LessonItem.Rounded(read?.Ease), LessonItem.Rounded(read?.Grade),
            [.. report.Script.Clauses.Where(c => c.Topics.Contains(index)).Select(c => c.Clause.Key)]);
    }

    /// <summary>Seconds as a person says them, such as <c>2 min 5 s</c>.</summary>
    public static string Duration(int seconds) => seconds < 60 ? $"{seconds} s" : $"{seconds / 60} min {seconds % 60} s";
}
