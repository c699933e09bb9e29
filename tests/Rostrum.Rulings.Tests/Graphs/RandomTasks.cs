using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Rulings.Evaluation;

namespace Rostrum.Rulings.Tests.Graphs;

/// <summary>Things to part into sets, made by chance from a seed: some alike, some sizes worth the same whatever is in them, some sets that may not be formed.</summary>
internal sealed class RandomTasks
{
    private const int Forbidden = -1_000;

    private readonly Dictionary<string, long> _worths = [];
    private readonly int[] _sorts;

    private RandomTasks(PartitionTask task)
    {
        Task = task;
        _sorts = [.. task.Counts.SelectMany((count, sort) => Enumerable.Repeat(sort, count))];
        foreach (WorthySet set in task.Sets)
        {
            _worths[string.Join(' ', set.Counts)] = set.Worth;
        }
    }

    /// <summary>What our search is given.</summary>
    public PartitionTask Task { get; }

    /// <summary>How many things there are.</summary>
    public int Size => _sorts.Length;

    /// <summary>A task of so many things at the most.</summary>
    /// <param name="random">Where chance comes from.</param>
    /// <param name="most">The most things.</param>
    /// <param name="mostInSet">The largest set whose worth depends on what is in it.</param>
    public static RandomTasks Make(Random random, int most, int mostInSet)
    {
        int size = random.Next(1, most + 1);
        int sorts = random.Next(1, size + 1);
        int[] counts = new int[sorts];
        for (int i = 0; i < size; i++)
        {
            counts[i < sorts ? i : random.Next(sorts)]++;
        }

        int least = random.Next(1, 3);
        long? beyond = random.Next(3) == 0 ? null : 0;
        ImmutableArray<long?> plain = [null, .. Enumerable.Range(1, size).Select(s => s < least ? random.Next(-2, 2) : s <= mostInSet ? null : beyond)];
        IEnumerable<WorthySet> sets = Counted(counts, 0, mostInSet).Where(c => c.Sum() >= least && random.Next(4) > 0).Select(c => new WorthySet(c, random.Next(-3, 10)));
        return new RandomTasks(new PartitionTask([.. counts], plain, [.. sets]));
    }

    /// <summary>What a set of things, given as bits, is worth.</summary>
    public long Worth(int things)
    {
        var counts = new int[Task.Counts.Length];
        foreach (int thing in Enumerable.Range(0, Size).Where(t => (things & (1 << t)) != 0))
        {
            counts[_sorts[thing]]++;
        }

        return _worths.TryGetValue(string.Join(' ', counts), out long worth) ? worth : Task.Plain[counts.Sum()] ?? Forbidden;
    }

    /// <summary>The best sum that trying everything gives; null where the things cannot be parted.</summary>
    public long? ByForce() => BruteForce.BestSplit(Size, Worth) is var best && best > Forbidden / 2 ? best : null;

    /// <inheritdoc />
    public override string ToString() =>
        $"{string.Join(' ', Task.Counts)}, plain {string.Join(' ', Task.Plain.Select(p => p?.ToString(CultureInfo.InvariantCulture) ?? "-"))}, {string.Join(", ", _worths.Select(w => $"{w.Key}: {w.Value}"))}";

    private static IEnumerable<ImmutableArray<int>> Counted(int[] counts, int sort, int left) => sort == counts.Length
        ? [[]]
        : Enumerable.Range(0, Math.Min(left, counts[sort]) + 1).SelectMany(taken => Counted(counts, sort + 1, left - taken).Select(rest => rest.Insert(0, taken)));
}
