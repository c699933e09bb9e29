using System.Collections.Concurrent;
using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Games;

/// <summary>Games of the repository, and small sheets that a test writes itself.</summary>
internal static class Game
{
    private static readonly ConcurrentDictionary<string, Sheet> Known = new();

    /// <summary>A game of the repository with some variants on.</summary>
    public static Sheet Sheet(string game, params IReadOnlyCollection<string> variants) =>
        Known.GetOrAdd($"{game}|{string.Join('|', variants)}", _ => Sound(SheetReader.Read(ShippedGames.Folder($"games/{game}"), ShippedGames.Idioms, variants)));

    /// <summary>A sheet from its text.</summary>
    public static Sheet Of(string sheet) => Sound(SheetReader.Read(GameFolder.InMemory("test", ("sheet.yaml", sheet)), ShippedGames.Idioms, []));

    /// <summary>A position from its text.</summary>
    public static Position Position(Sheet sheet, string text)
    {
        var problems = new DiagnosticBag();
        PositionFile file = PositionReader.Read(sheet, new SourceText("positions/test.yaml", text), problems);
        Assert.Empty(problems.InOrder().Where(p => p.Severity == Severity.Error).Select(p => p.Message));
        return file.Position!;
    }

    /// <summary>A position file of Kiln Night.</summary>
    public static PositionFile File(string name)
    {
        var problems = new DiagnosticBag();
        var source = new SourceText(name, TestFiles.Read(name));
        ImmutableArray<string> variants = PositionReader.VariantsOf(source, problems);
        return PositionReader.Read(Sheet("kiln-night", variants), source, problems);
    }

    /// <summary>A position of Kiln Night by the name of its file.</summary>
    public static Position Kiln(string name) => File($"games/kiln-night/positions/{name}.yaml").Position!;

    private static Sheet Sound(SheetReading reading)
    {
        Assert.Empty(reading.Problems.Where(p => p.Severity == Severity.Error).Select(p => $"{p.At}: {p.Message} {p.Hint}"));
        return reading.Sheet!;
    }
}
