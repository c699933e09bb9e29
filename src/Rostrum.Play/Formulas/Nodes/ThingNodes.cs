using Rostrum.Play.Layout;

namespace Rostrum.Play.Formulas.Nodes;

/// <summary>The things of a look in some spots, lowest first, where none is larger than a spot; counted and found without a list.</summary>
/// <param name="spots">Where they are looked for.</param>
/// <param name="look">Which ones; null for all.</param>
internal sealed class ThingsNode(ManyNode spots, LookTest? look) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        TableState state = run.State;
        Elements? room = spots.Room(run);
        foreach (int spot in spots.Span(run, room))
        {
            for (int thing = spot < 0 ? TableState.None : state.Bottom(spot); thing != TableState.None; thing = state.Above(thing))
            {
                if (look is null || look.Holds(run, thing))
                {
                    into.Add(thing);
                }
            }
        }

        Leave(run, room);
    }

    /// <inheritdoc />
    public override int Count(Run run)
    {
        int count = 0;
        TableState state = run.State;
        Elements? room = spots.Room(run);
        foreach (int spot in spots.Span(run, room))
        {
            count += spot < 0 ? 0 : look is null ? state.Count(spot) : CountOn(run, state, spot);
        }

        Leave(run, room);
        return count;
    }

    /// <inheritdoc />
    public override bool Any(Run run)
    {
        bool isAny = false;
        TableState state = run.State;
        Elements? room = spots.Room(run);
        foreach (int spot in spots.Span(run, room))
        {
            if (spot >= 0 && (look is null ? state.Count(spot) > 0 : IsOn(run, state, spot)))
            {
                isAny = true;
                break;
            }
        }

        Leave(run, room);
        return isAny;
    }

    private int CountOn(Run run, TableState state, int spot)
    {
        int count = 0;
        for (int thing = state.Bottom(spot); thing != TableState.None; thing = state.Above(thing))
        {
            count += look!.Holds(run, thing) ? 1 : 0;
        }

        return count;
    }

    private bool IsOn(Run run, TableState state, int spot)
    {
        for (int thing = state.Bottom(spot); thing != TableState.None; thing = state.Above(thing))
        {
            if (look!.Holds(run, thing))
            {
                return true;
            }
        }

        return false;
    }
}

/// <summary>The elements of a set that have a look.</summary>
internal sealed class LookedFor(ManyNode many, LookTest look) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        Elements? room = many.Room(run);
        foreach (int element in many.Span(run, room))
        {
            if (element != Nothing && look.Holds(run, element))
            {
                into.Add(element);
            }
        }

        Leave(run, room);
    }
}

/// <summary>One element alone; none where it is nothing.</summary>
internal sealed class AloneNode(Node of) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        if (of.Value(run) is var value && value != Nothing)
        {
            into.Add(value);
        }
    }
}

/// <summary>Everything that a table gives for the elements of a set, in order: the spaces of several lines.</summary>
internal sealed class FlatNode(ManyNode outer, Func<int[][]> tables) : ManyNode
{
    private int[][]? _tables;

    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        int[][] all = _tables ??= tables();
        Elements? room = outer.Room(run);
        foreach (int element in outer.Span(run, room))
        {
            if (element >= 0 && element < all.Length)
            {
                into.AddRange(all[element]);
            }
        }

        Leave(run, room);
    }
}

/// <summary>The elements of all sets of a set of sets.</summary>
internal sealed class FlatLists(ManyNode outer) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        Elements? room = outer.Room(run);
        foreach (int list in outer.Span(run, room))
        {
            if (list != Nothing)
            {
                into.AddRange(run.List(list).Span);
            }
        }

        Leave(run, room);
    }
}

/// <summary>The only thing of a look; nothing where there is none.</summary>
internal sealed class OnlyNode(ManyNode all, string words, Rostrum.Text.SourceSpan at) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        Elements? room = all.Room(run);
        ReadOnlySpan<int> found = all.Span(run, room);
        (int count, int first) = (found.Length, found.IsEmpty ? Nothing : found[0]);
        ManyNode.Leave(run, room);
        return count <= 1 ? first : throw new NotPlayableException($"'the {words}' fits {count} of them, so nobody can say which is meant.", at);
    }
}

/// <summary>The topmost thing of a space or slot; nothing where it is empty.</summary>
internal sealed class TopNode(Node spot, bool[] isPart) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) =>
        spot.Value(run) is var at && at >= 0 && isPart[at] && run.State.TopThing(at) is var top && top != TableState.None ? top : Nothing;
}

/// <summary>How many things lie on a space or in a slot.</summary>
internal sealed class HeightNode(Node spot, bool[] isPart) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => spot.Value(run) is var at && at >= 0 && isPart[at] ? run.State.Count(at) : Nothing;
}

/// <summary>The spot in which a thing is.</summary>
internal sealed class SpotNode(Node thing) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => thing.Value(run) is var at && at >= 0 ? run.State.Spot(at) : Nothing;
}
