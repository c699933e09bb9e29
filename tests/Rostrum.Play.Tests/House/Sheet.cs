using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.House;

/// <summary>Small sheets written in tests.</summary>
internal static class Sheet
{
    /// <summary>The sheet of a text, which must have no errors.</summary>
    public static Sheets.Model.Sheet Of(string text)
    {
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("test", (SheetReader.FileName, text)), BenchGame.Idioms, []);
        Assert.Empty(reading.Problems.Where(p => p.Severity == Severity.Error).Select(p => $"{p.Id} {p.Message}"));
        return reading.Sheet!;
    }
}
