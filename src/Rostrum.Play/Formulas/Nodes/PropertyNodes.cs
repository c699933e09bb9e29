using Rostrum.Play.Layout;

namespace Rostrum.Play.Formulas.Nodes;

/// <summary>A property of things by their class: fixed, or one of the changing values.</summary>
/// <param name="Fixed">By class, the value; <see cref="Node.Nothing"/> where things of the class have none, or where it changes.</param>
/// <param name="State">By class, which changing value it is; -1 where it does not change.</param>
/// <param name="First">By class, what is added to the changing value.</param>
internal sealed record PropertyTable(int[] Fixed, int[] State, int[] First)
{
    /// <summary>The value for a thing.</summary>
    public int Of(TableState state, int thing)
    {
        int of = state.Layout.ClassOf[thing];
        if (State[of] < 0)
        {
            return Fixed[of];
        }

        int value = state.StateOf(thing, State[of]);
        return value < 0 ? Node.Nothing : First[of] + value;
    }
}

/// <summary>A property of a thing; nothing for a thing of another kind.</summary>
internal sealed class PropertyNode(Node thing, PropertyTable table) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => thing.Value(run) is var at && at >= 0 ? table.Of(run.State, at) : Nothing;
}

/// <summary>A number by the class of a thing, whatever the state.</summary>
internal sealed class ClassNode(Node thing, int[] byClass) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => thing.Value(run) is var at && at >= 0 ? byClass[run.State.Layout.ClassOf[at]] : Nothing;
}

/// <summary>A formula by the class of a thing, such as a cell of a card.</summary>
/// <param name="thing">The thing.</param>
/// <param name="byClass">By class; null for nothing.</param>
internal sealed class CellNode(Node thing, Node?[] byClass) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) =>
        thing.Value(run) is var at && at >= 0 && byClass[run.State.Layout.ClassOf[at]] is { } cell ? cell.Value(run) : Nothing;
}

/// <summary>A set or list by the class of a thing.</summary>
internal sealed class ManyCell(Node thing, ManyNode?[] byClass) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        if (thing.Value(run) is var at && at >= 0)
        {
            byClass[run.State.Layout.ClassOf[at]]?.Fill(run, into);
        }
    }
}

/// <summary>One of several copies of a card: the lowest that lies on a board or in a place, else the first.</summary>
internal sealed class CardNode(int[] copies, int mostSpot) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int found = copies[0];
        int least = int.MaxValue;
        foreach (int copy in copies)
        {
            if (run.State.Spot(copy) is var spot && spot < mostSpot && spot < least)
            {
                (found, least) = (copy, spot);
            }
        }

        return found;
    }
}
