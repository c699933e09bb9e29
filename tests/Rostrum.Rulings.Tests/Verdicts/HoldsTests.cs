using Rostrum.Rulings.Games;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Verdicts;

/// <summary>What a board says that a space holds binds every action, without a law of its own.</summary>
public sealed class HoldsTests
{
    private const string Sheet = """
        rule sheet: 1
        game: Hooks
        players: 1
        pieces: {lantern: {count: 9}}
        signs: {l: lantern}
        boards: {wall: {squares: 3 across 1 up, holds: 2}}
        actions:
          hang: {phrase: hang (what) on (spot), choose: {what: one of supply, spot: a space in wall}, do: move what to spot}
          dangle: {phrase: hang one on (spot), choose: {spot: a space in wall}, do: move a lantern from supply to spot}
          renew:
            phrase: renew (spot)
            choose: {spot: a space in wall}
            do:
              - if A1 is empty: move a lantern from spot to box
              - move a lantern from supply to spot
        """;

    [Theory]
    [InlineData(". l .", "legal")]
    [InlineData(". 2l .", "illegal")]
    [InlineData(". 3l .", "illegal")]
    [InlineData(". ? .", "unsettled")]
    public void A_full_space_takes_nothing_more(string wall, string verdict) => Assert.Equal(verdict, On(wall).Ruling!.Verdict);

    // Four lanterns: where all of them hang, none is in the supply and the step lays nothing.
    [Theory]
    [InlineData(". 2l .", "illegal")]
    [InlineData("2l 2l .", "legal")]
    [InlineData("? 2l .", "illegal")]
    public void No_more_comes_from_the_supply_than_there_is(string wall, string verdict) =>
        Assert.Equal(verdict, On(wall, "hang one on B1", Sheet.Replace("count: 9", "count: 4", StringComparison.Ordinal)).Ruling!.Verdict);

    // Whether one is put back hangs on what lies on A1, and so whether there is room.
    [Theory]
    [InlineData(". 2l .", "legal")]
    [InlineData("l 2l .", "illegal")]
    [InlineData("? 2l .", "unsettled")]
    public void Steps_that_hang_on_what_is_not_given_leave_it_open(string wall, string verdict) => Assert.Equal(verdict, On(wall, "renew B1").Ruling!.Verdict);

    [Theory]
    [InlineData(". l .", "legal")]
    [InlineData(". 2l .", "illegal")]
    public void A_power_lifts_no_limit(string wall, string verdict) =>
        Assert.Equal(verdict, On(wall, sheet: Sheet + "\nlaws: {bare wall: {binds: hang, needs: spot is empty}}\npowers: {Ladder: {lifts: bare wall, for: hang}}\n").Ruling!.Verdict);

    // Which lanterns come is not known, how many is.
    [Theory]
    [InlineData(". l .", "[lantern]", "legal")]
    [InlineData(". l .", "[2 lantern]", "illegal")]
    [InlineData(". 2l .", "[]", "legal")]
    [InlineData(". 2l .", "?", "unsettled")]
    public void What_is_dealt_is_counted(string wall, string crate, string verdict) =>
        Assert.Equal(verdict, On(wall, "unpack on B1", Sheet + "\n  unpack: {phrase: unpack on (spot), choose: {spot: a space in wall}, do: deal 2 from crate to spot}\nplaces: {crate: {bag of: lantern}}\n", crate == "?" ? "" : $"crate: {crate}\n").Ruling!.Verdict);

    [Fact]
    public void The_refusal_names_board_and_space()
    {
        Breach breach = Assert.Single(Assert.IsType<Ruling.Illegal>(On(". 2l .").Ruling).Breaches);

        Assert.Equal(("wall", "A space of 'wall' holds 2 things at the most.", "afterwards 3 things lie on B1"), (breach.Clause, breach.Says, breach.Because));
    }

    private static RulingAnswer On(string wall, string question = "hang lantern on B1", string sheet = Sheet, string more = "")
    {
        string position = $"wall: |\n  1 {wall}\n  / A B C\n{more}";
        var game = new Game(GameFolder.InMemory("hooks", (SheetReader.FileName, sheet), ("positions/p.yaml", position)), ShippedGames.Idioms);
        return Ruling.On(game.Open(new SourceText("positions/p.yaml", position)).Position!, question);
    }
}
