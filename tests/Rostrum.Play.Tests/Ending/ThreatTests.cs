using Rostrum.Play.Ending;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.Ending;

/// <summary>Who can end the game with the next turn, on positions that can be looked through by eye.</summary>
public sealed class ThreatTests
{
    [Fact]
    public void Three_in_a_row_is_one_stone_away_for_one_player_only()
    {
        Threats threats = Of("traditional/tic-tac-toe", "grid: |\n  3 s1 s1 .\n  2 .  s2 .\n  1 .  .  s2\n  / A  B  C\nturn of: Cross");

        Assert.Null(threats.Over);
        AssertThreat(threats.Seats[0], CanEnd.Yes, ["put at C3"], "three in a row", [0, 0]);
        AssertThreat(threats.Seats[1], CanEnd.No, [], null, []);
    }

    [Fact]
    public void A_game_that_is_over_gives_nobody_a_turn()
    {
        Threats threats = Of("traditional/tic-tac-toe", "grid: |\n  3 s1 s1 s1\n  2 .  s2 .\n  1 .  .  s2\n  / A  B  C\nturn of: Nought");

        Assert.Equal("three in a row", threats.Over);
        Assert.Empty(threats.Seats);
    }

    [Fact]
    public void A_disc_that_falls_to_the_fourth_space_ends_the_game()
    {
        Threats threats = Of("traditional/four-in-a-row", "grid: |\n  6 .  .  .  .  .  .  .\n  5 .  .  .  .  .  .  .\n  4 .  .  .  .  .  .  .\n  3 .  .  .  d2 .  .  .\n  2 .  .  .  d2 .  .  .\n  1 d1 d1 d1 d2 .  .  .\n  / A  B  C  D  E  F  G\nturn of: Yellow");

        AssertThreat(threats.Seats[0], CanEnd.No, [], null, []);
        AssertThreat(threats.Seats[1], CanEnd.Yes, ["drop into column D"], "four in a row", [0, 0]);
    }

    [Fact]
    public void After_the_ninth_plank_the_other_has_one_more_turn()
    {
        Threats threats = Of("plank-road", "marsh: |\n  a     k1 k1 k1\n  b   k1 k1 k1 k1\n  c k1 .  # . .\n  d   . . . .\n  e     . . .\nturn of: Heron");

        AssertThreat(threats.Seats[0], CanEnd.Yes, ["lay a plank on c2"], "ninth plank", [0, 1]);
        AssertThreat(threats.Seats[1], CanEnd.No, [], null, []);
        Assert.Equal(["Peat laid last is no.", "Passes running is 0."], threats.Assumed);
    }

    [Fact]
    public void A_third_storm_comes_by_chance()
    {
        SeatThreat threat = Shipped("saltern-steps", "storm-near").Seats[0];

        Assert.Equal((CanEnd.ByChance, "storms over all"), (threat.CanEnd, threat.End));
        Assert.Contains("storm", threat.Line);
        Assert.StartsWith("rolled ", threat.Line[0]);
    }

    [Fact]
    public void An_end_of_Kiln_Night_is_found_among_many_turns()
    {
        SeatThreat threat = Shipped("kiln-night", "eight-sentences").Seats[0];

        Assert.Equal((CanEnd.ByChance, "three bays full"), (threat.CanEnd, threat.End));
        Assert.StartsWith("carry drying board", threat.Line[0]);
        Assert.Equal([0], threat.TurnsLeft);
    }

    // Whoever takes the highest stone of two or more has another turn; the last stone ends the game. Both kinds of steps that lead to another turn are asked.
    [Theory]
    [InlineData("after pick: {do: [if any(stones in path): again]}", "next to play: opponent")]
    [InlineData("", "next to play: me if any(stones in path) otherwise opponent")]
    public void An_extra_turn_comes_before_anybody_else_moves(string again, string next)
    {
        Threats threats = Taking(again, next, "1 . s s s");

        Assert.All(threats.Seats, t => AssertThreat(t, CanEnd.Yes, ["pick B1", "pick C1", "pick D1"], "bare", [0, 0]));
        Assert.All(threats.Seats, t => Assert.Equal(2, t.ExtraTurns));
    }

    [Fact]
    public void The_fewest_turns_are_told()
    {
        SeatThreat threat = Taking("after pick: {do: [if any(stones in path): again]}", "next to play: opponent", "1 . . . s").Seats[0];

        AssertThreat(threat, CanEnd.Yes, ["pick D1"], "bare", [0, 0]);
        Assert.Equal(0, threat.ExtraTurns);
    }

    [Fact]
    public void Extra_turns_that_end_nothing_are_looked_at_too()
    {
        SeatThreat threat = Taking("after pick: {do: [if what is A1: again]}", "next to play: opponent", "1 s s s .").Seats[0];

        AssertThreat(threat, CanEnd.No, [], null, []);
        Assert.Equal(1, threat.ExtraTurns);
    }

    [Fact]
    public void A_turn_of_somebody_else_is_no_extra_turn() => Assert.Equal(CanEnd.No, Taking("", "next to play: opponent", "1 s s . .").Seats[0].CanEnd);

    [Fact]
    public void Extra_turns_without_end_are_given_up() =>
        Assert.Equal(CanEnd.Unknown, Taking("after pick: {do: [move a stone from box to what, again]}", "next to play: opponent", "1 s s s s").Seats[0].CanEnd);

    [Fact]
    public void A_search_that_is_given_up_says_so() => Assert.Equal(CanEnd.Unknown, Shipped("kiln-night", "full").Seats[0].CanEnd);

    [Fact]
    public void A_board_that_is_not_given_is_told() =>
        Assert.Contains("nobody says what lies on A4", Assert.Throws<NotPlayableException>(() => Shipped("kiln-night", "blanks")).Message);

    [Fact]
    public void A_course_without_one_place_where_turns_begin_is_told()
    {
        Game game = ShippedGames.Open("traditional/tricks");

        NotPlayableException why = Assert.Throws<NotPlayableException>(() => Asked(game, game.PositionText(game.PositionNames[0]).Text!));

        Assert.StartsWith("The course of this game has no one place where turns begin", why.Message);
        Assert.NotNull(why.At);
    }

    private static Threats Taking(string hook, string next, string row)
    {
        string sheet = $$$"""
            rule sheet: 1
            game: Taking
            players: 2
            pieces: {stone: {count: 4}}
            signs: {s: stone}
            boards:
              path: {squares: 4 across 1 up, holds: 1}
            marks: {taken: {holds: 0 to 100000, starts: 0}}
            turn: pick
            {{{hook}}}
            {{{next}}}
            actions:
              pick:
                phrase: pick (what)
                choose: {what: a space in path where it is not empty}
                do: [move all stones from what to box, add 1 to taken]
            end:
              bare: {if: path is empty}
            """;
        return Asked(new Game(GameFolder.InMemory("taking", ("sheet.yaml", sheet)), ShippedGames.Idioms), new SourceText("here.yaml", $"path: |\n  {row}\n  / A B C D\n"));
    }

    private static Threats Shipped(string name, string position)
    {
        Game game = ShippedGames.Open(name);
        return Asked(game, game.PositionText(position).Text!);
    }

    private static Threats Of(string name, string position) => Asked(ShippedGames.Open(name), new SourceText("here.yaml", position + "\n"));

    private static Threats Asked(Game game, SourceText text)
    {
        Position position = game.Open(text).Position!;
        return GameTable.Of(position.Sheet, position.Seats).Threats(position);
    }

    private static void AssertThreat(SeatThreat threat, CanEnd can, string[] line, string? end, int[] turnsLeft)
    {
        Assert.Equal((can, end), (threat.CanEnd, threat.End));
        Assert.Equal(line, threat.Line);
        Assert.Equal(turnsLeft, threat.TurnsLeft);
    }
}
