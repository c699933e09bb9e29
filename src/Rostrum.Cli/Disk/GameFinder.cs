using Rostrum.Rulings.Games;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Loading;
using Rostrum.Text;

namespace Rostrum.Cli.Disk;

/// <summary>Finds the game that a user names on the command line.</summary>
internal static class GameFinder
{
    /// <summary>Opens a game.</summary>
    /// <param name="path">A folder with a sheet, or the sheet itself; may lie anywhere.</param>
    /// <param name="idioms">The idiom library.</param>
    public static Found<Game> Open(string path, IdiomLibrary idioms)
    {
        string folder = FolderOf(path);
        if (!Directory.Exists(folder))
        {
            return Found<Game>.None($"There is no folder '{path}'.{Nearest(path)}");
        }

        return File.Exists(Path.Combine(folder, SheetReader.FileName))
            ? Found<Game>.Of(new Game(DiskGameFolder.Open(folder), idioms))
            : Found<Game>.None($"The folder '{path}' holds no {SheetReader.FileName}, so it is no game.{Inside(path)}");
    }

    /// <summary>The folder of a game as it is named: the folder itself, or that of the sheet.</summary>
    /// <param name="path">As for <see cref="Open"/>.</param>
    public static string FolderOf(string path) => Path.GetFileName(path) == SheetReader.FileName && File.Exists(path) ? Path.GetDirectoryName(Path.GetFullPath(path))! : path;

    private static string Nearest(string path)
    {
        string parent = Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(path)) ?? "";
        string? near = NearSpelling.Find(Path.GetFileName(Path.TrimEndingDirectorySeparator(path)), Games(parent));
        return near is null ? " Name a folder with a sheet.yaml." : $" Did you mean '{Path.Combine(parent, near)}'?";
    }

    private static string Inside(string path) => Games(path) switch
    {
        [] => "",
        [var first, ..] => $" Did you mean '{Path.Combine(path, first)}'?",
    };

    private static string[] Games(string parent)
    {
        string real = parent.Length == 0 ? "." : parent;
        return Directory.Exists(real)
            ? [.. Directory.EnumerateDirectories(real).Where(d => File.Exists(Path.Combine(d, SheetReader.FileName))).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal)]
            : [];
    }
}
