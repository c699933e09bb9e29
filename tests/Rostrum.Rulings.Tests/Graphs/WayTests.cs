using Rostrum.Rulings.Evaluation;

namespace Rostrum.Rulings.Tests.Graphs;

/// <summary>The longest way by its four measures, against everything tried.</summary>
public sealed class WayTests
{
    private const int Boards = 2_000;
    private const int Seed = 20_261;

    [Theory]
    [InlineData("walk")]
    [InlineData("bare")]
    public void Walk_and_bare_are_what_trying_everything_gives(string measure)
    {
        bool isBare = measure == "bare";
        string[] wrong = [.. Graphs(Boards).Select(g => (Graph: g, Way: Ways.Longest(g, measure)))
            .Where(f => f.Way.Least != BruteForce.LongestWay(f.Graph, isBare) || !f.Way.IsLongest || f.Way.Elements.Length != f.Way.Least || !WayCheck.IsWay(f.Graph, f.Way.Elements, isBare))
            .Select(f => $"{f.Graph.Count}: {f.Way}")];

        Assert.Empty(wrong);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_sweep_alone_gives_the_same(bool isBare)
    {
        string[] wrong = [.. Graphs(Boards).Select(g => g.Only(g.Parts().MaxBy(p => p.Length)!)).Where(p => p.Count > 1).Select(p => (Part: p, Sweep: Swept(p, isBare)))
            .Where(f => f.Sweep.Length != BruteForce.LongestWay(f.Part, isBare) || !WayCheck.IsWay(f.Part, f.Sweep, isBare))
            .Select(f => $"{f.Part.Count}: {string.Join(' ', f.Sweep)}")];

        Assert.Empty(wrong);
    }

    private static int[] Swept(Graph part, bool isBare)
    {
        var sweep = new WaySweep(part, isBare, [0]);
        Assert.True(sweep.Run());
        return sweep.Best;
    }

    private static IEnumerable<Graph> Graphs(int count)
    {
        var random = new Random(Seed);
        return Enumerable.Range(0, count).Select(_ => TestGraphs.Random(random, 10));
    }
}
