using System.Collections.Immutable;
using Rostrum.Sheets.Drawings;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Drawings;

/// <summary>A drawing read from a text of its own.</summary>
internal sealed record Drawn(DrawingText Drawing, ImmutableArray<Diagnostic> Problems)
{
    public ImmutableArray<string> Ids => [.. Problems.Select(p => p.Id)];

    public static Drawn Of(string content)
    {
        var source = new SourceText("sheet.yaml", content);
        var problems = new DiagnosticBag();
        DrawingText drawing = DrawingText.Read(content, source.Span, problems);
        return new Drawn(drawing, problems.InOrder());
    }

    /// <summary>Rows from the top, as <c>label+halfsteps: cell@column ...</c>; then the ruler behind <c>/</c>.</summary>
    public string Told => Tell(Drawing);

    public static string Tell(DrawingText drawing)
    {
        IEnumerable<string> rows = drawing.Rows.Select(r => $"{r.Label ?? "|"}+{r.HalfSteps}: {string.Join(' ', r.Cells.Select(c => $"{c.Text}@{c.Column}"))}");
        string ruler = drawing.HasRuler ? $"; / {string.Join(' ', drawing.ColumnLabels.Select(c => $"{c.Text}@{c.Column}"))}" : "";
        return string.Join("; ", rows) + ruler;
    }
}
