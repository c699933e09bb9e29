using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Pictures.Positions;

/// <summary>Holds what a sheet says of looks against the catalogues of this room.</summary>
public static class AppearanceCheck
{
    /// <summary>A warning for each name that no catalogue has.</summary>
    /// <param name="sheet">The sheet.</param>
    public static IEnumerable<Diagnostic> Of(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return
        [
            .. Unknown(sheet, sheet.Appearance.Outlines, "outline", [.. Outlines.All.Select(o => o.Name)]),
            .. Unknown(sheet, sheet.Appearance.Colours, "colour", [.. PieceColours.All.Select(c => c.Name)]),
            .. Unknown(sheet, sheet.Appearance.Emblems, "emblem", [.. Emblems.All.Select(e => e.Name)]),
            .. Unknown(sheet, sheet.Appearance.Flaws, "flaw", [.. Flaws.All.Select(f => f.Name)]),
        ];
    }

    private static IEnumerable<Diagnostic> Unknown(Sheet sheet, IEnumerable<(Named Of, string Drawn)> rows, string what, string[] known) =>
        from row in rows
        where !known.Contains(row.Drawn)
        let near = NearSpelling.Find(row.Drawn, known)
        select new Diagnostic(
            "ROS0231", Severity.Warning, PlaceOf(sheet, what + "s", row) ?? row.Of.DeclaredAt!.Value, $"'{row.Of.Name}' is to be drawn with the {what} '{Prose.Clip(row.Drawn)}', which the pictures do not have.",
            near is null ? KnownWords.Sentence(row.Drawn, known) : $"Did you mean '{near}'?");

    // Where the sheet says so: under the kind itself, or in the table of its values.
    private static SourceSpan? PlaceOf(Sheet sheet, string key, (Named Of, string Drawn) row) =>
        ((IEnumerable<string>)["pieces", "dice", "cards"]).Select(s => sheet.Tree.Find(s)?.Value).OfType<OutlineMapping>().SelectMany(s => s.Entries)
            .Select(k => (k.Value as OutlineMapping)?.Find(key)?.Value)
            .SelectMany(v => v is OutlineMapping table ? table.Entries.Where(e => Prose.Fold(e.Key.Text) == row.Of.Name).Select(e => (OutlineNode?)e.Value) : [v])
            .OfType<OutlineScalar>().FirstOrDefault(t => Prose.Fold(t.Text) == row.Drawn)?.Span;
}
