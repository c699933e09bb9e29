using System.Collections.Immutable;
using Rostrum.Sheets.Drawings;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>shape: . . / . -, rotated, mirrored</c>: the spaces that a piece covers, and how it may be laid.</summary>
internal static class ShapeReader
{
    private const int MostCells = 24;

    /// <summary>The shape; null where none is said or (with a message) where it cannot be read.</summary>
    public static PieceShape? Read(LoadContext context, OutlineMapping mapping)
    {
        if (mapping.Find("shape")?.Value is not { } node || OutlineAsk.Text(context, node, "the shape of the piece, such as '. . / . -, rotated'") is not { } scalar)
        {
            return null;
        }

        string text = scalar.Text.TrimEnd();
        bool rotated = false;
        bool mirrored = false;
        for (int comma = text.LastIndexOf(','); comma >= 0; comma = text.LastIndexOf(','))
        {
            string permission = Prose.Fold(text[(comma + 1)..]);
            rotated |= permission == "rotated";
            mirrored |= permission == "mirrored";
            if (permission is not ("rotated" or "mirrored"))
            {
                int start = comma + 1 + (text.Length - comma - 1 - text[(comma + 1)..].TrimStart().Length);
                context.Problems.Add(SheetProblems.UnknownWord(scalar.SpanOf(start, text.Length - start), permission, "a way to lay a piece", ["rotated", "mirrored"]));
            }

            text = text[..comma].TrimEnd();
        }

        DrawingText drawing = DrawingText.Read(text, scalar.SpanOf, context.Problems);
        return Shape(context, drawing) is { } cells ? new PieceShape(cells, rotated, mirrored) : null;
    }

    private static Drawing? Shape(LoadContext context, DrawingText drawing)
    {
        var cells = ImmutableArray.CreateBuilder<DrawingCell>();
        for (int i = 0; i < drawing.Rows.Length; i++)
        {
            foreach (DrawnCell cell in drawing.Rows[i].Cells.Where(c => c.Text != "-"))
            {
                if (cell.Text is not ("." or "[.]"))
                {
                    context.Problems.Add(BoardProblems.UnknownShapeSign(cell.Span, cell.Text));
                    return null;
                }

                cells.Add(new DrawingCell(cell.Column, drawing.Rows.Length - 1 - i, null, false, null, false, null, cell.Text == "[.]") { HalfSteps = drawing.Rows[i].HalfSteps });
            }
        }

        if (drawing.Rows.IsEmpty || cells.Count is < 2 or > MostCells)
        {
            if (!drawing.Rows.IsEmpty)
            {
                context.Problems.Add(BoardProblems.SizeOfShape(drawing.Span, cells.Count, MostCells));
            }

            return null;
        }

        return new Drawing(cells.Max(c => c.Column) + 1, drawing.Rows.Length, cells.ToImmutable(), drawing.Span);
    }
}
