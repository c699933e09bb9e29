using System.Collections.Concurrent;
using Rostrum.Play.Layout;

namespace Rostrum.Play.Formulas.Nodes;

/// <summary>All straight lines of so many spaces of a board: lists that are made once for a board and a length.</summary>
internal sealed class StraightsNode(Node board, Node length, TableLayout layout) : ManyNode
{
    private readonly ConcurrentDictionary<(int Holder, int Length), Elements[]> _known = new();

    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        foreach (Elements line in Lines(run))
        {
            into.Add(run.Keep(line));
        }
    }

    /// <inheritdoc />
    public override int Count(Run run) => Lines(run).Length;

    private Elements[] Lines(Run run)
    {
        (int holder, int count) = (board.Value(run), length.Value(run));
        return holder < 0 || count <= 0 ? [] : _known.TryGetValue((holder, count), out Elements[]? lines) ? lines : Find(holder, count);
    }

    private Elements[] Find(int holder, int count)
    {
        Holder of = layout.Holders[holder];
        Elements[] lines = of.Geometry is null ? [] : [.. of.Geometry.Straights(count).Select(l => Elements.Of(BoardTables.Spots(of, l)))];
        return _known.GetOrAdd((holder, count), lines);
    }
}
