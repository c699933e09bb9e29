using Rostrum.Rulings.Evaluation;

namespace Rostrum.Rulings.Tests.Graphs;

/// <summary>Tries everything, without a single short cut: what the quick methods are held against.</summary>
internal static class BruteForce
{
    /// <summary>The length of the longest way, over every sequence of joined elements.</summary>
    public static int LongestWay(Graph graph, bool isBare)
    {
        int[][] near = [.. Enumerable.Range(0, graph.Count).Select(i => graph.Near(i).ToArray())];
        return Enumerable.Range(0, graph.Count).Select(start => Extend(near, [start], isBare)).DefaultIfEmpty(0).Max();
    }

    /// <summary>The greatest sum of worths over every way to part elements into sets.</summary>
    /// <param name="count">How many elements.</param>
    /// <param name="worth">What a set, given as bits, is worth.</param>
    public static long BestSplit(int count, Func<int, long> worth) => Part((1 << count) - 1, worth);

    private static int Extend(int[][] near, List<int> way, bool isBare)
    {
        int best = way.Count;
        foreach (int next in near[way[^1]])
        {
            if (!way.Contains(next) && (!isBare || IsBare(near[next], way)))
            {
                way.Add(next);
                best = Math.Max(best, Extend(near, way, isBare));
                way.RemoveAt(way.Count - 1);
            }
        }

        return best;
    }

    // Of the elements on the way, the next one is joined with the last alone.
    private static bool IsBare(int[] near, List<int> way)
    {
        int joined = 0;
        foreach (int element in near)
        {
            joined += way.Contains(element) ? 1 : 0;
        }

        return joined == 1;
    }

    // The lowest element with each set of the others.
    private static long Part(int left, Func<int, long> worth)
    {
        if (left == 0)
        {
            return 0;
        }

        int lowest = left & -left;
        int others = left ^ lowest;
        long best = long.MinValue;
        for (int with = others; ; with = (with - 1) & others)
        {
            best = Math.Max(best, worth(lowest | with) + Part(others ^ with, worth));
            if (with == 0)
            {
                return best;
            }
        }
    }
}
