using System.Collections.Immutable;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Drawings;

/// <summary>A picture of a board or a pattern made of characters, cut into rows and cells; what a cell means is not decided here.</summary>
/// <remarks>
/// <para>On several lines (behind <c>|</c>) every line begins with a row label or <c>|</c>, and a last line that begins with <c>/</c> is the
/// ruler: its words are the labels of the columns. With a ruler the spaces are squares, without one they are hexes, whose rows are set off by
/// half steps.</para>
/// <para>On one line there are no labels: <c>/</c> between blanks ends a row, <c>~</c> at the beginning of a row is half a step.</para>
/// </remarks>
/// <param name="Span">The whole drawing.</param>
/// <param name="Rows">The top row first; empty only where the drawing was empty, which was reported.</param>
/// <param name="ColumnLabels">The words of the ruler from left to right; empty where there is no ruler.</param>
public sealed record DrawingText(SourceSpan Span, ImmutableArray<DrawnRow> Rows, ImmutableArray<DrawnCell> ColumnLabels)
{
    /// <summary>True where a ruler names the columns, so that the spaces are squares.</summary>
    public bool HasRuler { get; init; }

    /// <summary>Reads a drawing from a field of a sheet or a position.</summary>
    /// <param name="text">The field; behind <c>|</c> or with a line end in it, it is a drawing on several lines, else on one.</param>
    /// <param name="problems">Receives what is wrong, ids ROS0170 to ROS0174.</param>
    public static DrawingText Read(OutlineScalar text, DiagnosticBag problems)
    {
        ArgumentNullException.ThrowIfNull(text);
        var input = new DrawingInput(text.Text, text.SpanOf, text.Span, problems) { KeepsMargin = text.Style != OutlineStyle.Lines };
        return text.Style == OutlineStyle.Lines || IsOnSeveralLines(text.Text) ? LinedDrawing.Read(input) : OneLineDrawing.Read(input);
    }

    /// <summary>Reads a drawing from a cell of a table.</summary>
    /// <param name="text">The drawing; with a line end in it, it is one on several lines.</param>
    /// <param name="spanOf">Gives the place in the file of a part of <paramref name="text"/>: start and length in code units.</param>
    /// <param name="problems">Receives what is wrong, ids ROS0170 to ROS0174.</param>
    public static DrawingText Read(string text, Func<int, int, SourceSpan> spanOf, DiagnosticBag problems)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(spanOf);
        var input = new DrawingInput(text, spanOf, spanOf(0, text.Length), problems);
        return IsOnSeveralLines(text) ? LinedDrawing.Read(input) : OneLineDrawing.Read(input);
    }

    private static bool IsOnSeveralLines(string text) =>
        text.AsSpan().Trim().ContainsAny('\n', '\r') && !text.Contains(" / ", StringComparison.Ordinal);
}

/// <summary>A row of a drawing.</summary>
/// <param name="Label">What the row is called; null where it has no label.</param>
/// <param name="LabelSpan">Where the label stands; an empty spot at the beginning of the row where there is none.</param>
/// <param name="HalfSteps">How many half steps the row begins to the right of the leftmost row; 0 where there is a ruler.</param>
/// <param name="Cells">From left to right.</param>
public sealed record DrawnRow(string? Label, SourceSpan LabelSpan, int HalfSteps, ImmutableArray<DrawnCell> Cells);

/// <summary>A cell of a drawing, or a word of its ruler.</summary>
/// <param name="Text">The characters between two blanks; never empty.</param>
/// <param name="Span">Where they stand.</param>
/// <param name="Column">0-based from the left: the place under the ruler where there is one, else the place in the row. A row with a ruler
/// may leave out columns; its cells then stand exactly above the labels of theirs.</param>
public sealed record DrawnCell(string Text, SourceSpan Span, int Column);
