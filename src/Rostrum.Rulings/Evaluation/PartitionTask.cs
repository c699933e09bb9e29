using System.Collections.Immutable;

namespace Rostrum.Rulings.Evaluation;

/// <summary>What is to be parted into sets, as numbers.</summary>
/// <param name="Counts">How many elements there are of each sort; those of one sort are alike in everything that a worth can depend on.</param>
/// <param name="Plain">What a set is worth whatever its elements, by its size; null for a size of which that is not so. Entry 0 is not used.</param>
/// <param name="Sets">The other sets that may be formed.</param>
internal sealed record PartitionTask(ImmutableArray<int> Counts, ImmutableArray<long?> Plain, ImmutableArray<WorthySet> Sets)
{
    /// <summary>How many elements there are.</summary>
    public int Size => Counts.Sum();
}

/// <summary>A set that may be formed.</summary>
/// <param name="Counts">How many it takes of each sort.</param>
/// <param name="Worth">What it is worth.</param>
internal sealed record WorthySet(ImmutableArray<int> Counts, long Worth)
{
    /// <summary>How many elements it has.</summary>
    public int Size { get; } = Counts.Sum();

    /// <summary>The sorts of which it takes any, with how many.</summary>
    public ImmutableArray<(int Sort, int Count)> Parts { get; } = [.. Counts.Select((count, sort) => (sort, count)).Where(p => p.count > 0)];
}

/// <summary>How elements are parted.</summary>
/// <param name="Worth">The sum of the worths; null where no way to part them was found.</param>
/// <param name="Most">No way to part them is worth more; equal to <paramref name="Worth"/> unless the search was given up. Null where there is no way.</param>
/// <param name="Sets">The sets whose worth depends on their elements.</param>
/// <param name="PlainSizes">The sizes of the other sets.</param>
internal sealed record Partition(long? Worth, long? Most, ImmutableArray<WorthySet> Sets, ImmutableArray<int> PlainSizes)
{
    /// <summary>True where nothing is worth more.</summary>
    public bool IsBest => Worth == Most;
}
