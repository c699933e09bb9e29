namespace Rostrum.Play.Formulas.Nodes;

/// <summary>Yes where both are.</summary>
internal sealed class BothNode(Node one, Node other) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => one.Holds(run) && other.Holds(run) ? 1 : 0;
}

/// <summary>Yes where all are.</summary>
internal sealed class EachNode(Node[] truths) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        foreach (Node truth in truths)
        {
            if (!truth.Holds(run))
            {
                return 0;
            }
        }

        return 1;
    }
}

/// <summary>Yes where one of them is.</summary>
internal sealed class OneNode(Node[] truths) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        foreach (Node truth in truths)
        {
            if (truth.Holds(run))
            {
                return 1;
            }
        }

        return 0;
    }
}

/// <summary>The other way round.</summary>
internal sealed class NotNode(Node truth) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => truth.Holds(run) ? 0 : 1;
}

/// <summary>One of two by a truth.</summary>
internal sealed class IfNode(Node condition, Node then, Node otherwise) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => condition.Holds(run) ? then.Value(run) : otherwise.Value(run);
}

/// <summary>One of two sets or lists by a truth.</summary>
internal sealed class ManyIf(Node condition, ManyNode then, ManyNode otherwise) : ManyNode
{
    /// <inheritdoc />
    public override bool NeedsRoom => then.NeedsRoom || otherwise.NeedsRoom;

    /// <inheritdoc />
    public override void Fill(Run run, Elements into) => (condition.Holds(run) ? then : otherwise).Fill(run, into);

    /// <inheritdoc />
    public override ReadOnlySpan<int> Span(Run run, Elements? room) => (condition.Holds(run) ? then : otherwise).Span(run, room);
}
