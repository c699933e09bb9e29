using Rostrum.Play.Counting;
using Rostrum.Play.Layout;
using Rostrum.Play.Solving;
using Rostrum.Play.Tests.Reference;

namespace Rostrum.Play.Tests.Outside;

/// <summary>Games of so many in a row: counts and best play against published and recomputed values.</summary>
/// <remarks>Sources: see <c>Reference/README.md</c>, tictactoe.csv, tictactoe_nxn_games.csv, four_in_a_row_7x6_positions.csv, mnk_outcomes.csv.</remarks>
public sealed class LinesInARowTests
{
    private const string TicTacToe = "tictactoe.csv";

    [Theory]
    [InlineData("move_sequences")]
    [InlineData("games_ending_x_win")]
    [InlineData("games_ending_o_win")]
    [InlineData("games_ending_draw")]
    [InlineData("positions")]
    [InlineData("terminal_x")]
    [InlineData("terminal_o")]
    [InlineData("terminal_draw")]
    public void Tic_tac_toe_ply_by_ply(string column)
    {
        PlyCount[] counts = [.. TableOf.Shipped("traditional/tic-tac-toe").Count(9)];

        long[] counted = [.. counts.Select(c => Cell(c, column))];

        Assert.Equal(ReferenceTable.Column(TicTacToe, column).Select(ReferenceTable.Number), counted.Append(counted.Sum()));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Whole_games_on_small_square_grids(int n)
    {
        string[] row = ReferenceTable.Rows("tictactoe_nxn_games.csv").Single(r => r[0] == $"{n}");

        PlyCount[] counts = [.. RowGame.Of(n, n, n).Count(n * n)];

        long[] ended = [Ended(counts, 0), Ended(counts, 1), Ended(counts, null)];
        Assert.Equal(row[1..5].Select(ReferenceTable.Number), ended.Prepend(ended.Sum()));
    }

    [Fact]
    public void Four_in_a_row_has_the_published_positions_up_to_ply_6() => FourInARow(6);

    [Fact]
    [Trait("Category", "Slow")]
    public void Four_in_a_row_has_the_published_positions_up_to_ply_9() => FourInARow(9);

    [Fact]
    public void Every_small_game_of_k_in_a_row_that_was_recomputed_is_solved_here() =>
        Assert.Equal(
            ["3 3 3", "3 4 3", "3 5 3", "4 4 3", "3 6 4", "4 4 4", "4 5 4"],
            ReferenceTable.Rows("mnk_outcomes.csv").Where(r => r[4] == "recomputed").Select(r => string.Join(' ', r[..3])));

    [Theory]
    [InlineData(3, 3, 3)]
    [InlineData(3, 4, 3)]
    [InlineData(3, 5, 3)]
    [InlineData(4, 4, 3)]
    public void Best_play_of_small_games_of_k_in_a_row(int m, int n, int k) => Solved(m, n, k);

    [Theory]
    [Trait("Category", "Slow")]
    [InlineData(4, 4, 4)]
    [InlineData(3, 6, 4)]
    [InlineData(4, 5, 4)]
    public void Best_play_of_larger_games_of_k_in_a_row(int m, int n, int k) => Solved(m, n, k);

    [Fact]
    public void Best_play_is_the_same_without_leaving_positions_out()
    {
        var plan = TableOf.Shipped("traditional/tic-tac-toe").Plan;

        SolvedGame solved = GameValue.Difference(plan);

        // Nothing is scored, so the difference is 0 always; but every position with a decision is looked at: all but the final ones.
        Assert.Equal((0, 5478L - 626 - 316 - 16), (solved.Value, solved.Positions));
        Assert.Equal(0, GameValue.Outcome(plan).Value);
    }

    [Fact]
    public void A_game_with_chance_has_no_such_value() =>
        Assert.Contains("chance", Assert.Throws<NotPlayableException>(() => GameValue.Outcome(TableOf.Shipped("traditional/pig").Plan)).Message, StringComparison.Ordinal);

    private static void FourInARow(int plies)
    {
        PlyCount[] counts = [.. TableOf.Shipped("traditional/four-in-a-row").Count(plies)];

        Assert.Equal(ReferenceTable.Column("four_in_a_row_7x6_positions.csv", "positions_A212693").Take(plies + 1).Select(ReferenceTable.Number), counts.Select(c => c.Distinct!.Value));
    }

    private static void Solved(int m, int n, int k)
    {
        string[] row = ReferenceTable.Rows("mnk_outcomes.csv").Single(r => r[0] == $"{m}" && r[1] == $"{n}" && r[2] == $"{k}");

        SolvedGame solved = RowGame.Of(m, n, k).BestOutcome();

        TestContext.Current.TestOutputHelper?.WriteLine($"{solved.Positions} positions");
        Assert.Equal(row[3], solved.Value switch { 1 => "first player wins", 0 => "draw", _ => "second player wins" });
    }

    private static long Cell(PlyCount count, string column) => column switch
    {
        "move_sequences" => (long)count.Lines,
        "games_ending_x_win" => Ended([count], 0),
        "games_ending_o_win" => Ended([count], 1),
        "games_ending_draw" => Ended([count], null),
        "positions" => count.Distinct!.Value,
        "terminal_x" => Final(count, 0),
        "terminal_o" => Final(count, 1),
        _ => Final(count, null),
    };

    private static long Ended(PlyCount[] counts, int? winner) => counts.SelectMany(c => c.Results).Where(r => Is(r, winner)).Sum(r => (long)r.Lines);

    private static long Final(PlyCount count, int? winner) => count.Results.Where(r => Is(r, winner)).Sum(r => r.Positions!.Value);

    private static bool Is(EndedCount result, int? winner) => winner is { } seat ? result.Winners.SequenceEqual([seat]) : result.Winners.IsEmpty;
}
