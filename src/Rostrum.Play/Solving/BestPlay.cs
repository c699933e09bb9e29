using Rostrum.Play.Course;
using Rostrum.Play.Layout;

namespace Rostrum.Play.Solving;

/// <summary>What best play of one player is worth on the average, exactly.</summary>
/// <param name="Value">The expected measure.</param>
/// <param name="Nodes">How many different decisions, chance events and ends there are.</param>
public sealed record ExpectedValue(Fraction Value, int Nodes);

/// <summary>Best play of one player against chance, over a turn or a whole game: at each decision the option that is worth most on the average.</summary>
internal static class BestPlay
{
    /// <summary>The expected measure under best play.</summary>
    /// <param name="plan">The game.</param>
    /// <param name="from">Where play goes on; it is not changed.</param>
    /// <param name="reach">Where it stops.</param>
    /// <param name="measure">What the player wants most of.</param>
    /// <exception cref="NotPlayableException">Two players decide, somebody decides in secret, or a position comes again.</exception>
    public static ExpectedValue Of(CoursePlan plan, TableState from, GraphReach reach, Measure measure)
    {
        PositionGraph graph = PositionGraph.Of(plan, from, reach, measure);
        RefuseSeveralPlayers(graph);
        var values = new Fraction?[graph.Count];
        foreach (int node in LastFirst(graph))
        {
            values[node] = ValueOf(graph, node, values);
        }

        return new ExpectedValue(values[graph.Root]!.Value, graph.Count);
    }

    private static void RefuseSeveralPlayers(PositionGraph graph)
    {
        int[] seats = [.. Enumerable.Range(0, graph.Count).Select(graph.Kind).Where(k => k >= 0).Distinct()];
        if (seats.Length > 1)
        {
            throw new NotPlayableException("More than one player decides here, so there is no best play of one of them alone.");
        }
    }

    private static Fraction ValueOf(PositionGraph graph, int node, Fraction?[] values)
    {
        if (graph.Kind(node) == PositionGraph.End)
        {
            return Fraction.Of(graph.Measured(node));
        }

        ReadOnlySpan<int> followers = graph.Followers(node);
        ReadOnlySpan<long> weights = graph.Weights(node);
        (Fraction best, Fraction sum, long all) = (values[followers[0]]!.Value, Fraction.Zero, 0);
        for (int i = 0; i < followers.Length; i++)
        {
            Fraction value = values[followers[i]]!.Value;
            best = value > best ? value : best;
            sum += value * Fraction.Of(weights[i]);
            all = checked(all + weights[i]);
        }

        return graph.Kind(node) == PositionGraph.Chance ? sum / Fraction.Of(all) : best;
    }

    // Every node behind all that follow it.
    private static List<int> LastFirst(PositionGraph graph)
    {
        var order = new List<int>(graph.Count);
        int[] next = new int[graph.Count];
        bool[] isDone = new bool[graph.Count];
        var stack = new Stack<int>([graph.Root]);
        next[graph.Root] = 1;
        while (stack.TryPeek(out int node))
        {
            ReadOnlySpan<int> followers = graph.Followers(node);
            if (next[node] > followers.Length)
            {
                isDone[stack.Pop()] = true;
                order.Add(node);
                continue;
            }

            int follower = followers[next[node]++ - 1];
            if (next[follower] == 0)
            {
                next[follower] = 1;
                stack.Push(follower);
            }
            else if (!isDone[follower])
            {
                throw new NotPlayableException("A position may come again here, so play may go on for ever; its exact value is not worked out.");
            }
        }

        return order;
    }
}
