using Rostrum.Rulings.Tests.Reference;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Boards;

/// <summary>Boards of hexes, as sheets say them, against published figures.</summary>
public sealed class HexBoardTests
{
    private static readonly SheetBoard Marsh = SheetBoard.Of("hexes: rows of 3 4 5 4 3\nwithout: c3");

    // Source: graph_diameters.csv (elementary, recomputed by a breadth-first search that shares no code with ours).
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    public void Board_of_a_radius_is_as_large_and_wide_as_known(int side)
    {
        SheetBoard board = SheetBoard.Of($"hexes: radius {side - 1}");
        string[] known = ReferenceTable.Row("graph_diameters.csv", $"hexagon-shaped board, side {side}");

        int joins = Enumerable.Range(0, board.Count).Sum(s => board.Geometry.Neighbours(s).Length) / 2;

        Assert.Equal(string.Join(' ', known[1..]), $"{board.Count} {joins} {board.Diameter}");
    }

    // Source: ring_and_ball_sizes.csv, hexes (OEIS A008458, A003215).
    [Fact]
    public void Rings_and_balls_are_as_large_as_published()
    {
        SheetBoard board = SheetBoard.Of("hexes: radius 10");
        int middle = board["k11"];
        int[] distances = [.. Enumerable.Range(0, board.Count).Select(s => board.Geometry.Distance(middle, s)!.Value)];

        Assert.All(ReferenceTable.Rows("ring_and_ball_sizes.csv").Take(11), row =>
        {
            int distance = ReferenceTable.Number(row[0]);
            Assert.Equal(ReferenceTable.Number(row[1]), distances.Count(d => d == distance));
            Assert.Equal(ReferenceTable.Number(row[2]), distances.Count(d => d <= distance));
        });
    }

    // Source: hex_distance_pairs.csv, axial coordinates: d = (|dq| + |dr| + |dq + dr|) / 2. Here r counts rows downwards, q along the row.
    [Fact]
    public void Distances_agree_with_axial_coordinates()
    {
        SheetBoard board = SheetBoard.Of("hexes: radius 14");
        Dictionary<(int, int), int> at = board.Facts.Spaces.ToDictionary(s => ((s.Column - 28 + s.Row - 14) / 2, 14 - s.Row), s => s.Name.Index);

        Assert.All(ReferenceTable.Rows("hex_distance_pairs.csv").Select(r => r.Select(ReferenceTable.Number).ToArray()), r =>
            Assert.Equal(r[4], board.Geometry.Distance(at[(r[0], r[1])], at[(r[2], r[3])])));
    }

    [Theory]
    [InlineData("a1", "a2 b1 b2")]
    [InlineData("b2", "a1 a2 b1 b3 c2")]
    [InlineData("c1", "b1 c2 d1")]
    [InlineData("d4", "c4 c5 d3 e3")]
    public void Neighbours_share_a_side(string space, string expected) => Assert.Equal(expected, Marsh.Near(space));

    [Fact]
    public void A_hole_keeps_its_number_and_takes_no_place()
    {
        Assert.Equal(18, Marsh.Count);
        Assert.DoesNotContain(Marsh.Facts.Spaces, s => s.Name.Name == "c3");
        Assert.Equal("c3", Assert.Single(Marsh.Facts.Holes).Name);
    }

    [Fact]
    public void A_drawn_board_is_the_one_of_its_size()
    {
        SheetBoard drawn = SheetBoard.Of("drawn: |\n  a   . . .\n  b  . . . .\n  c . . # . .\n  d  . . . .\n  e   . . .");

        Assert.Equal(Marsh.Facts.Spaces.Select(s => (s.Name.Name, s.Column, s.Row)), drawn.Facts.Spaces.Select(s => (s.Name.Name, s.Column, s.Row)));
        Assert.Equal(Marsh.Facts.Holes, drawn.Facts.Holes);
    }

    // By hand on the drawing: the marsh has a rim of twelve (rulebook of our own demo game Plank Road, page 1); a hole inside is not outside.
    [Fact]
    public void Rim_is_where_a_neighbour_is_missing_on_the_outside()
    {
        Assert.Equal(12, SheetBoard.Of("hexes: rows of 3 4 5 4 3").Geometry.Rim().Length);
        Assert.Equal(12, Marsh.Geometry.Rim().Length);
    }

    [Theory]
    [InlineData("squares: 5 across 5 up\nwithout: C3", 16)]
    [InlineData("squares: 5 across 5 up\nwithout: E3", 16)]
    [InlineData("squares: 5 across 5 up\nwithout: D3 E3", 18)]
    [InlineData("squares: 5 across 5 up\nwithout: D2 D3 D4 E3", 18)]
    [InlineData("hexes: rows of 3 4 5 4 3\nwithout: b2", 12)]
    [InlineData("hexes: rows of 3 4 5 4 3\nwithout: a2", 13)]
    [InlineData("squares: 4 across 4 up\nwraps: yes\nwithout: B2", 0)]
    public void What_hangs_together_with_the_outside_makes_a_rim(string board, int spaces) => Assert.Equal(spaces, SheetBoard.Of(board).Geometry.Rim().Length);

    [Theory]
    [InlineData("b1", "b2", "b3")]
    [InlineData("a1", "b2", "nothing")]
    [InlineData("a2", "b3", "c4")]
    [InlineData("a1", "c2", "e1")]
    [InlineData("b2", "b2", "nothing")]
    public void Across_is_as_far_on_the_other_side(string s, string t, string expected) =>
        Assert.Equal(expected, Marsh.Name(Marsh.Geometry.Across(Marsh[s], Marsh[t])));

    [Theory]
    [InlineData("b1", "b4", "b2 b3")]
    [InlineData("a2", "d4", "b3 c4")]
    [InlineData("a3", "d2", "b3 c3")]
    [InlineData("a1", "c2", "")]
    public void Between_are_the_spaces_of_one_straight_line(string s, string t, string expected)
    {
        SheetBoard whole = SheetBoard.Of("hexes: rows of 3 4 5 4 3");

        Assert.Equal(expected, whole.Names(whole.Geometry.Between(whole[s], whole[t])));
    }

    // On a board of side 3 each of the three directions has rows of 3, 4, 5, 4, 3: 1 + 2 + 3 + 2 + 1 stretches of three.
    [Fact]
    public void Straights_go_in_three_directions() => Assert.Equal(27, SheetBoard.Of("hexes: radius 2").Geometry.Straights(3).Length);

    [Theory]
    [InlineData("east", "c4")]
    [InlineData("west", "c2")]
    [InlineData("northeast", "b3")]
    [InlineData("northwest", "b2")]
    [InlineData("southeast", "d3")]
    [InlineData("southwest", "d2")]
    [InlineData("north", "nothing")]
    public void A_step_goes_in_one_of_six_directions(string direction, string expected)
    {
        SheetBoard board = SheetBoard.Of("hexes: radius 2");

        Assert.Equal(expected, board.Name(board.Geometry.Step(board["c3"], TestBoard.Going(direction))));
    }

    // A board that comes round everywhere has no rim, and every hex has six neighbours.
    [Theory]
    [InlineData("6 across 4 up")]
    [InlineData("5 across 6 up")]
    public void A_board_that_comes_round_has_six_neighbours_everywhere(string size)
    {
        SheetBoard board = SheetBoard.Of($"hexes: {size}\nwraps: yes");

        Assert.Empty(board.Geometry.Rim());
        Assert.All(Enumerable.Range(0, board.Count), s => Assert.Equal(6, board.Geometry.Neighbours(s).Length));
        Assert.All(Enumerable.Range(0, board.Count), s => Assert.All(board.Geometry.Neighbours(s).ToArray(), n => Assert.Contains(s, board.Geometry.Neighbours(n).ToArray())));
    }

    [Fact]
    public void Lines_are_rows_from_the_far_side_and_two_kinds_of_slants()
    {
        SheetBoard board = SheetBoard.Of("hexes: rows of 2 3 2\nrows: bank\nlines: {rising: slope, falling: slant}");

        Assert.Equal(
            ["bank a: a1 a2; b: b1 b2 b3; c: c1 c2", "slope 1: b1 a1; 2: c1 b2 a2; 3: c2 b3", "slant 1: b1 c1; 2: a1 b2 c2; 3: a2 b3"],
            board.Facts.Families.Select(f => $"{f.Name} {string.Join("; ", f.Lines.Select(l => $"{l.Label}: {board.Names(l.Spaces)}"))}"));
        Assert.Equal([LineForm.Rows, LineForm.Rising, LineForm.Falling], board.Facts.Families.Select(f => f.Form));
    }
}
