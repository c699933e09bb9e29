namespace Rostrum.Cli.Disk;

/// <summary>Finds out where a path leads when every link on the way is followed.</summary>
internal static class RealPath
{
    // As many as Linux follows before it says "too many levels".
    private const int MostLinks = 40;

    /// <summary>The path without links.</summary>
    /// <param name="path">Absolute or relative; need not exist.</param>
    /// <returns>Absolute; null where links lead in a circle.</returns>
    public static string? Of(string path)
    {
        var ahead = new Stack<string>();
        return Follow(Push(ahead, Path.GetFullPath(path)), ahead);
    }

    /// <summary>Where a name in a folder leads, if that lies in the folder.</summary>
    /// <param name="realFolder">The folder, without links; it is not looked at again.</param>
    /// <param name="name">Relative to the folder; need not exist.</param>
    /// <returns>Absolute; null where it leads out of the folder, or links lead in a circle.</returns>
    public static string? Inside(string realFolder, string name)
    {
        string path = Path.GetFullPath(name, realFolder);
        if (!Lies(path, realFolder))
        {
            return null;
        }

        var ahead = new Stack<string>(Path.GetRelativePath(realFolder, path).Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries).Where(p => p != ".").Reverse());
        return Follow(realFolder, ahead) is { } real && Lies(real, realFolder) ? real : null;
    }

    private static string? Follow(string done, Stack<string> ahead)
    {
        int links = 0;
        while (ahead.TryPop(out string? part))
        {
            string here = Path.Combine(done, part);
            if (new FileInfo(here).LinkTarget is not { } target)
            {
                done = here;
                continue;
            }

            if (++links > MostLinks)
            {
                return null;
            }

            done = Push(ahead, Path.GetFullPath(target, done));
        }

        return done;
    }

    private static bool Lies(string path, string folder) =>
        path == folder || path.StartsWith(Path.TrimEndingDirectorySeparator(folder) + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    // Puts the parts of an absolute path in front of what is ahead; gives its root.
    private static string Push(Stack<string> ahead, string absolute)
    {
        string root = Path.GetPathRoot(absolute)!;
        foreach (string part in absolute[root.Length..].Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries).Reverse())
        {
            ahead.Push(part);
        }

        return root;
    }
}
