using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <summary>The words by which a sheet tells its things: kinds, values, cards. The longest name wins; case does not matter.</summary>
internal sealed class ThingLexicon
{
    // A pure function of the sheet, which many positions share.
    private static readonly ConditionalWeakTable<Sheet, ThingLexicon> Known = [];

    private readonly Dictionary<string, List<Named>> _names = new(StringComparer.OrdinalIgnoreCase);
    private readonly int _longestName = 1;

    private ThingLexicon(Sheet sheet)
    {
        foreach (KindFacts kind in sheet.Kinds)
        {
            Add(kind.Kind, kind.Kind.Name, kind.Kind.Plural);
            foreach (AttributeValue value in kind.Attributes.SelectMany(a => a.Values))
            {
                Add(value, value.Name, value.Plural);
            }
        }

        foreach (CardRow row in sheet.CardTables.SelectMany(t => t.Rows))
        {
            Add(row.Card, row.Card.Name);
        }

        _longestName = _names.Keys.Select(k => k.Count(c => c == ' ') + 1).DefaultIfEmpty(1).Max();
    }

    /// <summary>The words of a sheet.</summary>
    public static ThingLexicon Of(Sheet sheet) => Known.GetValue(sheet, s => new ThingLexicon(s));

    /// <summary>Every name, for suggestions.</summary>
    public IReadOnlyCollection<string> Names => _names.Keys;

    /// <summary>The longest name that begins at a word: how many words it has (0 for none) and what it may mean.</summary>
    public (int Length, ImmutableArray<Named> Senses) Match(ReadOnlySpan<string> words)
    {
        for (int length = Math.Min(_longestName, words.Length); length > 0; length--)
        {
            if (_names.TryGetValue(string.Join(' ', words[..length]), out List<Named>? senses))
            {
                return (length, [.. senses]);
            }
        }

        return (0, []);
    }

    private void Add(Named symbol, params string[] names)
    {
        foreach (string name in names.Select(Prose.Fold).Where(n => n.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase))
        {
            if (!_names.TryGetValue(name, out List<Named>? senses))
            {
                _names[name] = senses = [];
            }

            senses.Add(symbol);
        }
    }
}
