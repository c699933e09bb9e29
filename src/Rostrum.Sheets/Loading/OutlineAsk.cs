using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading;

/// <summary>Asks the text tree for what a section expects, with one message where it is not there.</summary>
internal static class OutlineAsk
{
    /// <summary>The entries of a section; a message where it is no table of names.</summary>
    public static ImmutableArray<OutlineEntry> Entries(LoadContext context, OutlineNode node, string what, string? example = null)
    {
        switch (node)
        {
            case OutlineMapping mapping:
                return mapping.Entries;
            case OutlineEmpty:
                return [];
            case OutlineScalar scalar when IsLeftOut(scalar):
                context.LeaveOut(what);
                return [];
            default:
                context.Problems.Add(SheetProblems.WantedEntries(node.Span, what, example));
                return [];
        }
    }

    /// <summary>True for <c>not modelled</c>, which may stand for any section and any entry.</summary>
    public static bool IsLeftOut(OutlineNode node) => node is OutlineScalar scalar && Rostrum.Text.Prose.Fold(scalar.Text) == "not modelled";

    /// <summary>The keys of an entry that wants some; null where the author left it out, or (with a message) where it is something else.</summary>
    public static OutlineMapping? Mapping(LoadContext context, OutlineEntry entry, string what, string? example = null)
    {
        switch (entry.Value)
        {
            case OutlineMapping mapping:
                return mapping;
            case var value when IsLeftOut(value):
                context.LeaveOut($"'{Rostrum.Text.Prose.Fold(entry.Key.Text)}'");
                return null;
            default:
                context.Problems.Add(example is null
                    ? SheetProblems.WantedEntries(entry.Value.Span, what)
                    : SheetProblems.WantedKeys(entry.Value.Span, what, $"{Rostrum.Text.Prose.Fold(entry.Key.Text)}: {example}"));
                return null;
        }
    }

    /// <summary>True for <c>of: each player</c>; false for one of the table; a message where it is something else.</summary>
    public static bool IsOfEachPlayer(LoadContext context, OutlineMapping mapping)
    {
        if (mapping.Find("of")?.Value is not { } of || Text(context, of, "whose it is, such as 'each player'") is not { } scalar)
        {
            return false;
        }

        switch (Rostrum.Text.Prose.Fold(scalar.Text))
        {
            case "each player":
                return true;
            case "table" or "the table":
                return false;
            default:
                context.Problems.Add(SheetProblems.UnknownWord(scalar.Span, scalar.Text, "somebody who can have it", ["each player", "table"]));
                return scalar.Text.Contains("player", StringComparison.Ordinal);
        }
    }

    /// <summary>True where a key is unknown: what seems to be missing is then most likely misspelt, and one message is enough.</summary>
    public static bool HasUnknownKey(OutlineMapping mapping, string section) =>
        mapping.Entries.Any(e => !SheetDialect.EntryKeys[section].Contains(e.Key.Text) && !SheetDialect.ClauseKeys.Contains(e.Key.Text));

    /// <summary>Reports every key that may not stand here, each with the nearest that may.</summary>
    public static void CheckKeys(LoadContext context, OutlineMapping mapping, string section, Func<string, bool>? alsoAllowed = null)
    {
        ImmutableArray<string> own = SheetDialect.EntryKeys[section];
        foreach (OutlineEntry entry in mapping.Entries)
        {
            string key = entry.Key.Text;
            if (!own.Contains(key) && !SheetDialect.ClauseKeys.Contains(key) && !(alsoAllowed?.Invoke(key) ?? false))
            {
                context.Problems.Add(SheetProblems.UnknownKey(entry.Key.Span, key, section, [.. own, .. SheetDialect.ClauseKeys]));
            }
            else if (IsLater(section, key))
            {
                context.Problems.Add(SheetProblems.NotYet(entry.Key.Span, $"'{key}'"));
            }
        }
    }

    private static bool IsLater(string section, string key) =>
        SheetDialect.LaterKeys[""].Contains(key)
        || (SheetDialect.LaterKeys.TryGetValue(section, out ImmutableArray<string> later) && later.Contains(key));

    /// <summary>The text of a value; null (with a message) where it is no text.</summary>
    public static OutlineScalar? Text(LoadContext context, OutlineNode node, string what)
    {
        if (node is OutlineScalar scalar)
        {
            return scalar;
        }

        context.Problems.Add(SheetProblems.WantedText(node.Span, what));
        return null;
    }

    /// <summary>Every key and every text below a node.</summary>
    public static IEnumerable<OutlineScalar> TextsOf(OutlineNode node) => node switch
    {
        OutlineScalar scalar => [scalar],
        OutlineSequence list => list.Items.SelectMany(TextsOf),
        OutlineMapping mapping => mapping.Entries.SelectMany(e => TextsOf(e.Value).Prepend(e.Key)),
        _ => [],
    };

    /// <summary>The prose under a key, blanks folded; null where there is none.</summary>
    public static string? Prose(OutlineMapping mapping, string key) => mapping.Find(key)?.Value is OutlineScalar scalar ? Rostrum.Text.Prose.Fold(scalar.Text) : null;

    /// <summary>The number of a value; null (with a message) where it is no number.</summary>
    public static long? Number(LoadContext context, OutlineNode node, string what)
    {
        if (Text(context, node, what) is not { } scalar)
        {
            return null;
        }

        if (NumberIn(scalar.Text) is { } number)
        {
            return number;
        }

        context.Problems.Add(SheetProblems.WantedNumber(scalar.Span, scalar.Text, what));
        return null;
    }

    /// <summary>The number of a value that may not be less than something; null (with a message) where it is no such number.</summary>
    public static long? Number(LoadContext context, OutlineNode node, string what, long least)
    {
        long? number = Number(context, node, what);
        if (number >= least || number is null)
        {
            return number;
        }

        context.Problems.Add(SheetProblems.NumberTooSmall(node.Span, ((OutlineScalar)node).Text, what, least));
        return null;
    }

    /// <summary>The number that a text is: digits, a number word to twelve, <c>minus 2</c>; null for anything else.</summary>
    public static long? NumberIn(string text)
    {
        string folded = Rostrum.Text.Prose.Fold(text);
        if (folded.StartsWith("minus ", StringComparison.OrdinalIgnoreCase))
        {
            return -NumberIn(folded[6..]);
        }

        bool isNumber = long.TryParse(folded, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long number) && Math.Abs(number) <= int.MaxValue;
        return isNumber ? number : Rostrum.Text.Prose.NumberOf(folded);
    }

    /// <summary>The items of a list value, or the single text itself.</summary>
    public static ImmutableArray<OutlineScalar> Items(LoadContext context, OutlineNode node, string what)
    {
        switch (node)
        {
            case OutlineSequence list:
                return [.. list.Items.Select(i => Text(context, i, what)).OfType<OutlineScalar>()];
            case OutlineScalar scalar:
                return [scalar];
            case OutlineEmpty:
                return [];
            default:
                context.Problems.Add(SheetProblems.WantedText(node.Span, what));
                return [];
        }
    }

    /// <summary>The number of the word that stands behind a key; 0 where nothing stands there or, with a message, something else.</summary>
    /// <param name="context">Receives the message.</param>
    /// <param name="mapping">The keys.</param>
    /// <param name="key">The key.</param>
    /// <param name="what">What should stand there, for the message.</param>
    /// <param name="words">The words.</param>
    public static int OneOf(LoadContext context, OutlineMapping mapping, string key, string what, string[] words)
    {
        if (mapping.Find(key)?.Value is not { } node || Text(context, node, what) is not { } scalar)
        {
            return 0;
        }

        int found = Array.IndexOf(words, Rostrum.Text.Prose.Fold(scalar.Text));
        if (found < 0)
        {
            context.Problems.Add(SheetProblems.UnknownWord(scalar.Span, scalar.Text, what, words));
        }

        return Math.Max(found, 0);
    }
}
