using System.Collections.Immutable;
using System.Text;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>Writes a board as a drawing, or as a list of spaces where the legend lacks a sign.</summary>
/// <param name="sheet">Gives legend and names.</param>
/// <param name="board">The board.</param>
/// <param name="seat">The 0-based seat whose board it is; null for the table.</param>
internal sealed class BoardPrinter(Sheet sheet, BoardFacts board, int? seat)
{
    private readonly ThingSpot _spot = new(PlaceForm.Board, [], seat, "");
    private readonly int _width = Math.Max(board.Columns.Length, board.Spaces.Select(s => s.Column + 1).DefaultIfEmpty(0).Max());
    private readonly int _height = Math.Max(board.Rows.Length, board.Spaces.Select(s => s.Row + 1).DefaultIfEmpty(0).Max());

    /// <summary>The lines below the key <c>name:</c>, the key included.</summary>
    /// <param name="content">The content of every space.</param>
    /// <param name="margin">Blanks before the key.</param>
    public string Print(ImmutableArray<Stack> content, string margin)
    {
        var cells = new CellPrinter(sheet, seat);
        string?[] drawn = [.. content.Select(cells.Print)];
        return drawn.Contains(null) || board.Layout == BoardLayout.Points || board.Columns.Concat(board.Rows).Any(l => l.Any(char.IsWhiteSpace)) || _width * _height == 0
            ? List(content, margin)
            : board.Layout == BoardLayout.Hexes ? DrawHexes(drawn!, margin) : Draw(drawn!, margin);
    }

    private string Draw(string[] cells, string margin)
    {
        string[][] rows = [.. Enumerable.Range(0, _height).Reverse().Select(row => RowOf(row, cells))];
        string[][] all = board.Columns.IsEmpty ? rows : [.. rows, ["/", .. board.Columns]];
        int[] widths = [.. Enumerable.Range(0, _width + 1).Select(c => all.Max(r => r[c].Length))];
        var text = new StringBuilder($"{margin}{PositionPrinter.Key(board.Place.Name)}: |\n");
        foreach (string[] row in all)
        {
            text.Append(margin).Append("  ").Append(string.Join(' ', row.Select((cell, c) => cell.PadRight(widths[c]))).TrimEnd()).Append('\n');
        }

        return text.ToString();
    }

    private string DrawHexes(string[] cells, string margin)
    {
        ImmutableArray<HexRow> rows = HexRow.Of(board);
        IEnumerable<string> lines = HexLines.Of(rows, [.. rows.Select(r => r.Places.Select(p => p is { } space ? cells[space] : CellSigns.Hole).ToArray())]);
        return $"{margin}{PositionPrinter.Key(board.Place.Name)}: |\n{string.Concat(lines.Select(l => $"{margin}  {l}\n"))}";
    }

    private string[] RowOf(int row, string[] cells)
    {
        var line = new string[_width + 1];
        Array.Fill(line, CellSigns.NoSpace);
        line[0] = row < board.Rows.Length ? board.Rows[row] : "|";
        foreach (BoardSpace space in board.Spaces.Where(s => s.Row == row))
        {
            line[space.Column + 1] = cells[space.Name.Index];
        }

        return line;
    }

    // What is left out of a list is empty, so an empty board is an empty list.
    private string List(ImmutableArray<Stack> content, string margin)
    {
        var words = new ThingPrinter(sheet);
        string key = $"{margin}{PositionPrinter.Key(board.Place.Name)}:";
        IEnumerable<string> lines = board.Spaces.Where(s => !content[s.Name.Index].Equals(Stack.Empty))
            .Select(s => $"{margin}  {PositionPrinter.Key(s.Name.Name)}: {words.Print(content[s.Name.Index], _spot)}\n");
        string all = string.Concat(lines);
        return all.Length == 0 ? $"{key} []\n" : $"{key}\n{all}";
    }
}
