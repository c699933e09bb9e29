namespace Rostrum.Rulings.Evaluation;

/// <summary>What is known of the longest way through joined elements.</summary>
/// <param name="Least">It has at least so many elements.</param>
/// <param name="Most">It has at most so many; more than <paramref name="Least"/> only where working it out was given up.</param>
/// <param name="Elements">One way of <paramref name="Least"/> elements, in its order; of a group its members.</param>
internal sealed record Way(int Least, int Most, int[] Elements)
{
    /// <summary>No elements, no way.</summary>
    public static Way None { get; } = new(0, 0, []);

    /// <summary>True where nothing is longer.</summary>
    public bool IsLongest => Least == Most;

    /// <summary>A way that nothing is longer than.</summary>
    public static Way Longest(int[] elements) => new(elements.Length, elements.Length, elements);

    /// <summary>The same way with its elements numbered as in the whole.</summary>
    public Way In(int[] whole) => this with { Elements = [.. Elements.Select(e => whole[e])] };
}
