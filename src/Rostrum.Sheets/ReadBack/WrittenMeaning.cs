using System.Collections.Immutable;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.ReadBack;

/// <summary>What a clause means as its author wrote it, on one line: everything below its name but the words that only people read.</summary>
/// <remarks>Of readings and conflicts that are decided, only what is followed counts. So a sentence may be told in other words, a page may move and
/// a decision may get its reason, and the written meaning stays the same.</remarks>
public static class WrittenMeaning
{
    private static readonly ImmutableHashSet<string> OnlyForPeople = ["says", "cite", "called", "never", "why", "phrase", "plural", "about", "outlines", "colours", "emblems", "flaws"];

    private static readonly string[] Forks = ["readings", "conflict"];

    private const string Follow = "follow";

    /// <summary>The meaning, such as <c>idiom = best line; of = whole plate; along = tiers; each = 3</c>; empty where nothing is written for it.</summary>
    /// <param name="sheet">The sheet that the clause was read back from.</param>
    /// <param name="clause">One of its clauses.</param>
    public static string Of(Sheet sheet, ReadClause clause)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(clause);
        return clause.At is { } at && EntryAt(sheet.Tree, at) is { } entry
            ? entry.Value is OutlineMapping mapping ? Inner(Followed(mapping), "; ") : Words(entry.Value)
            : "";
    }

    // A clause stands at the margin, such as the turn, or in a section.
    private static OutlineEntry? EntryAt(OutlineMapping tree, SourceSpan at) =>
        tree.Entries.Concat(tree.Entries.Select(e => e.Value).OfType<OutlineMapping>().SelectMany(m => m.Entries)).FirstOrDefault(e => e.Key.Span == at);

    private static string Words(OutlineNode node) => node switch
    {
        OutlineScalar scalar => Prose.Fold(scalar.Text),
        OutlineMapping mapping => Followed(mapping) is OutlineMapping kept ? $"({Inner(kept, ", ")})" : Words(Followed(mapping)),
        OutlineSequence list => $"({string.Join(", ", list.Items.Select(Words))})",
        _ => "",
    };

    private static string Inner(OutlineNode node, string between) => node is OutlineMapping mapping
        ? string.Join(between, mapping.Entries.Select(e => $"{Prose.Fold(e.Key.Text)} = {Words(e.Value)}"))
        : Words(node);

    // An open fork is kept with all that it offers.
    private static OutlineNode Followed(OutlineMapping mapping)
    {
        OutlineMapping basis = mapping with { Entries = [.. mapping.Entries.Where(e => !OnlyForPeople.Contains(e.Key.Text))] };
        if (basis.Entries.FirstOrDefault(e => Forks.Contains(e.Key.Text)) is not { Value: OutlineMapping offered } fork
            || (mapping.Find(Follow) ?? offered.Find(Follow))?.Value is not OutlineScalar follow)
        {
            return basis;
        }

        OutlineMapping rest = OutlineMerge.Without(basis, fork.Key.Text, Follow);
        return offered.Entries.FirstOrDefault(e => Prose.Fold(e.Key.Text) == Prose.Fold(follow.Text))?.Value switch
        {
            OutlineMapping changes => OutlineMerge.Lay(rest, changes with { Entries = [.. changes.Entries.Where(e => !OnlyForPeople.Contains(e.Key.Text))] }),
            OutlineScalar value when rest.Entries.IsEmpty => value,
            _ => rest,
        };
    }
}
