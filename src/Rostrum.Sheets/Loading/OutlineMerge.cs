using System.Collections.Immutable;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading;

/// <summary>Lays changes over a text tree: variants over a sheet, a reading over its clause. Every node keeps the place where it was written.</summary>
internal static class OutlineMerge
{
    /// <summary>What stands in a variant for a key that is taken out.</summary>
    public const string Removed = "removed";


    private static readonly string[] Hooks = ["before ", "after ", "instead of "];

    /// <summary>The base with the changes laid over it: a key that both have is replaced, or merged where both values are tables of keys;
    /// <c>removed</c> takes a key out; hooks (<c>before …</c>, <c>after …</c>) add up.</summary>
    /// <param name="below">The base.</param>
    /// <param name="above">The changes.</param>
    /// <param name="onNothingToRemove">Called with the key of a <c>removed</c> that the base does not have.</param>
    public static OutlineMapping Lay(OutlineMapping below, OutlineMapping above, Action<OutlineScalar>? onNothingToRemove = null)
    {
        var entries = below.Entries.ToBuilder();
        foreach (OutlineEntry change in above.Entries)
        {
            int at = IndexOf(entries, change.Key.Text);
            if (IsRemoval(change.Value))
            {
                RemoveAt(entries, at, change.Key, onNothingToRemove);
            }
            else if (at < 0)
            {
                entries.Add(change);
            }
            else
            {
                entries[at] = new OutlineEntry(entries[at].Key, Combine(change.Key.Text, entries[at].Value, change.Value, onNothingToRemove));
            }
        }

        return below with { Entries = entries.ToImmutable() };
    }

    /// <summary>The mapping without some keys.</summary>
    public static OutlineMapping Without(OutlineMapping mapping, params ReadOnlySpan<string> keys)
    {
        var kept = ImmutableArray.CreateBuilder<OutlineEntry>();
        foreach (OutlineEntry entry in mapping.Entries)
        {
            if (!keys.Contains(entry.Key.Text))
            {
                kept.Add(entry);
            }
        }

        return mapping with { Entries = kept.ToImmutable() };
    }

    /// <summary>True for the keys of hooks, which add up instead of replacing each other.</summary>
    public static bool IsHook(string key) => HookOf(key).Length > 0;

    /// <summary>The words with which the key of a hook begins, such as <c>before </c>; empty for another key.</summary>
    public static string HookOf(string key) => Hooks.FirstOrDefault(h => key.StartsWith(h, StringComparison.Ordinal)) ?? "";

    private static OutlineNode Combine(string key, OutlineNode below, OutlineNode above, Action<OutlineScalar>? onNothingToRemove) => (below, above) switch
    {
        (OutlineMapping b, OutlineMapping a) => Lay(b, a, onNothingToRemove),
        (OutlineSequence b, OutlineSequence a) when IsHook(key) => b with { Items = b.Items.AddRange(a.Items) },
        _ => above,
    };

    private static void RemoveAt(ImmutableArray<OutlineEntry>.Builder entries, int at, OutlineScalar key, Action<OutlineScalar>? onNothingToRemove)
    {
        if (at >= 0)
        {
            entries.RemoveAt(at);
        }
        else
        {
            onNothingToRemove?.Invoke(key);
        }
    }

    private static bool IsRemoval(OutlineNode value) => value is OutlineScalar { Text: Removed, Style: OutlineStyle.Plain };

    private static int IndexOf(ImmutableArray<OutlineEntry>.Builder entries, string key)
    {
        for (int i = 0; i < entries.Count; i++)
        {
            if (entries[i].Key.Text == key)
            {
                return i;
            }
        }

        return -1;
    }
}
