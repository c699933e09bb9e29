using Rostrum.Lessons;
using Rostrum.Lessons.Coverage;
using Rostrum.Lessons.Findings;
using Rostrum.Lessons.Order;
using Rostrum.Lessons.Page;
using Rostrum.Lessons.Scripts;
using Rostrum.Sheets.Model;

namespace Rostrum.Cli.Reports;

/// <summary>A finding of a lesson: a problem as everywhere, with the words that a dismissal of it would concern, the clause and the page; empty where there is none.</summary>
internal sealed record FindingItem(
    string Id, string Severity, string File, int Line, int Column, int EndLine, int EndColumn, string Message, string Hint, FixItem? Fix, IReadOnlyList<RelatedItem> Related, string Concerns, string Clause, string Cite)
{
    /// <summary>A finding as it is reported.</summary>
    public static FindingItem Of(ScriptFinding finding)
    {
        var problem = ProblemItem.Of(finding.Problem);
        return new FindingItem(
            problem.Id, problem.Severity, problem.File, problem.Line, problem.Column, problem.EndLine, problem.EndColumn, problem.Message, problem.Hint, problem.Fix, problem.Related,
            finding.Concerns, finding.Clause ?? "", finding.Clause is null ? "" : Citation.Tell(finding.Cite));
    }
}

/// <summary>A finding that the presenter lets stand.</summary>
internal sealed record DismissedItem(string Id, string Concerns, string Because);

/// <summary>A rule and how the lesson deals with it: <c>said</c>, <c>said in part</c>, <c>left out</c>, <c>only shown</c>, <c>perhaps never said</c>, <c>never said</c>.</summary>
internal sealed record CoverItem(string Clause, string Cite, string Variant, string Status, IReadOnlyList<string> Topics)
{
    /// <summary>A rule as it is reported.</summary>
    public static CoverItem Of(ClauseCover cover, Lesson lesson) => new(
        cover.Clause.Key, Citation.Tell(cover.Clause.Cite), cover.Clause.Variant ?? "", InWords(cover.Status), [.. cover.Topics.Select(t => lesson.Topics[t].Title)]);

    private static string InWords(CoverStatus status) => status switch
    {
        CoverStatus.Said => "said",
        CoverStatus.InPart => "said in part",
        CoverStatus.LeftOut => "left out",
        CoverStatus.OnlyShown => "only shown",
        CoverStatus.PerhapsNeverSaid => "perhaps never said",
        _ => "never said",
    };
}

/// <summary>The best order of the topics: their headings, what it costs, whether no order costs less, and what is used too early in the present one.</summary>
internal sealed record OrderItem(IReadOnlyList<string> Topics, long Cost, bool Exact, IReadOnlyList<EarlyItem> Early)
{
    /// <summary>The order as it is reported.</summary>
    public static OrderItem Of(LessonReport report)
    {
        TopicOrder order = report.Script.Order;
        return new OrderItem(
            [.. order.Topics.Select(t => report.Lesson.Topics[t].Title)], order.Cost, order.IsExact,
            [.. report.Script.Forward.Select(f => new EarlyItem(f.Term, f.At.StartPosition.Line, report.Lesson.Topics[f.Topic].Title, f.Sentences))]);
    }
}

/// <summary>A term that is used before the topic that tells what it is, and in how many sentences.</summary>
internal sealed record EarlyItem(string Term, int Line, string Topic, int Sentences);

/// <summary>How many checked values are known in which way; the kinds are never mixed.</summary>
internal sealed record FigureCounts(int Exact, int Simulated, int OwnLog, int Stated)
{
    /// <summary>The counts of a checked lesson.</summary>
    public static FigureCounts Of(LessonReport report)
    {
        ILookup<FigureKind, FigureKind> by = report.Claims.Select(c => c.Answer?.Basis).OfType<FigureKind>().ToLookup(k => k);
        return new FigureCounts(by[FigureKind.Exact].Count(), by[FigureKind.Simulated].Count(), by[FigureKind.OwnLog].Count(), by[FigureKind.Stated].Count());
    }
}
