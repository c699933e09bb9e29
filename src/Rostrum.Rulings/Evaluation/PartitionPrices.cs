namespace Rostrum.Rulings.Evaluation;

/// <summary>A price for an element of each sort such that no set is worth more than the prices of its elements: what is left is never worth more than its prices.</summary>
/// <remarks>Such prices are a solution of the dual of the set packing problem (E. Balas and M. W. Padberg, Set partitioning: a survey, SIAM Review 18, 1976).
/// They come from <see cref="PriceSimplex"/>, are rounded up to whole parts of a point, and are then raised where a set is worth more, so that they hold exactly.</remarks>
internal sealed class PartitionPrices
{
    private const long GreatestFine = 1_000_000_000;
    private const long Fine = 1 << 20;

    /// <summary>Prices for a task.</summary>
    public PartitionPrices(PartitionTask task)
    {
        long greatest = task.Sets.Select(s => Math.Abs(s.Worth)).Concat(task.Plain.Select(p => Math.Abs(p ?? 0))).DefaultIfEmpty(0).Max();
        Unit = greatest < GreatestFine ? Fine : 1;
        OfPlain = task.Plain.Select((worth, size) => size > 0 && worth is { } w ? Bounds.Up(w * Unit, size) : (long?)null).Max();
        double alone = OfPlain is { } plain ? (double)plain / Unit : -4.0 * (greatest + 1) * (task.Size + 1);
        Of = [.. PriceSimplex.Prices(task.Counts, task.Sets, alone).Select(p => Math.Max((long)Math.Ceiling(p * Unit), OfPlain ?? long.MinValue))];
        foreach (WorthySet set in task.Sets)
        {
            Of[set.Parts[0].Sort] += Math.Max(0, (set.Worth * Unit) - Price(set));
        }

        OfAll = task.Counts.Select((count, sort) => count * Of[sort]).Sum();
    }

    /// <summary>The prices of all elements together.</summary>
    public long OfAll { get; }

    /// <summary>How many parts of a price make one point.</summary>
    public long Unit { get; }

    /// <summary>The price of an element of each sort.</summary>
    public long[] Of { get; }

    /// <summary>The price of an element in a plain set; null where there are none.</summary>
    public long? OfPlain { get; }

    /// <summary>The prices of the elements of a set.</summary>
    public long Price(WorthySet set)
    {
        long price = 0;
        foreach ((int sort, int count) in set.Parts)
        {
            price += count * Of[sort];
        }

        return price;
    }
}
