using Rostrum.Rulings.Games;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Verdicts;

/// <summary>Pieces of several players that lie together are named in a question by their owner.</summary>
public sealed class OwnedThingTests
{
    private const string Sheet = """
        rule sheet: 1
        game: Inn
        players: 2
        seats: [North, South]
        pieces: {guest: {each player: 3}}
        places: {inn: {heap of: guest}}
        actions:
          send: {phrase: send (what) home, choose: {what: a guest in inn}, do: move what to box}
        laws:
          own guests: {binds: send, needs: owner of what is me}
        """;

    [Theory]
    [InlineData("send guest of North home", "legal")]
    [InlineData("send guest of South home", "illegal")]
    public void It_is_named_by_its_owner(string question, string verdict) => Assert.Equal(verdict, Ask(question, "[guest of South, guest of North]").Ruling!.Verdict);

    [Fact]
    public void One_that_is_not_there_is_not_meant() => Assert.Null(Ask("send guest of South home", "[guest of North]").Ruling);

    private static RulingAnswer Ask(string question, string inn)
    {
        string position = $"inn: {inn}\nturn of: North\n";
        var game = new Game(GameFolder.InMemory("inn", (SheetReader.FileName, Sheet), ("positions/p.yaml", position)), ShippedGames.Idioms);
        return Ruling.On(game.Open(new SourceText("positions/p.yaml", position)).Position!, question);
    }
}
