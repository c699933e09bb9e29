using System.Collections.Immutable;
using Rostrum.Sheets.Idioms;
using Rostrum.Text;

namespace Rostrum.Cli.Disk;

/// <summary>The idiom library that lies beside the program.</summary>
/// <param name="Library">The idioms.</param>
/// <param name="Problems">What is wrong with their files; usually empty.</param>
/// <param name="Page">The page <c>docs/idioms.md</c>, whose headings give the order; empty where it was left behind.</param>
internal sealed record IdiomShelf(IdiomLibrary Library, ImmutableArray<Diagnostic> Problems, string Page)
{
    /// <summary>Reads the library.</summary>
    /// <exception cref="DirectoryNotFoundException">The program was copied without its library.</exception>
    public static IdiomShelf Open()
    {
        string path = Path.Combine(AppContext.BaseDirectory, "idioms");
        if (!Directory.Exists(path))
        {
            throw new DirectoryNotFoundException("The folder 'idioms' is missing beside the program.");
        }

        var problems = new DiagnosticBag();
        GameFolder folder = DiskGameFolder.Open(path);
        var library = IdiomLibrary.Read(folder, problems);
        return new IdiomShelf(library, problems.InOrder(), folder.Read("idioms.md").Text?.Content ?? "");
    }
}
