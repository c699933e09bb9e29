using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>A corner of a cell, counted in steps of the board's own grid, y upwards.</summary>
internal readonly record struct GridCorner(int X, int Y);

/// <summary>Finds the outer edge of cells that lie side by side, whatever shape they have together.</summary>
/// <remarks>Walks round the cells with the inside on the right hand; a hole becomes a contour of its own.</remarks>
internal static class OutlineTracer
{
    /// <summary>The contours, without corners in the middle of a straight edge.</summary>
    /// <param name="cells">The corners of each cell, clockwise as they are seen.</param>
    public static ImmutableArray<ImmutableArray<GridCorner>> Trace(IEnumerable<ImmutableArray<GridCorner>> cells)
    {
        Dictionary<GridCorner, List<GridCorner>> edges = Edges(cells);
        var contours = ImmutableArray.CreateBuilder<ImmutableArray<GridCorner>>();
        while (edges.Count > 0)
        {
            contours.Add(Bends(Walk(edges)));
        }

        return contours.ToImmutable();
    }

    /// <summary>The contours as a shape whose edges are moved outwards.</summary>
    /// <param name="contours">From <see cref="Trace"/>.</param>
    /// <param name="place">Where a corner lies in the scene.</param>
    /// <param name="by">How far outwards; inwards for a negative amount.</param>
    public static PathData Grown(ImmutableArray<ImmutableArray<GridCorner>> contours, Func<GridCorner, Point> place, double by) =>
        contours.Aggregate(PathData.Empty, (path, contour) => path.And(PathData.Polygon(Grown([.. contour.Select(place)], by))));

    private static IEnumerable<Point> Grown(ImmutableArray<Point> corners, double by)
    {
        for (int i = 0; i < corners.Length; i++)
        {
            (double inX, double inY) = Direction(corners[(i + corners.Length - 1) % corners.Length], corners[i]);
            (double outX, double outY) = Direction(corners[i], corners[(i + 1) % corners.Length]);

            // Outside is on the left hand: each direction turned by a quarter. Both edges move, so their corner moves along the bisector.
            double share = by / (1 + (inX * outX) + (inY * outY));
            yield return corners[i].Moved((inY + outY) * share, (-inX - outX) * share);
        }
    }

    private static (double X, double Y) Direction(Point from, Point to)
    {
        double length = double.Hypot(to.X - from.X, to.Y - from.Y);
        return ((to.X - from.X) / length, (to.Y - from.Y) / length);
    }

    // A side that two cells share runs once each way and is no edge.
    private static Dictionary<GridCorner, List<GridCorner>> Edges(IEnumerable<ImmutableArray<GridCorner>> cells)
    {
        var sides = new HashSet<(GridCorner From, GridCorner To)>();
        foreach (ImmutableArray<GridCorner> corners in cells)
        {
            for (int i = 0; i < corners.Length; i++)
            {
                sides.Add((corners[i], corners[(i + 1) % corners.Length]));
            }
        }

        return sides.Where(side => !sides.Contains((side.To, side.From)))
            .GroupBy(side => side.From, side => side.To)
            .ToDictionary(from => from.Key, to => to.ToList());
    }

    private static List<GridCorner> Walk(Dictionary<GridCorner, List<GridCorner>> edges)
    {
        GridCorner start = edges.Keys.MinBy(corner => (corner.X, corner.Y));
        GridCorner from = start;
        (int X, int Y) step = default;
        List<GridCorner> walked = [];
        do
        {
            walked.Add(from);
            GridCorner to = edges[from].MaxBy(next => RightTurn(step, Step(from, next)));
            edges[from].Remove(to);
            if (edges[from].Count == 0)
            {
                edges.Remove(from);
            }

            step = Step(from, to);
            from = to;
        }
        while (from != start);

        return walked;
    }

    private static ImmutableArray<GridCorner> Bends(List<GridCorner> walked) =>
    [
        .. walked.Where((at, i) => RightTurn(Step(walked[(i + walked.Count - 1) % walked.Count], at), Step(at, walked[(i + 1) % walked.Count])) != 0),
    ];

    private static (int X, int Y) Step(GridCorner from, GridCorner to) => (to.X - from.X, to.Y - from.Y);

    // Where cells meet only at a corner, turning right keeps to the same cell.
    private static int RightTurn((int X, int Y) before, (int X, int Y) after) => (before.Y * after.X) - (before.X * after.Y);
}
