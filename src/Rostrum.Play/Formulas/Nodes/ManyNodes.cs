namespace Rostrum.Play.Formulas.Nodes;

/// <summary>Elements that never change.</summary>
internal sealed class ConstantMany(int[] elements) : TableMany
{
    /// <summary>No elements.</summary>
    public static ConstantMany Empty { get; } = new([]);

    /// <summary>What they always are.</summary>
    public int[] Always => elements;

    /// <inheritdoc />
    public override ReadOnlySpan<int> Table(Run run) => elements;
}

/// <summary>Elements that a table gives for a value: the neighbours of a space, the spaces of a line.</summary>
internal sealed class TabledMany(Node of, Func<int[][]> tables) : TableMany
{
    private int[][]? _tables;

    /// <inheritdoc />
    public override ReadOnlySpan<int> Table(Run run)
    {
        int[][] all = _tables ??= tables();
        int at = of.Value(run);
        return at >= 0 && at < all.Length ? all[at] : [];
    }
}

/// <summary>A set or list that a letter stands for.</summary>
internal sealed class ManyLetter(int at) : TableMany
{
    /// <inheritdoc />
    public override int Value(Run run) => run.Letters[at];

    /// <inheritdoc />
    public override ReadOnlySpan<int> Table(Run run) => run.Letters[at] is var list && list == Nothing ? [] : run.List(list).Span;
}

/// <summary>A set or list that the state keeps.</summary>
internal sealed class ManyState(int at) : TableMany
{
    /// <inheritdoc />
    public override ReadOnlySpan<int> Table(Run run) => run.State.Sets[at];
}

/// <summary>A set or list that is itself an element or a name, such as the second of several groups; empty where there is none.</summary>
internal sealed class LooseMany(Node inner) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        if (inner.Value(run) is var list && list != Nothing)
        {
            into.AddRange(run.List(list).Span);
        }
    }
}

/// <summary>Several formulas as a list.</summary>
internal sealed class ListedNode(Node[] items) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        foreach (Node item in items)
        {
            into.Add(item.Value(run));
        }
    }

    /// <inheritdoc />
    public override int Count(Run run) => items.Length;
}

/// <summary>The elements of one set that are not in another.</summary>
internal sealed class ExceptNode(ManyNode from, ManyNode what, Likeness likeness) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        Elements? room = from.Room(run);
        Elements? without = what.Room(run);
        ReadOnlySpan<int> others = what.Span(run, without);
        foreach (int element in from.Span(run, room))
        {
            // A test of nothing is no, so nothing is never taken out.
            if (element == Nothing || !likeness.IsIn(run, element, others))
            {
                into.Add(element);
            }
        }

        Leave(run, room);
        Leave(run, without);
    }
}

/// <summary>The elements of either set, each once.</summary>
internal sealed class UnionNode(ManyNode one, ManyNode other, Likeness likeness) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        int start = into.Count;
        AddNew(run, one, into, start, likeness);
        AddNew(run, other, into, start, likeness);
    }

    /// <summary>Adds the elements that are not there yet, looking back as far as a start.</summary>
    public static void AddNew(Run run, ManyNode set, Elements into, int start, Likeness likeness)
    {
        Elements? room = set.Room(run);
        foreach (int element in set.Span(run, room))
        {
            if (!likeness.IsIn(run, element, into.Span[start..]))
            {
                into.Add(element);
            }
        }

        Leave(run, room);
    }
}

/// <summary>An element of a list by its number.</summary>
internal sealed class ItemNode(ManyNode list, Node number) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int at = number.Value(run);
        Elements? room = list.Room(run);
        ReadOnlySpan<int> elements = list.Span(run, room);
        int item = at >= 1 && at <= elements.Length ? elements[at - 1] : Nothing;
        ManyNode.Leave(run, room);
        return item;
    }
}

/// <summary>The last element of a list.</summary>
internal sealed class LastNode(ManyNode list) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        Elements? room = list.Room(run);
        ReadOnlySpan<int> elements = list.Span(run, room);
        int item = elements.IsEmpty ? Nothing : elements[^1];
        ManyNode.Leave(run, room);
        return item;
    }
}
