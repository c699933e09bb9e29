using Rostrum.Play.Layout;
using Rostrum.Text;

namespace Rostrum.Play.Formulas.Nodes;

/// <summary>A number made of two; nothing stays nothing.</summary>
internal abstract class SignNode(Node one, Node other) : Node
{
    /// <inheritdoc />
    public sealed override int Value(Run run)
    {
        int a = one.Value(run);
        int b = other.Value(run);
        return a == Nothing || b == Nothing ? Nothing : Join(a, b);
    }

    /// <summary>The number made of both.</summary>
    protected abstract int Join(int one, int other);
}

/// <summary>The sum.</summary>
internal sealed class PlusNode(Node one, Node other) : SignNode(one, other)
{
    /// <inheritdoc />
    protected override int Join(int one, int other) => one + other;
}

/// <summary>The first less the second.</summary>
internal sealed class MinusNode(Node one, Node other) : SignNode(one, other)
{
    /// <inheritdoc />
    protected override int Join(int one, int other) => one - other;
}

/// <summary>The product.</summary>
internal sealed class TimesNode(Node one, Node other) : SignNode(one, other)
{
    /// <inheritdoc />
    protected override int Join(int one, int other) => one * other;
}

/// <summary>How far apart.</summary>
internal sealed class DifferenceNode(Node one, Node other) : SignNode(one, other)
{
    /// <inheritdoc />
    protected override int Join(int one, int other) => Math.Abs(one - other);
}

/// <summary>A division, rounded.</summary>
internal sealed class DividedNode(Node one, Node other, Func<long, long, long> round, SourceSpan at) : SignNode(one, other)
{
    /// <inheritdoc />
    protected override int Join(int one, int other) =>
        other > 0 ? (int)round(one, other) : throw new NotPlayableException("A division by 0 or less has no result.", at);
}

/// <summary>The number with the other sign.</summary>
internal sealed class NegativeNode(Node of) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => of.Value(run) is var value && value == Nothing ? Nothing : -value;
}

/// <summary>All numbers from a low to a high one.</summary>
internal sealed class RangeNode(Node low, Node high, SourceSpan at) : ManyNode
{
    private const int MostElements = 10_000;

    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        (int from, int to) = (low.Value(run), high.Value(run));
        if (from == Nothing || to == Nothing)
        {
            return;
        }

        if ((long)to - from >= MostElements)
        {
            throw new NotPlayableException($"A list of more than {MostElements:N0} numbers is not gone through.", at);
        }

        for (int n = from; n <= to; n++)
        {
            into.Add(n);
        }
    }
}
