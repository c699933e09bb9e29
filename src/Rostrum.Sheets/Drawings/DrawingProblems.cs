using Rostrum.Text;

namespace Rostrum.Sheets.Drawings;

/// <summary>What can be wrong with the shape of a drawing. One method per id; each has a page in <c>docs/diagnostics</c>.</summary>
internal static class DrawingProblems
{
    public static Diagnostic Ragged(SourceSpan row, int cells, int columns) => new(
        "ROS0170",
        Severity.Error,
        row,
        $"This row draws {Prose.Count(cells, "cell", "cells")}, the line of column labels names {columns}.",
        "Draw one cell a column, '-' where there is no space; or put each cell exactly above the label of its column.");

    public static Diagnostic RulerOtherwise(SourceSpan ruler, int labels, int cells) => new(
        "ROS0170",
        Severity.Error,
        ruler,
        $"The line of column labels names {Prose.Count(labels, "column", "columns")}, and every row draws {Prose.Count(cells, "cell", "cells")}.",
        "Write one label a column.");

    public static Diagnostic LineBeginsWithBlank(SourceSpan words, bool first) => new(
        "ROS0171",
        Severity.Error,
        words,
        $"This line of the drawing begins with a blank{(first ? "" : ", so its row has no label")}.",
        "Begin every line at the same place, with a row label or with '|'.");

    public static Diagnostic LineBeginsEarly(SourceSpan words, int blanks) => new(
        "ROS0171",
        Severity.Error,
        words,
        "This line of the drawing begins further left than the others.",
        "Begin every line at the same place, with a row label or with '|'.")
    {
        Fix = new Fix("begin it like the others", FixGrade.Choice, [new TextEdit(words.Part(0, 0), new string(' ', blanks))]),
    };

    public static Diagnostic Empty(SourceSpan at) => new(
        "ROS0172",
        Severity.Error,
        at,
        "This drawing has no rows.",
        "Draw at least one row, such as '1 . . .'.");

    public static Diagnostic RulerNotLast(SourceSpan sign) => new(
        "ROS0173",
        Severity.Error,
        sign,
        "The line of column labels stands above a row.",
        "Move it below the last row; there is only one.");

    public static Diagnostic EmptyRow(SourceSpan sign) => new(
        "ROS0174",
        Severity.Error,
        sign,
        "A row of this drawing is empty.",
        "Draw its cells, or delete the '/' that is too much.");
}
