using Rostrum.Lessons.Findings;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Claims;

/// <summary>The pages of <c>docs/diagnostics</c> whose examples are lessons, or what is dismissed of one.</summary>
public sealed class LessonPageExampleTests
{
    private const string Unsaid = "ROS0611";
    private const string TooEarly = "ROS0612";
    private const string BetterOrder = "ROS0613";

    private const string BesideDismissed = "<!-- left out: Steps, readings, lamps -->\n\n## A\n\nWare goes on an empty shelf.\n";

    public static TheoryData<string, string, bool, string> Examples =>
        [.. ((string[])["lesson", "demo", "dismissed"]).SelectMany(k => DiagnosticPage.ExamplesIn(k).Select(e => (k, e.Id, e.IsRight, e.Content)))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Lesson_gives_what_its_page_says(string kind, string id, bool isRight, string content)
    {
        var example = new PageExample(id, kind, isRight, content);
        LessonReport report = LessonCheck.Of(GameOf(kind, content), new SourceText("lesson.md", kind == "dismissed" ? BesideDismissed : content));
        Diagnostic[] problems = [.. report.Problems, .. report.Script.Findings.Select(f => f.Problem)];

        Assert.Equal(example.Expected, problems.Select(p => p.Id).Distinct().Where(i => IsOfPage(i, id)));
        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In).Select(w => $"{p.Id}: {w}")));
    }

    private static Game GameOf(string kind, string content) => kind switch
    {
        "lesson" => BenchGame.Game,
        "demo" => ShippedGames.Open("kiln-night"),
        _ => BenchGame.Game.With(new SourceText(Dismissals.FileName, content)),
    };

    // An example is short and leaves most rules unsaid; and where another order is better, something is used too early.
    private static bool IsOfPage(string found, string page) => (found != Unsaid || page == Unsaid) && !(found == TooEarly && page == BetterOrder);
}
