using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>Breaks a silhouette of the unit square in two along a jagged gap.</summary>
/// <remarks>Sliding every height sideways by the jag turns the gap into an upright strip, so that each contour can be cut at a
/// straight line (Sutherland and Hodgman, "Reentrant polygon clipping", Communications of the ACM 17(1), 1974, 32-42).</remarks>
internal static class Crack
{
    // Where the middle of the gap runs: place from the left, height (0 top, 1 bottom).
    private static readonly ImmutableArray<Point> Jag =
        [new(0.52, -0.2), new(0.46, 0.06), new(0.6, 0.24), new(0.41, 0.44), new(0.6, 0.62), new(0.42, 0.82), new(0.52, 1.2)];

    private const double HalfGap = 0.035;

    // Both parts lean outwards, each turned about the inner corner of its foot, so that the gap is widest at the top.
    private const double LeanDegrees = 10;

    private const double FootFromMiddle = 0.12;

    private const int StepsPerCurve = 10;

    /// <summary>The two parts, the left one first; even-odd like the whole.</summary>
    /// <param name="whole">A silhouette, or an emblem in the coordinates of its silhouette.</param>
    public static (PathData Left, PathData Right) Break(PathData whole)
    {
        ImmutableArray<ImmutableArray<Point>> contours = [.. Flattened(whole)];
        return (Part(contours, -1).Mapped(point => Leaned(point, -1)), Part(contours, 1).Mapped(point => Leaned(point, 1)));
    }

    private static PathData Part(ImmutableArray<ImmutableArray<Point>> contours, int side) => contours
        .Select(contour => Cut(contour, side))
        .Where(part => part.Length >= 3)
        .Aggregate(PathData.Empty, (sum, part) => sum.And(PathData.Polygon(part)));

    private static ImmutableArray<Point> Cut(ImmutableArray<Point> contour, int side)
    {
        ImmutableArray<Point>.Builder kept = ImmutableArray.CreateBuilder<Point>();
        for (int i = 0; i < contour.Length; i++)
        {
            Point from = contour[i];
            Point to = contour[(i + 1) % contour.Length];
            foreach ((Point a, Point b) in Pieces(from, to))
            {
                AppendKept(kept, a, b, side);
            }
        }

        return kept.ToImmutable();
    }

    private static void AppendKept(ImmutableArray<Point>.Builder kept, Point from, Point to, int side)
    {
        double before = side * Beyond(from) - HalfGap;
        double after = side * Beyond(to) - HalfGap;
        if (before >= 0)
        {
            kept.Add(from);
        }

        if (before >= 0 != after >= 0)
        {
            kept.Add(Between(from, to, before / (before - after)));
        }
    }

    // The edge cut at every height where the jag turns, so that each piece stays straight when slid.
    private static IEnumerable<(Point From, Point To)> Pieces(Point from, Point to)
    {
        Point last = from;
        IEnumerable<double> shares = Jag
            .Select(turn => (turn.Y - from.Y) / (to.Y - from.Y))
            .Where(share => share is > 0 and < 1)
            .Order();
        foreach (double share in shares)
        {
            Point next = Between(from, to, share);
            yield return (last, next);
            last = next;
        }

        yield return (last, to);
    }

    private static double Beyond(Point point)
    {
        int turn = 1;
        while (turn < Jag.Length - 1 && Jag[turn].Y < point.Y)
        {
            turn++;
        }

        Point above = Jag[turn - 1];
        Point below = Jag[turn];
        return point.X - above.X - ((below.X - above.X) * (point.Y - above.Y) / (below.Y - above.Y));
    }

    private static Point Leaned(Point point, int side)
    {
        double pivot = 0.5 + (side * FootFromMiddle);
        (double sine, double cosine) = Math.SinCos(double.DegreesToRadians(side * LeanDegrees));
        (double x, double y) = (point.X - pivot, point.Y - 1);
        return new Point(pivot + (x * cosine) - (y * sine), 1 + (x * sine) + (y * cosine));
    }

    private static IEnumerable<ImmutableArray<Point>> Flattened(PathData shape)
    {
        List<Point> contour = [];
        foreach (PathStep step in shape.Steps)
        {
            if (step is PathStep.Start && contour.Count > 0)
            {
                yield return [.. contour];
                contour.Clear();
            }

            contour.AddRange(Corners(step, contour));
        }

        yield return [.. contour];
    }

    private static ImmutableArray<Point> Corners(PathStep step, List<Point> before) => step switch
    {
        PathStep.Start start => [start.To],
        PathStep.Straight line => [line.To],
        PathStep.Curve curve => [.. Enumerable.Range(1, StepsPerCurve).Select(i => OnCurve(before[^1], curve, (double)i / StepsPerCurve))],
        _ => [],
    };

    private static Point OnCurve(Point from, PathStep.Curve curve, double share)
    {
        Point a = Between(from, curve.First, share);
        Point b = Between(curve.First, curve.Second, share);
        Point c = Between(curve.Second, curve.To, share);
        return Between(Between(a, b, share), Between(b, c, share), share);
    }

    private static Point Between(Point from, Point to, double share) =>
        new(from.X + (share * (to.X - from.X)), from.Y + (share * (to.Y - from.Y)));
}
