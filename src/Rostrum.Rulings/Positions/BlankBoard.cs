using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>A board drawn with nothing on it, for somebody who has to draw one.</summary>
internal static class BlankBoard
{
    private const int MostRows = 12;

    /// <summary>The lines of a position, from the name of the board to its column labels; the middle of a high board is left out.</summary>
    public static string Of(BoardFacts board)
    {
        if (board.Layout == BoardLayout.Hexes)
        {
            ImmutableArray<HexRow> hexes = HexRow.Of(board);
            IEnumerable<string> lines = HexLines.Of(hexes, [.. hexes.Select(r => r.Places.Select(p => p is null ? "#" : ".").ToArray())]).Select(l => $"    {l}");
            return string.Join('\n', Shown(lines, hexes.Length).Prepend($"  {board.Place.Name}: |"));
        }

        HashSet<(int Column, int Row)> spaces = [.. board.Spaces.Select(s => (s.Column, s.Row))];
        int label = board.Rows.Max(r => r.Length);
        IEnumerable<string> rows = board.Rows.Select((r, row) => $"    {r.PadRight(label)} {Cells(board, column => spaces.Contains((column, row)) ? "." : "-")}").Reverse();
        return string.Join('\n', Shown(rows, board.Rows.Length).Prepend($"  {board.Place.Name}: |").Append($"    {"/".PadRight(label)} {Cells(board, column => board.Columns[column])}"));
    }

    private static IEnumerable<string> Shown(IEnumerable<string> rows, int count) => count <= MostRows ? rows : [.. rows.Take(2), "    …", .. rows.TakeLast(1)];

    private static string Cells(BoardFacts board, Func<int, string> cell) =>
        string.Join(' ', board.Columns.Select((c, column) => cell(column).PadRight(c.Length))).TrimEnd();
}
