using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>Brings points that lie almost on one upright or level line onto it.</summary>
internal static class AlignedPoints
{
    // Of the length of a join: next neighbours in a line may differ so much, its ends twice as much.
    private const double Near = 0.3;

    /// <summary>The points, aligned as far as no more joins come near a point that is not theirs.</summary>
    public static ImmutableArray<Point> Of(ImmutableArray<Point> points, Func<ImmutableArray<Point>, int> nearMisses)
    {
        ImmutableArray<double> across = Aligned([.. points.Select(point => point.X)]);
        ImmutableArray<double> down = Aligned([.. points.Select(point => point.Y)]);
        ImmutableArray<Point>[] choices =
        [
            [.. across.Zip(down, (x, y) => new Point(x, y))],
            [.. points.Zip(across, (point, x) => point with { X = x })],
            [.. points.Zip(down, (point, y) => point with { Y = y })],
            points,
        ];
        int least = nearMisses(points);
        return choices.First(choice => nearMisses(choice) <= least);
    }

    private static ImmutableArray<double> Aligned(ImmutableArray<double> values)
    {
        int[] order = [.. Enumerable.Range(0, values.Length).OrderBy(at => values[at]).ThenBy(at => at)];
        double[] aligned = [.. values];
        for (int first = 0; first < order.Length;)
        {
            int next = first + 1;
            while (next < order.Length && values[order[next]] - values[order[next - 1]] < Near && values[order[next]] - values[order[first]] < 2 * Near)
            {
                next++;
            }

            double mean = order[first..next].Average(at => values[at]);
            foreach (int at in order[first..next])
            {
                aligned[at] = mean;
            }

            first = next;
        }

        return [.. aligned];
    }
}
