namespace Rostrum.Rulings.Evaluation;

/// <summary>The longest way through joined elements, counted in elements. Every limit is a count of work, so the answer is the same everywhere.</summary>
/// <remarks>A walk or a bare way is looked for depth first, then by a sweep over the elements (<see cref="WaySweep"/>). The problem is hard in
/// general (M. R. Garey and D. S. Johnson, Computers and Intractability, 1979, ND29 and GT23), so there is always a board that is too large.</remarks>
internal static class Ways
{
    /// <summary>How many elements a group or a span is worked out for.</summary>
    public const int MostElements = 400;

    /// <summary>How many elements may hang together where a walk or a bare way is worked out.</summary>
    public const int MostInPart = 64;

    /// <summary>Why a way was given up, as a sentence without its full stop.</summary>
    public static string LimitInWords(string measure) => measure is "group" or "span"
        ? $"the longest way ({measure}) is not worked out above {MostElements} spaces"
        : $"the longest way ({measure}) is not worked out above {MostInPart} spaces that hang together or {WaySweep.MostSteps:N0} steps";

    /// <summary>The longest way.</summary>
    /// <param name="graph">What is joined.</param>
    /// <param name="measure"><c>walk</c>, <c>span</c>, <c>bare</c> or <c>group</c>.</param>
    public static Way Longest(Graph graph, string measure)
    {
        if (graph.Count == 0)
        {
            return Way.None;
        }

        if (measure is "group" or "span")
        {
            return graph.Count > MostElements ? new Way(1, graph.Count, [0]) : Way.Longest(measure == "group" ? graph.Parts().MaxBy(p => p.Length)! : Span(graph));
        }

        return Parted(graph, measure == "bare");
    }

    // The ends are the first two elements that are farthest apart.
    private static int[] Span(Graph graph)
    {
        (int from, int to, int far) = (0, 0, -1);
        for (int i = 0; i < graph.Count; i++)
        {
            int[] distances = graph.DistancesFrom(i);
            int most = distances.Max();
            if (most > far)
            {
                (from, to, far) = (i, Array.IndexOf(distances, most), most);
            }
        }

        return graph.ShortestWay(from, to);
    }

    // The largest parts first; one that cannot give more than was found is not looked at.
    private static Way Parted(Graph graph, bool isBare)
    {
        Way best = Way.None;
        int most = 0;
        foreach (int[] part in graph.Parts().OrderByDescending(p => p.Length))
        {
            if (part.Length > best.Least)
            {
                Way way = (part.Length > MostInPart ? new Way(1, part.Length, [0]) : InPart(graph.Only(part), isBare)).In(part);
                most = Math.Max(most, way.Most);
                best = way.Least > best.Least ? way : best;
            }
        }

        return best with { Most = Math.Max(most, best.Least) };
    }

    private static Way InPart(Graph part, bool isBare)
    {
        int most = isBare ? part.Count : MostOfWalk(part);
        var search = new WaySearch(part, isBare, most);
        bool isDone = search.Run();
        if (isDone)
        {
            return Way.Longest(search.Best);
        }

        var sweep = new WaySweep(part, isBare, search.Best);
        return sweep.Run() ? Way.Longest(sweep.Best) : new Way(sweep.Best.Length, most, sweep.Best);
    }

    // A walk has two ends, so it comes to two elements at the most that are joined with one other only; and where the elements fall into
    // two halves with no join inside, it changes sides at every step.
    private static int MostOfWalk(Graph part)
    {
        int ends = Enumerable.Range(0, part.Count).Count(i => part.Near(i).Length == 1);
        int most = part.Count - Math.Max(0, ends - 2);
        int[] distances = part.DistancesFrom(0);
        bool hasHalves = Enumerable.Range(0, part.Count).All(i => part.Near(i).ToArray().All(j => (distances[i] + distances[j]) % 2 == 1));
        int odd = distances.Count(d => d % 2 == 1);
        return hasHalves ? Math.Min(most, (2 * Math.Min(odd, part.Count - odd)) + 1) : most;
    }
}
