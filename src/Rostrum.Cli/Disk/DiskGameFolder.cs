using Rostrum.Text;

namespace Rostrum.Cli.Disk;

/// <summary>A game's folder on disk: files are measured before they are read, and no link leads out of the folder.</summary>
internal static class DiskGameFolder
{
    /// <summary>Opens a folder.</summary>
    /// <param name="path">Where it lies; must exist.</param>
    public static GameFolder Open(string path)
    {
        string root = RealPath.Of(path) ?? Path.GetFullPath(path);
        return new GameFolder(Path.GetFileName(Path.TrimEndingDirectorySeparator(root)), name => File(root, name), sub => Names(root, sub));
    }

    private static FolderFile? File(string root, string name) => RealPath.Inside(root, name) is { } path ? TextFile.At(path) : null;

    // Hidden files are left out: editors and file managers leave their own beside the author's.
    private static IReadOnlyList<string> Names(string root, string sub)
    {
        return RealPath.Inside(root, sub) is { } path && Directory.Exists(path)
            ? [.. Directory.EnumerateFiles(path).Select(f => Path.GetFileName(f)).Where(f => f[0] != '.').Select(f => sub.Length == 0 ? f : $"{sub}/{f}").Order(StringComparer.Ordinal)]
            : [];
    }
}
