namespace Rostrum.Rulings.Tests;

/// <summary>Finds files of the repository from where the tests run.</summary>
internal static class RepositoryFolder
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = FindRoot(AppContext.BaseDirectory);

    /// <summary>A file's text by its name relative to the root, with <c>/</c>.</summary>
    public static string Read(string name) => File.ReadAllText(Path.Combine(Root, name));

    /// <summary>The names of the files in a folder, relative to the root, in order.</summary>
    public static string[] Files(string folder) =>
        [.. Directory.GetFiles(Path.Combine(Root, folder)).Select(f => Path.GetRelativePath(Root, f)).Order(StringComparer.Ordinal)];

    private static string FindRoot(string folder) =>
        File.Exists(Path.Combine(folder, "Rostrum.slnx")) ? folder : FindRoot(Path.GetDirectoryName(folder.TrimEnd('/'))!);
}
