using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>What the course of a game hangs on: ends, ties, the aim, who plays next, teams.</summary>
public sealed class CourseTests
{
    private const string Game = """
        players: 2
        seats: [North, South]
        pieces: {stone: {each player: 9}}
        boards: {field: {squares: 3 across 3 up, spaces: cell}}
        places: {won: {heap of: stone, of: each player}}
        marks: {passes: {holds: 0 to 9, of: each player}, leader: {holds: player}}
        actions:
          pass: {do: add 1 to my passes}

        """;

    [Theory]
    [InlineData("then: finish the round", EndFollow.FinishTheRound, EndWinner.ByTotal, EndMoment.AfterEachTurn, null)]
    [InlineData("then: one more round, winner: everyone", EndFollow.OneMoreRound, EndWinner.Everyone, EndMoment.AfterEachTurn, null)]
    [InlineData("then: every other player once more, checked: after each round", EndFollow.EveryOtherPlayerOnceMore, EndWinner.ByTotal, EndMoment.AfterEachRound, null)]
    [InlineData("then: out, checked: after each action", EndFollow.Out, EndWinner.ByTotal, EndMoment.AfterEachAction, null)]
    [InlineData("winner: opponent, checked: after pass", EndFollow.AtOnce, EndWinner.Opponent, EndMoment.AfterBlock, "pass")]
    [InlineData("winner: me, checked: before set-up", EndFollow.AtOnce, EndWinner.Me, EndMoment.BeforeBlock, "set-up")]
    [InlineData("then: at once, winner: nobody", EndFollow.AtOnce, EndWinner.Nobody, EndMoment.AfterEachTurn, null)]
    public void An_end_says_what_follows_and_who_wins(string keys, EndFollow follows, EndWinner wins, EndMoment moment, string? block)
    {
        EndRule end = Read($"end: {{full: {{if: field is full, {keys}}}}}").Ends[0];

        Assert.Equal((follows, wins, moment, block), (end.Follows, end.Wins, end.Moment, end.Block));
        Assert.Null(end.WinnerTerm);
    }

    [Theory]
    [InlineData("leader", SortKind.Player)]
    [InlineData("\"most(p in players, count(won of p))\"", SortKind.List)]
    [InlineData("\"(players where passes of it is 0)\"", SortKind.List)]
    public void A_formula_says_who_wins(string winner, SortKind sort)
    {
        EndRule end = Read($"end: {{full: {{if: field is full, winner: {winner}}}}}").Ends[0];

        Assert.Equal((EndWinner.Given, sort), (end.Wins, end.WinnerTerm!.Sort.Kind));
    }

    [Fact]
    public void Last_steps_of_an_end_have_its_frame()
    {
        EndRule end = Read("""
            end:
              empty:
                if: any(p in players where no(won of p))
                do:
                  - each player:
                      - for each s in field where s is not empty: move top of s to my won
            """).Ends[0];

        Step each = Assert.Single(end.Steps);
        Assert.Equal(StepKind.EachPlayer, each.Kind);
        Assert.True(end.FrameSize > each.Inner[0].Slot);
    }

    [Theory]
    [InlineData("end: {full: {if: 1 is 1, then: at onec}}", "ROS0201", "at onec")]
    [InlineData("end: {full: {if: 1 is 1, winner: nobdy}}", "ROS0201", "nobdy")]
    [InlineData("end: {full: {if: 1 is 1, winner: 3}}", "ROS0302", "3")]
    [InlineData("end: {full: {if: 1 is 1, checked: after pas}}", "ROS0201", "after pas")]
    [InlineData("end: {full: {if: 1 is 1, checked: now and then}}", "ROS0201", "now and then")]
    [InlineData("end: {full: {if: 1 is 1, do: psas}}", "ROS0214", "psas")]
    [InlineData("end: {full: {}}\nturn: end the game by ful", "ROS0201", "ful")]
    [InlineData("ties: [fewer pases]", "ROS0201", "pases")]
    [InlineData("ties: [fewer leader]", "ROS0302", "leader")]
    [InlineData("ties: [quicker]", "ROS0831", "quicker")]
    [InlineData("aim: lowst total", "ROS0201", "lowst total")]
    [InlineData("aim: at least many", "ROS0201", "at least many")]
    [InlineData("next to play: 3", "ROS0302", "3")]
    [InlineData("teams: {Sun: [North], Moon: [Suoth]}", "ROS0201", "Suoth")]
    [InlineData("teams: {Sun: [North], Moon: [North, South]}", "ROS0848", "North")]
    public void Mistakes_are_told_where_they_stand(string text, string id, string at)
    {
        Diagnostic problem = Loaded.Of(Game + text).Reading.Problems[0];

        Assert.Equal((id, at), (problem.Id, problem.At.Text));
    }

    [Fact]
    public void The_opponent_wins_in_a_game_of_two_only() =>
        Assert.Equal("ROS0208", Loaded.Problem("players: 3\nend: {full: {if: 1 is 1, winner: opponent}}").Id);

    [Fact]
    public void Ties_compare_numbers_and_count_things()
    {
        Sheet sheet = Read("ties: [fewer my won, higher my passes, more stones in field, shared]");

        Assert.Equal([("fewer my won", false), ("higher my passes", true), ("more stones in field", true), ("shared", false)], sheet.TieBreaks.Select(t => (t.Words, t.HigherWins)));
        Assert.Equal([Op.Count, null, Op.Count, null], sheet.TieBreaks.Select(t => (t.Number as Term.Apply)?.Operation.Id));
        Assert.IsType<Term.MarkOf>(sheet.TieBreaks[1].Number);
        Assert.Null(sheet.TieBreaks[3].Number);
        Assert.Equal(1, sheet.TieBreaks[0].FrameSize);
    }

    [Fact]
    public void Ties_that_are_not_modelled_are_named()
    {
        Sheet sheet = Read("ties: [more my won, not modelled]");

        Assert.Single(sheet.TieBreaks);
        Assert.Equal(2, sheet.Ties.Length);
        Assert.Equal(["what tells equal players apart"], sheet.NotModelled);
    }

    [Theory]
    [InlineData("highest total", AimKind.HighestTotal, null)]
    [InlineData("lowest total", AimKind.LowestTotal, null)]
    [InlineData("at least 40", AimKind.AtLeast, 40L)]
    [InlineData("more than forty", null, null)]
    [InlineData("more than twelve", AimKind.MoreThan, 12L)]
    public void The_aim_is_a_total(string words, AimKind? kind, long? target)
    {
        Loaded loaded = Loaded.Of($"aim: {words}");

        Assert.Equal(kind is null, !loaded.Reading.IsSound);
        Assert.Equal(kind is null ? Aim.Highest : new Aim(kind.Value, target), loaded.Sheet.Aim);
    }

    [Fact]
    public void Without_a_word_the_highest_total_wins_and_turns_go_round()
    {
        Sheet sheet = Read("");

        Assert.Equal(Aim.Highest, sheet.Aim);
        Assert.Null(sheet.NextToPlay);
        Assert.Empty(sheet.Teams);
    }

    [Fact]
    public void Next_to_play_is_a_player()
    {
        Sheet sheet = Read("next to play: item(1, least(p in players, count(won of p)))");

        Assert.Equal(SortKind.Player, sheet.NextToPlay!.Sort.Kind);
        Assert.Equal(2, sheet.NextToPlayFrame); // p, and the stones that are counted
        Assert.Empty(sheet.Blocks);
    }

    [Theory]
    [InlineData("teams: {Sun: [South], Moon: [North]}", "Sun", 1)]
    [InlineData("teams: {Sun: [seat 1], Moon: [South]}", "Sun", 0)]
    public void Teams_are_of_seats(string text, string name, int seat)
    {
        Team team = Read(text).Teams[0];

        Assert.Equal((name, seat), (team.Name, team.Seats.Single()));
    }

    private static Sheet Read(string text)
    {
        Loaded loaded = Loaded.Of(Game + text);
        Assert.Empty(loaded.Told);
        return loaded.Sheet;
    }
}
