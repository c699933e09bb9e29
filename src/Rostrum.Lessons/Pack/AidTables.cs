using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Lessons.Page;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Pack;

/// <summary>Finds the tables of a sheet that a player can read at a glance: few rows, plain numbers; of a table with readings the rows that stand in all of them.</summary>
internal static class AidTables
{
    private const int Most = 10;

    /// <summary>The tables, in the order of the sheet.</summary>
    public static IEnumerable<AidTable> Of(Sheet sheet) =>
        from table in sheet.Tables
        let versions = table.Versions.Select(v => v.Rows.Select(Column).ToArray()).ToArray()
        where versions.Length > 0 && versions.All(v => v.All(c => c is not null))
        let shared = versions[0].Where(c => versions.All(v => v.Contains(c))).Select(c => c!.Value).ToArray()
        where shared.Length is >= 2 and <= Most
        select new AidTable(Prose.Sentence(table.Table.Name), [.. shared]);

    private static (string Key, string Value)? Column(TableRow row) =>
        row.Entry is Term.Number number ? (Key(row), number.Amount.ToString(CultureInfo.InvariantCulture)) : null;

    private static string Key(TableRow row) => (row.Key, row.Low, row.High) switch
    {
        ({ } key, _, _) => key.Name,
        (_, { } low, null) => $"{low} or more",
        (_, var low, var high) when low == high => $"{low}",
        (_, var low, var high) => $"{low} to {high}",
    };
}
