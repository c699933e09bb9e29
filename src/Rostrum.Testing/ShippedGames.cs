using Rostrum.Rulings.Games;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Loading;
using Rostrum.Text;

namespace Rostrum.Testing;

/// <summary>The games and idioms that stand in the repository, as tests read them.</summary>
public static class ShippedGames
{
    /// <summary>The idiom library; a test elsewhere holds that it has no problems.</summary>
    public static IdiomLibrary Idioms { get; } = IdiomLibrary.Read(Folder("idioms"), new DiagnosticBag());

    /// <summary>Every game: the names of the folders that hold a sheet, such as <c>kiln-night</c> and <c>traditional/go</c>, in ordinal order.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. TestFiles.In("games", SheetReader.FileName).Select(f => f["games/".Length..^(SheetReader.FileName.Length + 1)])];

    /// <summary>A game by its name, such as <c>kiln-night</c>; sheets are read once for each game that is asked for.</summary>
    public static Game Open(string name) => new(Folder($"games/{name}"), Idioms);

    /// <summary>A folder of the repository, with some files replaced.</summary>
    /// <param name="path">Relative to the root.</param>
    /// <param name="instead">Names, relative to the folder, with other content.</param>
    public static GameFolder Folder(string path, params (string Name, string Content)[] instead)
    {
        IEnumerable<(string Name, string Content)> files = TestFiles.In(path, "*")
            .Where(f => f.EndsWith(".yaml", StringComparison.Ordinal) || f.EndsWith(".csv", StringComparison.Ordinal) || f.EndsWith(".md", StringComparison.Ordinal))
            .Select(f => (f[(path.Length + 1)..], TestFiles.Read(f)))
            .Where(f => !instead.Any(i => i.Name == f.Item1));
        return GameFolder.InMemory(path, [.. files, .. instead]);
    }
}
