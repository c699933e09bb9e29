using System.Globalization;

namespace Rostrum.Pictures.Tests;

/// <summary>A published table of check values, one row a case.</summary>
internal static class ReferenceTable
{
    public static TheoryData<string[]> Rows(string name)
    {
        using Stream stream = typeof(ReferenceTable).Assembly.GetManifestResourceStream($"Reference/{name}.csv")!;
        using StreamReader reader = new(stream);
        IEnumerable<string[]> rows = reader.ReadToEnd()
            .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Skip(1)
            .Select(line => line.Split(','));
        return new TheoryData<string[]>(rows);
    }

    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
