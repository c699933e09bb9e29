namespace Rostrum.Rulings.Evaluation;

/// <summary>The length of the longest way through joined elements, counted in elements.</summary>
internal static class Ways
{
    private const int MostElements = 64;
    private const int MostSteps = 2_000_000;

    /// <summary>The length; 0 where there are no elements; null where it would take too long.</summary>
    /// <param name="graph">What is joined.</param>
    /// <param name="measure"><c>walk</c>, <c>span</c>, <c>bare</c> or <c>group</c>.</param>
    public static int? Longest(Graph graph, string measure)
    {
        if (graph.Count == 0)
        {
            return 0;
        }

        return measure switch
        {
            "group" => graph.Parts().Max(p => p.Length),
            _ when graph.Count > MostElements => null,
            "span" => Enumerable.Range(0, graph.Count).Max(i => graph.DistancesFrom(i).Max()) + 1,
            _ => Search(graph, isBare: measure == "bare"),
        };
    }

    private static int? Search(Graph graph, bool isBare)
    {
        var search = new PathSearch(graph, isBare);
        for (int start = 0; start < graph.Count && search.StepsLeft > 0; start++)
        {
            search.From(start);
        }

        return search.StepsLeft > 0 ? search.Best : null;
    }

    /// <summary>Tries every way that comes to no element twice; a bare one has no two elements joined but those in a row.</summary>
    private sealed class PathSearch(Graph graph, bool isBare)
    {
        private readonly bool[] _isOn = new bool[graph.Count];

        public int StepsLeft { get; private set; } = MostSteps;

        public int Best { get; private set; }

        public void From(int start) => Go(start, 1);

        private void Go(int at, int length)
        {
            if (--StepsLeft <= 0)
            {
                return;
            }

            _isOn[at] = true;
            Best = Math.Max(Best, length);
            foreach (int next in graph.Near(at))
            {
                if (!_isOn[next] && (!isBare || IsBare(next, at)))
                {
                    Go(next, length + 1);
                }
            }

            _isOn[at] = false;
        }

        private bool IsBare(int next, int from)
        {
            foreach (int near in graph.Near(next))
            {
                if (near != from && _isOn[near])
                {
                    return false;
                }
            }

            return true;
        }
    }
}
