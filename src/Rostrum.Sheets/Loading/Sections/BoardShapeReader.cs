using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Sheets.Drawings;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads the shape of a board: <c>squares: 5 across 4 up</c>, <c>hexes: radius 2</c>, <c>drawn</c>, <c>ring</c>, <c>track</c>, <c>points</c>,
/// <c>file</c>.</summary>
internal static class BoardShapeReader
{
    /// <summary>The most columns or rows.</summary>
    public const int MostAcross = 60;

    /// <summary>The most spaces.</summary>
    public const int MostSpaces = MostAcross * MostAcross;

    private static readonly string[] Shapes = ["squares", "drawn", "hexes", "ring", "track", "points", "file"];

    /// <summary>The shape; null (with a message) where it cannot be read.</summary>
    public static BoardShape? Read(LoadContext context, OutlineScalar key, OutlineMapping mapping)
    {
        if (mapping.Entries.Where(e => Shapes.Contains(e.Key.Text)).ToArray() is [var first, var second, ..])
        {
            context.Problems.Add(SheetProblems.TwoShapes(second.Key.Span, key.Text, first.Key.Text, second.Key.Text));
        }

        BoardShape? shape = mapping.Entries.FirstOrDefault(e => Shapes.Contains(e.Key.Text)) is { } entry
            ? Of(context, entry, mapping)
            : null;
        if (shape is null && !mapping.Entries.Any(e => Shapes.Contains(e.Key.Text)) && !OutlineAsk.HasUnknownKey(mapping, "boards"))
        {
            context.Problems.Add(SheetProblems.NoShape(key.Span, key.Text));
        }

        if (shape is null)
        {
            return null;
        }

        ReportDoubled(context, shape.Spaces);
        return Without(context, mapping, shape);
    }

    // Where spaces have no place of their own in the sheet, the first of two is enough.
    private static void ReportDoubled(LoadContext context, ImmutableArray<ShapeSpace> spaces)
    {
        var first = new Dictionary<string, SourceSpan>(StringComparer.OrdinalIgnoreCase);
        foreach (ShapeSpace space in spaces.Where(s => s.Name.Length > 0 && !first.TryAdd(s.Name, s.At)).DistinctBy(s => s.At))
        {
            context.Problems.Add(BoardProblems.SpaceTwice(space.At, space.Name, first[space.Name]));
        }
    }

    private static BoardShape? Of(LoadContext context, OutlineEntry entry, OutlineMapping mapping)
    {
        if (entry.Key.Text == "points")
        {
            return MapShapeReader.Points(context, entry.Value);
        }

        if (OutlineAsk.Text(context, entry.Value, "the shape of the board") is not { } text)
        {
            return null;
        }

        return entry.Key.Text switch
        {
            "squares" => Squares(context, mapping, text),
            "hexes" => HexShapeReader.OfSize(context, mapping, text),
            "drawn" => Drawn(context, mapping, DrawingText.Read(text, context.Problems)),
            "file" => MapShapeReader.File(context, text),
            _ => Way(context, text),
        };
    }

    private static BoardShape Squares(LoadContext context, OutlineMapping mapping, OutlineScalar size)
    {
        string[] words = Prose.Fold(size.Text).Split(' ');
        bool isSize = words is [_, "across", _, "up"];
        long across = isSize ? OutlineAsk.NumberIn(words[0]) ?? 0 : 0;
        long up = isSize ? OutlineAsk.NumberIn(words[2]) ?? 0 : 0;
        if (across is < 1 or > MostAcross || up is < 1 or > MostAcross)
        {
            // The board is read on with what is meant, so that what speaks of it is not wrong too.
            (long Across, long Up)? meant = SizeIn(size.Text);
            context.Problems.Add(SheetProblems.SizeOfBoard(size.Span, size.Text, meant is { } near ? $"{near.Across} across {near.Up} up" : null));
            (across, up) = meant ?? (LabelCount(mapping, "columns"), LabelCount(mapping, "rows"));
        }

        (string? columnName, ImmutableArray<string> columns) = LineNames.Labels(context, mapping, "columns", LabelRange.Usual((int)across, letters: true));
        (string? rowName, ImmutableArray<string> rows) = LineNames.Labels(context, mapping, "rows", LabelRange.Usual((int)up, letters: false));
        ImmutableArray<ShapeSpace> spaces =
        [
            .. from row in Enumerable.Range(0, (int)up).Reverse()
               from column in Enumerable.Range(0, (int)across)
               select new ShapeSpace(BoardShape.NameOf(columns[column], rows[row]), column, row, size.Span),
        ];
        return new BoardShape(BoardLayout.Squares, spaces) { Columns = columns, Rows = rows, LineNames = LineNames.Of(mapping, columnName, rowName) };
    }

    // `5 x 4`, `5 by 4`: two numbers with something else between them.
    private static (long Across, long Up)? SizeIn(string text)
    {
        long[] numbers = [.. Prose.WordsOf(new string([.. text.Select(c => char.IsAsciiDigit(c) ? c : ' ')])).Select(w => OutlineAsk.NumberIn(w) ?? 0)];
        return numbers is [>= 1 and <= MostAcross, >= 1 and <= MostAcross] ? (numbers[0], numbers[1]) : null;
    }

    private static int LabelCount(OutlineMapping mapping, string key) =>
        mapping.Find(key)?.Value is OutlineScalar scalar ? Math.Min(LineLabels.Of(scalar.Text).Labels.Length, MostAcross) : 0;

    private static BoardShape? Drawn(LoadContext context, OutlineMapping mapping, DrawingText drawing)
    {
        if (drawing.Rows.IsEmpty)
        {
            return null;
        }

        if (!drawing.HasRuler)
        {
            return HexShapeReader.Drawn(context, mapping, drawing);
        }

        ImmutableArray<string> columns = [.. drawing.ColumnLabels.Select(c => c.Text)];
        ImmutableArray<string> rows = [.. drawing.Rows.Select((r, i) => r.Label ?? (drawing.Rows.Length - i).ToString(CultureInfo.InvariantCulture)).Reverse()];
        var spaces = ImmutableArray.CreateBuilder<ShapeSpace>();
        for (int i = 0; i < drawing.Rows.Length; i++)
        {
            int row = drawing.Rows.Length - 1 - i;
            CheckLength(context, drawing.Rows[i], columns.Length);
            foreach (DrawnCell cell in drawing.Rows[i].Cells)
            {
                if (IsSpace(context, cell) && cell.Column < columns.Length)
                {
                    spaces.Add(new ShapeSpace(BoardShape.NameOf(columns[cell.Column], rows[row]), cell.Column, row, cell.Span));
                }
            }
        }

        // A drawing gives the labels; a word before a range of labels is still the name of the lines.
        return new BoardShape(BoardLayout.Squares, spaces.ToImmutable())
        {
            Columns = columns, Rows = rows, LineNames = LineNames.Of(mapping, LineNames.WordFor(mapping, "columns"), LineNames.WordFor(mapping, "rows")),
        };
    }

    // A position may leave cells out; the board itself is drawn whole. A row with cells that belong to no label was told when it was cut up.
    private static void CheckLength(LoadContext context, DrawnRow row, int columns)
    {
        if (row.Cells.Length < columns && row.Cells.Select(c => c.Column).SequenceEqual(row.Cells.Select(c => c.Column).Distinct()))
        {
            context.Problems.Add(SheetProblems.RowOfAnotherLength(row.LabelSpan.To(row.Cells.Select(c => c.Span).LastOrDefault(row.LabelSpan)), row.Cells.Length, columns));
        }
    }

    /// <summary>Whether a cell of a drawn board is a space; a message where it is neither a space nor none.</summary>
    public static bool IsSpace(LoadContext context, DrawnCell cell)
    {
        if (cell.Text is "." or "_" or "-" or "#")
        {
            return cell.Text is "." or "_";
        }

        context.Problems.Add(SheetProblems.UnknownBoardSign(cell.Span, cell.Text));
        return false;
    }

    private static BoardShape? Way(LoadContext context, OutlineScalar way)
    {
        ImmutableArray<string> names = [.. SpaceList.Names(way.Text)];
        if (names.Length is 0 or > MostSpaces)
        {
            context.Problems.Add(SheetProblems.SizeOfBoard(way.Span, way.Text, null));
            return null;
        }

        return new BoardShape(BoardLayout.Squares, [.. names.Select((n, i) => new ShapeSpace(n, i, 0, way.Span))]) { Columns = names, Rows = ["1"] };
    }

    // `without: c3 d1` takes spaces out of any shape; in a row of hexes they keep their number.
    private static BoardShape Without(LoadContext context, OutlineMapping mapping, BoardShape shape)
    {
        if (mapping.Find("without")?.Value is not { } node)
        {
            return shape;
        }

        HashSet<int> taken = [.. SpaceList.Read(context, node, new SpaceIndex(shape.Spaces.Select(s => s.Name)), "a space of this board")];
        int[] left = [.. Enumerable.Range(0, shape.Spaces.Length).Where(i => !taken.Contains(i))];
        var newIndex = left.Select((old, i) => (old, i)).ToDictionary(p => p.old, p => p.i);
        return shape with
        {
            Spaces = [.. left.Select(i => shape.Spaces[i])],
            Holes = [.. shape.Holes, .. taken.Order().Select(i => shape.Spaces[i]).Select(s => new BoardHole(s.Name, s.Column, s.Row))],
            WaysBefore = shape.Ways,
            Ways = [.. shape.Ways.SelectMany(w => Pieces(w, taken)).Select(w => w.Select(i => newIndex[i]).ToImmutableArray())],
            Spots = shape.Spots.IsEmpty ? [] : [.. left.Select(i => shape.Spots[i])],
            Further = [.. shape.Further.Select(f => f with { Cells = [.. left.Select(i => f.Cells[i])] })],
        };
    }

    // A closed line that loses a point is read from behind the gap, so that it stays whole where it was joined.
    private static IEnumerable<int> FromGap(ImmutableArray<int> way, HashSet<int> taken)
    {
        int[] round = way.Length > 2 && way[0] == way[^1] ? [.. way[..^1]] : [];
        int gap = Array.FindIndex(round, taken.Contains);
        return gap < 0 ? way : [.. round[(gap + 1)..], .. round[..gap]];
    }

    // A line of points without some of them falls into the stretches between.
    private static IEnumerable<ImmutableArray<int>> Pieces(ImmutableArray<int> way, HashSet<int> taken)
    {
        var piece = new List<int>();
        foreach (int space in FromGap(way, taken).Append(-1))
        {
            if (space >= 0 && !taken.Contains(space))
            {
                piece.Add(space);
                continue;
            }

            if (piece.Count > 0)
            {
                yield return [.. piece];
            }

            piece.Clear();
        }
    }
}
