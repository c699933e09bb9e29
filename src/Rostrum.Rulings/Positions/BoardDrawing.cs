using Rostrum.Sheets.Drawings;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <summary>Lays a drawing over the board that it draws: which cell is which space.</summary>
internal sealed class BoardDrawing
{
    private readonly PositionReading _reading;
    private readonly BoardFacts _board;
    private readonly DrawingText _drawing;
    private readonly Dictionary<(int Column, int Row), int> _spaces;
    private readonly int _width;
    private readonly int _height;

    public BoardDrawing(PositionReading reading, BoardFacts board, DrawingText drawing)
    {
        (_reading, _board, _drawing) = (reading, board, drawing);
        _spaces = board.Spaces.ToDictionary(s => (s.Column, s.Row), s => s.Name.Index);
        _width = Math.Max(board.Columns.Length, board.Spaces.Select(s => s.Column + 1).DefaultIfEmpty(0).Max());
        _height = Math.Max(board.Rows.Length, board.Spaces.Select(s => s.Row + 1).DefaultIfEmpty(0).Max());
    }

    private string Told => $"'{_board.Place.Name}'";

    /// <summary>Every cell that lies in a row and a column of the board, with messages about rows, columns and cells that are missing or too many.</summary>
    public IEnumerable<PlacedCell> Cells()
    {
        int?[] columns = Columns();
        var cells = new List<PlacedCell>();
        foreach ((DrawnRow row, int index) in Rows())
        {
            cells.AddRange(CellsOf(row, index, columns));
        }

        return cells;
    }

    private List<PlacedCell> CellsOf(DrawnRow row, int index, int?[] columns)
    {
        var cells = new List<PlacedCell>();
        foreach (DrawnCell cell in row.Cells.Where(c => c.Column < columns.Length && columns[c.Column] is not null))
        {
            int column = columns[cell.Column]!.Value;
            cells.Add(new PlacedCell(cell.Span, _spaces.TryGetValue((column, index), out int space) ? space : null, NameOf(column, index)));
        }

        ReportGaps(row, index, columns, cells);
        return cells;
    }

    // A ragged row was reported when the drawing was cut up; here only rows that leave out a space although their cells are well placed.
    private void ReportGaps(DrawnRow row, int index, int?[] columns, List<PlacedCell> cells)
    {
        SourceSpan whole = row.LabelSpan.To(row.Cells.Select(c => c.Span).LastOrDefault(row.LabelSpan));
        if (!_drawing.HasRuler && row.Cells.Length != _width)
        {
            _reading.Problems.Add(PositionProblems.WrongCellCount(whole, row.Cells.Length, _width, Told));
            return;
        }

        HashSet<int> drawn = [.. cells.Select(c => c.Space).OfType<int>()];
        string[] left = [.. columns.OfType<int>().Where(c => _spaces.TryGetValue((c, index), out int s) && !drawn.Contains(s)).Select(c => NameOf(c, index))];
        if (left.Length > 0 && row.Cells.All(IsUnderItsLabel))
        {
            _reading.Problems.Add(PositionProblems.LinesMissing(whole, left, Told));
        }
    }

    private bool IsUnderItsLabel(DrawnCell cell) =>
        _drawing.HasRuler && cell.Span.StartPosition.Column == _drawing.ColumnLabels[cell.Column].Span.StartPosition.Column;

    // By column of the drawing: the column of the board; null where its label is unknown or stands twice.
    private int?[] Columns()
    {
        if (!_drawing.HasRuler || _board.Columns.IsEmpty)
        {
            return [.. Enumerable.Range(0, _width).Select(c => (int?)c)];
        }

        var found = new Dictionary<int, SourceSpan>();
        int?[] columns = [.. _drawing.ColumnLabels.Select(label => LineOf(label.Text, label.Span, true, found))];
        ReportMissing(columns, true, _width);
        return columns;
    }

    private List<(DrawnRow Row, int Index)> Rows()
    {
        if (_board.Rows.IsEmpty || _drawing.Rows.All(r => r.Label is null))
        {
            return RowsInOrder();
        }

        if (!_board.Columns.IsEmpty && !_drawing.Rows.IsEmpty && _drawing.Rows.All(r => !_board.Rows.Contains(r.Label ?? "")))
        {
            _reading.Problems.Add(PositionProblems.RowsWithoutLabels(_drawing.Rows[0].LabelSpan, _drawing.Rows[0].Label ?? "", Told, BlankBoard.Of(_board)));
            return [];
        }

        if (OtherLabel() is { } other)
        {
            DrawnRow row = _drawing.Rows[other];
            string meant = _board.Rows[_height - 1 - other];
            int line = _board.Rows.IndexOf(row.Label!);
            _reading.Problems.Add(PositionProblems.LineTwice(row.LabelSpan, LineName(false, line), _drawing.Rows[_height - 1 - line].LabelSpan) with { Fix = Fix.Replace(row.LabelSpan, meant, FixGrade.Choice) });
            return RowsInOrder();
        }

        var found = new Dictionary<int, SourceSpan>();
        (DrawnRow Row, int? Index)[] rows = [.. _drawing.Rows.Select(r => (r, LineOf(r.Label ?? "", r.LabelSpan, false, found)))];
        ReportMissing([.. rows.Select(r => r.Index)], false, _height);
        return [.. rows.Where(r => r.Index is not null).Select(r => (r.Row, r.Index!.Value))];
    }

    // All rows stand in their order, but one bears the label of another.
    private int? OtherLabel()
    {
        if (_drawing.Rows.Length != _height || _board.Rows.Length != _height || _height < 3)
        {
            return null;
        }

        int[] others = [.. Enumerable.Range(0, _height).Where(i => _drawing.Rows[i].Label != _board.Rows[_height - 1 - i])];
        return others is [var one] && _board.Rows.Contains(_drawing.Rows[one].Label ?? "") ? one : null;
    }

    private List<(DrawnRow Row, int Index)> RowsInOrder()
    {
        if (_drawing.Rows.Length != _height && !_drawing.Rows.IsEmpty)
        {
            _reading.Problems.Add(PositionProblems.WrongRowCount(_drawing.Span, _drawing.Rows.Length, _height, Told));
        }

        return [.. _drawing.Rows.Take(_height).Select((r, i) => (r, _height - 1 - i))];
    }

    private int? LineOf(string label, SourceSpan at, bool column, Dictionary<int, SourceSpan> found)
    {
        int line = (column ? _board.Columns : _board.Rows).IndexOf(label);
        if (line < 0 && label.Length == 0 && at.Length == 0 && !column)
        {
            // That its line begins with a blank was told.
            return null;
        }

        if (line < 0)
        {
            _reading.Problems.Add(PositionProblems.UnknownLabel(at, label, column ? "column" : "row", Told, column ? _board.Columns : _board.Rows));
            return null;
        }

        if (found.TryAdd(line, at))
        {
            return line;
        }

        _reading.Problems.Add(PositionProblems.LineTwice(at, LineName(column, line), found[line]));
        return null;
    }

    // Where a label was unknown or stands twice, the missing line is most likely that one: no second message.
    private void ReportMissing(int?[] lines, bool column, int count)
    {
        string[] missing = [.. Enumerable.Range(0, count).Where(i => !lines.Contains(i)).Select(i => LineName(column, i))];
        if (missing.Length > 0 && lines.Length > 0 && !lines.Contains(null))
        {
            _reading.Problems.Add(PositionProblems.LinesMissing(_drawing.Span, missing, Told));
        }
    }

    private string LineName(bool column, int line)
    {
        string word = _board.Family(column ? LineForm.Columns : LineForm.Rows)?.Name ?? (column ? "column" : "row");
        return $"{word} {(column ? _board.Columns : _board.Rows)[line]}";
    }

    private string NameOf(int column, int row) => _spaces.TryGetValue((column, row), out int space)
        ? _board.Spaces[space].Name.Name
        : column < _board.Columns.Length && row < _board.Rows.Length ? _board.Columns[column] + _board.Rows[row] : $"in column {column + 1}, row {row + 1}";
}

/// <summary>A cell of a drawing on its board.</summary>
/// <param name="Span">Where it stands.</param>
/// <param name="Space">The space; null where the board has none there.</param>
/// <param name="Name">The name that the space has or would have.</param>
internal sealed record PlacedCell(SourceSpan Span, int? Space, string Name);
