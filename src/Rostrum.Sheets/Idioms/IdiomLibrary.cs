using System.Collections.Immutable;
using Rostrum.Sheets.Loading;
using Rostrum.Text;

namespace Rostrum.Sheets.Idioms;

/// <summary>The idioms that sheets may use, by name.</summary>
public sealed class IdiomLibrary
{
    private readonly ImmutableDictionary<string, Idiom> _byName;

    private IdiomLibrary(ImmutableArray<Idiom> all)
    {
        All = all;
        _byName = all.ToImmutableDictionary(i => i.Name, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>A library without idioms.</summary>
    public static IdiomLibrary Empty { get; } = new([]);

    /// <summary>Every idiom, in the order of the file names.</summary>
    public ImmutableArray<Idiom> All { get; }

    /// <summary>Reads every <c>.yaml</c> file of a folder; a file that is no idiom, and a name that stands twice, is reported and left out.</summary>
    public static IdiomLibrary Read(GameFolder folder, DiagnosticBag problems)
    {
        var idioms = new List<Idiom>();
        foreach (string file in folder.FilesIn("").Where(f => f.EndsWith(".yaml", StringComparison.Ordinal)))
        {
            FolderReading reading = folder.Read(file);
            if (reading.Text is not { } text)
            {
                problems.Add(SheetProblems.NotReadable(new SourceText(file, "").Whole, file, reading.Refusal));
            }
            else if (IdiomReader.Read(text, problems) is { } idiom)
            {
                Add(idioms, idiom, problems);
            }
        }

        return new IdiomLibrary([.. idioms]);
    }

    private static void Add(List<Idiom> idioms, Idiom idiom, DiagnosticBag problems)
    {
        if (idioms.Find(i => string.Equals(i.Name, idiom.Name, StringComparison.OrdinalIgnoreCase)) is { } first)
        {
            problems.Add(SheetProblems.IdiomTwice(idiom.Source, idiom.Name, first.Source));
        }
        else
        {
            idioms.Add(idiom);
        }
    }

    /// <summary>The idiom with this name, or null.</summary>
    public Idiom? Find(string name) => _byName.GetValueOrDefault(name);
}
