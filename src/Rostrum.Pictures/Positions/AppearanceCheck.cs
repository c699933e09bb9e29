using Rostrum.Sheets.Model;
using Rostrum.Text;

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
            .. Unknown(sheet.Appearance.Outlines, "outline", [.. Outlines.All.Select(o => o.Name)]),
            .. Unknown(sheet.Appearance.Colours, "colour", [.. PieceColours.All.Select(c => c.Name)]),
            .. Unknown(sheet.Appearance.Emblems, "emblem", [.. Emblems.All.Select(e => e.Name)]),
            .. Unknown(sheet.Appearance.Flaws, "flaw", [.. Flaws.All.Select(f => f.Name)]),
        ];
    }

    private static IEnumerable<Diagnostic> Unknown(IEnumerable<(Named Of, string Drawn)> rows, string what, string[] known) =>
        from row in rows
        where !known.Contains(row.Drawn)
        let near = NearSpelling.Find(row.Drawn, known)
        select new Diagnostic(
            "ROS0231", Severity.Warning, row.Of.DeclaredAt!.Value, $"'{row.Of.Name}' is to be drawn with the {what} '{Prose.Clip(row.Drawn)}', which the pictures do not have.",
            near is null ? KnownWords.Sentence(row.Drawn, known) : $"Did you mean '{near}'?");
}
