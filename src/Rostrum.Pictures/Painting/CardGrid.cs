namespace Rostrum.Pictures;

/// <summary>Where the cells of a drawing lie: squares side by side, or hexes of which each row is set off by half a step.</summary>
internal sealed record CardGrid(DrawingPicture Picture, double Shelf)
{
    private double Radius => Shelf / HexShape.WidthByRadius;

    private int Left => Picture.HalfSteps.DefaultIfEmpty(0).Min();

    /// <summary>Width of the drawing.</summary>
    public double Width => Picture.Rows.Select((row, at) => Indent(at) + (2 * row.Count)).Max() * Shelf / 2;

    /// <summary>Its height.</summary>
    public double Height => Picture.IsHex ? ((Picture.Rows.Count - 1) * 1.5 * Radius) + (2 * Radius) : Picture.Rows.Count * Shelf;

    /// <summary>The square of a cell, from the upper left corner of the drawing; rows count from the lowest.</summary>
    public Box Cell(int column, int row)
    {
        double x = (Indent(row) + (2 * column)) * Shelf / 2;
        double y = Picture.IsHex ? Height - Radius - (row * 1.5 * Radius) - (Shelf / 2) : Height - ((row + 1) * Shelf);
        return new Box(x, y, Shelf, Shelf);
    }

    private int Indent(int row) => Picture.IsHex ? Picture.HalfSteps[row] - Left : 0;
}
