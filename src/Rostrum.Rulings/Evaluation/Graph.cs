using System.Numerics;

namespace Rostrum.Rulings.Evaluation;

/// <summary>Elements by number, and which of them are joined; the same both ways, none with itself.</summary>
internal sealed class Graph
{
    private readonly int[][] _near;

    private Graph(int[][] near) => _near = near;

    /// <summary>How many elements there are.</summary>
    public int Count => _near.Length;

    /// <summary>The elements joined with one, in order.</summary>
    public ReadOnlySpan<int> Near(int element) => _near[element];

    /// <summary>The graph of a table of joins.</summary>
    /// <param name="joined">For each two elements, the same both ways.</param>
    /// <param name="least"><see cref="Kleene.Yes"/> for what is joined for certain, <see cref="Kleene.Unknown"/> for what may be joined.</param>
    public static Graph Of(Kleene[,] joined, Kleene least = Kleene.Yes) => Of(joined.GetLength(0), (i, j) => joined[i, j] >= least);

    /// <summary>The graph of so many elements.</summary>
    /// <param name="count">How many.</param>
    /// <param name="isJoined">Whether two different elements are joined; the same both ways.</param>
    public static Graph Of(int count, Func<int, int, bool> isJoined) =>
        new([.. Enumerable.Range(0, count).Select(i => Enumerable.Range(0, count).Where(j => j != i && isJoined(i, j)).ToArray())]);

    /// <summary>Some of the elements alone, numbered in the order given.</summary>
    public Graph Only(int[] elements)
    {
        var numbers = elements.Select((element, number) => (element, number)).ToDictionary(e => e.element, e => e.number);
        return new Graph([.. elements.Select(e => _near[e].Where(numbers.ContainsKey).Select(n => numbers[n]).Order().ToArray())]);
    }

    /// <summary>The elements joined with each, as bits; for 64 elements at the most.</summary>
    public ulong[] Masks() => [.. _near.Select(near => near.Aggregate(0UL, (mask, n) => mask | (1UL << n)))];

    /// <summary>The connected parts, each in order, by their first element.</summary>
    public IEnumerable<int[]> Parts()
    {
        var seen = new bool[Count];
        for (int i = 0; i < Count; i++)
        {
            if (!seen[i])
            {
                int[] part = [.. DistancesFrom(i).Select((d, at) => (d, at)).Where(p => p.d >= 0).Select(p => p.at)];
                foreach (int element in part)
                {
                    seen[element] = true;
                }

                yield return part;
            }
        }
    }

    /// <summary>The fewest steps from one element to each; -1 where there is no way. Breadth first.</summary>
    public int[] DistancesFrom(int start)
    {
        var distances = new int[Count];
        Array.Fill(distances, -1);
        distances[start] = 0;
        var next = new Queue<int>([start]);
        while (next.TryDequeue(out int at))
        {
            foreach (int near in _near[at])
            {
                if (distances[near] < 0)
                {
                    distances[near] = distances[at] + 1;
                    next.Enqueue(near);
                }
            }
        }

        return distances;
    }

    /// <summary>A shortest way between two elements of one part, both included; of several the one that keeps to the first elements.</summary>
    public int[] ShortestWay(int from, int to)
    {
        int[] left = DistancesFrom(to);
        var way = new List<int>([from]);
        while (way[^1] != to)
        {
            way.Add(_near[way[^1]].First(n => left[n] == left[way[^1]] - 1));
        }

        return [.. way];
    }

    /// <summary>The elements of a mask, in order.</summary>
    public static IEnumerable<int> Elements(ulong mask)
    {
        for (ulong left = mask; left != 0; left &= left - 1)
        {
            yield return BitOperations.TrailingZeroCount(left);
        }
    }
}
