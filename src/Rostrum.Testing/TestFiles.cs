namespace Rostrum.Testing;

/// <summary>The files of the repository, as tests need them.</summary>
/// <remarks>The one place of the libraries that touches files: a test kit reads samples and pages and writes what a test received.</remarks>
public static class TestFiles
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = FindRoot(AppContext.BaseDirectory);

    /// <summary>A file's text.</summary>
    /// <param name="name">Relative to the root, with <c>/</c>.</param>
    public static string Read(string name) => ReadAt(Path.Combine(Root, name))!;

    /// <summary>The text of a page that is made from the code, as it stands; with <c>ROSTRUM_WRITE_DOCS</c> set, it is written anew first.</summary>
    /// <param name="name">Relative to the root, with <c>/</c>.</param>
    /// <param name="made">What the code makes of it now.</param>
    public static string Made(string name, string made)
    {
        if (IsSet("ROSTRUM_WRITE_DOCS"))
        {
            WriteAt(Path.Combine(Root, name), made);
        }

        return ReadAt(Path.Combine(Root, name)) ?? "";
    }

    /// <summary>The names of the files in a folder and its sub-folders, relative to the root, in ordinal order.</summary>
    /// <param name="folder">Relative to the root, with <c>/</c>.</param>
    /// <param name="pattern">Such as <c>*.md</c>.</param>
    public static IReadOnlyList<string> In(string folder, string pattern) =>
        [.. FilesAt(Path.Combine(Root, folder), pattern).Select(f => Path.GetRelativePath(Root, f).Replace('\\', '/')).Order(StringComparer.Ordinal)];

#pragma warning disable RS0030 // Banned for libraries because they are pure; these lines are where the test kit is not.
    internal static string? ReadAt(string path) => File.Exists(path) ? File.ReadAllText(path) : null;

    internal static void WriteAt(string path, string content) => File.WriteAllText(path, content);

    internal static void DeleteAt(string path) => File.Delete(path);

    internal static bool IsSet(string variable) => SettingOf(variable) is { Length: > 0 };

    internal static string? SettingOf(string variable) => Environment.GetEnvironmentVariable(variable);

    private static string[] FilesAt(string path, string pattern) => Directory.GetFiles(path, pattern, SearchOption.AllDirectories);
#pragma warning restore RS0030

    private static string FindRoot(string folder) =>
        ReadAt(Path.Combine(folder, "Rostrum.slnx")) is not null ? folder : FindRoot(Path.GetDirectoryName(folder.TrimEnd('/', '\\'))!);
}
