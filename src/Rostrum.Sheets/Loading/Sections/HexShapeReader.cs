using System.Collections.Immutable;
using Rostrum.Sheets.Drawings;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads boards of hexes: <c>rows of 3 4 5 4 3</c>, <c>radius 2</c>, <c>6 across 4 up</c>, or a drawing without column labels.</summary>
/// <remarks>Columns count half steps from the left, so that a neighbour in the row lies two on and one in the next row one on.</remarks>
internal static class HexShapeReader
{
    /// <summary>The board of a size in words; null (with a message) where it is none.</summary>
    public static BoardShape? OfSize(LoadContext context, OutlineMapping mapping, OutlineScalar size)
    {
        string[] words = [.. Prose.WordsOf(size.Text).Select(w => w.TrimEnd(',')).Where(w => w.Length > 0 && w != "and")];
        (int Indent, int Length)[]? rows = words switch
        {
            ["rows", "of", .. var lengths] => Centred([.. lengths.Select(Number)]),
            ["radius", var radius] when Number(radius) is >= 0 and <= 29 and var r => Centred([.. Enumerable.Range(-r, (2 * r) + 1).Select(i => (2 * r) + 1 - Math.Abs(i))]),
            { Length: > 1 } when words.All(w => Number(w) > 0) => Centred([.. words.Select(Number)]),
            [var across, "across", var up, "up"] when Number(up) is >= 1 and <= BoardShapeReader.MostAcross => [.. Enumerable.Range(0, Number(up)).Select(i => (i % 2, Number(across)))],
            _ => null,
        };
        if (rows is null || rows.Length is 0 or > BoardShapeReader.MostAcross || rows.Any(r => r.Length is < 1 or > BoardShapeReader.MostAcross))
        {
            context.Problems.Add(BoardProblems.SizeOfHexes(size.Span, size.Text, null));
            return null;
        }

        int clash = Enumerable.Range(1, rows.Length - 1).FirstOrDefault(i => (rows[i].Indent - rows[i - 1].Indent) % 2 == 0);
        if (clash > 0)
        {
            // The rows are read on, so that what speaks of their hexes is not wrong too.
            context.Problems.Add(BoardProblems.RowsDoNotInterlock(size.Span, rows[clash - 1].Length, rows[clash].Length));
        }
        else if (words.All(w => Number(w) > 0))
        {
            context.Problems.Add(BoardProblems.SizeOfHexes(size.Span, size.Text, $"rows of {string.Join(' ', words)}"));
        }

        (string? name, ImmutableArray<string> labels) = LineNames.Labels(context, mapping, "rows", Letters(rows.Length));
        IEnumerable<HexCell> cells = rows.SelectMany((row, i) => Enumerable.Range(0, row.Length).Select(c => new HexCell(i, row.Indent + (2 * c), true, size.Span)));
        return Shape(mapping, [.. cells], labels, name);
    }

    /// <summary>The board of a drawing: <c>.</c> a space, <c>#</c> a hole that has a name, <c>-</c> nothing.</summary>
    public static BoardShape? Drawn(LoadContext context, OutlineMapping mapping, DrawingText drawing)
    {
        if (drawing.Rows.Length > BoardShapeReader.MostAcross || drawing.Rows.Any(r => r.Cells.Length > BoardShapeReader.MostAcross))
        {
            context.Problems.Add(BoardProblems.SizeOfHexes(drawing.Span, "a drawing of more than 60 rows or 60 spaces in a row", null));
            return null;
        }

        var cells = new List<HexCell>();
        for (int i = 0; i < drawing.Rows.Length; i++)
        {
            DrawnRow row = drawing.Rows[i];
            if (i > 0 && (row.HalfSteps - drawing.Rows[i - 1].HalfSteps) % 2 == 0)
            {
                context.Problems.Add(BoardProblems.RowNotSetOff(row.LabelSpan.To(row.Cells.Select(c => c.Span).LastOrDefault(row.LabelSpan))));
            }

            foreach (DrawnCell cell in row.Cells)
            {
                bool isSpace = BoardShapeReader.IsSpace(context, cell);
                if (isSpace || cell.Text == "#")
                {
                    cells.Add(new HexCell(i, row.HalfSteps + (2 * cell.Column), isSpace, cell.Span));
                }
            }
        }

        ImmutableArray<string> usual = [.. Letters(drawing.Rows.Length)];
        return Shape(mapping, cells, [.. drawing.Rows.Select((r, i) => r.Label ?? usual[i])], LineNames.WordFor(mapping, "rows"));
    }

    // Rows have letters from the far side on, spaces numbers from the left.
    private static BoardShape Shape(OutlineMapping mapping, List<HexCell> cells, ImmutableArray<string> labels, string? rowName)
    {
        int left = cells.Select(c => c.Column).DefaultIfEmpty(0).Min();
        var named = cells.GroupBy(c => c.Line).SelectMany(row => row.OrderBy(c => c.Column)
            .Select((c, i) => (Cell: c, Space: new ShapeSpace(BoardShape.NameOf(labels[c.Line], $"{i + 1}"), c.Column - left, labels.Length - 1 - c.Line, c.At)))).ToList();
        return new BoardShape(BoardLayout.Hexes, [.. named.Where(n => n.Cell.IsSpace).Select(n => n.Space)])
        {
            Rows = [.. labels.Reverse()],
            LineNames = LineNames.Of(mapping, null, rowName),
            Holes = [.. named.Where(n => !n.Cell.IsSpace).Select(n => new BoardHole(n.Space.Name, n.Space.Column, n.Space.Row))],
        };
    }

    private static (int Indent, int Length)[] Centred(int[] lengths)
    {
        int most = lengths.DefaultIfEmpty(0).Max();
        return [.. lengths.Select(n => (most - n, n))];
    }

    private static IEnumerable<string> Letters(int count) => LabelRange.Usual(count, letters: true).Select(l => l.ToLowerInvariant());

    private static int Number(string word) => (int)Math.Clamp(OutlineAsk.NumberIn(word) ?? -1, -1, 1_000_000);

    private sealed record HexCell(int Line, int Column, bool IsSpace, SourceSpan At);
}
