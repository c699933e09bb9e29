using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Telling;

/// <summary>A part of a phrase as it may be said.</summary>
/// <param name="Elements">By element: every way to say it, as words; for a single value one element.</param>
/// <param name="IsSet">True where all elements are said, in any order, joined by commas and <c>and</c>.</param>
internal sealed record SaidPart(ImmutableArray<string[][]> Elements, bool IsSet)
{
    /// <summary>Words that are always the same.</summary>
    public static SaidPart Of(string words) => new([[SaidWords.Of(words)]], IsSet: false);
}

/// <summary>Compares words with the parts of a phrase. Case, blanks, articles and a final stop do not matter.</summary>
internal static class SaidWords
{
    /// <summary>The words that matter, in small letters; a comma is a word of its own.</summary>
    public static string[] Of(string words) =>
        [.. Prose.WordsOf(words.TrimEnd(' ', '.', '?').Replace(",", " , ", StringComparison.Ordinal).ToLowerInvariant()).Where(w => w is not ("a" or "an" or "the"))];

    /// <summary>True where the words say all parts in their order.</summary>
    public static bool Say(ReadOnlySpan<string> words, ReadOnlySpan<SaidPart> parts)
    {
        if (parts.IsEmpty)
        {
            return words.IsEmpty;
        }

        if (parts[0].IsSet)
        {
            return parts[0].Elements.IsEmpty ? Begin(words, ["none"]) && Say(words[1..], parts[1..]) : SaySet(words, parts[0].Elements, parts[1..]);
        }

        foreach (string[] name in parts[0].Elements[0])
        {
            if (Begin(words, name) && Say(words[name.Length..], parts[1..]))
            {
                return true;
            }
        }

        return false;
    }

    private static bool SaySet(ReadOnlySpan<string> words, ImmutableArray<string[][]> left, ReadOnlySpan<SaidPart> parts)
    {
        for (int i = 0; i < left.Length; i++)
        {
            foreach (string[] name in left[i])
            {
                if (!Begin(words, name))
                {
                    continue;
                }

                ReadOnlySpan<string> rest = words[name.Length..];
                if (left.Length == 1 ? Say(rest, parts) : Joined(rest) is > 0 and var joint && SaySet(rest[joint..], left.RemoveAt(i), parts))
                {
                    return true;
                }
            }
        }

        return false;
    }

    // How many words join two elements: ',', 'and' or ', and'.
    private static int Joined(ReadOnlySpan<string> words) => Begin(words, [",", "and"]) ? 2 : Begin(words, [","]) || Begin(words, ["and"]) ? 1 : 0;

    private static bool Begin(ReadOnlySpan<string> words, ReadOnlySpan<string> name) => words.Length >= name.Length && words[..name.Length].SequenceEqual(name);

    /// <summary>True where words may be meant as a phrase: its fixed words are there, in their order, with something in each gap.</summary>
    public static bool Fit(ReadOnlySpan<string> words, ReadOnlySpan<PhrasePart> parts)
    {
        if (parts.IsEmpty)
        {
            return words.IsEmpty;
        }

        if (!parts[0].IsGap)
        {
            string[] said = Of(parts[0].Words);
            return Begin(words, said) && Fit(words[said.Length..], parts[1..]);
        }

        for (int length = 1; length <= words.Length; length++)
        {
            if (Fit(words[length..], parts[1..]))
            {
                return true;
            }
        }

        return false;
    }
}
