using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>Finds a calm place for points of which only the joins are known.</summary>
/// <remarks>Distances in the picture follow the number of joins between two points (stress majorization, Gansner, Koren, North, "Graph Drawing by Stress
/// Majorization", Graph Drawing 2004); of several beginnings, that with the fewest crossings is kept.</remarks>
internal static class JoinLayout
{
    private const int MostWork = 40_000_000;
    private const int MostBeginnings = 16;
    private const int MostRounds = 160;
    private const int MostJoinsCompared = 400;

    /// <summary>The points, a join being about 1 long, y downwards.</summary>
    public static ImmutableArray<Point> Place(int count, ImmutableArray<(int From, int To)> joins)
    {
        double[,]? apart = count <= 1200 ? Distances(count, joins) : null;
        if (apart is null || count < 2)
        {
            return Rows(count);
        }

        int rounds = Math.Clamp(MostWork / (count * count * 4), 4, MostRounds);
        int beginnings = Math.Clamp(MostWork / (count * count * rounds), 1, MostBeginnings);
        Point[] best = Enumerable.Range(0, beginnings)
            .Select(beginning => Settled(Beginning(count, beginning, apart), apart, rounds))
            .MinBy(points => Cost(points, apart, joins))!;
        return AlignedPoints.Of([.. Levelled(best, joins)], points => Near(points, joins));
    }

    private static ImmutableArray<Point> Rows(int count)
    {
        int across = (int)Math.Ceiling(Math.Sqrt(count));
        return [.. Enumerable.Range(0, count).Select(at => new Point(at % across, at / across))];
    }

    // How many joins lie between two points; parts that no join connects lie a little farther apart than anything else.
    private static double[,] Distances(int count, ImmutableArray<(int From, int To)> joins)
    {
        ILookup<int, int> next = joins.Concat(joins.Select(join => (join.To, join.From))).ToLookup(join => join.Item1, join => join.Item2);
        int[][] steps = [.. Enumerable.Range(0, count).Select(from => Steps(count, from, next))];
        int farthest = steps.Max(row => row.Max());
        var apart = new double[count, count];
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j < count; j++)
            {
                apart[i, j] = steps[i][j] >= 0 ? steps[i][j] : Math.Min(farthest, 2) + 0.5;
            }
        }

        return apart;
    }

    private static int[] Steps(int count, int from, ILookup<int, int> next)
    {
        int[] steps = [.. Enumerable.Repeat(-1, count)];
        steps[from] = 0;
        var open = new Queue<int>([from]);
        while (open.TryDequeue(out int at))
        {
            foreach (int to in next[at].Where(to => steps[to] < 0))
            {
                steps[to] = steps[at] + 1;
                open.Enqueue(to);
            }
        }

        return steps;
    }

    // Round a circle: in the order of the sheet, by distance from each of the first points, then in strides.
    private static Point[] Beginning(int count, int beginning, double[,] apart)
    {
        int[] order = [.. Enumerable.Range(0, count)];
        if (beginning > 0)
        {
            int from = (beginning - 1) * Math.Max(1, count / MostBeginnings) % count;
            order = [.. order.OrderBy(at => apart[from, at]).ThenBy(at => beginning % 2 == 0 ? at : -at)];
        }

        var points = new Point[count];
        for (int place = 0; place < count; place++)
        {
            points[order[place]] = OnCircle((double)place / count, count / 6.0);
        }

        return points;
    }

    // A point of the circle by the half-angle formula, which needs no sine; the steps are not quite even, which does no harm here.
    private static Point OnCircle(double share, double radius)
    {
        double side = share < 0.5 ? 1 : -1;
        double t = (4 * (share < 0.5 ? share : share - 0.5)) - 1;
        double square = t * t;
        return new Point(2 * t / (1 + square) * radius * side, (1 - square) / (1 + square) * radius * side);
    }

    private static Point[] Settled(Point[] points, double[,] apart, int rounds)
    {
        for (int round = 0; round < rounds; round++)
        {
            for (int i = 0; i < points.Length; i++)
            {
                points[i] = Pulled(points, i, apart);
            }
        }

        return points;
    }

    // Where all the others want the point, near ones most.
    private static Point Pulled(Point[] points, int i, double[,] apart)
    {
        (double x, double y, double weights) = (0, 0, 0);
        for (int j = 0; j < points.Length; j++)
        {
            if (j != i)
            {
                double weight = 1 / (apart[i, j] * apart[i, j]);
                (double dx, double dy) = (points[i].X - points[j].X, points[i].Y - points[j].Y);
                double length = Math.Max(1e-9, Math.Sqrt((dx * dx) + (dy * dy)));
                x += weight * (points[j].X + (apart[i, j] * dx / length));
                y += weight * (points[j].Y + (apart[i, j] * dy / length));
                weights += weight;
            }
        }

        return new Point(x / weights, y / weights);
    }

    private static double Cost(Point[] points, double[,] apart, ImmutableArray<(int From, int To)> joins) =>
        Stress(points, apart) + (joins.Length > MostJoinsCompared ? 0 : points.Length * ((3 * Crossings(points, joins)) + (4 * Near(points, joins))));

    private static double Stress(Point[] points, double[,] apart)
    {
        double stress = 0;
        for (int i = 0; i < points.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                double off = (Length(points[i], points[j]) / apart[i, j]) - 1;
                stress += off * off;
            }
        }

        return Math.Round(stress, 6);
    }

    private static int Crossings(Point[] points, ImmutableArray<(int From, int To)> joins)
    {
        int crossings = 0;
        for (int i = 0; i < joins.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                (int a, int b) = joins[i];
                (int c, int d) = joins[j];
                bool share = a == c || a == d || b == c || b == d;
                crossings += !share && Side(points[a], points[b], points[c]) != Side(points[a], points[b], points[d]) && Side(points[c], points[d], points[a]) != Side(points[c], points[d], points[b]) ? 1 : 0;
            }
        }

        return crossings;
    }

    // Points that lie on or near a join that is not theirs.
    private static int Near(IReadOnlyList<Point> points, ImmutableArray<(int From, int To)> joins) =>
        joins.Sum(join => Enumerable.Range(0, points.Count).Count(at => at != join.From && at != join.To && WayRouter.Distance(points[at], points[join.From], points[join.To]) < 0.35));

    private static bool Side(Point a, Point b, Point c) => ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X)) > 0;

    // Turned so that joins run level or upright as far as they can and the whole is rather wide than high; the first point at the upper left.
    private static IEnumerable<Point> Levelled(Point[] points, ImmutableArray<(int From, int To)> joins)
    {
        IEnumerable<(double X, double Y)> turns = joins.Take(MostJoinsCompared)
            .Select(join => Direction(points[join.From], points[join.To])).SelectMany(d => new[] { d, (X: -d.Y, Y: d.X) }).Append((1, 0));
        Point[] turned = turns.Select(turn => points.Select(p => new Point((p.X * turn.X) + (p.Y * turn.Y), (p.Y * turn.X) - (p.X * turn.Y))).ToArray())
            .MinBy(each => Math.Round(Slanted(each, joins) + (joins.Length * 0.3 * Math.Min(1.5, Height(each) / Math.Max(0.1, Width(each)))), 6))!;
        double middleX = turned.Average(p => p.X);
        double middleY = turned.Average(p => p.Y);
        double flipX = turned[0].X > middleX + 1e-6 ? -1 : 1;
        double flipY = turned[0].Y > middleY + 1e-6 ? -1 : 1;
        return turned.Select(p => new Point((p.X - middleX) * flipX, (p.Y - middleY) * flipY));
    }

    private static double Slanted(Point[] points, ImmutableArray<(int From, int To)> joins) => joins.Take(MostJoinsCompared).Sum(join =>
    {
        (double x, double y) = Direction(points[join.From], points[join.To]);
        return Math.Min(Math.Abs(x), Math.Abs(y));
    });

    private static double Width(Point[] points) => points.Max(p => p.X) - points.Min(p => p.X);

    private static double Height(Point[] points) => points.Max(p => p.Y) - points.Min(p => p.Y);

    private static (double X, double Y) Direction(Point from, Point to)
    {
        double length = Math.Max(1e-9, Length(from, to));
        return ((to.X - from.X) / length, (to.Y - from.Y) / length);
    }

    private static double Length(Point from, Point to)
    {
        (double dx, double dy) = (to.X - from.X, to.Y - from.Y);
        return Math.Sqrt((dx * dx) + (dy * dy));
    }
}
