using System.Collections.Immutable;
using Rostrum.Lessons.Speech;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using Rostrum.Text;

namespace Rostrum.Lessons.Terms;

/// <summary>A word of the game that viewers must learn.</summary>
/// <param name="Name">Its one name.</param>
/// <param name="Chunk">What it is learnt together with: a kind with its forms and colours is one thing to keep in mind, a board with its lines another.</param>
/// <param name="Phrases">Every name that may be said, each as its stems.</param>
internal sealed record SheetTerm(string Name, string Chunk, ImmutableArray<ImmutableArray<string>> Phrases);

/// <summary>The terms of a sheet: its kinds, values, boards, lines, slots, places, marks and words.</summary>
internal static class TermList
{
    // Everybody knows these from other tables; that they are used needs no introduction.
    private static readonly ImmutableHashSet<string> Known =
    [
        .. WordStems.Of(
            "hand deck bag box supply card die player turn round board line row column space field hex square tile piece point score level new open free empty full number colour color " +
            "kind suit rank value start table game side top bottom left right corner edge middle centre center black white red blue green yellow whole heap pile discard trick stock seat " +
            "north south east west offer face up down lost won storm pass stop wall number card pool coin money name group set pair run way path step house home goal"),
    ];

    /// <summary>The terms, those of more words first.</summary>
    public static ImmutableArray<SheetTerm> Of(Sheet sheet)
    {
        ILookup<string, SaidNames> names = SaidNames.Of(sheet).ToLookup(n => n.Name, StringComparer.Ordinal);
        return
        [
            .. Named(sheet)
                .GroupBy(t => t.Name, StringComparer.OrdinalIgnoreCase)
                .Select(g => new SheetTerm(g.Key, g.First().Chunk, Phrases(g.SelectMany(t => t.Also).Append(g.Key).Concat(names[g.Key].SelectMany(n => n.Called)))))
                .Where(t => !t.Phrases.IsEmpty)
                .OrderByDescending(t => t.Phrases.Max(p => p.Length)),
        ];
    }

    private static IEnumerable<(string Name, string Chunk, string[] Also)> Named(Sheet sheet) =>
    [
        .. sheet.Kinds.Select(k => (k.Kind.Name, k.Kind.Name, new[] { k.Kind.Plural })),
        .. sheet.Kinds.SelectMany(k => k.Attributes.Where(a => !a.Attribute.IsState), (k, a) => (Kind: k.Kind.Name, Attribute: a)).SelectMany(OfAttribute),
        .. sheet.Boards.SelectMany(OfBoard),
        .. sheet.Places.Where(p => p.SlotNoun is not null).Select(p => (p.SlotNoun!.Name, p.SlotNoun.Name, new[] { p.SlotNoun.Plural })),
        .. sheet.Places.Select(p => (p.Place.Name, p.SlotNoun?.Name ?? p.Place.Name, new[] { Prose.Plural(p.Place.Name) })),
        .. sheet.Marks.Select(m => (m.Name, m.Name, Array.Empty<string>())),
        .. sheet.Meanings.Where(m => m.Says is not null).Select(m => (m.Word.Name, m.Word.Name, Array.Empty<string>())),
    ];

    private static IEnumerable<(string Name, string Chunk, string[] Also)> OfAttribute((string Kind, AttributeFacts Attribute) of) =>
        of.Attribute.Values.Where(v => v.Number is null).Select(v => (v.Name, of.Kind, new[] { v.Plural })).Prepend((of.Attribute.Attribute.Name, of.Kind, []));

    private static IEnumerable<(string Name, string Chunk, string[] Also)> OfBoard(BoardFacts board) =>
    [
        (board.Place.Name, board.Place.Name, []),
        (board.Noun.Name, board.Place.Name, [board.Noun.Plural]),
        .. board.Families.Select(f => (f.Name, board.Place.Name, new[] { f.Plural })),
        .. board.HoleNames.Select(h => (h.Name, board.Place.Name, Array.Empty<string>())),
        .. board.Regions.Select(r => (r.Name, board.Place.Name, Array.Empty<string>())),
    ];

    private static ImmutableArray<ImmutableArray<string>> Phrases(IEnumerable<string> names) =>
        [.. names.Select(WordStems.Of).Where(p => !p.IsEmpty && !(p.Length == 1 && (Known.Contains(p[0]) || p[0].Length < 3 || char.IsDigit(p[0][0])))).DistinctBy(p => string.Join(' ', p)).OrderByDescending(p => p.Length)];
}
