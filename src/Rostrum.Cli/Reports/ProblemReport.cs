using Rostrum.Text;

namespace Rostrum.Cli.Reports;

/// <summary>Problems in place of an answer.</summary>
internal sealed record ProblemsReport(int Format, IReadOnlyList<ProblemItem> Problems)
{
    /// <summary>All of them.</summary>
    public static ProblemsReport Of(IEnumerable<Diagnostic> problems) => new(ReportJson.Format, [.. problems.Select(ProblemItem.Of)]);
}

/// <summary>A problem; lines and columns are 1-based and counted in characters, the end is the spot behind the last character.</summary>
internal sealed record ProblemItem(
    string Id,
    string Severity,
    string File,
    int Line,
    int Column,
    int EndLine,
    int EndColumn,
    string Message,
    string Hint,
    FixItem? Fix,
    IReadOnlyList<RelatedItem> Related)
{
    /// <summary>A problem as it is reported.</summary>
    public static ProblemItem Of(Diagnostic problem)
    {
        (LinePosition start, LinePosition end) = (problem.At.StartPosition, problem.At.EndPosition);
        return new ProblemItem(
            problem.Id,
            problem.Severity == Text.Severity.Error ? "error" : "warning",
            problem.At.Source.Name,
            start.Line,
            start.Column,
            end.Line,
            end.Column,
            problem.Message,
            problem.Hint,
            problem.Fix is { } fix ? FixItem.Of(fix) : null,
            [.. problem.Related.Select(RelatedItem.Of)]);
    }
}

/// <summary>A mend; <c>grade</c> is <c>safe</c>, <c>choice</c> or <c>blank</c>.</summary>
internal sealed record FixItem(string Title, string Grade, IReadOnlyList<EditItem> Edits)
{
    /// <summary>A mend as it is reported.</summary>
    public static FixItem Of(Fix fix) => new(fix.Title, fix.Grade.ToString().ToLowerInvariant(), [.. fix.Edits.Select(EditItem.Of)]);
}

/// <summary>Other words for one stretch of a file.</summary>
internal sealed record EditItem(string File, int Line, int Column, int EndLine, int EndColumn, string NewText)
{
    /// <summary>An edit as it is reported.</summary>
    public static EditItem Of(TextEdit edit)
    {
        (LinePosition start, LinePosition end) = (edit.At.StartPosition, edit.At.EndPosition);
        return new EditItem(edit.At.Source.Name, start.Line, start.Column, end.Line, end.Column, edit.NewText);
    }
}

/// <summary>A second place that belongs to a problem.</summary>
internal sealed record RelatedItem(string File, int Line, int Column, int EndLine, int EndColumn, string Note)
{
    /// <summary>A place as it is reported.</summary>
    public static RelatedItem Of(RelatedPlace place)
    {
        (LinePosition start, LinePosition end) = (place.At.StartPosition, place.At.EndPosition);
        return new RelatedItem(place.At.Source.Name, start.Line, start.Column, end.Line, end.Column, place.Note);
    }
}
