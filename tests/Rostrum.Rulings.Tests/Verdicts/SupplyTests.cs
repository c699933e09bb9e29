using Rostrum.Rulings.Games;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Verdicts;

/// <summary>A supply is what no other place holds: known where all else is given, and nothing is taken from an empty one.</summary>
public sealed class SupplyTests
{
    private const string Sheet = """
        rule sheet: 1
        game: Moss
        players: 2
        pieces:
          moss: {each player: 2, plural: mosses}
          lantern: {count: 3, attributes: {tint: [red, gold]}}
          pebble: {attributes: {hue: [grey, white], size: [small]}, count of each size: {grey: 1, white: 2}}
        signs: {m: moss, l: lantern, r: red, p: pebble, g: grey, w: white}
        boards: {wall: {squares: 3 across 2 up}}
        places: {pouch: {heap of: pebble}}
        actions:
          grow: {phrase: grow on (spot), choose: {spot: a space in wall}, do: move a moss from my supply to spot}
          hang: {phrase: hang (what) on (spot), choose: {what: one of supply, spot: a space in wall}, do: move what to spot}
          lay: {phrase: lay (what) on (spot), choose: {what: a moss in my supply, spot: a space in wall}, do: move what to spot}
        laws:
          left: {binds: grow, needs: any(mosses in my supply)}
        """;

    [Theory]
    [InlineData("m1 m2 .", "grow on C1", "legal")]
    [InlineData("m1 m1 .", "grow on C1", "illegal")]
    [InlineData("m1 ? .", "grow on C1", "unsettled")]
    [InlineData("m1 m2 .", "lay moss on C1", "legal")]
    [InlineData("m1 m1 .", "lay moss on C1", "illegal")]
    [InlineData("lr lr .", "hang gold lantern on C1", "legal")]
    [InlineData("lr lr lr", "hang gold lantern on C2", "illegal")]
    [InlineData("m1 m1 m2", "count(mosses in my supply) is 0", "yes")]
    [InlineData("m1 m1 m2", "count(mosses in their supply) is 1", "yes")]
    [InlineData("pg pw .", "count(pebbles in supply) is 1", "yes")]
    [InlineData("pg pw .", "count(grey pebbles in supply) is 0", "yes")]
    [InlineData("pg pw .", "any(white pebbles in supply)", "yes")]
    public void What_no_other_place_holds_lies_in_the_supply(string row, string asked, string verdict) =>
        Assert.Equal(verdict, On($"turn of: seat 1\npouch: []\nwall: |\n  2 . . .\n  1 {row}\n  / A B C\n", asked).Ruling!.Verdict);

    [Fact]
    public void Where_a_heap_is_not_given_nobody_knows_the_supply() =>
        Assert.Equal("unsettled", On("turn of: seat 1\nwall: |\n  2 . . .\n  1 pg pw .\n  / A B C\n", "count(pebbles in supply) is 1").Ruling!.Verdict);

    [Fact]
    public void The_refusal_says_that_none_is_left()
    {
        RulingAnswer answer = On("turn of: seat 1\npouch: []\nwall: |\n  2 . . .\n  1 m1 m1 .\n  / A B C\n", "lay moss on C1");

        Assert.Equal("no moss is left in the supply", Assert.Single(Assert.IsType<Ruling.Illegal>(answer.Ruling).Breaches).Because);
    }

    private static RulingAnswer On(string position, string asked)
    {
        var game = new Game(GameFolder.InMemory("moss", (SheetReader.FileName, Sheet), ("positions/p.yaml", position)), ShippedGames.Idioms);
        return Ruling.On(game.Open(new SourceText("positions/p.yaml", position)).Position!, asked);
    }
}
