using System.Collections.Immutable;
using Rostrum.Sheets.Drawings;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <summary>Lays a drawing over a board of hexes. Rows go by their labels, the cells of a row by their order: how far a row is set off is only for
/// the eye, and holes are drawn <c>#</c> or <c>-</c>.</summary>
internal sealed class HexDrawing(PositionReading reading, BoardFacts board, DrawingText drawing)
{
    private readonly ImmutableArray<HexRow> _rows = HexRow.Of(board);

    private string Told => $"'{board.Place.Name}'";

    /// <summary>Every cell that lies in a row of the board, with messages about rows and cells that are missing or too many.</summary>
    public IEnumerable<PlacedCell> Cells()
    {
        if (drawing.HasRuler)
        {
            SourceSpan ruler = drawing.ColumnLabels.Select(c => c.Span).FirstOrDefault(drawing.Span);
            reading.Problems.Add(PositionProblems.RulerOnHexes(ruler.To(drawing.ColumnLabels.Select(c => c.Span).LastOrDefault(ruler)), Told));
            return [];
        }

        return [.. Rows().SelectMany(r => CellsOf(r.Drawn, r.Row))];
    }

    private List<(DrawnRow Drawn, HexRow Row)> Rows()
    {
        if (drawing.Rows.All(r => r.Label is null))
        {
            if (drawing.Rows.Length != _rows.Length && !drawing.Rows.IsEmpty)
            {
                reading.Problems.Add(PositionProblems.WrongRowCount(drawing.Span, drawing.Rows.Length, _rows.Length, Told));
            }

            return [.. drawing.Rows.Zip(_rows)];
        }

        if (drawing.Rows.All(r => _rows.All(row => row.Label != r.Label)))
        {
            reading.Problems.Add(PositionProblems.RowsWithoutLabels(drawing.Rows[0].LabelSpan, drawing.Rows[0].Label ?? "", Told, BlankBoard.Of(board)));
            return [];
        }

        return ByLabel();
    }

    private List<(DrawnRow Drawn, HexRow Row)> ByLabel()
    {
        var found = new Dictionary<string, SourceSpan>();
        var rows = new List<(DrawnRow, HexRow)>();
        bool allKnown = true;
        foreach (DrawnRow drawn in drawing.Rows)
        {
            if (_rows.FirstOrDefault(r => r.Label == drawn.Label) is not { } row)
            {
                allKnown = false;
                reading.Problems.Add(PositionProblems.UnknownLabel(drawn.LabelSpan, drawn.Label ?? "", "row", Told, board.Rows));
            }
            else if (!found.TryAdd(row.Label, drawn.LabelSpan))
            {
                allKnown = false;
                reading.Problems.Add(PositionProblems.LineTwice(drawn.LabelSpan, LineName(row), found[row.Label]));
            }
            else
            {
                rows.Add((drawn, row));
            }
        }

        // Where a label was unknown or stands twice, the missing row is most likely that one: no second message.
        string[] missing = [.. _rows.Where(r => !found.ContainsKey(r.Label)).Select(LineName)];
        if (missing.Length > 0 && allKnown)
        {
            reading.Problems.Add(PositionProblems.LinesMissing(drawing.Span, missing, Told));
        }

        return rows;
    }

    // What stands outside the first and the last hex of a row says only that there is no space.
    private IEnumerable<PlacedCell> CellsOf(DrawnRow drawn, HexRow row)
    {
        ImmutableArray<DrawnCell> cells = drawn.Cells;
        int first = cells.TakeWhile(IsNone).Count();
        int last = cells.Reverse().TakeWhile(IsNone).Count();
        ImmutableArray<DrawnCell> inner = first + last >= cells.Length ? cells : cells[first..(cells.Length - last)];
        ImmutableArray<DrawnCell> used = cells.Length == row.Places.Length ? cells : inner;
        SourceSpan whole = drawn.LabelSpan.To(cells.Select(c => c.Span).LastOrDefault(drawn.LabelSpan));
        if (used.Length != row.Places.Length)
        {
            reading.Problems.Add(PositionProblems.WrongHexCount(whole, cells.Length, LineName(row), row.Places.Length));
            return [];
        }

        // One slip of the hole is one message, not one for each of the two places.
        int[] wrong = [.. Enumerable.Range(0, used.Length).Where(i => IsNone(used[i]) != row.Places[i] is null)];
        if (wrong.Any(i => row.Places[i] is null) && wrong.Any(i => row.Places[i] is not null))
        {
            string[] holes = [.. row.Names.Where((_, i) => row.Places[i] is null)];
            reading.Problems.Add(PositionProblems.HoleElsewhere(used[wrong[0]].Span.To(used[wrong[^1]].Span), holes, Told));
            return [];
        }

        return used.Select((c, i) => new PlacedCell(c.Span, row.Places[i], row.Names[i]));
    }

    private static bool IsNone(DrawnCell cell) => CellSigns.IsNoSpace(cell.Text);

    private string LineName(HexRow row) => $"{board.Family(LineForm.Rows)?.Name ?? "row"} {row.Label}";
}
