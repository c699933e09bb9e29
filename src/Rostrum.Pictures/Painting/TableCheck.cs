namespace Rostrum.Pictures;

/// <summary>Refuses table pictures that cannot be drawn, before anything is drawn.</summary>
internal static class TableCheck
{
    public static void Demand(TablePicture picture)
    {
        if (picture.Boards.Count == 0)
        {
            throw new ArgumentException("A picture of a table has at least one board.", nameof(picture));
        }

        foreach (BoardPicture board in picture.Boards)
        {
            DemandShape(board);
        }

        foreach (SpaceAt space in picture.Marks.Select(mark => mark.At).Concat(picture.Arrows.SelectMany(arrow => new[] { arrow.From, arrow.To })))
        {
            DemandSpace(picture, space);
        }
    }

    private static void DemandShape(BoardPicture board)
    {
        if (board.Columns.Count == 0 || board.Rows.Count == 0 || board.Rows.Any(row => row.Cells.Count != board.Columns.Count))
        {
            throw new ArgumentException($"Every row of board '{board.Name}' has as many cells as the board has columns, and there is at least one.", nameof(board));
        }
    }

    private static void DemandSpace(TablePicture picture, SpaceAt space)
    {
        BoardPicture? board = picture.Boards.FirstOrDefault(each => each.Name == space.Board);
        bool exists = board is not null
            && space.Row >= 0 && space.Row < board.Rows.Count
            && space.Column >= 0 && space.Column < board.Columns.Count
            && board.Rows[space.Row].Cells[space.Column] is not CellPicture.Missing;
        if (!exists)
        {
            throw new ArgumentException($"Board '{space.Board}' has no space in column {space.Column}, row {space.Row} (from 0).", nameof(space));
        }
    }
}
