using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Verdicts;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Positions;

/// <summary>The pages of <c>docs/diagnostics</c> whose examples are positions of the bench game, and questions about it.</summary>
public sealed class PositionPageTests
{
    public static TheoryData<string, string, bool, string> Examples =>
        [.. new[] { "position", "trail", "question" }.SelectMany(DiagnosticPage.ExamplesIn).Select(e => (e.Kind, e.Id, e.IsRight, e.Content))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_gives_what_its_page_says(string kind, string id, bool isRight, string content)
    {
        var example = new PageExample(id, kind, isRight, content);

        Diagnostic[] problems = [.. kind is "position" or "trail" ? OfPosition(kind == "trail" ? TrailGame.Game(content) : BenchGame.Game, content) : Ruling.On(BenchGame.Position, content).Problems];

        Assert.Equal(example.Expected, problems.Select(p => p.Id).Distinct());
        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In).Select(w => $"{p.Id}: {w}")));
    }

    private static IEnumerable<Diagnostic> OfPosition(Game game, string content)
    {
        OpenedPosition opened = game.Open(new SourceText("positions/bench.yaml", content));
        return opened.Problems.Concat(opened.Position is { } position ? ExpectationCheck.Of(position, opened.File!.Expectations) : []);
    }
}
