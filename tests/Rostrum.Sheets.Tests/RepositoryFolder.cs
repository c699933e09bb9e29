namespace Rostrum.Sheets.Tests;

/// <summary>Finds files of the repository from where the tests run.</summary>
internal static class RepositoryFolder
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = FindRoot(AppContext.BaseDirectory);

    /// <summary>The full name of a file by its name relative to the root, with <c>/</c>.</summary>
    public static string PathOf(string name) => Path.Combine(Root, name);

    /// <summary>A file's text by its name relative to the root, with <c>/</c>.</summary>
    public static string Read(string name) => File.ReadAllText(PathOf(name));

    private static string FindRoot(string folder) =>
        File.Exists(Path.Combine(folder, "Rostrum.slnx")) ? folder : FindRoot(Path.GetDirectoryName(folder.TrimEnd('/'))!);
}
