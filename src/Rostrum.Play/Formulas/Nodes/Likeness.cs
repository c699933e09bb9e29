namespace Rostrum.Play.Formulas.Nodes;

/// <summary>When two elements are the same: for most sorts where their numbers are, for values that are numerals where these are, for sets where their elements are.</summary>
/// <param name="alike">By element, the number of the first one that is the same; null where each is only itself.</param>
/// <param name="inner">For sets of sets, when the elements of these are the same; null otherwise.</param>
/// <param name="inOrder">For lists of lists, true where the order counts.</param>
internal sealed class Likeness(int[]? alike, Likeness? inner, bool inOrder)
{
    /// <summary>Each is only itself.</summary>
    public static Likeness Plain { get; } = new(null, null, false);

    /// <summary>The number that stands for everything that is the same; meaningless for sets.</summary>
    public int Of(int element) => alike is not null && element >= 0 && element < alike.Length ? alike[element] : element;

    /// <summary>True where an element is among others.</summary>
    public bool IsIn(Run run, int element, ReadOnlySpan<int> elements)
    {
        if (alike is null && inner is null)
        {
            return elements.Contains(element);
        }

        foreach (int other in elements)
        {
            if (AreSame(run, element, other))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True where two elements are the same.</summary>
    public bool AreSame(Run run, int one, int other)
    {
        if (one == other || inner is null || one == Node.Nothing || other == Node.Nothing)
        {
            return Of(one) == Of(other);
        }

        return inner.AreSame(run, run.List(one).Span, run.List(other).Span, inOrder);
    }

    /// <summary>True where the elements are the same; as lists in the same order, as sets in any.</summary>
    public bool AreSame(Run run, ReadOnlySpan<int> one, ReadOnlySpan<int> other, bool asLists)
    {
        if (one.Length != other.Length)
        {
            return false;
        }

        for (int i = 0; i < one.Length; i++)
        {
            if (asLists ? !AreSame(run, one[i], other[i]) : !IsIn(run, one[i], other))
            {
                return false;
            }
        }

        return true;
    }
}
