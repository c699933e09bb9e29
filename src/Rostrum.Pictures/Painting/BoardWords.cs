using Rostrum.Text;

namespace Rostrum.Pictures;

/// <summary>Tells in sentences what lies on a board and what is printed on it.</summary>
internal static class BoardWords
{
    /// <summary>The sentences.</summary>
    public static IEnumerable<string> Describe(BoardPicture board) =>
    [
        .. board.Form switch
        {
            BoardForm.Squares => Rows(board, board.Rows.Select((_, row) => row), "from the lowest row"),
            BoardForm.Hexes => Rows(board, board.Rows.Select((_, row) => board.Rows.Count - 1 - row), "hexes, from the far row"),
            BoardForm.Ring => Spaces(board, "a ring, clockwise"),
            BoardForm.Track => Spaces(board, "a track, in order"),
            _ => Spaces(board, "a map"),
        },
        .. board.Ways.Count > 0 ? [$"Lines join {string.Join("; ", Ways(board))}."] : Array.Empty<string>(),
        .. board.Holes.Count > 0 ? [board.Holes.Count == 1 ? $"{board.Holes[0].Name} is a hole." : $"{Prose.And(board.Holes.Select(hole => hole.Name))} are holes."] : Array.Empty<string>(),
        .. board.Areas.Select(area => $"{Prose.Sentence(area.Says)}: {string.Join(", ", area.Spaces.Select(space => board.Spaces[space].Name))}."),
        .. board.NumberNames.Select((name, at) => $"{Prose.Sentence(name)}: {string.Join("; ", Numbers(board, at))}."),
    ];

    private static string Heading(BoardPicture board, string how) => $"{board.Title ?? "The board"}, {how}.";

    private static IEnumerable<string> Rows(BoardPicture board, IEnumerable<int> rows, string how)
    {
        yield return Heading(board, how);
        foreach (int row in rows)
        {
            SpacePicture[] spaces = [.. board.Spaces.Where(space => space.Row == row).OrderBy(space => space.Column)];
            bool isFree = spaces.Length > 0 && spaces.All(IsFree) && (board.Form == BoardForm.Hexes || spaces.Length == board.Columns.Count);
            yield return $"Row {board.Rows[row]}: {(isFree ? "all free" : string.Join(", ", spaces.Select(Told)))}.";
        }
    }

    private static IEnumerable<string> Spaces(BoardPicture board, string how)
    {
        yield return Heading(board, how);
        yield return board.Spaces.All(IsFree)
            ? $"{string.Join(", ", board.Spaces.Select(space => space.Name))}: all free."
            : $"{string.Join(", ", board.Spaces.Select(Told))}.";
    }

    private static bool IsFree(SpacePicture space) => space.Content is CellPicture.Free;

    private static string Told(SpacePicture space) =>
        $"{space.Name} {(space.Content is CellPicture.Stack stack ? string.Join(" under ", stack.Pieces.Select(piece => piece.Says)) : "free")}";

    private static IEnumerable<string> Ways(BoardPicture board) => board.Ways.Where(way => way.Count > 1).Select(way => string.Join(" – ", way.Select(space => board.Spaces[space].Name)));

    private static IEnumerable<string> Numbers(BoardPicture board, int at) => board.Spaces
        .Where(space => at < space.Numbers.Count && space.Numbers[at] is not null)
        .GroupBy(space => space.Numbers[at]!.Value)
        .Select(group => $"{group.Key} on {string.Join(", ", group.Select(space => space.Name))}");
}
