namespace Rostrum.Rulings.Evaluation;

/// <summary>Finds the best way to part elements into sets.</summary>
/// <remarks>A first pass looks for anything good. Later ones ask for ways that come up to the bound of the prices, then to less and less: the more is asked
/// for, the fewer sets come into question.</remarks>
internal sealed class PartitionSearch
{
    /// <summary>How many sets are tried at the most.</summary>
    public const int MostSteps = 12_000_000;

    private const int StepsOfFirst = MostSteps / 20;

    private readonly PartitionTask _task;
    private readonly PartitionPrices _prices;
    private readonly PlainSets _plain;
    private int _stepsLeft = MostSteps;
    private PartitionPass.Found? _best;

    private PartitionSearch(PartitionTask task)
    {
        _task = task;
        _prices = new PartitionPrices(task);
        _plain = new PlainSets(task.Plain, task.Size);
    }

    /// <summary>The best way; where it takes too many steps, the best found and a bound.</summary>
    public static Partition Best(PartitionTask task)
    {
        var search = new PartitionSearch(task);
        long? bound = search.Bound();
        PartitionPass.Found? best = search._best;
        return new Partition(best?.Worth, bound, best?.Sets ?? [], best is null ? [] : search._plain.Sizes(best.Plain));
    }

    // What no way is worth more than; the worth of the best where the search came to its end, null where there is no way.
    private long? Bound()
    {
        if (IsDecided(null, StepsOfFirst))
        {
            return _best?.Worth;
        }

        long bound = Bounds.Down(_prices.OfAll, _prices.Unit);
        for (long asked = 0; _best is null || bound > _best.Worth; asked = asked == 0 ? 1 : 2 * asked)
        {
            long above = Math.Max(bound - asked - 1, _best?.Worth ?? long.MinValue);
            if (!IsDecided(above, _stepsLeft))
            {
                return bound;
            }

            bound = _best is { } best && best.Worth > above ? best.Worth : above;
        }

        return bound;
    }

    // True where it is certain that nothing is better than what was found, or than what had to be surpassed.
    private bool IsDecided(long? above, int steps)
    {
        var pass = new PartitionPass(_task, _prices, _plain, above, steps);
        pass.Run();
        _stepsLeft -= pass.Steps;
        _best = pass.Best is { } found && (_best is null || found.Worth > _best.Worth) ? found : _best;
        return pass.IsWhole;
    }
}
