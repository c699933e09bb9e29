using System.Globalization;
using System.Text.Json;
using Rostrum.Testing;
using Rostrum.Text;
using Rostrum.Text.Tables;

namespace Rostrum.Play.Tests.Reference;

/// <summary>Reads the tables of published values that lie beside this file.</summary>
internal static class ReferenceTable
{
    private const string Folder = "tests/Rostrum.Play.Tests/Reference";

    /// <summary>The rows of a table as texts, in the order of the file.</summary>
    public static string[][] Rows(string name) => [.. Read(name).Rows.Select(r => r.Cells.Select(c => c.Text).ToArray())];

    /// <summary>A column as texts, in the order of the file.</summary>
    public static string[] Column(string name, string column)
    {
        CsvTable table = Read(name);
        int at = table.ColumnOf(column) ?? -1;
        Assert.True(at >= 0, $"{name} has no column {column}.");
        return [.. table.Rows.Select(r => r.Cells[at].Text)];
    }

    /// <summary>A number of a JSON file, by the names that lead to it.</summary>
    public static double Json(string name, params string[] path)
    {
        using JsonDocument document = JsonDocument.Parse(TestFiles.Read($"{Folder}/{name}"));
        return path.Aggregate(document.RootElement, (element, key) => element.GetProperty(key)).GetDouble();
    }

    /// <summary>A cell as a number.</summary>
    public static long Number(string cell) => long.Parse(cell, CultureInfo.InvariantCulture);

    private static CsvTable Read(string name)
    {
        var problems = new DiagnosticBag();
        return CsvReader.Read(new SourceText(name, TestFiles.Read($"{Folder}/{name}")), problems)!;
    }
}
