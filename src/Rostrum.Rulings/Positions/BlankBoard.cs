using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>A board drawn with nothing on it, for somebody who has to draw one.</summary>
internal static class BlankBoard
{
    private const int MostRows = 12;

    /// <summary>The lines of a position, from the name of the board to its column labels; the middle of a high board is left out.</summary>
    public static string Of(BoardFacts board)
    {
        HashSet<(int Column, int Row)> spaces = [.. board.Spaces.Select(s => (s.Column, s.Row))];
        int label = board.Rows.Max(r => r.Length);
        IEnumerable<string> rows = board.Rows.Select((r, row) => $"    {r.PadRight(label)} {Cells(board, column => spaces.Contains((column, row)) ? "." : "-")}").Reverse();
        IEnumerable<string> shown = board.Rows.Length <= MostRows ? rows : [.. rows.Take(2), "    …", .. rows.TakeLast(1)];
        return string.Join('\n', shown.Prepend($"  {board.Place.Name}: |").Append($"    {"/".PadRight(label)} {Cells(board, column => board.Columns[column])}"));
    }

    private static string Cells(BoardFacts board, Func<int, string> cell) =>
        string.Join(' ', board.Columns.Select((c, column) => cell(column).PadRight(c.Length))).TrimEnd();
}
