namespace Rostrum.Play.Formulas.Nodes;

/// <summary>Yes where there is none.</summary>
internal sealed class IsNothingNode(Node of) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => of.Value(run) == Nothing ? 1 : 0;
}

/// <summary>Yes where both are the same number.</summary>
internal sealed class SameNode(Node one, Node other) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => one.Value(run) is var value && value != Nothing && value == other.Value(run) ? 1 : 0;
}

/// <summary>Yes where it is a number that is known beforehand.</summary>
internal sealed class IsNode(Node of, int wanted) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => of.Value(run) == wanted && wanted != Nothing ? 1 : 0;
}

/// <summary>Yes where both are the same set, or the same list where both are lists.</summary>
internal sealed class SameManyNode(ManyNode one, ManyNode other, bool inOrder, Likeness likeness) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int mark = run.Mark;
        Elements? room = one.Room(run);
        Elements? otherRoom = other.Room(run);
        bool areSame = likeness.AreSame(run, one.Span(run, room), other.Span(run, otherRoom), inOrder);
        Leave(run, room, otherRoom);
        run.Release(mark);
        return areSame ? 1 : 0;
    }

    private static void Leave(Run run, Elements? room, Elements? otherRoom)
    {
        ManyNode.Leave(run, room);
        ManyNode.Leave(run, otherRoom);
    }
}

/// <summary>Yes where the first number is not below the second.</summary>
internal sealed class AtLeastNode(Node one, Node other) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) =>
        one.Value(run) is var a && a != Nothing && other.Value(run) is var b && b != Nothing && a >= b ? 1 : 0;
}

/// <summary>Yes where the first number is above the second.</summary>
internal sealed class MoreThanNode(Node one, Node other) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) =>
        one.Value(run) is var a && a != Nothing && other.Value(run) is var b && b != Nothing && a > b ? 1 : 0;
}

/// <summary>Yes from one number to another, both included.</summary>
internal sealed class BetweenNode(Node number, Node low, Node high) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        (int n, int from, int to) = (number.Value(run), low.Value(run), high.Value(run));
        return n != Nothing && from != Nothing && to != Nothing && n >= from && n <= to ? 1 : 0;
    }
}

/// <summary>Yes where a spot is in a list that a table gives for another: a neighbour of it.</summary>
internal sealed class NextToNode(Node one, Node other, int[][] near) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) =>
        one.Value(run) is var a && a >= 0 && other.Value(run) is var b && b >= 0 && near[a].AsSpan().Contains(b) ? 1 : 0;
}

/// <summary>Yes where an element is in a set.</summary>
internal sealed class InNode(Node element, ManyNode many, Likeness likeness) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int mark = run.Mark;
        int value = element.Value(run);
        if (value == Nothing)
        {
            return 0;
        }

        Elements? room = many.Room(run);
        bool isIn = likeness.IsIn(run, value, many.Span(run, room));
        ManyNode.Leave(run, room);
        run.Release(mark);
        return isIn ? 1 : 0;
    }
}
