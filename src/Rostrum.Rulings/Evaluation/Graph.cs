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
    public static Graph Of(Kleene[,] joined)
    {
        int count = joined.GetLength(0);
        return new Graph([.. Enumerable.Range(0, count).Select(i => Enumerable.Range(0, count).Where(j => j != i && joined[i, j] == Kleene.Yes).ToArray())]);
    }

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
}
