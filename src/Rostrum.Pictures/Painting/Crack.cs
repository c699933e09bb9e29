using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>Breaks a silhouette of the unit square in two along a jagged gap.</summary>
/// <remarks>Sliding every height sideways by the jag turns the gap into an upright strip, so that each contour can be cut at a
/// straight line (Sutherland and Hodgman, "Reentrant polygon clipping", Communications of the ACM 17(1), 1974, 32-42).</remarks>
internal static class Crack
{
    // Where the middle of the gap runs: height (0 top, 1 bottom) and place from the left.
    private static readonly ImmutableArray<Point> Jag =
        [new(0.78, -0.2), new(0.72, 0.1), new(0.86, 0.28), new(0.64, 0.46), new(0.8, 0.64), new(0.62, 0.82), new(0.72, 1.2)];

    private const double HalfGap = 0.045;

    // The smaller part leans away from the larger one, turned about its foot.
    private const double LeanDegrees = 13;

    private const int StepsPerCurve = 10;

    /// <summary>The two parts, the standing one first; even-odd like the whole.</summary>
    public static (PathData Standing, PathData Leaning) Break(PathData whole)
    {
        ImmutableArray<ImmutableArray<Point>> contours = [.. Flattened(whole)];
        PathData standing = Part(contours, side: -1);
        PathData leaning = Part(contours, side: 1);
        return (standing, leaning.Mapped(Leaned));
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

    private static Point Leaned(Point point)
    {
        const double PivotX = 0.86;
        const double PivotY = 1;
        (double sine, double cosine) = Math.SinCos(double.DegreesToRadians(LeanDegrees));
        (double x, double y) = (point.X - PivotX, point.Y - PivotY);
        return new Point(PivotX + (x * cosine) - (y * sine), PivotY + (x * sine) + (y * cosine));
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
