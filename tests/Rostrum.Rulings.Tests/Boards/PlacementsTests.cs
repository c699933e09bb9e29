using System.Collections.Immutable;
using Rostrum.Rulings.Boards;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Boards;

public sealed class PlacementsTests
{
    private static readonly TestBoard Small = TestBoard.Grid(3, 2);

    [Fact]
    public void As_drawn_comes_first_from_the_top_left()
    {
        ImmutableArray<DrawingPlacement> placements = Small.Geometry.Placements(TestBoard.Draw("#.", "##"), rotated: false, mirrored: false);

        Assert.Equal(["A2 A1 B1", "B2 B1 C1"], placements.Select(p => Small.Names(p.Spaces)));
        Assert.All(placements, p => Assert.Equal((0, false), (p.Turns, p.IsMirrored)));
    }

    [Fact]
    public void A_quarter_turn_goes_clockwise()
    {
        TestBoard board = TestBoard.Grid(2, 2);

        ImmutableArray<DrawingPlacement> placements = board.Geometry.Placements(TestBoard.Draw("#.", "#["), rotated: true, mirrored: false);

        Assert.Equal(["A2 A1 B1", "B2 A2 A1", "B1 B2 A2", "A1 B1 B2"], placements.Select(p => board.Names(p.Spaces)));
        Assert.Equal([0, 1, 2, 3], placements.Select(p => p.Turns));
        Assert.Equal(["B1", "A1", "A2", "B2"], placements.Select(p => board.Name(p.Anchor)));
    }

    [Fact]
    public void Mirroring_alone_exchanges_left_and_right_only()
    {
        TestBoard board = TestBoard.Grid(2, 2);

        ImmutableArray<DrawingPlacement> placements = board.Geometry.Placements(TestBoard.Draw("#.", "##"), rotated: false, mirrored: true);

        Assert.Equal(["A2 A1 B1", "B2 B1 A1"], placements.Select(p => board.Names(p.Spaces)));
        Assert.Equal([false, true], placements.Select(p => p.IsMirrored));
    }

    [Theory]
    [InlineData(false, false, 1)]
    [InlineData(true, false, 4)]
    [InlineData(false, true, 2)]
    [InlineData(true, true, 8)]
    public void Turning_and_mirroring_are_separate_permissions(bool rotated, bool mirrored, int expected)
    {
        Drawing lopsided = TestBoard.Draw("##.", ".##", "#..");
        Assert.Equal(expected, TestBoard.Grid(3, 3).Geometry.Placements(lopsided, rotated, mirrored).Length);
    }

    [Theory]
    [InlineData("##", 1)]
    [InlineData("#_", 2)]
    [InlineData("#[", 2)]
    [InlineData("xx", 1)]
    [InlineData("xy", 1)]
    [InlineData("#x", 2)]
    public void Ways_that_ask_the_same_are_given_once(string row, int expected) =>
        Assert.Equal(expected, TestBoard.Grid(2, 1).Geometry.Placements(TestBoard.Draw(row), rotated: true, mirrored: true).Length);

    [Fact]
    public void Every_cell_needs_a_space_that_is_there()
    {
        TestBoard board = TestBoard.Grid(3, 2, missing: "B2");

        Assert.Equal(["A1 B1", "B1 C1"], board.Geometry.Placements(TestBoard.Draw("##"), false, false).Select(p => board.Names(p.Spaces)));
    }

    [Fact]
    public void A_drawing_never_wraps() =>
        Assert.Equal(2, TestBoard.Grid(3, 1, wraps: true).Geometry.Placements(TestBoard.Draw("##"), false, false).Length);

    [Fact]
    public void A_gap_in_the_margin_of_a_drawing_asks_for_nothing() =>
        Assert.Equal(2, TestBoard.Grid(2, 1).Geometry.Placements(TestBoard.Draw("..#", "..."), false, false).Length);
}
