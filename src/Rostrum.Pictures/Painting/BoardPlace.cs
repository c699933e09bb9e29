namespace Rostrum.Pictures;

/// <summary>A board with its place in the scene.</summary>
/// <param name="Board">What it shows.</param>
/// <param name="Grid">The edges of its columns and rows, without frame.</param>
/// <param name="Measures">Lengths of the picture.</param>
internal sealed record BoardPlace(BoardPicture Board, Box Grid, TableMeasures Measures)
{
    /// <summary>The grid with the frame round it.</summary>
    public Box Framed => Grid.Grown(Measures.FrameWidth);

    /// <summary>The whole square of a space, planks and posts included.</summary>
    public Box Cell(int column, int row) => new(
        Grid.X + (column * Measures.Shelf),
        Grid.Bottom - ((row + 1) * Measures.Shelf),
        Measures.Shelf,
        Measures.Shelf);

    /// <summary>Where things stand in a space: between the posts, above the plank.</summary>
    public Box Niche(int column, int row)
    {
        Box cell = Cell(column, row);
        return new Box(cell.X + (Measures.PostWidth / 2), cell.Y, cell.Width - Measures.PostWidth, cell.Height - Measures.PlankHeight);
    }

    /// <summary>Every space that is there, lowest row first.</summary>
    public IEnumerable<(int Column, int Row, CellPicture Cell)> Spaces =>
        from row in Enumerable.Range(0, Board.Rows.Count)
        from column in Enumerable.Range(0, Board.Rows[row].Cells.Count)
        let cell = Board.Rows[row].Cells[column]
        where cell is not CellPicture.Missing
        select (column, row, cell);

    /// <summary>Whether a place of the grid is a space; places beyond the edges are not.</summary>
    public bool Has(int column, int row) =>
        row >= 0 && row < Board.Rows.Count && column >= 0 && column < Board.Rows[row].Cells.Count
        && Board.Rows[row].Cells[column] is not CellPicture.Missing;
}
