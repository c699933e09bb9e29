using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Pasted;

/// <summary>A drawing in a pasted text.</summary>
/// <param name="Seat">From 1: the seat of the line above; null where none is said.</param>
/// <param name="Named">The index of the board of the line above; null where none is said.</param>
/// <param name="Lines">Rows, the top row first, and the line of column labels where there is one; never empty.</param>
internal sealed record PastedDrawing(int? Seat, int? Named, ImmutableArray<PastedLine> Lines)
{
    private IEnumerable<PastedLine.Row> Rows => Lines.OfType<PastedLine.Row>();

    /// <summary>Its first words.</summary>
    public SourceSpan At => Lines[0].Span;

    /// <summary>The indices of the boards that it may be: the named one; else those whose lines are the drawn ones; else those that have all drawn lines; else all.</summary>
    public ImmutableArray<int> Boards(Sheet sheet)
    {
        if (Named is { } named)
        {
            return [named];
        }

        ImmutableArray<int>[] fitting = [Where(sheet, IsWhole), Where(sheet, IsPart), Where(sheet, _ => true)];
        return fitting.First(f => !f.IsEmpty);
    }

    /// <summary>The drawing as a field of a position; each character knows where it stands.</summary>
    public OutlineScalar ToField()
    {
        SourceText source = At.Source;
        var offsets = ImmutableArray.CreateBuilder<int>();
        var text = new System.Text.StringBuilder();
        foreach (PastedLine line in Lines)
        {
            int start = source.LineStart(source.LineIndexOf(line.Span.Start));
            start += source.Content[start] == '\uFEFF' ? 1 : 0;
            text.Append(source.Content, start, line.Span.End - start).Append('\n');
            offsets.AddRange(Enumerable.Range(start, line.Span.End + 1 - start));
        }

        return new OutlineScalar(At.To(Lines[^1].Span), text.ToString(), OutlineStyle.Lines, offsets[0]) { Offsets = offsets.ToImmutable() };
    }

    private static ImmutableArray<int> Where(Sheet sheet, Func<BoardFacts, bool> fits) =>
        [.. Enumerable.Range(0, sheet.Boards.Length).Where(i => fits(sheet.Boards[i]))];

    private bool IsWhole(BoardFacts board) => IsPart(board) && Rows.Count() == board.Rows.Length && (ColumnLabels() ?? [.. board.Columns]).Length == board.Columns.Length;

    private bool IsPart(BoardFacts board)
    {
        if (ColumnLabels() is { } labels)
        {
            return Rows.All(r => board.Rows.Contains(r.Label)) && labels.All(board.Columns.Contains);
        }

        Dictionary<string, int[]> widths = Widths(board);
        return Rows.All(r => widths.TryGetValue(r.Label, out int[]? fitting) && fitting.Contains(r.Cells));
    }

    // By the label of a row, how many cells it may have: with or without its holes.
    private static Dictionary<string, int[]> Widths(BoardFacts board)
    {
        ILookup<int, BoardSpace> spaces = board.Spaces.ToLookup(s => s.Row);
        Dictionary<int, int>? hexes = board.Layout == BoardLayout.Hexes ? HexRow.Of(board).ToDictionary(r => r.Row, r => r.Places.Length) : null;
        return board.Rows.Select((label, row) => (label, row)).DistinctBy(r => r.label)
            .ToDictionary(r => r.label, r => new[] { hexes?.GetValueOrDefault(r.row) ?? board.Columns.Length, spaces[r.row].Count() });
    }

    private string[]? ColumnLabels() => Lines.OfType<PastedLine.Ruler>().LastOrDefault() is { } ruler ? Prose.WordsOf(ruler.Span.Text[1..]) : null;
}
