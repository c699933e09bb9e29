using Rostrum.Play.Counting;
using Rostrum.Play.Tests.Reference;

namespace Rostrum.Play.Tests.Outside;

/// <summary>Reversi: sequences of moves under three ways to count a pass, and positions.</summary>
/// <remarks>
/// Source: <c>Reference/reversi_perft.csv</c>. The columns part where a player cannot lay for the first time (after ply 8) and where games end early (after ply 9):
/// a forced pass is a ply (the sheet), or is none (its variant), or is one even after the end (a variant of this test, in which no end comes).
/// </remarks>
public sealed class ReversiTests
{
    private const string Name = "traditional/reversi";
    private const string PassIsPly = "A124004_forced_pass_counts_as_ply_finished_games_dropped";
    private const string PassIsNone = "pass_is_not_a_ply";
    private const string PassAlways = "pass_always_counts_as_ply_even_after_end";

    [Fact]
    public void Sequences_of_moves_and_positions_up_to_ply_6() => Both(6);

    [Fact]
    [Trait("Category", "Slow")]
    public void Sequences_of_moves_and_positions_up_to_ply_8() => Both(8);

    [Fact]
    [Trait("Category", "Slow")]
    public void Sequences_of_moves_up_to_ply_9_after_which_as_many_games_have_ended_as_the_columns_differ_by()
    {
        PlyCount[] counts = [.. TableOf.Shipped(Name).Count(9, distinct: false)];

        long[] tenth = [.. new[] { PassAlways, PassIsPly }.Select(c => Published(c, 10).Last())];
        Assert.Equal(Published(PassIsPly, 9), counts.Select(c => (long)c.Lines));
        Assert.Equal(tenth[0] - tenth[1], (long)counts[9].Ended);
    }

    [Theory]
    [Trait("Category", "Slow")]
    [InlineData(9)]
    [InlineData(10)]
    public void Sequences_of_moves_where_passing_is_no_turn(int plies) => Same(PassIsNone, TableOf.Shipped(Name, null, "passing is no turn"), plies);

    // Ten minutes to half an hour of processor time each.
    [Fact]
    [Trait("Category", "Slow")]
    public void Sequences_of_moves_up_to_ply_10() => Same(PassIsPly, TableOf.Shipped(Name), 10);

    [Fact]
    [Trait("Category", "Slow")]
    public void Sequences_of_moves_up_to_ply_10_where_passing_goes_on_after_the_end() => Same(PassAlways, Endless(), 10);

    [Fact]
    public void The_ways_to_count_a_pass_agree_while_nobody_passes()
    {
        Same(PassIsNone, TableOf.Shipped(Name, null, "passing is no turn"), 4);
        Same(PassAlways, Endless(), 4);
    }

    private static void Both(int plies)
    {
        PlyCount[] counts = [.. TableOf.Shipped(Name).Count(plies)];

        Assert.Equal(Published(PassIsPly, plies), counts.Select(c => (long)c.Lines));
        Assert.Equal(Published("positions_A124005", plies), counts.Select(c => c.Distinct!.Value));
    }

    // Lines that have ended are no sequences of the next ply; those that end at a ply are counted at it.
    private static void Same(string column, GameTable table, int plies) =>
        Assert.Equal(Published(column, plies), table.Count(plies, distinct: false).Select(c => (long)c.Lines));

    private static IEnumerable<long> Published(string column, int plies) => ReferenceTable.Column("reversi_perft.csv", column).Take(plies + 1).Select(ReferenceTable.Number);

    private static GameTable Endless() => TableOf.Changed(Name, null, ("if: no(p in players where p can lay)", "if: count(players) is 0"));
}
