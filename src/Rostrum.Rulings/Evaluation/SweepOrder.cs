using System.Numerics;

namespace Rostrum.Rulings.Evaluation;

/// <summary>An order in which to come to the elements of a part, so that few are open at any time: come to, and joined with one not come to yet.</summary>
internal static class SweepOrder
{
    /// <summary>The cheapest of several orders: as numbered, breadth first from each element, and from each element always on to the one that leaves fewest open.</summary>
    /// <param name="near">The elements joined with each, as bits.</param>
    /// <param name="mostOpen">The most elements that are open at any time, the one just come to included.</param>
    public static int[] Cheapest(ulong[] near, out int mostOpen)
    {
        int[] best = [.. Enumerable.Range(0, near.Length)];
        double least = Cost(near, best);
        for (int start = 0; start < near.Length; start++)
        {
            foreach (int[] order in (int[][])[From(near, start, isNarrow: true), From(near, start, isNarrow: false)])
            {
                double cost = Cost(near, order);
                (best, least) = cost < least ? (order, cost) : (best, least);
            }
        }

        mostOpen = Open(near, best).Max() + 1;
        return best;
    }

    private static int[] From(ulong[] near, int start, bool isNarrow)
    {
        var order = new List<int>([start]);
        ulong come = 1UL << start;
        while (order.Count < near.Length)
        {
            int next = isNarrow
                ? Graph.Elements(Beside(near, order, come)).MinBy(e => BitOperations.PopCount(OpenOf(near, come | (1UL << e))))
                : order.SelectMany(e => Graph.Elements(near[e] & ~come)).First();
            order.Add(next);
            come |= 1UL << next;
        }

        return [.. order];
    }

    // Elements that an open one waits for; those that the oldest waits for come first, so that the sweep keeps to a front.
    private static ulong Beside(ulong[] near, List<int> order, ulong come) =>
        order.Aggregate(0UL, (mask, e) => mask | near[e]) & ~come;

    private static double Cost(ulong[] near, int[] order) => Open(near, order).Sum(open => Math.Pow(3, open));

    private static IEnumerable<int> Open(ulong[] near, int[] order)
    {
        ulong come = 0;
        foreach (int element in order)
        {
            come |= 1UL << element;
            yield return BitOperations.PopCount(OpenOf(near, come));
        }
    }

    private static ulong OpenOf(ulong[] near, ulong come)
    {
        ulong open = 0;
        foreach (int element in Graph.Elements(come))
        {
            open |= (near[element] & ~come) != 0 ? 1UL << element : 0;
        }

        return open;
    }
}
