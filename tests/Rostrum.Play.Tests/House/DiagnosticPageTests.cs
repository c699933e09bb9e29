using Rostrum.Play.Layout;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.House;

/// <summary>The pages of <c>docs/diagnostics</c> that are about whole games, and the words of this room's messages.</summary>
public sealed class DiagnosticPageTests
{
    public static TheoryData<string, bool, string> Games => [.. DiagnosticPage.ExamplesIn("play").Select(e => (e.Id, e.IsRight, e.Content))];

    [Theory]
    [MemberData(nameof(Games))]
    public void Game_gives_what_its_page_says(string id, bool isRight, string content)
    {
        string[] found = [.. Problems(content)];

        Assert.Equal(isRight ? [] : [id], found);
    }

    [Fact]
    public void Every_id_of_this_room_has_a_page() =>
        Assert.Empty(EveryMessage.Of(typeof(GameTable).Assembly, "Rostrum.Play").Select(p => p.Id).Except(DiagnosticPage.All.Select(p => p.Id)));

    [Fact]
    public void No_message_uses_a_banned_word()
    {
        Diagnostic[] problems = [.. EveryMessage.Of(typeof(GameTable).Assembly, "Rostrum.Play")];

        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In)));
    }

    private static IEnumerable<string> Problems(string content)
    {
        Sheets.Model.Sheet sheet = Sheet.Of(content);
        try
        {
            _ = new PlayedGame(GameTable.Of(sheet), [Players.PlayerKind.Random], 1).Moves().Count();
            return [];
        }
        catch (NotPlayableException why)
        {
            return [GameTable.Problem(why, sheet).Id];
        }
    }
}
