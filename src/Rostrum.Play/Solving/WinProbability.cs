using Rostrum.Play.Course;
using Rostrum.Play.Layout;

namespace Rostrum.Play.Solving;

/// <summary>How likely the first seat wins where both play as well as can be.</summary>
/// <param name="Value">In [0, 1]; a game that both or neither win counts one half.</param>
/// <param name="Nodes">How many different decisions, chance events and ends there are.</param>
/// <param name="Sweeps">How often all values were worked out anew.</param>
/// <param name="LastChange">The greatest change of a value in the last sweep.</param>
public sealed record SolvedChances(double Value, int Nodes, int Sweeps, double LastChange);

/// <summary>The chance to win of two players who never err in a game with chance, where positions may come again: value iteration over all positions.</summary>
/// <remarks>
/// Each sweep works every value out anew from those that follow, the latest positions first, newer values at once in use (Gauss and Seidel's way). It ends when
/// no value changes by more than <see cref="Small"/>; the error of the result may be somewhat larger than that. Always in the same order, so always the same result.
/// </remarks>
internal static class WinProbability
{
    /// <summary>A change that is as good as none.</summary>
    public const double Small = 1e-12;

    /// <summary>More sweeps than this are not made.</summary>
    public const int MostSweeps = 100_000;

    /// <summary>The chance to win of the first seat.</summary>
    /// <param name="plan">A game of two.</param>
    /// <param name="from">Where it goes on; null for its begin.</param>
    /// <exception cref="NotPlayableException">Not two play, somebody decides in secret, there are too many positions, or the values come to no rest.</exception>
    public static SolvedChances Of(CoursePlan plan, TableState? from = null)
    {
        if (plan.Layout.Seats != 2)
        {
            throw new NotPlayableException("The chance to win is worked out for games of two players.");
        }

        return Iterate(PositionGraph.Of(plan, from ?? plan.Start(), GraphReach.Game, Measures.Outcome));
    }

    private static SolvedChances Iterate(PositionGraph graph)
    {
        double[] values = new double[graph.Count];
        for (int node = 0; node < values.Length; node++)
        {
            values[node] = graph.Kind(node) == PositionGraph.End ? (graph.Measured(node) + 1) / 2.0 : 0.5;
        }

        for (int sweep = 1; sweep <= MostSweeps; sweep++)
        {
            double change = Sweep(graph, values);
            if (change < Small)
            {
                return new SolvedChances(values[graph.Root], graph.Count, sweep, change);
            }
        }

        throw new NotPlayableException($"The chances to win have not come to rest after {MostSweeps:N0} sweeps.");
    }

    private static double Sweep(PositionGraph graph, double[] values)
    {
        double greatest = 0;
        for (int node = values.Length - 1; node >= 0; node--)
        {
            int kind = graph.Kind(node);
            if (kind == PositionGraph.End)
            {
                continue;
            }

            ReadOnlySpan<int> followers = graph.Followers(node);
            double value = kind == PositionGraph.Chance ? Mean(followers, graph.Weights(node), values) : Best(followers, kind == 0, values);
            greatest = Math.Max(greatest, Math.Abs(value - values[node]));
            values[node] = value;
        }

        return greatest;
    }

    private static double Mean(ReadOnlySpan<int> followers, ReadOnlySpan<long> weights, double[] values)
    {
        (double sum, long all) = (0, 0);
        for (int i = 0; i < followers.Length; i++)
        {
            sum += weights[i] * values[followers[i]];
            all += weights[i];
        }

        return sum / all;
    }

    private static double Best(ReadOnlySpan<int> followers, bool isFirstSeat, double[] values)
    {
        double best = values[followers[0]];
        foreach (int follower in followers)
        {
            best = isFirstSeat ? Math.Max(best, values[follower]) : Math.Min(best, values[follower]);
        }

        return best;
    }
}
