using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Tests.Reference;

namespace Rostrum.Rulings.Tests.Graphs;

/// <summary>Values of longest ways that others have published or that follow in a line.</summary>
public sealed class PublishedWayTests
{
    private static readonly string[] Measures = ["walk", "span", "bare", "group"];

    public static TheoryData<string> Diameters => [.. ReferenceTable.Rows("graph_diameters.csv").Select(r => r[0])];

    // Common practice of the trade, no source; each can be counted on a drawing.
    [Theory]
    [InlineData("ring of 6", 6, 4, 5, 6)]
    [InlineData("centre plus ring", 7, 3, 5, 7)]
    [InlineData("three mutually touching", 3, 2, 2, 3)]
    public void The_four_measures_differ_on_small_boards(string board, int walk, int span, int bare, int group)
    {
        Graph graph = board switch
        {
            "ring of 6" => TestGraphs.Ring(6),
            "centre plus ring" => TestGraphs.Hexagon(2),
            _ => TestGraphs.Complete(3),
        };

        Assert.Equal([walk, span, bare, group], Measures.Select(m => Ways.Longest(graph, m).Least));
    }

    // Source: graph_diameters.csv (elementary, recomputed by a breadth-first search that shares no code with ours).
    [Theory]
    [MemberData(nameof(Diameters))]
    public void A_span_is_one_more_than_the_diameter(string name)
    {
        string[] known = ReferenceTable.Row("graph_diameters.csv", name);
        Graph graph = Named(name);

        Assert.Equal(ReferenceTable.Number(known[1]), graph.Count);
        Assert.Equal(ReferenceTable.Number(known[2]), Enumerable.Range(0, graph.Count).Sum(i => graph.Near(i).Length) / 2);
        Way span = Ways.Longest(graph, "span");
        Assert.Equal(ReferenceTable.Number(known[3]) + 1, span.Least);
        Assert.True(WayCheck.IsWay(graph, span.Elements, isBare: true));
    }

    // Source: QuikGraph 2.5.0, its shortest paths from each element.
    [Fact]
    public void A_span_is_what_another_library_finds()
    {
        var random = new Random(11);

        Assert.All(Enumerable.Range(0, 200), _ =>
        {
            Graph graph = TestGraphs.Random(random, 14);
            Graph part = graph.Only(graph.Parts().MaxBy(p => p.Length)!);
            Assert.Equal(Solver.SpanByGraph(part), Ways.Longest(part, "span").Least);
        });
    }

    // The snake in the box: joins of the longest bare way on a cube of n dimensions are 1, 2, 4, 7, 13 (OEIS A099155, from memory).
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    [InlineData(3, 4)]
    [InlineData(4, 7)]
    public void A_bare_way_on_a_cube_is_the_longest_snake(int dimensions, int joins)
    {
        Way bare = Ways.Longest(TestGraphs.Cube(dimensions), "bare");

        Assert.True(bare.IsLongest);
        Assert.Equal(joins + 1, bare.Least);
    }

    // Elementary: a cube, a full board of squares, kings or hexes and the Petersen graph can be walked whole; of two sides, a walk takes turns.
    [Fact]
    public void Walks_that_are_known()
    {
        (Graph Graph, int Walk)[] known =
        [
            (TestGraphs.Cube(5), 32), (TestGraphs.Squares(8, 8), 64), (TestGraphs.Squares(7, 7), 49), (TestGraphs.Kings(8), 64), (TestGraphs.Hexagon(5), 61),
            (TestGraphs.Petersen(), 10), (TestGraphs.Complete(64), 64), (TestGraphs.Star(63), 3), (TestGraphs.Bipartite(20, 40), 41), (TestGraphs.Wheel(63), 64),
        ];

        Assert.Equal(known.Select(k => k.Walk), known.Select(k => Ways.Longest(k.Graph, "walk").Least));
        Assert.All(known, k => Assert.True(Ways.Longest(k.Graph, "walk").IsLongest));
    }

    // Longest snakes on n by n squares, 1 to 7: 1, 3, 7, 11, 17, 24, 33 (OEIS A331968, from memory).
    [Fact]
    public void Bare_ways_on_boards_of_squares_are_the_longest_snakes() =>
        Assert.Equal([1, 3, 7, 11, 17, 24, 33], Enumerable.Range(1, 7).Select(n => Ways.Longest(TestGraphs.Squares(n, n), "bare").Least));

    [Theory]
    [InlineData("walk")]
    [InlineData("bare")]
    public void Where_it_is_given_up_the_bounds_are_honest(string measure)
    {
        Way way = Ways.Longest(TestGraphs.Squares(13, 5), measure);

        Assert.False(way.IsLongest);
        Assert.InRange(way.Least, 1, way.Most);
        Assert.Contains("64", Ways.LimitInWords(measure), StringComparison.Ordinal);
    }

    [Fact]
    public void A_group_and_a_span_are_worked_out_to_400_spaces()
    {
        Graph board = TestGraphs.Squares(20, 20);

        Assert.Equal((400, 39), (Ways.Longest(board, "group").Least, Ways.Longest(board, "span").Least));
        Assert.False(Ways.Longest(TestGraphs.Squares(20, 21), "span").IsLongest);
    }

    private static Graph Named(string name) => name.Split(' ') switch
    {
        ["hexagon-shaped", .., var side] => TestGraphs.Hexagon(ReferenceTable.Number(side)),
        [.., "4", "neighbours,", var size] => TestGraphs.Squares(ReferenceTable.Number(size[2..]), ReferenceTable.Number(size[2..])),
        [.., "8", "neighbours,", var size] => TestGraphs.Kings(ReferenceTable.Number(size[2..])),
        ["cycle", var ring] => TestGraphs.Ring(ReferenceTable.Number(ring[1..])),
        ["hypercube", var cube] => TestGraphs.Cube(ReferenceTable.Number(cube[1..])),
        ["Petersen", ..] => TestGraphs.Petersen(),
        _ => TestGraphs.Morris(),
    };
}
