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
        int links = 0;
        var ahead = new Stack<string>();
        string done = Push(ahead, Path.GetFullPath(path));
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

    /// <summary>True where a path leads into a folder.</summary>
    /// <param name="path">The path.</param>
    /// <param name="realFolder">The folder, without links.</param>
    public static bool IsInside(string path, string realFolder) =>
        Of(path) is { } real && (real == realFolder || real.StartsWith(Path.TrimEndingDirectorySeparator(realFolder) + Path.DirectorySeparatorChar, StringComparison.Ordinal));

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
