using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;
using Attribute = Rostrum.Sheets.Model.Attribute;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>attributes</c> and <c>states</c> with their values, and declares kinds.</summary>
internal static class AttributeReader
{
    private const int MostValues = 200;

    /// <summary>Declares a kind with its plural.</summary>
    public static Kind Declare(LoadContext context, OutlineEntry entry, OutlineMapping mapping, KindFamily family)
    {
        string name = Prose.Fold(entry.Key.Text);
        string plural = mapping.Find("plural")?.Value is OutlineScalar given ? Prose.Fold(given.Text) : Prose.Plural(name);
        var kind = new Kind(name, plural, family, entry.Key.Span);
        context.Declare(kind, plural);
        return kind;
    }

    /// <summary>Attributes first, then states.</summary>
    public static ImmutableArray<AttributeFacts> Read(LoadContext context, Kind kind, OutlineMapping mapping)
    {
        var facts = ImmutableArray.CreateBuilder<AttributeFacts>();
        foreach (string key in (ReadOnlySpan<string>)["attributes", "states"])
        {
            foreach (OutlineEntry entry in mapping.Find(key) is { } section ? OutlineAsk.Entries(context, section.Value, $"the {key} of {kind.Name}") : [])
            {
                var attribute = new Attribute(Prose.Fold(entry.Key.Text), kind, key == "states", facts.Count, entry.Key.Span);
                bool holdsPlayer = entry.Value is OutlineScalar { Text: "players" };
                // `owner of` asks every thing whose it is; a piece that changes sides answers it with this state.
                if (!holdsPlayer || attribute.Name != "owner")
                {
                    context.Declare(attribute);
                }

                facts.Add(new AttributeFacts(attribute, holdsPlayer ? [] : Values(context, attribute, entry.Value), holdsPlayer));
            }
        }

        return facts.ToImmutable();
    }

    /// <summary>Values: a list, words parted by blanks, or <c>1 to 6</c>.</summary>
    public static ImmutableArray<AttributeValue> Values(LoadContext context, Attribute attribute, OutlineNode node)
    {
        var values = ImmutableArray.CreateBuilder<AttributeValue>();
        foreach ((string word, SourceSpan at) in Words(context, node).Take(MostValues + 1))
        {
            if (values.Count == MostValues)
            {
                context.Problems.Add(SheetProblems.MoreRowsThanAllowed(at, "values", MostValues));
                break;
            }

            long? number = long.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out long n) ? n : null;
            string plural = number is null ? Prose.Plural(word) : word;
            var value = new AttributeValue(word, plural, attribute, values.Count, number, at);
            values.Add(value);
            if (number is null)
            {
                context.Declare(value, plural);
            }
        }

        return values.ToImmutable();
    }

    private static IEnumerable<(string Word, SourceSpan At)> Words(LoadContext context, OutlineNode node)
    {
        if (node is OutlineSequence)
        {
            return OutlineAsk.Items(context, node, "values").SelectMany(i => ValueList.Of(context, i));
        }

        if (OutlineAsk.Text(context, node, "the values, such as '[red, blue]' or '1 to 6'") is not { } scalar)
        {
            return [];
        }

        string[] ends = Prose.Fold(scalar.Text).Split(" to ", 2);
        if (ends.Length == 2 && OutlineAsk.NumberIn(ends[0]) is { } low && OutlineAsk.NumberIn(ends[1]) is { } high && low <= high)
        {
            return Enumerable.Range(0, (int)Math.Min(high - low + 1, MostValues + 1)).Select(i => ((low + i).ToString(CultureInfo.InvariantCulture), scalar.Span));
        }

        if (scalar.Style == OutlineStyle.Plain && scalar.Text.AsSpan().IndexOfAny(',', '[', ']') >= 0)
        {
            return ValueList.WithoutBrackets(context, scalar);
        }

        return scalar.Text.Contains(';', StringComparison.Ordinal) ? ValueList.Of(context, scalar) : WordsOf(scalar);
    }

    private static IEnumerable<(string Word, SourceSpan At)> WordsOf(OutlineScalar scalar)
    {
        int at = 0;
        foreach (string word in Prose.WordsOf(scalar.Text))
        {
            at = scalar.Text.IndexOf(word, at, StringComparison.Ordinal);
            yield return (word, scalar.SpanOf(at, word.Length));
            at += word.Length;
        }
    }
}
