namespace Rostrum.Rulings.Evaluation;

/// <summary>A price for an element of each sort such that no set is worth more than the prices of its elements: what is left is never worth more than its prices.</summary>
/// <remarks>A solution of the dual of the set packing problem in whole numbers, lowered sort by sort; M. L. Fisher, The Lagrangian relaxation method for
/// solving integer programming problems, Management Science 27 (1981). Prices are rounded up, so that they hold.</remarks>
internal sealed class PartitionPrices
{
    private const int Passes = 6;
    private const long GreatestFine = 1_000_000_000;

    private readonly PartitionTask _task;
    private readonly WorthySet[][] _bySort;

    /// <summary>Prices for a task.</summary>
    public PartitionPrices(PartitionTask task)
    {
        _task = task;
        _bySort = [.. Enumerable.Range(0, task.Counts.Length).Select(sort => task.Sets.Where(s => s.Counts[sort] > 0).ToArray())];
        Unit = task.Sets.All(s => Math.Abs(s.Worth) < GreatestFine) && task.Plain.All(p => p is null || Math.Abs(p.Value) < GreatestFine) ? 1 << 20 : 1;
        OfPlain = task.Plain.Select((worth, size) => size > 0 && worth is { } w ? Up(w * Unit, size) : (long?)null).Max() ?? long.MinValue;
        Of = [.. _bySort.Select(sets => sets.Length == 0 ? Floor : Math.Max(Floor, sets.Max(s => Up(s.Worth * Unit, s.Size))))];
        int[] order = [.. Enumerable.Range(0, Of.Length).OrderByDescending(s => task.Counts[s])];
        for (int pass = 0; pass < Passes; pass++)
        {
            Array.ForEach(order, Lower);
        }
    }

    /// <summary>How many parts of a price make one point.</summary>
    public long Unit { get; }

    /// <summary>The price of an element of each sort.</summary>
    public long[] Of { get; }

    /// <summary>The price of an element in a plain set; the least number where there are none.</summary>
    public long OfPlain { get; }

    private long Floor => OfPlain == long.MinValue ? 0 : OfPlain;

    /// <summary>How much less a set is worth than the prices of its elements.</summary>
    public long Slack(WorthySet set) => set.Counts.Select((count, sort) => count * Of[sort]).Sum() - (set.Worth * Unit);

    // As low as the sets with such an element allow while the other prices stay.
    private void Lower(int sort)
    {
        if (_bySort[sort].Length > 0)
        {
            long least = _bySort[sort].Max(s => Of[sort] - Down(Slack(s), s.Counts[sort]));
            Of[sort] = OfPlain == long.MinValue ? least : Math.Max(least, OfPlain);
        }
    }

    private static long Up(long number, long by) => Bounds.Up(number, by);

    private static long Down(long number, long by) => Bounds.Down(number, by);
}
