using Rostrum.Play.Layout;

namespace Rostrum.Play.Formulas.Nodes;

/// <summary>The space one step away.</summary>
internal sealed class StepNode(Node from, Node direction, BoardTables tables) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int[][] steps = tables.Steps;
        int at = from.Value(run);
        int going = direction.Value(run);
        return going >= 0 && going < steps.Length ? Entry(steps[going], at) : Nothing;
    }
}

/// <summary>The space on the other side.</summary>
internal sealed class AcrossNode(Node one, Node other, BoardTables tables) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) =>
        one.Value(run) is var s && s >= 0 && other.Value(run) is var t && t >= 0 ? tables.Across(s, t) : Nothing;
}

/// <summary>The fewest steps from neighbour to neighbour.</summary>
internal sealed class DistanceNode(Node one, Node other, BoardTables tables) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) =>
        one.Value(run) is var s && s >= 0 && other.Value(run) is var t && t >= 0 ? tables.Distance(s, t) : Nothing;
}

/// <summary>The spaces strictly between two in one line.</summary>
internal sealed class BetweenSpacesNode(Node one, Node other, BoardTables tables) : TableMany
{
    /// <inheritdoc />
    public override ReadOnlySpan<int> Table(Run run) =>
        one.Value(run) is var s && s >= 0 && other.Value(run) is var t && t >= 0 ? tables.Between(s, t) : [];
}

/// <summary>The spaces from beside one on, while a truth holds.</summary>
internal sealed class RunNode(Node from, Node direction, int letter, Node condition, BoardTables tables) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        int start = from.Value(run);
        int going = direction.Value(run);
        if (start < 0 || going < 0)
        {
            return;
        }

        int[] steps = tables.Steps[going];
        int first = into.Count;
        for (int at = Entry(steps, start); at >= 0 && at != start && !into.Span[first..].Contains(at); at = steps[at])
        {
            run.Letters[letter] = at;
            if (!condition.Holds(run))
            {
                return;
            }

            into.Add(at);
        }
    }
}

/// <summary>The space after a run.</summary>
internal sealed class BeyondNode(Node from, ManyNode run1, Node direction, BoardTables tables) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int left = run1.Count(run);
        int at = from.Value(run);
        int going = direction.Value(run);
        for (; left >= 0 && at >= 0; left--)
        {
            at = going >= 0 ? Entry(tables.Steps[going], at) : Nothing;
        }

        return at;
    }
}

/// <summary>The next so many spaces of a board in reading order, round and round, some left out.</summary>
internal sealed class FollowingNode(Node from, Node number, ManyNode without, TableLayout layout, Rostrum.Text.SourceSpan where) : ManyNode
{
    private const int MostSpaces = 10_000;

    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        (int start, int left) = (from.Value(run), number.Value(run));
        if (start < 0 || left <= 0)
        {
            return;
        }

        if (left > MostSpaces)
        {
            throw new NotPlayableException($"A way of more than {MostSpaces:N0} spaces is not followed.", where);
        }

        Holder holder = layout.SpotHolder[start];
        Elements? room = without.Room(run);
        ReadOnlySpan<int> leftOut = without.Span(run, room);
        int before = into.Count;
        for (int step = 1; left > 0 && (step <= holder.Length || into.Count > before); step++)
        {
            int at = holder.First + ((start - holder.First + step) % holder.Length);
            if (!leftOut.Contains(at))
            {
                into.Add(at);
                left--;
            }
        }

        Leave(run, room);
    }
}

/// <summary>The spaces outside a set that touch it.</summary>
internal sealed class EdgeNode(ManyNode set, BoardTables tables) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        int[][] near = tables.Neighbours;
        int start = into.Count;
        Elements? room = set.Room(run);
        ReadOnlySpan<int> inside = set.Span(run, room);
        foreach (int space in inside)
        {
            foreach (int next in space < 0 ? [] : near[space])
            {
                if (!inside.Contains(next) && !into.Span[start..].Contains(next))
                {
                    into.Add(next);
                }
            }
        }

        Leave(run, room);
    }
}
