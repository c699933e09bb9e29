using Rostrum.Rulings.Boards;
using Rostrum.Rulings.Tests.Reference;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Boards;

public sealed class BoardGeometryTests
{
    // The Climbing Chamber of Kiln Night: five bays of 2, 3, 4, 5 and 6 shelves.
    private static readonly TestBoard Climbing = TestBoard.Grid(5, 6, missing: "A3 A4 A5 A6 B4 B5 B6 C5 C6 D6");

    private static readonly TestBoard Round = TestBoard.Grid(5, 4);

    [Theory]
    [InlineData("B2", "B3 A2 C2 B1")]
    [InlineData("A1", "A2 B1")]
    [InlineData("E4", "D4 E3")]
    public void Neighbours_by_sides_are_above_left_right_and_below(string space, string expected) =>
        Assert.Equal(expected, Round.Names(Round.Geometry.Neighbours(Round[space])));

    [Theory]
    [InlineData(Touching.Sides, "B3 A2 C2 B1")]
    [InlineData(Touching.Corners, "A3 C3 A1 C1")]
    [InlineData(Touching.SidesAndCorners, "A3 B3 C3 A2 C2 A1 B1 C1")]
    public void Neighbours_follow_the_board(Touching touching, string expected)
    {
        TestBoard board = TestBoard.Grid(3, 3, touching);

        Assert.Equal(expected, board.Names(board.Geometry.Neighbours(board["B2"])));
        Assert.Equal("B3 A2 C2 B1", board.Names(board.Geometry.Sides(board["B2"])));
        Assert.Equal("A3 C3 A1 C1", board.Names(board.Geometry.Corners(board["B2"])));
    }

    [Theory]
    [InlineData("A1", "above", "A2")]
    [InlineData("A1", "below", "nothing")]
    [InlineData("A1", "left", "nothing")]
    [InlineData("A2", "above", "nothing")]
    [InlineData("A2", "northeast", "B3")]
    [InlineData("B3", "northeast", "C4")]
    public void A_step_ends_at_the_edge_and_at_missing_spaces(string from, string direction, string expected) =>
        Assert.Equal(expected, Climbing.Name(Climbing.Geometry.Step(Climbing[from], TestBoard.Going(direction))));

    [Fact]
    public void A_step_goes_round_where_the_board_wraps()
    {
        TestBoard board = TestBoard.Grid(4, 3, Touching.SidesAndCorners, wraps: true);

        Assert.Equal("D1", board.Name(board.Geometry.Step(board["A1"], TestBoard.Going("left"))));
        Assert.Equal("D3", board.Name(board.Geometry.Step(board["A1"], TestBoard.Going("southwest"))));
        Assert.Equal(8, board.Geometry.Neighbours(board["A1"]).Length);
        Assert.Empty(board.Geometry.Rim());
    }

    [Fact]
    public void A_narrow_board_that_wraps_names_each_neighbour_once_and_never_the_space_itself()
    {
        TestBoard board = TestBoard.Grid(2, 1, Touching.SidesAndCorners, wraps: true);

        Assert.Equal("B1", board.Names(board.Geometry.Neighbours(board["A1"])));
    }

    [Fact]
    public void The_rim_holds_what_lacks_a_neighbour()
    {
        Assert.Equal("A4 B4 C4 D4 E4 A3 E3 A2 E2 A1 B1 C1 D1 E1", Round.Names(Round.Geometry.Rim()));
        Assert.Equal("E6 D5 E5 C4 E4 B3 E3 A2 E2 A1 B1 C1 D1 E1", Climbing.Names(Climbing.Geometry.Rim()));
    }

    [Fact]
    public void Distance_counts_steps_round_missing_spaces()
    {
        TestBoard ring = TestBoard.Grid(3, 3, missing: "B2 B1");

        Assert.Equal(6, ring.Geometry.Distance(ring["A1"], ring["C1"]));
        Assert.Equal(0, ring.Geometry.Distance(ring["A1"], ring["A1"]));
    }

    [Fact]
    public void There_is_no_distance_where_there_is_no_way()
    {
        TestBoard split = TestBoard.Grid(3, 2, missing: "B1 B2");

        Assert.Null(split.Geometry.Distance(split["A1"], split["C1"]));
    }

    // Source: graph_diameters.csv (elementary, recomputed by a breadth-first search that shares no code with ours).
    [Theory]
    [InlineData(Touching.Sides, 4)]
    [InlineData(Touching.SidesAndCorners, 8)]
    public void Square_grids_have_their_known_edges_and_diameters(Touching touching, int neighbours) =>
        Assert.All(Enumerable.Range(2, 7), n =>
        {
            string[] known = ReferenceTable.Row("graph_diameters.csv", $"n x n square grid, {neighbours} neighbours, n={n}");
            BoardGeometry geometry = TestBoard.Grid(n, n, touching).Geometry;
            int[] spaces = [.. Enumerable.Range(0, geometry.Count)];

            Assert.Equal(ReferenceTable.Number(known[1]), geometry.Count);
            Assert.Equal(ReferenceTable.Number(known[2]), spaces.Sum(s => geometry.Neighbours(s).Length) / 2);
            Assert.Equal(ReferenceTable.Number(known[3]), spaces.Max(s => spaces.Max(t => geometry.Distance(s, t)!.Value)));
        });

    // Source: ring_and_ball_sizes.csv, squares (OEIS A008574, A001844, A016754).
    [Theory]
    [InlineData(Touching.Sides, 3)]
    [InlineData(Touching.SidesAndCorners, 5)]
    public void Rings_and_balls_on_squares_have_their_known_sizes(Touching touching, int ringColumn)
    {
        TestBoard board = TestBoard.Grid(21, 21, touching);
        int centre = board["K11"];
        int[] distances = [.. Enumerable.Range(0, board.Geometry.Count).Select(s => board.Geometry.Distance(centre, s)!.Value)];

        Assert.All(ReferenceTable.Rows("ring_and_ball_sizes.csv").Take(11), row =>
        {
            int distance = ReferenceTable.Number(row[0]);
            Assert.Equal(ReferenceTable.Number(row[ringColumn]), distances.Count(d => d == distance));
            Assert.Equal(ReferenceTable.Number(row[ringColumn + 1]), distances.Count(d => d <= distance));
        });
    }
}
