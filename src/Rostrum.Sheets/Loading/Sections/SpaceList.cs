using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Spaces of a board as a sheet lists them: <c>a1 b2</c>, <c>a1 to a6</c>, <c>Old Mill, North Gate</c>.</summary>
internal static class SpaceList
{
    private const int Most = BoardShapeReader.MostSpaces + 1;

    /// <summary>New names: a number of spaces (<c>24</c>), or the names themselves.</summary>
    public static IEnumerable<string> Names(string text)
    {
        string words = Prose.Fold(text);
        return OutlineAsk.NumberIn(words) is { } count
            ? Enumerable.Range(1, (int)Math.Clamp(count, 0, Most)).Select(i => i.ToString(CultureInfo.InvariantCulture))
            : words.Contains(',') ? Parts(words).SelectMany(p => Ranged(p.Split(' '))).Take(Most) : Ranged(words.Split(' '));
    }

    /// <summary>New names where a blank within a name is allowed as soon as commas stand between them.</summary>
    public static IEnumerable<string> NamesOfPoints(string text)
    {
        string words = Prose.Fold(text);
        return words.Contains(',') ? Parts(words) : Ranged(words.Split(' '));
    }

    /// <summary>The 0-based spaces that a text or a list of texts names; each unknown one is reported.</summary>
    /// <param name="context">Receives messages.</param>
    /// <param name="node">A text or a list.</param>
    /// <param name="known">The names of the spaces.</param>
    /// <param name="what">What is wanted, for messages.</param>
    public static ImmutableArray<int> Read(LoadContext context, OutlineNode node, SpaceIndex known, string what)
    {
        var found = new List<int>();
        foreach (OutlineScalar scalar in OutlineAsk.Items(context, node, "the spaces, such as 'a1 b2' or 'a1 to a6'"))
        {
            found.AddRange(Read(context, scalar.Text, scalar.SpanOf, known, what));
        }

        return [.. found.Distinct()];
    }

    /// <summary>The same for a text of a table.</summary>
    public static IEnumerable<int> Read(LoadContext context, string text, Func<int, int, SourceSpan> spanOf, SpaceIndex known, string what)
    {
        (string Text, int Start)[] words = [.. Cut(text)];
        var found = new List<int>();
        for (int at = 0; at < words.Length;)
        {
            if (words[at].Text == "to" && found.Count > 0 && at + 1 < words.Length && known.Find(words[at + 1].Text) is { } last)
            {
                found.AddRange(LabelRange.Between(known.Names[found[^1]], known.Names[last]).Skip(1).Select(known.Find).OfType<int>());
                at += 2;
                continue;
            }

            int length = Enumerable.Range(1, Math.Min(known.MostWords, words.Length - at)).Reverse().FirstOrDefault(n => Named(words, at, n, known) is not null);
            if (length == 0)
            {
                length = 1;
                context.Problems.Add(SheetProblems.UnknownWord(spanOf(words[at].Start, words[at].Text.Length), words[at].Text, what, known.Names));
            }
            else
            {
                found.Add(Named(words, at, length, known)!.Value);
            }

            at += length;
        }

        return found;
    }

    private static int? Named((string Text, int Start)[] words, int at, int count, SpaceIndex known) =>
        known.Find(count == 1 ? words[at].Text : string.Join(' ', words[at..(at + count)].Select(w => w.Text)));

    // Commas and blanks part names; a name of several words is found by its words.
    private static IEnumerable<(string Text, int Start)> Cut(string text)
    {
        int start = -1;
        for (int i = 0; i <= text.Length; i++)
        {
            bool isPart = i < text.Length && !char.IsWhiteSpace(text[i]) && text[i] is not (',' or ';');
            if (isPart && start < 0)
            {
                start = i;
            }
            else if (!isPart && start >= 0)
            {
                yield return (text[start..i], start);
                start = -1;
            }
        }
    }

    private static IEnumerable<string> Parts(string words) => words.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Names one by one, and all from the one to the other where <c>to</c> stands between two; no more than tell that they are too many.</summary>
    public static List<string> Ranged(string[] parts)
    {
        var names = new List<string>();
        for (int i = 0; i < parts.Length && names.Count < Most; i++)
        {
            if (parts[i] == "to" && i > 0 && i + 1 < parts.Length)
            {
                names.AddRange(LabelRange.Between(names[^1], parts[++i]).Skip(1));
            }
            else
            {
                names.Add(parts[i]);
            }
        }

        return names;
    }
}
