using Google.OrTools.Graph;
using Google.OrTools.Sat;
using QuikGraph;
using QuikGraph.Algorithms;
using QuikGraph.Algorithms.Assignment;

namespace Rostrum.Rulings.Tests.Graphs;

/// <summary>Questions put to libraries that share no code with ours: Google OR-Tools 9.15 and QuikGraph 2.5.</summary>
internal static class Solver
{
    /// <summary>The most pairs as a greatest flow, by OR-Tools.</summary>
    public static long PairsByFlow(bool[,] joins)
    {
        (int ones, int others) = (joins.GetLength(0), joins.GetLength(1));
        using var flow = new MaxFlow();
        for (int i = 0; i < ones; i++)
        {
            flow.AddArcWithCapacity(ones + others, i, 1);
        }

        for (int j = 0; j < others; j++)
        {
            flow.AddArcWithCapacity(ones + j, ones + others + 1, 1);
        }

        foreach ((int i, int j) in Joined(joins))
        {
            flow.AddArcWithCapacity(i, ones + j, 1);
        }

        Assert.Equal(MaxFlow.Status.OPTIMAL, flow.Solve(ones + others, ones + others + 1));
        return flow.OptimalFlow();
    }

    /// <summary>The most pairs as the cheapest assignment where an unjoined pair costs 1, by QuikGraph. (Its matching of 2.5.0 is no peer: it names
    /// more pairs than there are elements.)</summary>
    public static int PairsByGraph(bool[,] joins)
    {
        int size = Math.Max(joins.GetLength(0), joins.GetLength(1));
        var costs = new int[size, size];
        foreach ((int i, int j) in Enumerable.Range(0, size).SelectMany(i => Enumerable.Range(0, size).Select(j => (i, j))))
        {
            costs[i, j] = 1;
        }

        foreach ((int i, int j) in Joined(joins))
        {
            costs[i, j] = 0;
        }

        int[] assigned = new HungarianAlgorithm((int[,])costs.Clone()).Compute();
        return assigned.Where((j, i) => costs[i, j] == 0).Count();
    }

    /// <summary>The greatest of the shortest ways in elements, by QuikGraph's search from each element; the graph is connected.</summary>
    public static int SpanByGraph(Rostrum.Rulings.Evaluation.Graph part)
    {
        var graph = new UndirectedGraph<int, Edge<int>>();
        graph.AddVertexRange(Enumerable.Range(0, part.Count));
        graph.AddEdgeRange(Enumerable.Range(0, part.Count).SelectMany(i => part.Near(i).ToArray().Where(j => j > i).Select(j => new Edge<int>(i, j))));
        return 1 + Enumerable.Range(0, part.Count).Max(from =>
        {
            TryFunc<int, IEnumerable<Edge<int>>> ways = graph.ShortestPathsDijkstra(_ => 1, from);
            return Enumerable.Range(0, part.Count).Max(to => ways(to, out IEnumerable<Edge<int>>? way) ? way.Count() : 0);
        });
    }

    /// <summary>The best split as a choice of sets that cover each thing once, by OR-Tools; null where there is none.</summary>
    /// <param name="things">How many things.</param>
    /// <param name="sets">The sets, as bits, with their worths.</param>
    public static long? Split(int things, IReadOnlyList<(int Things, long Worth)> sets)
    {
        var model = new CpModel();
        BoolVar[] chosen = [.. sets.Select((_, i) => model.NewBoolVar($"set {i}"))];
        for (int thing = 0; thing < things; thing++)
        {
            model.AddExactlyOne(chosen.Where((_, i) => (sets[i].Things & (1 << thing)) != 0));
        }

        model.Maximize(LinearExpr.WeightedSum(chosen, sets.Select(s => s.Worth)));
        var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:1" };
        CpSolverStatus status = solver.Solve(model);
        Assert.Contains(status, new[] { CpSolverStatus.Optimal, CpSolverStatus.Infeasible });
        return status == CpSolverStatus.Optimal ? (long)Math.Round(solver.ObjectiveValue) : null;
    }

    private static IEnumerable<(int One, int Other)> Joined(bool[,] joins) =>
        Enumerable.Range(0, joins.GetLength(0)).SelectMany(i => Enumerable.Range(0, joins.GetLength(1)).Where(j => joins[i, j]).Select(j => (i, j)));
}
