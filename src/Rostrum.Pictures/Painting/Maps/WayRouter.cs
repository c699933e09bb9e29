using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>Draws the lines of a map: straight where nothing lies between, else bent round it.</summary>
internal sealed class WayRouter(ImmutableArray<Point> centres, ImmutableArray<Box> prints, double shelf)
{
    private const int Samples = 24;

    private static readonly ImmutableArray<double> Bends = [0, 0.5, -0.5, 0.9, -0.9, 1.4, -1.4, 2, -2, 2.8, -2.8, 3.8, -3.8];

    /// <summary>The line of each join.</summary>
    public IEnumerable<PathData> Ways(ImmutableArray<(int From, int To)> joins) => joins.Select(Way);

    /// <summary>How far a point is from the straight line between two.</summary>
    public static double Distance(Point point, Point from, Point to)
    {
        (double dx, double dy) = (to.X - from.X, to.Y - from.Y);
        double along = Math.Clamp((((point.X - from.X) * dx) + ((point.Y - from.Y) * dy)) / Math.Max(1e-12, (dx * dx) + (dy * dy)), 0, 1);
        (double x, double y) = (point.X - from.X - (along * dx), point.Y - from.Y - (along * dy));
        return Math.Sqrt((x * x) + (y * y));
    }

    private PathData Way((int From, int To) join)
    {
        double bend = Bends.FirstOrDefault(bend => IsFree(join, bend), 0);
        (Point from, Point to) = (centres[join.From], centres[join.To]);
        if (bend == 0)
        {
            return PathData.Polyline(from, to);
        }

        (Point first, Point second) = Controls(from, to, bend);
        return PathData.Empty.From(from.X, from.Y).Curve(first.X, first.Y, second.X, second.Y, to.X, to.Y);
    }

    private bool IsFree((int From, int To) join, double bend)
    {
        (Point from, Point to) = (centres[join.From], centres[join.To]);
        (Point first, Point second) = Controls(from, to, bend);
        Point[] way = [.. Enumerable.Range(0, Samples + 1).Select(at => On(from, first, second, to, (double)at / Samples))];
        return !Enumerable.Range(0, centres.Length).Any(at => at != join.From && at != join.To && Hits(way, at));
    }

    private bool Hits(Point[] way, int space)
    {
        Box print = prints[space].Moved(centres[space].X, centres[space].Y).Grown(shelf * 0.07);
        return way.Any(point => point.X > print.X && point.X < print.Right && point.Y > print.Y && point.Y < print.Bottom);
    }

    // Both controls lie at one side of the straight line, as many shelves off it.
    private (Point First, Point Second) Controls(Point from, Point to, double bend)
    {
        (double dx, double dy) = (to.X - from.X, to.Y - from.Y);
        double length = Math.Max(1e-9, Math.Sqrt((dx * dx) + (dy * dy)));
        (double x, double y) = (-dy / length * bend * shelf, dx / length * bend * shelf);
        return (new Point(from.X + (dx * 0.3) + x, from.Y + (dy * 0.3) + y), new Point(from.X + (dx * 0.7) + x, from.Y + (dy * 0.7) + y));
    }

    private static Point On(Point a, Point b, Point c, Point d, double t)
    {
        double s = 1 - t;
        (double w, double x, double y, double z) = (s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t);
        return new Point((w * a.X) + (x * b.X) + (y * c.X) + (z * d.X), (w * a.Y) + (x * b.Y) + (y * c.Y) + (z * d.Y));
    }
}
