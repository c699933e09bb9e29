using System.Collections.Immutable;

namespace Rostrum.Rulings.Evaluation;

/// <summary>The best that so many elements give in sets whose worth depends on their size alone.</summary>
internal sealed class PlainSets
{
    private readonly long?[] _best;
    private readonly int[] _last;

    /// <summary>Works out every number of elements.</summary>
    /// <param name="worths">The worth by size, from 0; null for a size that may not be used.</param>
    /// <param name="most">The greatest number of elements.</param>
    public PlainSets(ImmutableArray<long?> worths, int most)
    {
        _best = new long?[most + 1];
        _last = new int[most + 1];
        _best[0] = 0;
        for (int count = 1; count <= most; count++)
        {
            for (int size = 1; size <= count && size < worths.Length; size++)
            {
                long? worth = _best[count - size] + worths[size];
                if (worth is not null && (_best[count] is null || worth > _best[count]))
                {
                    _best[count] = worth;
                    _last[count] = size;
                }
            }
        }
    }

    /// <summary>The best sum for so many elements; null where they cannot be parted so.</summary>
    public long? Best(int count) => _best[count];

    /// <summary>The sizes of the sets that give it, smallest last.</summary>
    public ImmutableArray<int> Sizes(int count)
    {
        var sizes = ImmutableArray.CreateBuilder<int>();
        for (int left = count; left > 0; left -= _last[left])
        {
            sizes.Add(_last[left]);
        }

        return [.. sizes.OrderDescending()];
    }
}
