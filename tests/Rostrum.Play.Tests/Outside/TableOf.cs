using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.Outside;

/// <summary>Games made ready for these tests: shipped ones, with variants or with another text in a place of the sheet, and small ones of a test.</summary>
internal static class TableOf
{
    /// <summary>A shipped game.</summary>
    /// <param name="name">The name of its folder below <c>games</c>.</param>
    /// <param name="seats">How many play; null for the fewest.</param>
    /// <param name="variants">The variants that are on.</param>
    public static GameTable Shipped(string name, int? seats = null, params string[] variants) =>
        GameTable.Of(Checked(SheetReader.Read(ShippedGames.Folder($"games/{name}"), ShippedGames.Idioms, variants)), seats);

    /// <summary>A shipped game with other words in its sheet; each text must stand there.</summary>
    /// <param name="name">The name of its folder below <c>games</c>.</param>
    /// <param name="seats">How many play; null for the fewest.</param>
    /// <param name="changes">What is written, and what stands there instead.</param>
    public static GameTable Changed(string name, int? seats, params (string Written, string Instead)[] changes)
    {
        string sheet = TestFiles.Read($"games/{name}/{SheetReader.FileName}");
        foreach ((string written, string instead) in changes)
        {
            Assert.Contains(written, sheet, StringComparison.Ordinal);
            sheet = sheet.Replace(written, instead, StringComparison.Ordinal);
        }

        return GameTable.Of(Checked(SheetReader.Read(ShippedGames.Folder($"games/{name}", (SheetReader.FileName, sheet)), ShippedGames.Idioms, [])), seats);
    }

    /// <summary>A game of a test.</summary>
    /// <param name="sheet">The text of its sheet.</param>
    public static GameTable Written(string sheet) =>
        GameTable.Of(Checked(SheetReader.Read(GameFolder.InMemory("small", (SheetReader.FileName, sheet)), ShippedGames.Idioms, [])));

    private static Sheet Checked(SheetReading reading)
    {
        Assert.Empty(reading.Problems.Where(p => p.Severity == Severity.Error).Select(p => $"{p.At}: {p.Message} {p.Hint}"));
        return reading.Sheet!;
    }
}
