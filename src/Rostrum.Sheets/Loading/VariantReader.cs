using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading;

/// <summary>Reads <c>variants</c> and lays those that are on over the base.</summary>
internal static class VariantReader
{
    private static readonly string[] OwnKeys = ["says", "cite", "when", "after"];

    /// <summary>All variants of a sheet.</summary>
    public static ImmutableArray<VariantFacts> Read(OutlineMapping sheet, DiagnosticBag problems)
    {
        if (sheet.Find("variants")?.Value is not { } section)
        {
            return [];
        }

        if (section is not OutlineMapping mapping)
        {
            problems.Add(SheetProblems.WantedEntries(section.Span, "the variants"));
            return [];
        }

        ImmutableArray<VariantFacts> all = [.. mapping.Entries.Select(e => Variant(e, problems))];
        foreach (OutlineEntry entry in mapping.Entries)
        {
            CheckNames(entry, all, problems);
        }

        return all;
    }

    /// <summary>The variants that are on, in the order in which they are laid: those asked for, and those that come on by themselves.</summary>
    public static ImmutableArray<VariantFacts> On(ImmutableArray<VariantFacts> all, IReadOnlyCollection<string> wanted)
    {
        var on = all.Where(v => wanted.Contains(v.Name)).ToList();
        while (all.Where(v => !v.When.IsEmpty && !on.Contains(v) && v.When.All(w => on.Exists(o => o.Name == w))).ToArray() is { Length: > 0 } more)
        {
            on.AddRange(more);
        }

        var ordered = new List<VariantFacts>();
        foreach (VariantFacts variant in on)
        {
            int before = ordered.FindIndex(o => o.After == variant.Name);
            ordered.Insert(before < 0 ? ordered.Count : before, variant);
        }

        return [.. ordered];
    }

    /// <summary>The sheet with the variants laid over it.</summary>
    public static OutlineMapping Lay(OutlineMapping sheet, ImmutableArray<VariantFacts> on, DiagnosticBag problems)
    {
        OutlineMapping merged = sheet;
        for (int i = 0; i < on.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                ReportCollisions(on[j], on[i], on, problems);
            }

            merged = OutlineMerge.Lay(merged, on[i].Tree, key => problems.Add(SheetProblems.NothingToRemove(key.Span, key.Text)));
        }

        return merged;
    }

    // What a variant changes is read where it is on; its own keys and the variants that it names are looked at always.
    private static void CheckNames(OutlineEntry variant, ImmutableArray<VariantFacts> all, DiagnosticBag problems)
    {
        if (variant.Value is not OutlineMapping mapping)
        {
            return;
        }

        foreach (OutlineScalar slip in NearlyRemoved(mapping))
        {
            problems.Add(SheetProblems.NearlyRemoved(slip.Span, slip.Text));
        }

        ImmutableArray<string> known = [.. SheetDialect.TopKeys, .. OwnKeys];
        foreach (OutlineEntry entry in mapping.Entries.Where(e => !known.Contains(e.Key.Text) && !OutlineMerge.IsHook(e.Key.Text)))
        {
            problems.Add(SheetProblems.UnknownKey(entry.Key.Span, entry.Key.Text, "a variant", known));
        }

        IEnumerable<OutlineNode?> named = [mapping.Find("after")?.Value, .. mapping.Find("when")?.Value is OutlineSequence list ? list.Items.AsEnumerable<OutlineNode?>() : [mapping.Find("when")?.Value]];
        foreach (OutlineScalar name in named.OfType<OutlineScalar>().Where(n => !all.Any(v => v.Name == Prose.Fold(n.Text))))
        {
            problems.Add(SheetProblems.UnknownVariant(name.Span, name.Text, all.Select(v => v.Name)));
        }
    }

    private static IEnumerable<OutlineScalar> NearlyRemoved(OutlineMapping mapping) => mapping.Entries.SelectMany(e => e.Value switch
    {
        OutlineMapping deeper => NearlyRemoved(deeper),
        OutlineScalar { Style: OutlineStyle.Plain } scalar when scalar.Text != OutlineMerge.Removed && NearSpelling.Find(scalar.Text, [OutlineMerge.Removed]) is not null => [scalar],
        _ => [],
    });

    private static VariantFacts Variant(OutlineEntry entry, DiagnosticBag problems)
    {
        if (entry.Value is not (OutlineMapping or OutlineEmpty))
        {
            problems.Add(SheetProblems.WantedEntries(entry.Value.Span, "what the variant changes"));
        }

        var mapping = entry.Value as OutlineMapping ?? new OutlineMapping(entry.Value.Span, []);
        ImmutableArray<string> when = mapping.Find("when")?.Value switch
        {
            OutlineSequence list => [.. list.Items.OfType<OutlineScalar>().Select(i => Prose.Fold(i.Text))],
            OutlineScalar one => [Prose.Fold(one.Text)],
            _ => [],
        };
        return new VariantFacts(
            Prose.Fold(entry.Key.Text), OutlineAsk.Prose(mapping, "says"), when, OutlineAsk.Prose(mapping, "after"), OutlineAsk.Prose(mapping, "cite"),
            OutlineMerge.Without(mapping, OwnKeys));
    }

    // A third variant that comes on with both may say itself what holds for a key.
    private static void ReportCollisions(VariantFacts first, VariantFacts second, ImmutableArray<VariantFacts> on, DiagnosticBag problems)
    {
        if (second.After == first.Name || first.After == second.Name || second.When.Contains(first.Name) || first.When.Contains(second.Name))
        {
            return;
        }

        OutlineMapping[] settling = [.. on.Where(v => v.When.Contains(first.Name) && v.When.Contains(second.Name)).Select(v => v.Tree)];
        foreach (ImmutableArray<OutlineScalar> path in Collisions(first.Tree, second.Tree, []).Where(p => !settling.Any(s => Sets(s, p))))
        {
            problems.Add(SheetProblems.VariantsCollide(path[^1].Span, path[^1].Text, first.Name, second.Name));
        }
    }

    private static bool Sets(OutlineMapping tree, ImmutableArray<OutlineScalar> path) =>
        path.Aggregate((OutlineNode?)tree, (node, key) => (node as OutlineMapping)?.Find(key.Text)?.Value) is not null;

    // Two variants collide where both set one key to something that cannot be merged; the keys from the top down to it.
    private static IEnumerable<ImmutableArray<OutlineScalar>> Collisions(OutlineMapping first, OutlineMapping second, ImmutableArray<OutlineScalar> above)
    {
        foreach (OutlineEntry entry in second.Entries)
        {
            ImmutableArray<OutlineScalar> path = above.Add(entry.Key);
            IEnumerable<ImmutableArray<OutlineScalar>> found = (first.Find(entry.Key.Text)?.Value, entry.Value) switch
            {
                (null, _) => [],
                (OutlineMapping a, OutlineMapping b) => Collisions(a, b, path),
                (OutlineSequence, OutlineSequence) when OutlineMerge.IsHook(entry.Key.Text) => [],
                _ => [path],
            };
            foreach (ImmutableArray<OutlineScalar> one in found)
            {
                yield return one;
            }
        }
    }
}
