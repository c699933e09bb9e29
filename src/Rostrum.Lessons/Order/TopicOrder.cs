using System.Collections.Immutable;
using System.Numerics;

namespace Rostrum.Lessons.Order;

/// <summary>An order of the topics, and what it costs.</summary>
/// <param name="Topics">The 0-based topics in their new order.</param>
/// <param name="Cost">The weight of what is used before it is introduced.</param>
/// <param name="IsExact">True where no order costs less; false where it was found by improving step by step.</param>
public sealed record TopicOrder(ImmutableArray<int> Topics, long Cost, bool IsExact)
{
    /// <summary>Up to so many topics every order is weighed.</summary>
    public const int MostExact = 20;

    private const int HalfBits = MostExact / 2;
    private const int HalfMask = (1 << HalfBits) - 1;
    private const long Turned = 256;

    /// <summary>The best order: least cost, and of those the one nearest to the present order (fewest pairs turned round).</summary>
    /// <param name="weights">How much topic <c>i</c> (row) uses what topic <c>j</c> (column) introduces; the diagonal does not count.</param>
    /// <remarks>Exact by dynamic programming over the sets of topics that stand first (M. Held and R. Karp, Journal of the SIAM 10, 1962); beyond
    /// <see cref="MostExact"/> topics each topic in turn is moved to where it costs least until nothing helps any more.</remarks>
    public static TopicOrder Best(long[,] weights)
    {
        ArgumentNullException.ThrowIfNull(weights);
        int topics = weights.GetLength(0);
        ImmutableArray<int> present = [.. Enumerable.Range(0, topics)];
        long cost = CostOf(weights, present);
        if (cost == 0)
        {
            return new TopicOrder(present, 0, true);
        }

        ImmutableArray<int> best = topics <= MostExact ? Exact(weights) : Improved(weights);
        return new TopicOrder(best, CostOf(weights, best), topics <= MostExact);
    }

    /// <summary>What an order costs.</summary>
    public static long CostOf(long[,] weights, ImmutableArray<int> order)
    {
        ArgumentNullException.ThrowIfNull(weights);
        long cost = 0;
        for (int i = 0; i < order.Length; i++)
        {
            for (int j = i + 1; j < order.Length; j++)
            {
                cost += weights[order[i], order[j]];
            }
        }

        return cost;
    }

    // A set of topics is the bits of a number. best[set] = the least of cost * Turned + pairs turned round, for just these topics standing first;
    // last[set] = which of them stands last. Placing topic t behind a set costs what t uses of all that come later; at most 190 pairs are turned.
    private static ImmutableArray<int> Exact(long[,] weights)
    {
        int topics = weights.GetLength(0);
        int all = (1 << topics) - 1;
        long[][] low = Halves(weights, 0);
        long[][] high = Halves(weights, HalfBits);
        long[] best = new long[all + 1];
        byte[] last = new byte[all + 1];
        for (int set = 1; set <= all; set++)
        {
            best[set] = long.MaxValue;
            int later = all & ~set;
            for (int rest = set; rest != 0; rest &= rest - 1)
            {
                int topic = BitOperations.TrailingZeroCount(rest);
                int turned = BitOperations.PopCount((uint)(later & ((1 << topic) - 1)));
                long now = best[set & ~(1 << topic)] + ((low[topic][later & HalfMask] + high[topic][later >> HalfBits]) * Turned) + turned;
                if (now < best[set])
                {
                    (best[set], last[set]) = (now, (byte)topic);
                }
            }
        }

        return Unwound(last, all);
    }

    // What each topic uses of every set of ten topics, so that a set of twenty takes two looks.
    private static long[][] Halves(long[,] weights, int from)
    {
        int topics = weights.GetLength(0);
        long[][] halves = [.. Enumerable.Range(0, topics).Select(_ => new long[HalfMask + 1])];
        for (int topic = 0; topic < topics; topic++)
        {
            for (int set = 1; set <= HalfMask; set++)
            {
                int other = from + BitOperations.TrailingZeroCount(set);
                halves[topic][set] = halves[topic][set & (set - 1)] + (other < topics && other != topic ? weights[topic, other] : 0);
            }
        }

        return halves;
    }

    private static ImmutableArray<int> Unwound(byte[] last, int all)
    {
        var order = new List<int>();
        for (int set = all; set != 0; set &= ~(1 << last[set]))
        {
            order.Add(last[set]);
        }

        order.Reverse();
        return [.. order];
    }

    // Each round moves the one topic whose move gains most; the cost falls with every round, so it ends.
    private static ImmutableArray<int> Improved(long[,] weights)
    {
        ImmutableArray<int> order = [.. Enumerable.Range(0, weights.GetLength(0))];
        while (BestMove(weights, order) is { } move)
        {
            order = order.RemoveAt(move.From).Insert(move.To, order[move.From]);
        }

        return order;
    }

    private static (int From, int To)? BestMove(long[,] weights, ImmutableArray<int> order)
    {
        (int, int)? best = null;
        long most = 0;
        for (int from = 0; from < order.Length; from++)
        {
            long gain = 0;
            for (int to = from - 1; to >= 0; to--)
            {
                gain += weights[order[to], order[from]] - weights[order[from], order[to]];
                (most, best) = gain > most ? (gain, (from, to)) : (most, best);
            }

            gain = 0;
            for (int to = from + 1; to < order.Length; to++)
            {
                gain += weights[order[from], order[to]] - weights[order[to], order[from]];
                (most, best) = gain > most ? (gain, (from, to)) : (most, best);
            }
        }

        return best;
    }
}
