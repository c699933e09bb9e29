namespace Rostrum.Text.Tables;

/// <summary>What can be wrong with a table. One method per id; each has a page in <c>docs/diagnostics</c>.</summary>
internal static class CsvProblems
{
    public static Diagnostic UnclosedQuote(SourceSpan opener) => new(
        "ROS0150",
        Severity.Error,
        opener,
        "The quote that opens this cell is never closed.",
        "Write '\"' where the cell ends; a quote inside a cell is written twice.");

    public static Diagnostic RowLength(SourceSpan row, int cells, int columns) => new(
        "ROS0151",
        Severity.Error,
        row,
        $"This row has {Prose.Count(cells, "cell", "cells")}, the header has {columns}.",
        cells > columns ? "Put a cell that holds the separating sign in double quotes, or delete what is too much." : "Write the missing cells; an empty cell still needs its separating sign.");

    public static Diagnostic DuplicateName(SourceSpan second, string name, SourceSpan first) => new(
        "ROS0152",
        Severity.Error,
        second,
        $"Two columns are called '{Prose.Clip(name)}'.",
        "Give one of them another name.")
    {
        Related = [new RelatedPlace(first, "the first one")],
    };

    public static Diagnostic EmptyName(SourceSpan at, int column) => new(
        "ROS0153",
        Severity.Error,
        at,
        $"Column {column} has no name.",
        "Write its name in the first line, or delete the column.");

    public static Diagnostic MadeADate(SourceSpan at, string text, string column) => new(
        "ROS0154",
        Severity.Warning,
        at,
        $"'{text}' in column '{Prose.Clip(column)}' looks like a date that a spreadsheet made of something else.",
        "Set the column to text in the spreadsheet and write the cell again.");

    public static Diagnostic NoHeader(SourceSpan at) => new(
        "ROS0155",
        Severity.Error,
        at,
        "This table is empty: its first line should name the columns.",
        "Write the names of the columns in the first line, such as 'name,worth'.");

    public static Diagnostic TextBehindQuote(SourceSpan rest) => new(
        "ROS0156",
        Severity.Error,
        rest,
        $"'{Prose.Clip(rest.Text)}' stands behind the closing quote of a cell.",
        "Move the quote to the end of the cell; a quote inside a cell is written twice.");
}
