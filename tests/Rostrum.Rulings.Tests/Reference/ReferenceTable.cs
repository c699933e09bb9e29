using Rostrum.Testing;
using Rostrum.Text;
using Rostrum.Text.Tables;

namespace Rostrum.Rulings.Tests.Reference;

/// <summary>Reads the tables of published values that lie beside this file.</summary>
internal static class ReferenceTable
{
    /// <summary>The rows of a table as texts, in the order of the file.</summary>
    public static string[][] Rows(string name)
    {
        var problems = new DiagnosticBag();
        var source = new SourceText(name, TestFiles.Read($"tests/Rostrum.Rulings.Tests/Reference/{name}"));
        CsvTable table = CsvReader.Read(source, problems)!;
        return [.. table.Rows.Select(r => r.Cells.Select(c => c.Text).ToArray())];
    }

    /// <summary>The row whose first cell says this.</summary>
    public static string[] Row(string name, string first) => Rows(name).Single(r => r[0] == first);

    /// <summary>A cell as a number.</summary>
    public static int Number(string cell) => int.Parse(cell, System.Globalization.CultureInfo.InvariantCulture);
}
