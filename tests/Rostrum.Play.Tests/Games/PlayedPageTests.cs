using Rostrum.Play.Layout;
using Rostrum.Play.Players;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.Games;

/// <summary>The pages of <c>docs/diagnostics</c> whose examples are sheets of which one game is played.</summary>
public sealed class PlayedPageTests
{
    public static TheoryData<string, bool, string> Examples => [.. DiagnosticPage.ExamplesIn("played").Select(e => (e.Id, e.IsRight, e.Content))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Sheet_gives_what_its_page_says(string id, bool isRight, string content)
    {
        var example = new PageExample(id, "played", isRight, content);
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("test", (SheetReader.FileName, content)), IdiomLibrary.Empty, []);

        Diagnostic[] problems = [.. reading.Problems, .. Play(reading.Sheet!)];

        Assert.Equal(example.Expected, problems.Select(p => p.Id).Distinct());
        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In)));
    }

    private static Diagnostic[] Play(Sheet sheet)
    {
        try
        {
            var game = new PlayedGame(GameTable.Of(sheet), [PlayerKind.Random], seed: 1);
            _ = game.Moves().Count();
            Assert.NotNull(game.Result);
            return [];
        }
        catch (NotPlayableException why)
        {
            return [GameTable.Problem(why, sheet)];
        }
    }
}
