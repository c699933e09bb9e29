using System.Text.Json.Serialization;
using Rostrum.Lessons;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Numbers;
using Rostrum.Lessons.Scripts;
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
/// <param name="Findings">What is wrong, by place.</param>
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
    IReadOnlyList<ProblemItem> Findings)
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
        [.. report.Lesson.Topics.Select(t => TopicItem.Of(t, wordsAMinute))],
        [.. report.Unchecked.Select(UncheckedItem.Of)],
        [.. report.Problems.Select(ProblemItem.Of)]);
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

/// <summary>A topic: its heading, how long it lasts when read aloud without pauses, how many words are spoken.</summary>
internal sealed record TopicItem(string Topic, int Seconds, int Words)
{
    /// <summary>A topic as it is reported.</summary>
    public static TopicItem Of(LessonTopic topic, int wordsAMinute) => new(topic.Title, (int)Math.Round(topic.Words * 60.0 / wordsAMinute, MidpointRounding.AwayFromZero), topic.Words);

    /// <summary>Seconds as a person says them, such as <c>2 min 5 s</c>.</summary>
    public static string Duration(int seconds) => seconds < 60 ? $"{seconds} s" : $"{seconds / 60} min {seconds % 60} s";
}
