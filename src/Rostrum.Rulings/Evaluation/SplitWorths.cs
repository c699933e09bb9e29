using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <summary>What every set of some elements is worth: sets whose worth cannot differ are asked about once.</summary>
/// <param name="evaluator">Is asked.</param>
/// <param name="reads">What a worth depends on.</param>
/// <param name="elements">The elements, none twice.</param>
/// <param name="ask">What a set is worth.</param>
internal sealed class SplitWorths(Evaluator evaluator, WorthReads reads, Value[] elements, Func<Value.Many, Value.Number> ask)
{
    /// <summary>How many sets are asked about at the most.</summary>
    public const int MostSets = 40_000;

    private readonly List<List<Value>> _sorts = [];
    private readonly List<(ImmutableArray<int> Counts, Value.Number Worth, int Order)> _sets = [];
    private readonly Value.Number[] _bySize = new Value.Number[elements.Length + 1];

    /// <summary>Why some worth is not certain.</summary>
    public Blame Blame { get; private set; } = Blame.None;

    /// <summary>True where every worth is certain.</summary>
    public bool AreKnown => _sets.All(s => s.Worth.IsKnown);

    /// <summary>True where nobody can say how much some set may be worth.</summary>
    public bool HasNoTop => _sets.Any(s => s.Worth.High is null);

    /// <summary>Asks; false where there are too many sets.</summary>
    public bool Ask()
    {
        foreach (Value element in elements)
        {
            if (_sorts.Find(s => evaluator.AreAlike(s[0], element, reads)) is { } alike)
            {
                alike.Add(element);
            }
            else
            {
                _sorts.Add([element]);
            }
        }

        for (int size = 1; size <= elements.Length; size++)
        {
            _bySize[size] = ask(OfUnknown(size));
        }

        int[] asked = [.. Enumerable.Range(1, elements.Length).Where(NeedsAsking)];
        if (HowMany(asked) > MostSets)
        {
            return false;
        }

        var alone = new PlainSets(Plain(), elements.Length);
        Form(new int[_sorts.Count], 0, 0, [.. asked], size => alone.Best(size));
        _sets.Sort((a, b) => Size(a.Counts) == Size(b.Counts) ? a.Order.CompareTo(b.Order) : Size(a.Counts).CompareTo(Size(b.Counts)));
        return true;
    }

    /// <summary>The task, by the least or the greatest that each set may be worth.</summary>
    public PartitionTask Task(bool isHigh)
    {
        IEnumerable<WorthySet> sets = _sets.Select(s => (s.Counts, Worth: isHigh ? s.Worth.High : s.Worth.Low)).Where(s => s.Worth is not null)
            .Select(s => new WorthySet(s.Counts, s.Worth!.Value));
        ImmutableArray<long?> plain = Plain();
        var alone = new PlainSets(plain, elements.Length);
        return new PartitionTask([.. _sorts.Select(s => s.Count)], plain, [.. sets.Where(s => alone.Best(s.Size) is not { } other || s.Worth > other)]);
    }

    /// <summary>The sets of a partition with their elements and worths: those worth most first.</summary>
    public ImmutableArray<(ImmutableArray<Value> Elements, long Worth)> Told(Partition partition)
    {
        Queue<Value>[] left = [.. _sorts.Select(s => new Queue<Value>(s))];
        var sets = partition.Sets.Select(set => (Elements: InOrder(set.Counts.SelectMany((count, sort) => Take(left[sort], count))), set.Worth)).ToList();
        var rest = new Queue<Value>(InOrder(left.SelectMany(l => l)));
        sets.AddRange(partition.PlainSizes.Select(size => (InOrder(Take(rest, size)), _bySize[size].Low!.Value)));
        return [.. sets.OrderByDescending(s => s.Worth).ThenBy(s => Array.IndexOf(elements, s.Elements[0]))];
    }

    private ImmutableArray<long?> Plain() => [null, .. _bySize.Skip(1).Select(w => w.IsKnown ? w.Low : null)];

    // A size is asked about where the worth depends on the elements, and can be more than sets of other sizes give for certain.
    private bool NeedsAsking(int size) =>
        !_bySize[size].IsKnown && !(_bySize[size].High is { } high && high <= new PlainSets(Plain(), elements.Length).Best(size));

    // Elements of which nothing is known but, where all are of one kind and nothing else matters, their kind.
    private Value.Many OfUnknown(int size)
    {
        Kind? kind = elements.All(e => e is Value.ThingAt) && elements.Select(e => ((Value.ThingAt)e).Thing.Kind).Distinct().ToArray() is [{ } only] ? only : null;
        Blame why = Blame.Of(GapKind.Limit, "which elements a set has is left open");
        return Value.Certain(
            Enumerable.Range(0, size).Select(i => reads.IsOfElements && kind is not null
                ? new Value.ThingAt(Things.Unknown(evaluator.Position.Sheet, kind) with { Owner = null }, Spot.Nowhere, i)
                : (Value)new Value.Unknown(why)),
            isList: true);
    }

    // How many different sets of those sizes can be formed.
    private long HowMany(int[] sizes)
    {
        var ways = new long[elements.Length + 1];
        ways[0] = 1;
        foreach (List<Value> sort in _sorts)
        {
            ways = [.. ways.Select((_, size) => Enumerable.Range(0, Math.Min(size, sort.Count) + 1).Sum(taken => ways[size - taken]))];
        }

        return sizes.Sum(size => ways[size]);
    }

    // Sets grow element by element. Where nothing that a set could grow to is worth more than its elements one by one, none of those is asked about.
    private void Form(int[] counts, int sort, int size, HashSet<int> asked, Func<int, long?> alone)
    {
        if (sort == counts.Length)
        {
            if (asked.Contains(size))
            {
                Value.Number worth = ask(Value.Certain(Elements(counts), isList: false));
                Blame += worth.Blame;
                _sets.Add(([.. counts], worth, _sets.Count));
            }

            return;
        }

        for (int taken = _sorts[sort].Count; taken >= 0; taken--)
        {
            counts[sort] = taken;
            if (taken == 0 || size + taken < 2 || IsWorthwhile(counts, sort, size + taken, asked, alone))
            {
                Form(counts, sort + 1, size + taken, asked, alone);
            }

            counts[sort] = 0;
        }
    }

    private bool IsWorthwhile(int[] counts, int sort, int size, HashSet<int> asked, Func<int, long?> alone)
    {
        int left = _sorts.Skip(sort + 1).Sum(s => s.Count);
        int[] sizes = [.. Enumerable.Range(size, left + 1).Where(asked.Contains)];
        if (left == 0 || sizes.Length == 0)
        {
            return sizes.Length > 0;
        }

        Value.Many grown = Value.Certain(Elements(counts), isList: false) with { More = left, Blame = Blame.Of(GapKind.Limit, "which further elements a set has is left open") };
        return ask(grown).High is not { } most || sizes.Any(s => alone(s) is not { } other || most > other);
    }

    private IEnumerable<Value> Elements(int[] counts) => counts.SelectMany((count, s) => _sorts[s].Take(count));

    private static int Size(ImmutableArray<int> counts) => counts.Sum();

    private static Value[] Take(Queue<Value> from, int count) => [.. Enumerable.Range(0, count).Select(_ => from.Dequeue())];

    private ImmutableArray<Value> InOrder(IEnumerable<Value> some) => [.. some.OrderBy(v => Array.IndexOf(elements, v))];
}
