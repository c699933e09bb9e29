using Rostrum.Play.Layout;
using Rostrum.Play.Solving;
using Rostrum.Play.Tests.Outside;

namespace Rostrum.Play.Tests.Solving;

/// <summary>What cannot be solved is said, and nothing is guessed.</summary>
public sealed class RefusalTests
{
    // A counter goes to and fro; who stays wins.
    private const string EndlessSheet = """
        rule sheet: 1
        game: Endless
        players: 2
        pieces:
          counter: {count: 1}
        places:
          near: {heap of: counter}
          far: {heap of: counter}
        marks:
          stays: {holds: 0 to 1, starts: 0}
        set-up: move a counter from supply to near
        turn:
          - one of: [go, stay]
        actions:
          go:
            phrase: go
            do:
              - if any(counters in near): move all counters from near to far
              - otherwise: move all counters from far to near
          stay: {phrase: stay, do: set stays to 1}
        end:
          stayed: {if: stays is 1, then: at once, winner: me}
        """;

    [Fact]
    public void A_position_that_comes_again_has_no_value_by_minimax() =>
        Assert.Contains("comes again", Refused(() => TableOf.Written(EndlessSheet).BestDifference()), StringComparison.Ordinal);

    [Fact]
    public void Value_iteration_takes_games_in_which_positions_come_again() => Assert.Equal(1, TableOf.Written(EndlessSheet).BestChances().Value, 10);

    [Fact]
    public void Chance_has_no_minimax() => Assert.Contains("chance", Refused(() => TableOf.Shipped("traditional/pig").BestOutcome()), StringComparison.Ordinal);

    [Fact]
    public void Two_must_play()
    {
        Assert.Contains("two players", Refused(() => TableOf.Shipped("traditional/peg-solitaire").BestDifference()), StringComparison.Ordinal);
        Assert.Contains("two players", Refused(() => TableOf.Shipped("saltern-steps").BestChances()), StringComparison.Ordinal);
    }

    [Fact]
    public void Several_players_have_no_best_play_of_one() =>
        Assert.Contains("More than one player", Refused(() => BestPlay.Of(RowGame.Of(2, 2, 2).Plan, Beginning.FirstTurn(RowGame.Of(2, 2, 2).Plan), GraphReach.Game, Measures.Total(0))), StringComparison.Ordinal);

    [Fact]
    public void Secrets_are_not_solved()
    {
        GameTable table = TableOf.Shipped("third-bell-market");

        Assert.Contains("secret", Refused(() => PositionGraph.Of(table.Plan, Beginning.FirstTurn(table.Plan), GraphReach.Turn, Measures.Total(0))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_set_up_by_chance_has_no_one_first_turn() =>
        Assert.Contains("set-up", Refused(() => Beginning.FirstTurn(TableOf.Shipped("signal-terrace").Plan)), StringComparison.Ordinal);

    [Fact]
    public void What_the_sheet_does_not_name_is_not_measured()
    {
        var plan = TableOf.Shipped("traditional/pig").Plan;

        Assert.Throws<ArgumentException>(() => Measures.Mark(plan, "purse", 0));
        Assert.Throws<ArgumentException>(() => Measures.Points(plan, "purse", 0));
    }

    private static string Refused(Func<object> solve) => Assert.Throws<NotPlayableException>(solve).Message;
}
