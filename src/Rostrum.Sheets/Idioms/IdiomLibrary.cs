using System.Collections.Immutable;
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
            if (folder.Read(file).Text is { } text && IdiomReader.Read(text, problems) is { } idiom && !idioms.Exists(i => i.Name == idiom.Name))
            {
                idioms.Add(idiom);
            }
        }

        return new IdiomLibrary([.. idioms]);
    }

    /// <summary>The idiom with this name, or null.</summary>
    public Idiom? Find(string name) => _byName.GetValueOrDefault(name);
}
