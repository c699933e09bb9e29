using System.Collections.Immutable;
using System.Text;
using Rostrum.Rulings.Boards;
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
        return drawn.Contains(null) || !IsPartedAgain(content) || board.Layout == BoardLayout.Points || board.Columns.Concat(board.Rows).Any(l => l.Any(char.IsWhiteSpace)) || _width * _height == 0
            ? List(content, margin)
            : board.Layout == BoardLayout.Hexes ? DrawHexes(drawn!, margin) : Draw(drawn!, margin);
    }

    // Pieces larger than a space are drawn where the drawing can be parted into just them again.
    private bool IsPartedAgain(ImmutableArray<Stack> content)
    {
        var large = content.SelectMany((stack, space) => stack.Things.Where(t => !t.Covers.IsEmpty).Select(t => (Look: t with { Covers = [] }, t.Covers, Space: space))).ToArray();
        BoardGeometry? geometry = large.Length == 0 ? null : BoardGeometry.Of(board);
        return large.GroupBy(l => l.Look).All(look =>
            look.Select(l => l.Space).Distinct().Count() == look.Count()
            && ShapeParts.Of(geometry!, sheet.KindOf(look.Key.Kind!).Shape!, look.Select(l => l.Space)) is { AreSeveral: false, Parts.IsEmpty: false });
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

    // Where a drawing could be parted into other pieces, each piece larger than a space has a line of its own, at its first space.
    private IEnumerable<(string Spaces, Stack Content)> Lines(Stack content, SpaceName space)
    {
        Stack single = content with { Things = [.. content.Things.Where(t => t.Covers.IsEmpty)] };
        IEnumerable<(string, Stack)> large = content.Things.Where(t => !t.Covers.IsEmpty && t.Covers[0] == space.Index)
            .Select(t => (string.Join(' ', t.Covers.Select(c => board.Spaces[c].Name.Name)), new Stack([t])));
        return single.Equals(Stack.Empty) ? large : large.Prepend((space.Name, single));
    }

    // What is left out of a list is empty, so an empty board is an empty list.
    private string List(ImmutableArray<Stack> content, string margin)
    {
        var words = new ThingPrinter(sheet);
        string key = $"{margin}{PositionPrinter.Key(board.Place.Name)}:";
        bool isParted = IsPartedAgain(content);
        IEnumerable<string> lines = board.Spaces.Select(s => (Name: s.Name, Content: content[s.Name.Index]))
            .SelectMany(s => !isParted ? Lines(s.Content, s.Name) : s.Content.Equals(Stack.Empty) ? [] : [(s.Name.Name, s.Content)]).Select(l => $"{margin}  {PositionPrinter.Key(l.Spaces)}: {words.Print(l.Content, _spot)}\n");
        string all = string.Concat(lines);
        return all.Length == 0 ? $"{key} []\n" : $"{key}\n{all}";
    }
}
