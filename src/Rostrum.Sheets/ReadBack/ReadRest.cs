using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.ReadBack;

/// <summary>What a variant leaves as it is, found by comparing what is written entry by entry, whatever the clauses say.</summary>
/// <param name="Same">How many entries of the sheet are the same, word for word.</param>
/// <param name="Untold">Entries that are written differently though no clause reads differently, such as <c>pieces, ware</c> whose colour changes.</param>
public sealed record ReadRest(int Same, ImmutableArray<string> Untold)
{
    // What is no rule, and what holds the variants themselves.
    private static readonly string[] Apart = ["rule sheet", "game", "says", "variants"];

    /// <summary>Compares the sheet with and without a variant.</summary>
    /// <param name="sheet">The sheet without it.</param>
    /// <param name="with">The sheet with it.</param>
    /// <param name="told">The differences that are told, see <see cref="SheetReadBack.Differences"/>.</param>
    public static ReadRest Of(Sheet sheet, Sheet with, ImmutableArray<ReadDifference> told)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(with);
        Dictionary<string, Entry> before = Entries(sheet.Tree);
        Dictionary<string, Entry> after = Entries(with.Tree);
        string[] names = [.. before.Keys.Union(after.Keys)];
        string[] changed = [.. names.Where(n => before.GetValueOrDefault(n)?.Words != after.GetValueOrDefault(n)?.Words)];
        return new ReadRest(names.Length - changed.Length, [.. changed.Where(n => !IsTold(before.GetValueOrDefault(n), told) && !IsTold(after.GetValueOrDefault(n), told))]);
    }

    // A clause tells of an entry that bears its name, or in which it stands.
    private static bool IsTold(Entry? entry, ImmutableArray<ReadDifference> told) =>
        entry is not null && told.SelectMany(d => (ReadClause?[])[d.Before, d.After]).OfType<ReadClause>().Any(c => c.Name == entry.Name || c.Name == entry.Section || (c.At is { } at && entry.Holds(at)));

    private static Dictionary<string, Entry> Entries(OutlineMapping tree) =>
        tree.Entries.Where(s => !Apart.Contains(s.Key.Text)).SelectMany(Entries).GroupBy(e => e.Title).ToDictionary(g => g.Key, g => g.First());

    // Each clause of a section; a section that is no list of clauses is one entry.
    private static IEnumerable<Entry> Entries(OutlineEntry section) => section.Value is OutlineMapping clauses && !clauses.Entries.Any(e => e.Key.Text is "do" or "says")
        ? clauses.Entries.Select(e => new Entry(section.Key, Prose.Fold(e.Key.Text), e))
        : [new Entry(section.Key, section.Key.Text, section)];

    private sealed record Entry(OutlineScalar SectionKey, string Name, OutlineEntry Node)
    {
        public string Section => SectionKey.Text;

        public string Title => Section == Name ? Name : $"{Section}, {Name}";

        public string Words { get; } = WordsOf(Node.Value);

        // Some clauses, such as the rating, stand at the key of their section.
        public bool Holds(SourceSpan at) => at == SectionKey.Span || In(Node.Key.Span, at) || In(Node.Value.Span, at);

        private static bool In(SourceSpan whole, SourceSpan part) => whole.Source == part.Source && whole.Start <= part.Start && part.End <= whole.End;

        private static string WordsOf(OutlineNode? node) => node switch
        {
            OutlineScalar { Style: OutlineStyle.Lines } drawing => drawing.Text,
            OutlineScalar scalar => Prose.Fold(scalar.Text),
            OutlineMapping mapping => $"{{{string.Join(", ", mapping.Entries.Select(e => $"{Prose.Fold(e.Key.Text)}: {WordsOf(e.Value)}"))}}}",
            OutlineSequence sequence => $"[{string.Join(", ", sequence.Items.Select(WordsOf))}]",
            _ => "",
        };
    }
}
