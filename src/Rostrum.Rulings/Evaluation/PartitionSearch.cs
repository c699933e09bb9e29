using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Rostrum.Rulings.Evaluation;

/// <summary>Finds the best way to part elements into sets: the first element that is left goes into each set that it can go into, in turn, and so on.</summary>
/// <remarks>What cannot become better than the best found is left out, by prices (<see cref="PartitionPrices"/>); of two ways that leave the same elements only
/// the better one is followed (M. Held and R. M. Karp, A dynamic programming approach to sequencing problems, Journal of SIAM 10, 1962).</remarks>
internal sealed class PartitionSearch
{
    /// <summary>How many sets are tried at the most.</summary>
    public const int MostSteps = 3_000_000;

    private readonly PartitionTask _task;
    private readonly PartitionPrices _prices;
    private readonly PlainSets _plain;
    private readonly int[] _order;
    private readonly WorthySet[][] _byFirst;
    private readonly int[] _left;
    private readonly long[] _strides;
    private readonly Dictionary<long, long> _seen = [];
    private readonly List<WorthySet> _sets = [];
    private int _steps;
    private long? _best;
    private ImmutableArray<WorthySet> _bestSets = [];
    private int _bestPlain;

    private PartitionSearch(PartitionTask task)
    {
        _task = task;
        _prices = new PartitionPrices(task);
        _plain = new PlainSets(task.Plain, task.Size);
        _order = [.. Enumerable.Range(0, task.Counts.Length).OrderBy(sort => task.Sets.Count(s => s.Counts[sort] > 0))];
        _byFirst = [.. _order.Select((_, at) => task.Sets.Where(s => Array.FindIndex(_order, o => s.Counts[o] > 0) == at).OrderBy(_prices.Slack).ToArray())];
        _left = [.. task.Counts];
        _strides = new long[task.Counts.Length];
        long stride = task.Size + 1;
        for (int sort = 0; sort < _strides.Length; sort++)
        {
            _strides[sort] = stride;
            stride *= task.Counts[sort] + 1;
        }
    }

    /// <summary>The best way; where it takes too many steps, the best found and a bound.</summary>
    public static Partition Best(PartitionTask task)
    {
        var search = new PartitionSearch(task);
        long prices = task.Counts.Select((count, sort) => count * search._prices.Of[sort]).Sum();
        search.Go(0, 0, 0, prices, search._strides.Select((stride, sort) => stride * task.Counts[sort]).Sum());
        bool isWhole = search._steps <= MostSteps;
        return new Partition(
            search._best,
            isWhole ? search._best : Bounds.Down(prices, search._prices.Unit),
            search._bestSets,
            search._best is null ? [] : search._plain.Sizes(search._bestPlain));
    }

    // At: the first sort in order of which any is left, or one before it. Prices: of what is left and of what is plain. State: what is left, and how many are plain.
    private void Go(int at, int plain, long worth, long prices, long state)
    {
        while (at < _order.Length && _left[_order[at]] == 0)
        {
            at++;
        }

        if (at == _order.Length)
        {
            Finish(plain, worth);
            return;
        }

        if (IsHopeless(worth, prices) || IsSeen(state, worth))
        {
            return;
        }

        foreach (WorthySet set in _byFirst[at])
        {
            if (++_steps > MostSteps)
            {
                return;
            }

            if (IsLeft(set))
            {
                Take(set, 1);
                Go(at, plain, worth + set.Worth, prices - _prices.Slack(set) - (set.Worth * _prices.Unit), state - Share(set));
                Take(set, -1);
            }
        }

        GoPlain(at, plain, worth, prices, state);
    }

    private void GoPlain(int at, int plain, long worth, long prices, long state)
    {
        if (_prices.OfPlain != long.MinValue && ++_steps <= MostSteps)
        {
            int sort = _order[at];
            _left[sort]--;
            Go(at, plain + 1, worth, prices - _prices.Of[sort] + _prices.OfPlain, state - _strides[sort] + 1);
            _left[sort]++;
        }
    }

    private bool IsHopeless(long worth, long prices) => _best is { } best && worth + Bounds.Down(prices, _prices.Unit) <= best;

    private bool IsSeen(long state, long worth)
    {
        ref long seen = ref CollectionsMarshal.GetValueRefOrAddDefault(_seen, state, out bool isKnown);
        if (isKnown && seen >= worth)
        {
            return true;
        }

        seen = worth;
        return false;
    }

    private void Finish(int plain, long worth)
    {
        if (_plain.Best(plain) is { } rest && (_best is null || worth + rest > _best))
        {
            _best = worth + rest;
            _bestSets = [.. _sets];
            _bestPlain = plain;
        }
    }

    private bool IsLeft(WorthySet set)
    {
        for (int sort = 0; sort < _left.Length; sort++)
        {
            if (set.Counts[sort] > _left[sort])
            {
                return false;
            }
        }

        return true;
    }

    private void Take(WorthySet set, int times)
    {
        for (int sort = 0; sort < _left.Length; sort++)
        {
            _left[sort] -= times * set.Counts[sort];
        }

        if (times > 0)
        {
            _sets.Add(set);
        }
        else
        {
            _sets.RemoveAt(_sets.Count - 1);
        }
    }

    private long Share(WorthySet set)
    {
        long share = 0;
        for (int sort = 0; sort < _strides.Length; sort++)
        {
            share += _strides[sort] * set.Counts[sort];
        }

        return share;
    }
}
