namespace Rostrum.Pictures;

/// <summary>A pattern card: a small drawing of what must stand together.</summary>
/// <param name="Title">Such as <c>Commission 6</c>.</param>
/// <param name="Value">What it is worth, such as <c>6</c>; null for none.</param>
/// <param name="Rows">From the lowest up; each from left to right; of squares, rows of equal length.</param>
public sealed record DrawingPicture(string Title, string? Value, ValueList<ValueList<DrawingCell>> Rows)
{
    /// <summary>For hexes, how many half steps each row is set off to the right, from the lowest row up; empty for squares.</summary>
    public ValueList<int> HalfSteps { get; init; }

    /// <summary>A sentence below the drawing; null for none.</summary>
    public string? Sentence { get; init; }

    /// <summary>What a plain cell is called in the text alternative. Default: <c>any shelf</c>.</summary>
    public string PlainSays { get; init; } = "any shelf";

    /// <summary>What a cell that must be free is called in the text alternative. Default: <c>a free shelf</c>.</summary>
    public string FreeSays { get; init; } = "a free shelf";

    /// <summary>True for hexes.</summary>
    internal bool IsHex => HalfSteps.Count > 0;
}

/// <summary>What a pattern card asks of one space.</summary>
public abstract record DrawingCell
{
    private DrawingCell()
    {
    }

    /// <summary>The pattern does not reach here.</summary>
    public sealed record Outside : DrawingCell;

    /// <summary>The space must be there, but may hold anything or nothing.</summary>
    public sealed record Plain : DrawingCell;

    /// <summary>The space must be there and be free.</summary>
    public sealed record MustBeFree : DrawingCell;

    /// <summary>A piece of this look must stand here. What is null is not asked for.</summary>
    /// <param name="Outline">The silhouette; null for any.</param>
    /// <param name="Colour">The colour; null for any.</param>
    /// <param name="Emblem">The emblem that goes with the colour; null for none.</param>
    /// <param name="Says">The text alternative, such as <c>any jug</c> or <c>anything in copper</c>.</param>
    public sealed record Wanted(Outline? Outline, PieceColour? Colour, Emblem? Emblem, string Says) : DrawingCell;
}
