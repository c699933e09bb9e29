namespace Rostrum.Rulings.Verdicts;

/// <summary>The sets that a player may choose from.</summary>
internal static class Subsets
{
    /// <summary>The subsets of some elements; smaller ones first, each in the order of the elements.</summary>
    /// <typeparam name="T">An element.</typeparam>
    /// <param name="domain">The elements.</param>
    /// <param name="fewest">The size of the smallest.</param>
    /// <param name="most">The size of the largest.</param>
    public static IEnumerable<T[]> Of<T>(T[] domain, int fewest, int most)
    {
        for (int size = fewest; size <= most; size++)
        {
            int[] at = [.. Enumerable.Range(0, size)];
            while (size <= domain.Length)
            {
                yield return [.. at.Select(i => domain[i])];
                int last = size - 1;
                while (last >= 0 && at[last] == domain.Length - size + last)
                {
                    last--;
                }

                if (last < 0)
                {
                    break;
                }

                at[last]++;
                for (int i = last + 1; i < size; i++)
                {
                    at[i] = at[i - 1] + 1;
                }
            }
        }
    }
}
