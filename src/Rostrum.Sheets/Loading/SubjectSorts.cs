using Rostrum.Sheets.Model;
using Attribute = Rostrum.Sheets.Model.Attribute;

namespace Rostrum.Sheets.Loading;

/// <summary>The words by which a sheet names sorts: <c>shelf</c>, <c>ware</c>, <c>glaze</c>, <c>number</c>, <c>player</c>.</summary>
internal static class SubjectSorts
{
    private static readonly (string Word, Sort Sort)[] Kernel =
    [
        ("number", Sort.Number), ("player", Sort.Player), ("space", Sort.Space), ("slot", Sort.Slot), ("place", Sort.Place), ("thing", Sort.Thing),
        ("piece", Sort.Thing), ("card", Sort.Thing), ("line", Sort.Line), ("direction", Sort.Direction), ("truth", Sort.Truth),
    ];

    // `set worth (set of ware w)`
    private const string SetOf = "set of ";

    /// <summary>The sort that a word names; null where it names none.</summary>
    public static Sort? Find(LoadContext context, string word)
    {
        if (word.StartsWith(SetOf, StringComparison.Ordinal))
        {
            return Find(context, word[SetOf.Length..]) is { } element ? Sort.SetOf(element) : null;
        }

        foreach (Named symbol in context.Declared.Names.Find(word).Select(s => s.Symbol))
        {
            Sort? sort = symbol switch
            {
                Kind kind => Sort.ThingOf(kind),
                SpaceNoun => Sort.Space,
                SlotNoun => Sort.Slot,
                LineFamily => Sort.Line,
                Attribute attribute => context.Declared.SortOf(attribute),
                _ => null,
            };
            if (sort is not null)
            {
                return sort;
            }
        }

        return Kernel.FirstOrDefault(k => k.Word == word).Sort;
    }

    /// <summary>Every word that names a sort, for suggestions.</summary>
    public static IEnumerable<string> Known(LoadContext context) =>
        Kernel.Select(k => k.Word).Concat(context.Declared.Names.All.Where(n => n.Symbol is Kind or SpaceNoun or SlotNoun or LineFamily or Attribute).Select(n => n.Words)).Distinct();
}
