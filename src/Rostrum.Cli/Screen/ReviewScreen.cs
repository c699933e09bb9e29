using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Cli.Reports;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Review;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Cli.Screen;

/// <summary>Shows what was heard in a recording: first what is certainly wrong, then what to listen to.</summary>
internal static class ReviewScreen
{
    private const int TimeWidth = 9;
    private const int TopicWidth = 46;
    private const int NumberWidth = 10;

    /// <summary>The findings; empty where there are none.</summary>
    public static string Of(RecordingReport report)
    {
        var paper = new Paper();
        List(paper, "Certain", report.Certain);
        if (!report.Certain.IsEmpty && !report.Listen.IsEmpty)
        {
            paper.Line();
        }

        List(paper, "Listen here, it may be right", report.Listen);
        return paper.ToString();
    }

    /// <summary>The topics as filmed, with their times and their pace.</summary>
    public static string Topics(FilmedTopics topics)
    {
        var paper = new Paper();
        if (topics.Topics.IsEmpty)
        {
            return "";
        }

        paper.Line();
        paper.Line("  " + Paper.Padded("from", TimeWidth) + Paper.Padded(topics.IsOfLesson ? "topic of the lesson" : "part of the rules", TopicWidth) + "words".PadLeft(NumberWidth) + "a minute".PadLeft(NumberWidth));
        foreach (FilmedTopic topic in topics.Topics)
        {
            string sign = (topic.IsAgain ? " (again)" : "") + (topic.IsMoved ? " (moved)" : "");
            string title = Prose.Clip(topic.Title, TopicWidth - 1 - sign.Length) + sign;
            paper.Line("  " + Paper.Padded(FilmTime.Write(topic.Start), TimeWidth) + Paper.Padded(title, TopicWidth) + $"{topic.Words}".PadLeft(NumberWidth) + Whole(topic.WordsAMinute).PadLeft(NumberWidth));
        }

        return paper.ToString();
    }

    /// <summary>How the recording came out, in few lines.</summary>
    public static IEnumerable<string> Summary(RecordingReport report)
    {
        string certain = report.Certain.IsEmpty ? "Nothing is certainly wrong" : $"{Prose.Count(report.Certain.Length, "finding is", "findings are")} certain";
        yield return report.Listen.IsEmpty ? $"{certain}." : $"{certain}, {report.Listen.Length} to be listened to.";
        int said = report.Coverage.Count(c => c.Time is not null);
        yield return $"{said} of {Prose.Count(report.Coverage.Length, "rule was", "rules were")} recognised; {Prose.Count(report.Words, "word", "words")} in {FilmTime.Write(Bounded(report.Length))}, {Whole(report.WordsAMinute)} a minute";
        if (!report.Topics.IsOfLesson)
        {
            yield break;
        }

        string[] moved = [.. report.Topics.Topics.Where(t => t.IsMoved).Select(t => $"'{Prose.Clip(t.Title)}'")];
        if (moved.Length > 0)
        {
            yield return $"Filmed at another place than in the lesson: {Prose.And(moved)}.";
        }

        if (!report.Topics.NotFound.IsEmpty)
        {
            yield return $"Not heard as {(report.Topics.NotFound.Length == 1 ? "a topic" : "topics")}: {Prose.And(report.Topics.NotFound.Select(t => $"'{Prose.Clip(t)}'"))}.";
        }
    }

    private static void List(Paper paper, string heading, ImmutableArray<Finding> findings)
    {
        if (findings.IsEmpty)
        {
            return;
        }

        paper.Line(heading);
        foreach (Finding finding in findings.Take(ProblemScreen.Most))
        {
            paper.Line();
            One(paper, finding);
        }

        if (findings.Length > ProblemScreen.Most)
        {
            paper.Line();
            paper.Line($"  … and {findings.Length - ProblemScreen.Most} more (all with --json)");
        }
    }

    private static void One(Paper paper, Finding finding)
    {
        string time = finding.Time is { } at ? FilmTime.Write(Bounded(at)) : "";
        string kind = HeardItem.InWords(finding.Kind);
        string number = finding is { Heard: { } heard, Right: { } right } ? $": {heard}, and {(finding.IsOfScript ? "the lesson says" : "the rules say")} {right}" : "";
        paper.Pair(time, finding.Said.Length == 0 ? $"{kind}: {finding.Clause}" : $"{kind}{number}", TimeWidth);
        if (finding.Said.Length > 0)
        {
            paper.Pair("", $"heard: “{finding.Said}”", TimeWidth);
        }

        paper.Pair("", finding.IsOfScript ? $"lesson: {finding.Sheet}" : $"rules: {finding.Sheet} ({finding.Clause}, {Citation.Tell(finding.Cite)})", TimeWidth);
        if (finding.Because.Length > 0)
        {
            paper.Pair("", $"why: {finding.Because}", TimeWidth);
        }
    }

    private static TimeSpan Bounded(TimeSpan time) => time > FilmTime.Latest ? FilmTime.Latest : time;

    private static string Whole(double number) => Math.Round(number).ToString(CultureInfo.InvariantCulture);
}
