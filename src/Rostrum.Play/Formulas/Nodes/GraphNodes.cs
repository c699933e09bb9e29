using Rostrum.Play.Layout;
using Rostrum.Rulings.Evaluation;
using Rostrum.Text;

namespace Rostrum.Play.Formulas.Nodes;

/// <summary>The length of the longest way through joined elements.</summary>
internal sealed class LongestWayNode(ManyNode through, JoinTest join, string measure, SourceSpan at) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int mark = run.Mark;
        int[] elements = JoinedGraph.Elements(run, through);
        Way way = Ways.Longest(JoinedGraph.Of(run, elements, join), measure);
        run.Release(mark);
        return way.IsLongest ? way.Least : throw new NotPlayableException($"{Ways.LimitInWords(measure)[..1].ToUpperInvariant()}{Ways.LimitInWords(measure)[1..]}.", at);
    }
}

/// <summary>The length of the longest way counted as a group: the size of the largest part.</summary>
internal sealed class LargestGroupNode(GroupsNode groups) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => groups.Largest(run);
}

/// <summary>How many pairs can be made at the most.</summary>
internal sealed class MostPairsNode(ManyNode through, ManyNode others, JoinTest join, SourceSpan at) : Node
{
    private const int MostPaired = 200;

    /// <inheritdoc />
    public override int Value(Run run)
    {
        int mark = run.Mark;
        int[] ones = JoinedGraph.Elements(run, through);
        int[] other = JoinedGraph.Elements(run, others);
        if (ones.Length > MostPaired || other.Length > MostPaired)
        {
            throw new NotPlayableException($"Pairs are not worked out above {MostPaired} by {MostPaired}.", at);
        }

        int pairs = Matching.Most(ones.Length, other.Length, (i, j) => join.Asks(run, ones[i], other[j])).Length;
        run.Release(mark);
        return pairs;
    }
}

/// <summary>The fewest steps between spaces of a board that a word joins.</summary>
internal sealed class JoinedDistance(Node one, Node other, JoinTest join, TableLayout layout, SourceSpan where) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        (int from, int to) = (one.Value(run), other.Value(run));
        if (from < 0 || to < 0 || !layout.SpotHolder[from].Holds(to))
        {
            return Nothing;
        }

        Holder holder = layout.SpotHolder[from];
        if (holder.Length > Ways.MostElements)
        {
            throw new NotPlayableException($"A distance by a word is not worked out above {Ways.MostElements} spaces.", where);
        }

        Elements steps = run.Rent();
        Elements waiting = run.Rent();
        int found = Steps(run, holder, from, to, steps, waiting);
        run.Return(waiting);
        run.Return(steps);
        return found;
    }

    // Breadth first, from space to space that the word joins.
    private int Steps(Run run, Holder holder, int from, int to, Elements steps, Elements waiting)
    {
        steps.Fill(-1, holder.Length);
        steps[from - holder.First] = 0;
        waiting.Add(from);
        for (int next = 0; next < waiting.Count && steps[to - holder.First] < 0; next++)
        {
            int at = waiting[next];
            for (int spot = holder.First; spot < holder.First + holder.Length; spot++)
            {
                if (steps[spot - holder.First] < 0 && join.Joins(run, at, spot))
                {
                    steps[spot - holder.First] = steps[at - holder.First] + 1;
                    waiting.Add(spot);
                }
            }
        }

        return steps[to - holder.First] is var found && found < 0 ? Nothing : found;
    }
}

/// <summary>Elements as a graph for the algorithms of graphs.</summary>
internal static class JoinedGraph
{
    /// <summary>The elements of a set as an array.</summary>
    public static int[] Elements(Run run, ManyNode set)
    {
        Elements? room = set.Room(run);
        int[] elements = set.Span(run, room).ToArray();
        ManyNode.Leave(run, room);
        return elements;
    }

    /// <summary>Which of the elements belong together.</summary>
    public static Graph Of(Run run, int[] elements, JoinTest join)
    {
        bool[,] joined = new bool[elements.Length, elements.Length];
        for (int i = 0; i < elements.Length; i++)
        {
            for (int j = i + 1; j < elements.Length; j++)
            {
                joined[i, j] = joined[j, i] = join.Joins(run, elements[i], elements[j]);
            }
        }

        return Graph.Of(elements.Length, (i, j) => joined[i, j]);
    }
}
