using Rostrum.Testing;

namespace Rostrum.Cli.Tests;

/// <summary>A game's folder for one test; gone afterwards.</summary>
internal sealed class TempGame : IDisposable
{
    /// <summary>A sheet of six lines that only scores.</summary>
    public const string ScoringOnly = """
        rule sheet: 1
        game: Pebbles
        pieces: {pebble: {count: 9}}
        places: {heap: {heap of: pebble, of: each player}}
        score:
          pebbles: {points: count(my heap)}
        """;

    private readonly string _path = Directory.CreateTempSubdirectory("rostrum-test-").FullName;

    /// <summary>A folder with these files.</summary>
    public TempGame(params (string Name, string Content)[] files)
    {
        foreach ((string name, string content) in files)
        {
            Write(name, content);
        }
    }

    /// <summary>Where it lies.</summary>
    public string Folder => Path.Combine(_path, "game");

    /// <summary>A folder outside of the game's.</summary>
    public string Outside => _path;

    /// <summary>The folder of Kiln Night in the repository.</summary>
    public static string KilnNight { get; } = Path.Combine(TestFiles.Root, "games", "kiln-night");

    /// <summary>A copy of Kiln Night, to be changed.</summary>
    public static TempGame OfKilnNight()
    {
        var game = new TempGame();
        foreach (string file in Directory.EnumerateFiles(KilnNight, "*", SearchOption.AllDirectories))
        {
            game.Write(Path.GetRelativePath(KilnNight, file), File.ReadAllText(file));
        }

        return game;
    }

    /// <summary>Writes a file into the game.</summary>
    public void Write(string name, string content)
    {
        string path = PathOf(name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, content);
    }

    /// <summary>Puts other words for some words of a file; they must be there.</summary>
    public void Change(string name, string words, string other)
    {
        string content = File.ReadAllText(PathOf(name));
        Assert.Contains(words, content, StringComparison.Ordinal);
        File.WriteAllText(PathOf(name), content.Replace(words, other, StringComparison.Ordinal));
    }

    /// <summary>The path of a file of the game.</summary>
    public string PathOf(string name) => Path.Combine(Folder, name);

    public void Dispose() => Directory.Delete(_path, recursive: true);
}
