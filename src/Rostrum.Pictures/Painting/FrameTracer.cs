namespace Rostrum.Pictures;

/// <summary>Finds the outer edge of a board's frame, whatever shape its spaces have.</summary>
/// <remarks>Walks round the cells with the inside on the right hand; a hole in the board becomes a contour of its own.</remarks>
internal static class FrameTracer
{
    public static PathData Trace(BoardPlace place)
    {
        Dictionary<(int X, int Y), List<(int X, int Y)>> edges = Edges(place);
        PathData frame = PathData.Empty;
        while (edges.Count > 0)
        {
            frame = frame.And(PathData.Polygon(Corners(Walk(edges), place)));
        }

        return frame;
    }

    // Grid points count from the lower left corner of the board, y upwards. Each cell's sides run clockwise;
    // a side that two cells share is no edge.
    private static Dictionary<(int X, int Y), List<(int X, int Y)>> Edges(BoardPlace place)
    {
        Dictionary<(int X, int Y), List<(int X, int Y)>> edges = [];
        foreach ((int c, int r, _) in place.Spaces)
        {
            Add(edges, place.Has(c, r + 1), (c, r + 1), (c + 1, r + 1));
            Add(edges, place.Has(c + 1, r), (c + 1, r + 1), (c + 1, r));
            Add(edges, place.Has(c, r - 1), (c + 1, r), (c, r));
            Add(edges, place.Has(c - 1, r), (c, r), (c, r + 1));
        }

        return edges;
    }

    private static void Add(Dictionary<(int X, int Y), List<(int X, int Y)>> edges, bool shared, (int X, int Y) from, (int X, int Y) to)
    {
        if (!shared)
        {
            edges.TryAdd(from, []);
            edges[from].Add(to);
        }
    }

    private static List<(int X, int Y)> Walk(Dictionary<(int X, int Y), List<(int X, int Y)>> edges)
    {
        (int X, int Y) start = edges.Keys.Min();
        (int X, int Y) from = start;
        (int X, int Y) step = default;
        List<(int X, int Y)> walked = [];
        do
        {
            walked.Add(from);
            (int X, int Y) to = edges[from].MaxBy(next => RightTurn(step, (next.X - from.X, next.Y - from.Y)));
            edges[from].Remove(to);
            if (edges[from].Count == 0)
            {
                edges.Remove(from);
            }

            step = (to.X - from.X, to.Y - from.Y);
            from = to;
        }
        while (from != start);

        return walked;
    }

    // Where cells meet only at a corner, turning right keeps to the same cell.
    private static int RightTurn((int X, int Y) before, (int X, int Y) after) => (before.Y * after.X) - (before.X * after.Y);

    private static IEnumerable<Point> Corners(List<(int X, int Y)> walked, BoardPlace place)
    {
        double shelf = place.Measures.Shelf;
        for (int i = 0; i < walked.Count; i++)
        {
            (int X, int Y) at = walked[i];
            (int X, int Y) before = walked[(i + walked.Count - 1) % walked.Count];
            (int X, int Y) after = walked[(i + 1) % walked.Count];
            (int X, int Y) came = (at.X - before.X, at.Y - before.Y);
            (int X, int Y) goes = (after.X - at.X, after.Y - at.Y);
            if (came != goes)
            {
                // Outside is on the left hand: the direction turned by a quarter.
                double outX = (-came.Y - goes.Y) * place.Measures.FrameWidth;
                double outY = (came.X + goes.X) * place.Measures.FrameWidth;
                yield return new Point(place.Grid.X + (at.X * shelf) + outX, place.Grid.Bottom - (at.Y * shelf) - outY);
            }
        }
    }
}
