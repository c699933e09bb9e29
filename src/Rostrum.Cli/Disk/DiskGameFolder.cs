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

    private static FolderFile? File(string root, string name)
    {
        string path = Path.Combine(root, name);
        return RealPath.IsInside(path, root) ? TextFile.At(RealPath.Of(path)!) : null;
    }

    // Hidden files are left out: editors and file managers leave their own beside the author's.
    private static IReadOnlyList<string> Names(string root, string sub)
    {
        string path = Path.Combine(root, sub);
        return Directory.Exists(path) && RealPath.IsInside(path, root)
            ? [.. Directory.EnumerateFiles(path).Select(f => Path.GetFileName(f)).Where(f => f[0] != '.').Select(f => sub.Length == 0 ? f : $"{sub}/{f}").Order(StringComparer.Ordinal)]
            : [];
    }
}
