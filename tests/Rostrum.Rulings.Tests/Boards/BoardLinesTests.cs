using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Boards;

public sealed class BoardLinesTests
{
    private static readonly TestBoard Round = TestBoard.Grid(5, 4);

    [Theory]
    [InlineData("A1", "B1", "C1")]
    [InlineData("A1", "B2", "C3")]
    [InlineData("A1", "C2", "E3")]
    [InlineData("A1", "D1", "nothing")]
    [InlineData("B2", "B2", "nothing")]
    public void Across_is_as_far_on_the_other_side(string s, string t, string expected) =>
        Assert.Equal(expected, Round.Name(Round.Geometry.Across(Round[s], Round[t])));

    [Fact]
    public void Across_goes_round_where_the_board_wraps()
    {
        TestBoard board = TestBoard.Grid(4, 3, wraps: true);

        Assert.Equal("D1", board.Name(board.Geometry.Across(board["B1"], board["A1"])));
    }

    [Theory]
    [InlineData("A1", "D1", "B1 C1")]
    [InlineData("D4", "D1", "D3 D2")]
    [InlineData("A1", "D4", "B2 C3")]
    [InlineData("A1", "B3", "")]
    [InlineData("A1", "B1", "")]
    public void Between_are_the_spaces_of_one_straight_line(string s, string t, string expected) =>
        Assert.Equal(expected, Round.Names(Round.Geometry.Between(Round[s], Round[t])));

    [Fact]
    public void Between_takes_the_shorter_way_round()
    {
        TestBoard board = TestBoard.Grid(6, 1, wraps: true);

        Assert.Equal("A1", board.Names(board.Geometry.Between(board["F1"], board["B1"])));
        Assert.Equal("B1 C1", board.Names(board.Geometry.Between(board["A1"], board["D1"])));
    }

    // Common knowledge of noughts and crosses: 8 lines of three on 3 by 3. Four in a row: 69 lines of four on 7 by 6 (24 + 21 + 24, by hand).
    [Theory]
    [InlineData(3, 3, Touching.SidesAndCorners, 3, 8)]
    [InlineData(3, 3, Touching.Sides, 3, 6)]
    [InlineData(7, 6, Touching.SidesAndCorners, 4, 69)]
    [InlineData(5, 4, Touching.Sides, 6, 0)]
    [InlineData(5, 4, Touching.SidesAndCorners, 1, 20)]
    public void Straight_lines_are_counted_once(int across, int up, Touching touching, int length, int expected) =>
        Assert.Equal(expected, TestBoard.Grid(across, up, touching).Geometry.Straights(length).Length);

    [Fact]
    public void Straight_lines_run_from_the_left_and_from_below()
    {
        TestBoard board = TestBoard.Grid(2, 2, Touching.SidesAndCorners);

        Assert.Equal(["A2 B2", "A1 B1", "A1 A2", "B1 B2", "A1 B2", "A2 B1"], board.Geometry.Straights(2).Select(l => board.Names(l)));
    }

    [Fact]
    public void A_missing_space_breaks_a_straight_line()
    {
        TestBoard board = TestBoard.Grid(5, 1, missing: "C1");

        Assert.Equal(["A1 B1", "D1 E1"], board.Geometry.Straights(2).Select(l => board.Names(l)));
    }

    [Fact]
    public void A_straight_line_goes_round_but_meets_no_space_twice()
    {
        TestBoard board = TestBoard.Grid(4, 1, wraps: true);

        Assert.Equal(4, board.Geometry.Straights(3).Length);
        Assert.Single(board.Geometry.Straights(4));
        Assert.Empty(board.Geometry.Straights(5));
    }
}
