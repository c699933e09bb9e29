using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>Brings points so far apart that nothing round them overlaps.</summary>
internal static class MapSpread
{
    private const int MostRounds = 300;
    private const int MostPairs = 100_000_000;

    /// <summary>The points in scene units.</summary>
    /// <param name="points">In any unit, y downwards.</param>
    /// <param name="prints">What each takes round its middle, in scene units.</param>
    /// <param name="gap">What is to stay free between two, in scene units.</param>
    /// <param name="least">The least length of a unit, in scene units.</param>
    /// <param name="most">The most; where it is not enough, those that overlap are pushed apart.</param>
    public static ImmutableArray<Point> Spread(ImmutableArray<Point> points, ImmutableArray<Box> prints, double gap, double least, double most)
    {
        double chosen = Math.Clamp(Scale(points, prints, gap), least, Math.Max(least, most));
        Point[] placed = [.. points.Select(point => new Point(point.X * chosen, point.Y * chosen))];
        int rounds = Math.Clamp(MostPairs / Math.Max(1, placed.Length * placed.Length), 3, MostRounds);
        for (int round = 0; round < rounds && PushApart(placed, prints, gap); round++)
        {
        }

        return [.. placed];
    }

    /// <summary>The length of a unit with which points of a given map fill as much as their number asks for; two that nearly meet do not make it huge.</summary>
    public static double Roomy(ImmutableArray<Point> points, ImmutableArray<Box> prints, double gap)
    {
        double side = Math.Max(points.Max(point => point.X) - points.Min(point => point.X), points.Max(point => point.Y) - points.Min(point => point.Y));
        return side > 0 ? 1.3 * (3 + (2 * Math.Sqrt(prints.Length))) * (prints.Max(print => print.Width) + gap) / side : gap;
    }

    private static double Scale(ImmutableArray<Point> points, ImmutableArray<Box> prints, double gap)
    {
        double scale = 0;
        for (int i = 0; i < points.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                (double wide, double high) = Wanted(prints[i], prints[j], points[i].Y > points[j].Y, gap);
                scale = Math.Max(scale, Math.Min(wide / Math.Abs(points[i].X - points[j].X), high / Math.Abs(points[i].Y - points[j].Y)));
            }
        }

        return scale;
    }

    private static (double Wide, double High) Wanted(Box one, Box other, bool isBelow, double gap) =>
        ((one.Width + other.Width) / 2 + gap, (isBelow ? other.Bottom - one.Y : one.Bottom - other.Y) + gap);

    private static bool PushApart(Point[] placed, ImmutableArray<Box> prints, double gap)
    {
        bool moved = false;
        for (int i = 0; i < placed.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                (double dx, double dy) = (placed[i].X - placed[j].X, placed[i].Y - placed[j].Y);
                (double wide, double high) = Wanted(prints[i], prints[j], dy > 0, gap);
                (double lackX, double lackY) = (wide - Math.Abs(dx), high - Math.Abs(dy));
                if (lackX <= 1e-6 || lackY <= 1e-6)
                {
                    continue;
                }

                moved = true;
                (double x, double y) = lackX <= lackY ? ((dx < 0 ? -lackX : lackX) / 2, 0.0) : (0.0, (dy < 0 ? -lackY : lackY) / 2);
                placed[i] = placed[i].Moved(x * 1.02, y * 1.02);
                placed[j] = placed[j].Moved(-x * 1.02, -y * 1.02);
            }
        }

        return moved;
    }
}
