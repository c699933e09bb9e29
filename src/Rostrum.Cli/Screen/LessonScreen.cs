using System.Globalization;
using Rostrum.Cli.Reports;
using Rostrum.Text;

namespace Rostrum.Cli.Screen;

/// <summary>Shows the topics of a lesson with their length, then the numbers that nothing holds against the sheet, and sums up.</summary>
internal static class LessonScreen
{
    private const int NumberWidth = 6;
    private const int LengthWidth = 13;
    private const int EaseWidth = 8;

    private const int SaidWidth = 28;

    private const string PerhapsNeverSaid = "perhaps never said";

    /// <summary>The table and the list.</summary>
    public static string Of(LessonItem lesson, bool withPerhaps)
    {
        var paper = new Paper();
        int nameWidth = Paper.Width - NumberWidth - LengthWidth - EaseWidth;
        paper.Line(Paper.Padded("topic", nameWidth) + "words".PadLeft(NumberWidth) + "read aloud".PadLeft(LengthWidth) + "ease".PadLeft(EaseWidth));
        foreach (TopicItem topic in lesson.Topics)
        {
            paper.Line(Paper.Padded(Prose.Clip(topic.Topic, nameWidth - 2), nameWidth) + $"{topic.Words}".PadLeft(NumberWidth) + TopicItem.Duration(topic.Seconds).PadLeft(LengthWidth) + Ease(topic.ReadingEase).PadLeft(EaseWidth));
        }

        Perhaps(paper, [.. lesson.Clauses.Where(c => withPerhaps && c.Status == PerhapsNeverSaid)]);
        Numbers(paper, lesson.Unchecked);
        return paper.ToString();
    }

    /// <summary>How the lesson came out and what is to be done, in lines of at most 80 columns.</summary>
    public static IEnumerable<string> Summary(LessonItem lesson)
    {
        string length = $"{Prose.Count(lesson.Topics.Count, "topic", "topics")}, {TopicItem.Duration(lesson.Topics.Sum(t => t.Seconds))} at {lesson.WordsAMinute} words a minute";
        yield return $"{Prose.Clip(lesson.Title, Paper.Width - length.Length - 2)}: {length}";
        yield return $"{Statements(lesson.Claims)}; {Shots(lesson)}";
        int errors = lesson.Findings.Count(f => f.Severity == "error");
        if (errors > 0)
        {
            yield return $"Before you film: mend {(errors == 1 ? "the error" : $"the {errors} errors")} above.";
        }

        yield return Coverage(lesson);
        if (lesson.ReadingEase is { } ease && lesson.Grade is { } grade)
        {
            yield return $"Reading ease {Ease(ease)} (60 to 70 is standard, more is easier), school grade {grade.ToString("0", CultureInfo.InvariantCulture)}.";
        }

        if (lesson.Dismissed.Count > 0)
        {
            yield return $"{Prose.Count(lesson.Dismissed.Count, "finding is", "findings are")} let stand by 'dismissed.yaml'.";
        }

        if (lesson.Unchecked.Count > 0)
        {
            yield return $"{Prose.Count(lesson.Unchecked.Count, "number is", "numbers are")} said without a check, as listed above.";
        }
    }

    private static void Perhaps(Paper paper, IReadOnlyList<CoverItem> rules)
    {
        if (rules.Count > 0)
        {
            paper.Line();
            paper.Wrapped("Perhaps never said: the name is, and the rule may be told in other words.", 0);
        }

        foreach (CoverItem rule in rules)
        {
            paper.Pair(Prose.Clip(rule.Clause, SaidWidth), rule.Cite, SaidWidth + 2);
        }
    }

    private static void Numbers(Paper paper, IReadOnlyList<UncheckedItem> numbers)
    {
        if (numbers.Count == 0)
        {
            return;
        }

        paper.Line();
        paper.Wrapped($"Said without a check. Write what is proposed, another check, or '[{Prose.Clip(numbers[0].Said)}](unchecked)' where none is wanted.", 0);
        foreach (UncheckedItem number in numbers.Take(ProblemScreen.Most))
        {
            paper.Pair($"{number.Line},{number.Column} ".PadRight(8) + Prose.Clip(number.Said, SaidWidth - 10), number.Write ?? "", SaidWidth);
        }

        if (numbers.Count > ProblemScreen.Most)
        {
            paper.Line($"… and {numbers.Count - ProblemScreen.Most} more (all with --json)");
        }
    }

    private static string Ease(double? ease) => ease?.ToString("0", CultureInfo.InvariantCulture) ?? "";

    // 0 of 0 would say that all is well.
    private static string Coverage(LessonItem lesson)
    {
        int said = lesson.Clauses.Count(c => c.Status is "said" or "said in part");
        int left = lesson.Clauses.Count(c => c.Status == "left out");
        string rules = lesson.Clauses.Count == 0 ? "The sheet has no rules that could be said" : $"{said} of {Prose.Count(lesson.Clauses.Count, "rule is", "rules are")} said";
        int perhaps = lesson.Clauses.Count(c => c.Status == PerhapsNeverSaid);
        rules += perhaps == 0 ? "" : $", {perhaps} perhaps not (--perhaps lists them)";
        return left == 0 ? rules : $"{rules}, {left} left out on purpose";
    }

    private static string Statements(ClaimCounts claims)
    {
        (int Number, string How)[] others = [(claims.Wrong, "wrong"), (claims.Unsettled, "not settled"), (claims.Unasked, "not understood")];
        string right = claims.All == 0 ? "nothing is held against the sheet yet" : $"{claims.Right} of {Prose.Count(claims.All, "statement is", "statements are")} right";
        return string.Join(", ", others.Where(o => o.Number > 0).Select(o => $"{o.Number} {o.How}").Prepend(right));
    }

    private static string Shots(LessonItem lesson) => lesson.Shots == lesson.ShotsWanted
        ? Prose.Count(lesson.Shots, "shot", "shots")
        : $"{lesson.Shots} of {Prose.Count(lesson.ShotsWanted, "shot", "shots")} can be drawn";
}
