namespace Rostrum.Pictures;

/// <summary>In a square, printed numbers stand at the lower right and pieces at the upper left of them.</summary>
internal static class SquareNumbers
{
    /// <summary>The middle of so many numbers.</summary>
    public static Point At(Box niche, int count, TableMeasures measures) =>
        new(niche.Right - NumberMarks.HalfWidth(count, measures) - (measures.Shelf * 0.02), niche.Bottom - NumberMarks.Radius(measures) - (measures.Shelf * 0.02));

    /// <summary>The room that is left for pieces.</summary>
    public static Box Room(Box niche, TableMeasures measures) =>
        new(niche.X + (measures.Shelf * 0.03), niche.Y + (measures.Shelf * 0.03), measures.Shelf * 0.56, measures.Shelf * 0.56);
}
