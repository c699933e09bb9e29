using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Rostrum.Rulings.Evaluation;

/// <summary>One pass over the ways to part elements into sets: the first element that is left goes into each set that it can go into, in turn, and so on.</summary>
/// <remarks>What cannot become better than the best found is left out, by prices; of two ways that leave the same elements only
/// the better one is followed (M. Held and R. M. Karp, A dynamic programming approach to sequencing problems, Journal of SIAM 10, 1962).</remarks>
internal sealed class PartitionPass
{
    private const int Coarse = 8;
    private const int MostFew = 2_048;

    private readonly PartitionTask _task;
    private readonly PartitionPrices _prices;
    private readonly PlainSets _plain;
    private readonly int _mostSteps;
    private readonly int[] _order;
    private readonly Choice[] _choices;
    private readonly Choice[][] _bySort;
    private readonly int[] _left;
    private readonly long[] _strides;
    private readonly Dictionary<long, long> _seen = [];
    private readonly List<WorthySet> _sets = [];
    private long? _above;

    /// <summary>Prepares a pass.</summary>
    /// <param name="task">What is to be parted.</param>
    /// <param name="prices">Prices that hold for it.</param>
    /// <param name="plain">What elements give that are in none of its sets.</param>
    /// <param name="above">Only ways that are worth more are looked for; null for all.</param>
    /// <param name="mostSteps">How many sets are tried at the most.</param>
    public PartitionPass(PartitionTask task, PartitionPrices prices, PlainSets plain, long? above, int mostSteps)
    {
        (_task, _prices, _plain, _above, _mostSteps) = (task, prices, plain, above, mostSteps);
        _left = [.. task.Counts];
        _strides = Strides(task);
        _choices = [.. task.Sets.Select(s => new Choice(s, prices.Price(s), s.Parts.Sum(p => p.Count * _strides[p.Sort]), ((prices.Unit * s.Worth) - prices.Price(s)) >> Coarse))
            .Where(c => !IsHopeless(0, prices.OfAll + c.MostGain)).OrderByDescending(c => c.Gain).ThenByDescending(c => c.Set.Size)];
        int[] uses = [.. task.Counts.Select((_, sort) => _choices.Count(c => c.Set.Counts[sort] > 0))];
        _order = [.. Enumerable.Range(0, uses.Length).OrderBy(sort => uses[sort])];
        ILookup<int, Choice> byFirst = _choices.ToLookup(c => _order.First(sort => c.Set.Counts[sort] > 0));
        _bySort = [.. uses.Select((_, sort) => AreFew ? _choices.Where(c => c.Set.Counts[sort] > 0).ToArray() : byFirst[sort].ToArray())];
    }

    // Where few sets come into question, the element that goes into fewest of them comes next; else the first in a fixed order.
    private bool AreFew => _choices.Length <= MostFew;

    /// <summary>How many sets were tried.</summary>
    public int Steps { get; private set; }

    /// <summary>True where the pass came to its end.</summary>
    public bool IsWhole => Steps <= _mostSteps;

    /// <summary>The best way found; null where none is worth enough.</summary>
    public Found? Best { get; private set; }

    /// <summary>Goes over the ways.</summary>
    public void Run() => Go(0, 0, _prices.OfAll, _strides.Select((stride, sort) => stride * _task.Counts[sort]).Sum());

    // What is left, and how many are plain, as one number below 2^29: at most 24 elements, so at most 2^24 ways to leave some, times 25.
    private static long[] Strides(PartitionTask task)
    {
        var strides = new long[task.Counts.Length];
        long stride = task.Size + 1;
        for (int sort = 0; sort < strides.Length; sort++)
        {
            strides[sort] = stride;
            stride *= task.Counts[sort] + 1;
        }

        return strides;
    }

    // Prices: of what is left and of what is plain.
    private void Go(int plain, long worth, long prices, long state)
    {
        int next = AreFew ? Scarcest() : Array.Find(_order, sort => _left[sort] > 0) is var first && _left[first] > 0 ? first : -1;
        if (next < 0)
        {
            Finish(plain, worth);
            return;
        }

        if (IsHopeless(worth, prices) || IsSeen(state, worth))
        {
            return;
        }

        foreach (Choice choice in _bySort[next])
        {
            // The sets come in the order of what they lose, so that no later one is better.
            if (IsHopeless(worth, prices + choice.MostGain) || ++Steps > _mostSteps)
            {
                break;
            }

            if (IsLeft(choice.Set))
            {
                Take(choice.Set, 1);
                Go(plain, worth + choice.Set.Worth, prices - choice.Price, state - choice.Share);
                Take(choice.Set, -1);
            }
        }

        GoPlain(next, plain, worth, prices, state);
    }

    private void GoPlain(int sort, int plain, long worth, long prices, long state)
    {
        if (_prices.OfPlain is { } ofPlain && IsWhole && ++Steps <= _mostSteps)
        {
            _left[sort]--;
            Go(plain + 1, worth, prices - _prices.Of[sort] + ofPlain, state - _strides[sort] + 1);
            _left[sort]++;
        }
    }

    // The sort that goes into fewest of the sets that can still be formed; -1 where nothing is left.
    private int Scarcest()
    {
        Steps += _choices.Length / 4;
        Span<int> uses = stackalloc int[_left.Length];
        foreach (Choice choice in _choices)
        {
            if (IsLeft(choice.Set))
            {
                foreach ((int sort, _) in choice.Set.Parts)
                {
                    uses[sort]++;
                }
            }
        }

        int scarcest = -1;
        for (int sort = 0; sort < uses.Length; sort++)
        {
            scarcest = _left[sort] > 0 && (scarcest < 0 || uses[sort] < uses[scarcest]) ? sort : scarcest;
        }

        return scarcest;
    }

    private bool IsHopeless(long worth, long prices) => _above is { } above && worth + Bounds.Down(prices, _prices.Unit) <= above;

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
        if (_plain.Best(plain) is { } rest && (_above is null || worth + rest > _above))
        {
            _above = worth + rest;
            Best = new Found(worth + rest, [.. _sets], plain);
        }
    }

    private bool IsLeft(WorthySet set)
    {
        foreach ((int sort, int count) in set.Parts)
        {
            if (count > _left[sort])
            {
                return false;
            }
        }

        return true;
    }

    private void Take(WorthySet set, int times)
    {
        foreach ((int sort, int count) in set.Parts)
        {
            _left[sort] -= times * count;
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

    /// <summary>A way to part the elements.</summary>
    /// <param name="Worth">The sum of the worths.</param>
    /// <param name="Sets">The sets that are not plain.</param>
    /// <param name="Plain">How many elements are in plain sets.</param>
    internal sealed record Found(long Worth, ImmutableArray<WorthySet> Sets, int Plain);

    /// <summary>A set that comes into question.</summary>
    /// <param name="Set">The set.</param>
    /// <param name="Price">The prices of its elements.</param>
    /// <param name="Share">What it takes from the state.</param>
    /// <param name="Gain">What it is worth above its prices, in 256 parts of a price, rounded down: so close together, larger sets come first.</param>
    private sealed record Choice(WorthySet Set, long Price, long Share, long Gain)
    {
        public long MostGain => (Gain + 1) << Coarse;
    }
}
