using Rostrum.Rulings.Tests.Reference;

namespace Rostrum.Rulings.Tests.Boards;

/// <summary>Maps of points, rings and tracks, and what boards say of their spaces.</summary>
public sealed class PointBoardTests
{
    // The board of the traditional game of nine men's morris, in the usual names.
    private static readonly SheetBoard Morris = SheetBoard.Of("""
        points:
          - a7 d7 g7
          - b6 d6 f6
          - c5 d5 e5
          - a4 b4 c4
          - e4 f4 g4
          - c3 d3 e3
          - b2 d2 f2
          - a1 d1 g1
          - a7 a4 a1
          - b6 b4 b2
          - c5 c4 c3
          - d7 d6 d5
          - d3 d2 d1
          - e5 e4 e3
          - f6 f4 f2
          - g7 g4 g1
        """);

    // Source: graph_diameters.csv (elementary, recomputed). The 16 mills are the lines of the board.
    [Fact]
    public void Morris_board_is_as_known()
    {
        string[] known = ReferenceTable.Row("graph_diameters.csv", "nine men's morris board");
        int joins = Enumerable.Range(0, Morris.Count).Sum(s => Morris.Geometry.Neighbours(s).Length) / 2;

        Assert.Equal(string.Join(' ', known[1..]), $"{Morris.Count} {joins} {Morris.Diameter}");
        Assert.Equal(16, Morris.Geometry.Straights(3).Length);
    }

    // Source: graph_diameters.csv, cycles.
    [Theory]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(9)]
    [InlineData(10)]
    public void Ring_and_closed_line_are_cycles(int n)
    {
        string[] known = ReferenceTable.Row("graph_diameters.csv", $"cycle C{n}");
        SheetBoard closed = SheetBoard.Of($"points: [{string.Join(' ', Enumerable.Range(1, n).Select(i => $"p{i}"))} p1]");

        Assert.Equal(known[3], $"{SheetBoard.Of($"ring: {n}").Diameter}");
        Assert.Equal(known[3], $"{closed.Diameter}");
        Assert.All(Enumerable.Range(0, n), s => Assert.Equal(2, closed.Geometry.Neighbours(s).Length));
    }

    [Theory]
    [InlineData("a7", "d7", "g7")]
    [InlineData("d7", "d6", "d5")]
    [InlineData("a7", "g7", "nothing")]
    [InlineData("a4", "b4", "c4")]
    [InlineData("a7", "b6", "nothing")]
    public void Across_follows_a_line(string s, string t, string expected) => Assert.Equal(expected, Morris.Name(Morris.Geometry.Across(Morris[s], Morris[t])));

    [Theory]
    [InlineData("a7", "g7", "d7")]
    [InlineData("g1", "g7", "g4")]
    [InlineData("c4", "e4", "")]
    public void Between_follows_a_line(string s, string t, string expected) => Assert.Equal(expected, Morris.Names(Morris.Geometry.Between(Morris[s], Morris[t])));

    [Fact]
    public void Between_takes_the_shorter_way_round_a_closed_line()
    {
        SheetBoard lake = SheetBoard.Of("points: [a b c d e f a]");

        Assert.Equal("a", lake.Names(lake.Geometry.Between(lake["f"], lake["b"])));
    }

    [Fact]
    public void A_table_says_what_touches_what_is_printed_and_which_areas_there_are()
    {
        SheetBoard map = SheetBoard.Of("file: map.csv", ("map.csv", "name;next to;toll;land\nOld Mill;Ferry;3;hills\nFerry;Old Mill, Inn;;valley\nInn;;5;hills\n"));

        Assert.Equal("Old Mill Inn", map.Near("Ferry"));
        Assert.Equal([3, null, 5], map.Facts.Values.Single().On);
        Assert.Equal(["hills: Old Mill Inn", "valley: Ferry"], map.Facts.Families.Single().Lines.Select(l => $"{l.Label}: {map.Names(l.Spaces)}"));
    }

    [Fact]
    public void Regions_belong_to_seats_and_links_go_both_ways()
    {
        SheetBoard pits = SheetBoard.Of("ring: s1 to s3 S n1 to n3 N\nregions: {pits: {South: s1 to s3, North: n1 to n3}, store: {South: S, North: N}}\nlinks: {opposite: s1-n3 s2-n2 s3-n1}");

        Assert.Equal(["s1 s2 s3", "n1 n2 n3"], pits.Facts.Regions[0].OfSeat.Select(s => pits.Names(s)));
        Assert.True(pits.Facts.Regions[1].IsSpace);
        Assert.Equal("s1", pits.Name(pits.Facts.Links[0].To[pits["n3"]]));
        Assert.Equal("nothing", pits.Name(pits.Facts.Links[0].To[pits["S"]]));
    }

    [Theory]
    [InlineData("points: [a b c]\nwithout: b", "a c")]
    [InlineData("squares: 2 across 2 up\nwithout: A1", "A2 B2 B1")]
    [InlineData("track: 5\nwithout: 2 to 4", "1 5")]
    public void Spaces_are_taken_out(string board, string left)
    {
        SheetBoard read = SheetBoard.Of(board);

        Assert.Equal(left, read.Names(Enumerable.Range(0, read.Count)));
        Assert.Equal(read.Count, read.Facts.Spaces.Select(s => s.Name.Index).Distinct().Count());
    }
}
