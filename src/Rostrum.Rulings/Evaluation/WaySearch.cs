using System.Numerics;

namespace Rostrum.Rulings.Evaluation;

/// <summary>Looks for a longest way depth first: quick on small parts, and on large ones a good beginning for the sweep.</summary>
/// <remarks>The next element is the one with the fewest ways on (H. C. von Warnsdorf, Des Rösselsprungs einfachste und allgemeinste Lösung, 1823).</remarks>
/// <param name="part">A connected part of 64 elements at the most.</param>
/// <param name="isBare">True where no two elements may be joined but those in a row.</param>
/// <param name="most">No way has more elements.</param>
internal sealed class WaySearch(Graph part, bool isBare, int most)
{
    /// <summary>How many steps are made in all.</summary>
    private const int MostSteps = 100_000;

    private readonly ulong[] _near = part.Masks();
    private readonly int[] _way = new int[part.Count];
    private int _stepsLeft;

    /// <summary>The longest way found.</summary>
    public int[] Best { get; private set; } = [0];

    /// <summary>Looks; true where nothing is longer than <see cref="Best"/>.</summary>
    public bool Run()
    {
        bool isWhole = true;
        foreach (int start in Enumerable.Range(0, part.Count).OrderBy(i => part.Near(i).Length))
        {
            _stepsLeft = MostSteps / part.Count;
            Go(start, 0, 0);
            isWhole &= _stepsLeft > 0;
        }

        return isWhole || Best.Length == most;
    }

    // Closed: elements that the way may not come to any more.
    private void Go(int at, int length, ulong closed)
    {
        if (Best.Length == most || --_stepsLeft <= 0)
        {
            return;
        }

        _way[length] = at;
        if (length + 1 > Best.Length)
        {
            Best = _way[..(length + 1)];
        }

        ulong behind = closed | (1UL << at) | (isBare ? _near[at] : 0);
        ulong ways = _near[at] & ~closed;
        while (ways != 0)
        {
            int next = Narrowest(ways, closed | (1UL << at));
            ways &= ~(1UL << next);
            if (length + 1 + Reach(next, behind) > Best.Length)
            {
                Go(next, length + 1, behind);
            }
        }
    }

    private int Narrowest(ulong ways, ulong closed)
    {
        int best = -1;
        int fewest = int.MaxValue;
        for (ulong left = ways; left != 0; left &= left - 1)
        {
            int element = BitOperations.TrailingZeroCount(left);
            int on = BitOperations.PopCount(_near[element] & ~closed);
            if (on < fewest)
            {
                (best, fewest) = (element, on);
            }
        }

        return best;
    }

    // How many elements can be reached from one, itself included.
    private int Reach(int from, ulong closed)
    {
        ulong reached = 1UL << from;
        for (ulong fresh = reached; fresh != 0;)
        {
            ulong next = 0;
            for (; fresh != 0; fresh &= fresh - 1)
            {
                next |= _near[BitOperations.TrailingZeroCount(fresh)];
            }

            fresh = next & ~closed & ~reached;
            reached |= fresh;
        }

        return BitOperations.PopCount(reached);
    }
}
