using System.Runtime.CompilerServices;

namespace Rostrum.Cli.Tests.House;

/// <summary>Where the repository lies, found from this file.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    private static string Find([CallerFilePath] string here = "")
    {
        string folder = Path.GetDirectoryName(here)!;
        while (!File.Exists(Path.Combine(folder, "Rostrum.slnx")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return folder;
    }
}
