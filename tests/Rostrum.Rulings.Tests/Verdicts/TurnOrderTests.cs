using Rostrum.Rulings.Games;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Verdicts;

/// <summary>What somebody can do is found by going through the choices; what a turn puts first bars what stands lower.</summary>
public sealed class TurnOrderTests
{
    private const string Head = """
        rule sheet: 1
        game: Two Rams
        players: 2
        seats: [Amber, Blue]
        sources: {book: {title: Rulebook, pages: 2}}
        pieces: {ram: {each player: 2}}
        signs: {r: ram}
        boards: {ledge: {squares: 3 across 1 up, holds: 1}}

        """;

    private const string Actions = """
        actions:
          step: {phrase: step from (start) to (goal), choose: {start: a space in ledge, goal: one of neighbours of start}, do: move the ram in start to goal}
          throw: {cite: book 2, phrase: throw from (start) at (middle), choose: {start: a space in ledge, middle: one of neighbours of start}, do: move the ram in middle to box}
          rest: {phrase: rest, do: nothing}
        laws:
          own: {binds: [step, throw], needs: start shows my ram}
          free: {binds: step, needs: goal is empty}
          at the edge: {binds: throw, needs: middle shows their ram and across(start, middle) is nothing}

        """;

    private const string Turn = "turn:\n  first possible of:\n    - throw\n    - one of: [step, rest]\n";

    [Theory]
    [InlineData("r1 r2 .", "step from A1 to B1", "illegal")]
    [InlineData(". r1 r2", "step from B1 to A1", "illegal")]
    [InlineData("r1 . r2", "step from A1 to B1", "legal")]
    [InlineData(". r1 r2", "rest", "illegal")]
    [InlineData("r1 r2 .", "rest", "legal")]
    [InlineData(". r1 r2", "throw from B1 at C1", "legal")]
    [InlineData("r1 . ?", "rest", "legal")]
    public void What_stands_lower_is_barred_where_what_comes_first_can_be_done(string ledge, string action, string verdict) => Assert.Equal(verdict, On(Turn, ledge, action).Ruling!.Verdict);

    [Fact]
    public void The_refusal_names_what_comes_first_and_a_way_to_do_it()
    {
        Breach breach = Assert.Single(Assert.IsType<Ruling.Illegal>(On(Turn, ". r1 r2", "rest").Ruling).Breaches);

        Assert.Equal(("turn", "Throw comes first where it can be done.", "'throw from B1 at C1' can be done", "book"), (breach.Clause, breach.Says, breach.Because, breach.Cite!.Source.Name));
    }

    [Theory]
    [InlineData("turn:\n  one of: [throw, step, rest]\n")]
    [InlineData("turn:\n  - first possible of: [throw, step]\n  - may: rest\n")]
    [InlineData("turn:\n  first possible of:\n    - throw\n    - repeat 2 times:\n        - step\n        - rest\n")]
    public void What_is_offered_at_another_moment_as_well_is_free(string turn) => Assert.Equal("legal", On(turn, ". r1 r2", "rest").Ruling!.Verdict);

    [Theory]
    [InlineData("me can throw", ". r1 r2", "yes")]
    [InlineData("me can throw", "r1 . r2", "no")]
    [InlineData("opponent can throw", "r1 r2 .", "yes")]
    [InlineData("me can throw from B1", ". r1 r2", "yes")]
    [InlineData("me can throw from A1", ". r1 r2", "no")]
    [InlineData("me can throw", "? r1 .", "unsettled")]
    public void What_can_be_done_is_asked_of_a_position(string truth, string ledge, string verdict) => Assert.Equal(verdict, On(Turn, ledge, truth).Ruling!.Verdict);

    [Fact]
    public void A_law_may_ask_what_can_be_done()
    {
        const string must = "  must throw: {binds: step, forbids: me can throw}\n";

        Assert.Equal("illegal", On("turn: step\n", ". r1 r2", "step from B1 to A1", must).Ruling!.Verdict);
        Assert.Equal("legal", On("turn: step\n", "r1 . r2", "step from A1 to B1", must).Ruling!.Verdict);
    }

    [Fact]
    public void Laws_that_ask_each_other_are_not_settled()
    {
        const string circle = "  one: {binds: rest, needs: me can step}\n  other: {binds: step, needs: me can rest}\n";

        Assert.Equal("unsettled", On("turn: rest\n", ". r1 r2", "rest", circle).Ruling!.Verdict);
    }

    [Theory]
    [InlineData("r1 r1 .", "unsettled")]
    public void Rams_in_the_box_are_in_no_supply(string ledge, string verdict) => Assert.Equal(verdict, On(Turn, ledge, "count(rams in my supply) is 0").Ruling!.Verdict);

    private static RulingAnswer On(string turn, string ledge, string asked, string laws = "")
    {
        string position = $"turn of: Amber\nledge: |\n  1 {ledge}\n  / A B C\n";
        var game = new Game(GameFolder.InMemory("rams", (SheetReader.FileName, Head + turn + Actions + laws), ("positions/p.yaml", position)), ShippedGames.Idioms);
        return Ruling.On(game.Open(new SourceText("positions/p.yaml", position)).Position!, asked);
    }
}
