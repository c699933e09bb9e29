using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Sheets.Drawings;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>The spaces of a board before they are named symbols.</summary>
/// <param name="Spaces">In reading order: top row first.</param>
/// <param name="Columns">Labels, left to right.</param>
/// <param name="Rows">Labels, lowest first.</param>
/// <param name="ColumnName">What a column is called, or null.</param>
/// <param name="RowName">What a row is called, or null.</param>
internal sealed record BoardShape(ImmutableArray<ShapeSpace> Spaces, ImmutableArray<string> Columns, ImmutableArray<string> Rows, string? ColumnName, string? RowName);

/// <summary>A space by its name and coordinates: column from the left, row from below, 0-based.</summary>
internal sealed record ShapeSpace(string Name, int Column, int Row, SourceSpan At);

/// <summary>Reads the shape of a board: <c>squares: 5 across 4 up</c>, <c>drawn</c>, <c>ring</c>, <c>track</c>.</summary>
internal static class BoardShapeReader
{
    private const int MostAcross = 60;
    private static readonly string[] Shapes = ["squares", "drawn", "hexes", "ring", "track", "points", "file"];

    public static BoardShape? Read(LoadContext context, OutlineScalar key, OutlineMapping mapping)
    {
        if (mapping.Entries.Where(e => Shapes.Contains(e.Key.Text)).ToArray() is [var first, var second, ..])
        {
            context.Problems.Add(SheetProblems.TwoShapes(second.Key.Span, key.Text, first.Key.Text, second.Key.Text));
        }

        if (mapping.Find("drawn")?.Value is OutlineScalar drawn)
        {
            return Drawn(context, mapping, DrawingText.Read(drawn, context.Problems));
        }

        if (mapping.Find("squares")?.Value is OutlineScalar squares)
        {
            return Squares(context, mapping, squares);
        }

        if ((mapping.Find("ring") ?? mapping.Find("track"))?.Value is OutlineScalar way)
        {
            return Way(context, way);
        }

        if (!mapping.Entries.Any(e => e.Key.Text is "hexes" or "points" or "file") && !OutlineAsk.HasUnknownKey(mapping, "boards"))
        {
            context.Problems.Add(SheetProblems.NoShape(key.Span, key.Text));
        }

        return null;
    }

    private static BoardShape? Squares(LoadContext context, OutlineMapping mapping, OutlineScalar size)
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

        (string? columnName, ImmutableArray<string> columns) = Labels(context, mapping, "columns", (int)across, letters: true);
        (string? rowName, ImmutableArray<string> rows) = Labels(context, mapping, "rows", (int)up, letters: false);
        var spaces = ImmutableArray.CreateBuilder<ShapeSpace>();
        for (int row = (int)up - 1; row >= 0; row--)
        {
            for (int column = 0; column < across; column++)
            {
                spaces.Add(new ShapeSpace(Name(columns[column], rows[row]), column, row, size.Span));
            }
        }

        return new BoardShape(spaces.ToImmutable(), columns, rows, columnName, rowName);
    }

    // `5 x 4`, `5 by 4`: two numbers with something else between them.
    private static (long Across, long Up)? SizeIn(string text)
    {
        long[] numbers = [.. Prose.WordsOf(new string([.. text.Select(c => char.IsAsciiDigit(c) ? c : ' ')])).Select(w => OutlineAsk.NumberIn(w) ?? 0)];
        return numbers is [>= 1 and <= MostAcross, >= 1 and <= MostAcross] ? (numbers[0], numbers[1]) : null;
    }

    private static BoardShape? Drawn(LoadContext context, OutlineMapping mapping, DrawingText drawing)
    {
        if (!drawing.HasRuler)
        {
            context.Problems.Add(SheetProblems.NotYet(drawing.Span, "a drawn board without a ruler of column labels"));
            return null;
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
                    spaces.Add(new ShapeSpace(Name(columns[cell.Column], rows[row]), cell.Column, row, cell.Span));
                }
            }
        }

        (string? columnName, string? rowName) = LineNames(context, mapping);
        return new BoardShape(spaces.ToImmutable(), columns, rows, columnName, rowName);
    }

    // A position may leave cells out; the board itself is drawn whole. A row with cells that belong to no label was told when it was cut up.
    private static void CheckLength(LoadContext context, DrawnRow row, int columns)
    {
        if (row.Cells.Length < columns && row.Cells.Select(c => c.Column).SequenceEqual(row.Cells.Select(c => c.Column).Distinct()))
        {
            context.Problems.Add(SheetProblems.RowOfAnotherLength(row.LabelSpan.To(row.Cells.Select(c => c.Span).LastOrDefault(row.LabelSpan)), row.Cells.Length, columns));
        }
    }

    private static bool IsSpace(LoadContext context, DrawnCell cell)
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
        ImmutableArray<string> names = [.. SpaceNames(Prose.Fold(way.Text))];
        if (names.Length is 0 or > MostAcross * MostAcross)
        {
            context.Problems.Add(SheetProblems.SizeOfBoard(way.Span, way.Text, null));
            return null;
        }

        return new BoardShape([.. names.Select((n, i) => new ShapeSpace(n, i, 0, way.Span))], names, ["1"], null, null);
    }

    // `24`, or names: `s1 to s6 S n1 to n6 N`
    private static IEnumerable<string> SpaceNames(string words)
    {
        if (OutlineAsk.NumberIn(words) is { } count)
        {
            return Enumerable.Range(1, (int)Math.Clamp(count, 0, (MostAcross * MostAcross) + 1)).Select(i => i.ToString(CultureInfo.InvariantCulture));
        }

        var names = new List<string>();
        string[] parts = words.Split(' ');
        for (int i = 0; i < parts.Length; i++)
        {
            if (parts[i] == "to" && i > 0 && i + 1 < parts.Length)
            {
                names.AddRange(LabelRange.Between(names[^1], parts[++i]).Skip(1));
            }
            else
            {
                names.Add(parts[i]);
            }
        }

        return names;
    }

    // `columns: bay A to E`, `columns: A to E`, `columns: bay`
    private static (string? Name, ImmutableArray<string> Labels) Labels(LoadContext context, OutlineMapping mapping, string key, int count, bool letters)
    {
        ImmutableArray<string> usual = [.. LabelRange.Usual(count, letters)];
        if (mapping.Find(key)?.Value is not OutlineScalar scalar)
        {
            return (LineName(mapping, key), usual);
        }

        LineLabels line = LineLabels.Of(scalar.Text);
        if (line.Near is { } near)
        {
            context.Problems.Add(SheetProblems.LabelsWithDash(scalar.Span, scalar.Text, near));
        }
        else if (!line.Labels.IsEmpty && line.Labels.Length != count)
        {
            context.Problems.Add(SheetProblems.LabelsDoNotFit(scalar.Span, line.Labels.Length, count, key == "columns" ? "column" : "row"));
        }

        return (line.Name, line.Labels.Length == count ? line.Labels : usual);
    }

    private static int LabelCount(OutlineMapping mapping, string key) =>
        mapping.Find(key)?.Value is OutlineScalar scalar ? Math.Min(LineLabels.Of(scalar.Text).Labels.Length, MostAcross) : 0;

    private static (string? Columns, string? Rows) LineNames(LoadContext context, OutlineMapping mapping)
    {
        // A drawing gives the labels; a word before a range of labels is still the name of the lines.
        string? Named(string key) => mapping.Find(key)?.Value is OutlineScalar scalar ? LineLabels.Of(scalar.Text).Name : LineName(mapping, key);
        return (Named("columns"), Named("rows"));
    }

    private static string? LineName(OutlineMapping mapping, string key) =>
        mapping.Find("lines")?.Value is OutlineMapping lines && lines.Find(key)?.Value is OutlineScalar name ? Prose.Fold(name.Text) : null;

    private static string Name(string column, string row) =>
        char.IsDigit(column[^1]) && char.IsDigit(row[0]) ? $"{column}-{row}" : column + row;
}
