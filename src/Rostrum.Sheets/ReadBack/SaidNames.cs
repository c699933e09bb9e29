using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.ReadBack;

/// <summary>What else a thing of the sheet may be called when it is spoken of, and what it may not: keys <c>called</c> and <c>never</c>.</summary>
/// <param name="Section">The section in which it stands, such as <c>pieces</c>.</param>
/// <param name="Name">Its one name.</param>
/// <param name="Called">Other names that may be said.</param>
/// <param name="Never">Names that may not be said.</param>
/// <param name="At">Where its name stands.</param>
public sealed record SaidNames(string Section, string Name, ImmutableArray<string> Called, ImmutableArray<string> Never, SourceSpan At)
{
    /// <summary>Everything in a sheet that says one or the other, in the order of the sheet.</summary>
    public static ImmutableArray<SaidNames> Of(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return [.. from section in sheet.Tree.Entries
                   where section.Value is OutlineMapping
                   from entry in ((OutlineMapping)section.Value).Entries
                   where entry.Value is OutlineMapping
                   let thing = (OutlineMapping)entry.Value
                   let called = Texts(thing.Find("called")?.Value)
                   let never = Texts(thing.Find("never")?.Value)
                   where !called.IsEmpty || !never.IsEmpty
                   select new SaidNames(section.Key.Text, NameOf(entry.Key.Text), called, never, entry.Key.Span)];
    }

    // A word is written with its subjects: `clash (ware v, ware w)`. `called: (rank) of (suit)` of cards is the pattern of their names.
    private static string NameOf(string key) => Prose.Fold(key.IndexOf('(', StringComparison.Ordinal) is > 0 and var at ? key[..at] : key);

    private static ImmutableArray<string> Texts(OutlineNode? node) => node switch
    {
        OutlineScalar scalar when !scalar.Text.Contains('(', StringComparison.Ordinal) => [.. scalar.Text.Split(',').Select(Prose.Fold).Where(t => t.Length > 0)],
        OutlineSequence list => [.. list.Items.OfType<OutlineScalar>().Select(s => Prose.Fold(s.Text)).Where(t => t.Length > 0)],
        _ => [],
    };
}
