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

        foreach (SpaceAt space in picture.Marks.Select(mark => mark.At).Concat(picture.Arrows.SelectMany(arrow => arrow.Through.Append(arrow.From).Append(arrow.To))))
        {
            DemandSpace(picture, space);
        }
    }

    private static void DemandShape(BoardPicture board)
    {
        bool isEmpty = board.Spaces.Count == 0 || board.Spaces.Any(space => space.Content is CellPicture.Missing);
        bool hasUnlabelled = (board.Form is BoardForm.Squares or BoardForm.Hexes && board.Spaces.Any(space => space.Row < 0 || space.Row >= board.Rows.Count))
            || (board.Form == BoardForm.Squares && board.Spaces.Any(space => space.Column < 0 || space.Column >= board.Columns.Count));
        if (isEmpty || hasUnlabelled)
        {
            throw new ArgumentException($"Board '{board.Name}' has at least one space, and each lies in a row and a column that has a label.", nameof(board));
        }

        if (board.Ways.SelectMany(way => way).Concat(board.Areas.SelectMany(area => area.Spaces)).Any(space => space < 0 || space >= board.Spaces.Count))
        {
            throw new ArgumentException($"A way or an area of board '{board.Name}' names a space that it does not have.", nameof(board));
        }
    }

    private static void DemandSpace(TablePicture picture, SpaceAt space)
    {
        if (picture.Boards.FirstOrDefault(each => each.Name == space.Board) is not { } board || !board.TryFind(space.Space, out _))
        {
            throw new ArgumentException($"Board '{space.Board}' has no space '{space.Space}'.", nameof(space));
        }
    }
}
