using Rostrum.Rulings.Games;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Verdicts;

/// <summary>A thing that is told by a number is named in a question by its number, with its kind before or behind it, or without.</summary>
public sealed class NumberedThingTests
{
    private const string Sheet = """
        rule sheet: 1
        game: Pans
        players: 1
        dice: {salt die: {plural: salt dice, count: 3, faces: 1 to 6}}
        pieces: {card: {attributes: {number: [1, 2, 3]}, count of each number: 1}}
        places:
          tray: {heap of: salt die}
          pans: {heap of: salt die}
          hand: {hand of: card, of: each player}
          shown: {heap of: card}
        actions:
          keep: {phrase: keep (kept), choose: {kept: a salt die in tray}, do: move kept to pans}
          reveal: {phrase: reveal (what), choose: {what: a card in my hand}, do: move what to shown}
        laws:
          a new number: {binds: keep, forbids: any(d in pans where face of d is face of kept)}
          not the lowest: {binds: reveal, forbids: number of what is 1}
        """;

    [Theory]
    [InlineData("keep 5", "legal")]
    [InlineData("keep 5 salt die", "legal")]
    [InlineData("keep salt die 5", "legal")]
    [InlineData("keep 3", "illegal")]
    [InlineData("reveal 2", "legal")]
    [InlineData("reveal card 1", "illegal")]
    public void It_is_named_by_its_number(string question, string verdict) => Assert.Equal(verdict, Ask(question).Ruling!.Verdict);

    [Fact]
    public void A_number_that_none_of_them_has_names_nothing() => Assert.True(Ask("keep 7").Ruling is null);

    private static RulingAnswer Ask(string question)
    {
        const string Position = "tray: [salt die 3, salt die 5]\npans: [salt die 3]\nseat 1:\n  hand: [card 1, card 2]\n";
        var game = new Game(GameFolder.InMemory("pans", (SheetReader.FileName, Sheet), ("positions/p.yaml", Position)), ShippedGames.Idioms);
        return Ruling.On(game.Open(new SourceText("positions/p.yaml", Position)).Position!, question);
    }
}
