using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>The names of the spaces of a board, found without regard to capitals; made once a board.</summary>
internal sealed class SpaceIndex
{
    private readonly Dictionary<string, int> _byName = new(StringComparer.OrdinalIgnoreCase);

    public SpaceIndex(IEnumerable<string> names)
    {
        Names = [.. names];
        for (int i = 0; i < Names.Length; i++)
        {
            _byName.TryAdd(Names[i], i);
        }

        MostWords = Names.Select(n => Prose.WordsOf(n).Length).DefaultIfEmpty(1).Max();
    }

    /// <summary>The names in the order of the spaces.</summary>
    public ImmutableArray<string> Names { get; }

    /// <summary>How many words the longest name has.</summary>
    public int MostWords { get; }

    /// <summary>The space of this name, the first where two have it; null where there is none.</summary>
    public int? Find(string name) => _byName.TryGetValue(name, out int index) ? index : null;
}
