using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>What the lines of a board are called: <c>columns: bay A to E</c>, <c>rows: tier</c>, <c>lines: {rising: slope}</c>.</summary>
internal static class LineNames
{
    private static readonly (string Key, LineForm Form)[] Forms =
        [("columns", LineForm.Columns), ("rows", LineForm.Rows), ("rising", LineForm.Rising), ("falling", LineForm.Falling)];

    /// <summary>The names of the lines of each form that has one.</summary>
    public static ImmutableDictionary<LineForm, string> Of(OutlineMapping mapping, string? columns, string? rows)
    {
        var names = ImmutableDictionary.CreateBuilder<LineForm, string>();
        foreach ((string key, LineForm form) in Forms)
        {
            string? name = form == LineForm.Columns ? columns : form == LineForm.Rows ? rows : Listed(mapping, key);
            if (name is not null)
            {
                names[form] = name;
            }
        }

        return names.ToImmutable();
    }

    /// <summary>The name of lines that a key gives, whatever labels stand behind it.</summary>
    public static string? WordFor(OutlineMapping mapping, string key) =>
        mapping.Find(key)?.Value is OutlineScalar scalar ? LineLabels.Of(scalar.Text).Name : Listed(mapping, key);

    /// <summary>Name and labels of <c>columns</c> or <c>rows</c>.</summary>
    /// <param name="context">Receives messages.</param>
    /// <param name="mapping">The board.</param>
    /// <param name="key"><c>columns</c> or <c>rows</c>.</param>
    /// <param name="usual">The labels where the sheet gives none; as many as there are lines.</param>
    public static (string? Name, ImmutableArray<string> Labels) Labels(LoadContext context, OutlineMapping mapping, string key, IEnumerable<string> usual)
    {
        ImmutableArray<string> plain = [.. usual];
        if (mapping.Find(key)?.Value is not OutlineScalar scalar)
        {
            return (Listed(mapping, key), plain);
        }

        LineLabels line = LineLabels.Of(scalar.Text);
        if (line.Near is { } near)
        {
            context.Problems.Add(SheetProblems.LabelsWithDash(scalar.Span, scalar.Text, near));
        }
        else if (!line.Labels.IsEmpty && line.Labels.Length != plain.Length)
        {
            context.Problems.Add(SheetProblems.LabelsDoNotFit(scalar.Span, line.Labels.Length, plain.Length, key == "columns" ? "column" : "row"));
        }

        string? twice = line.Labels.GroupBy(l => l, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1)?.Key;
        if (twice is not null)
        {
            context.Problems.Add(BoardProblems.LabelTwice(scalar.Span, twice, key == "columns" ? "column" : "row"));
        }

        return (line.Name, twice is null && line.Labels.Length == plain.Length ? line.Labels : plain);
    }

    private static string? Listed(OutlineMapping mapping, string key) =>
        mapping.Find("lines")?.Value is OutlineMapping lines && lines.Find(key)?.Value is OutlineScalar name ? Prose.Fold(name.Text) : null;
}
