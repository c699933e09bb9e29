using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <summary>One way to read words as the phrase of an action.</summary>
/// <param name="Action">The action.</param>
/// <param name="Gaps">The words that stand in each gap, by the name of the choice.</param>
internal sealed record PhraseMatch(ActionFacts Action, ImmutableDictionary<string, SourceSpan> Gaps)
{
    // 'lay A1 on A2 on A3' is read in two ways; nobody says what could be read in hundreds.
    private const int Most = 100;

    /// <summary>The ways to read the words as an action of the sheet, at most a hundred; the shortest gaps first.</summary>
    public static IEnumerable<PhraseMatch> All(Sheet sheet, SourceSpan words)
    {
        ImmutableArray<SourceSpan> tokens = TokensOf(words);
        return sheet.Actions.SelectMany(a => Fits(a.Action.Phrase.Parts, tokens).Select(g => new PhraseMatch(a, g))).Take(Most);
    }

    /// <summary>The words one by one, with their places.</summary>
    public static ImmutableArray<SourceSpan> TokensOf(SourceSpan words)
    {
        var tokens = ImmutableArray.CreateBuilder<SourceSpan>();
        int from = 0;
        foreach (string word in Prose.WordsOf(words.Text))
        {
            int start = words.Text.IndexOf(word, from, StringComparison.Ordinal);
            tokens.Add(words.Part(start, word.Length));
            from = start + word.Length;
        }

        return tokens.ToImmutable();
    }

    private static IEnumerable<ImmutableDictionary<string, SourceSpan>> Fits(ImmutableArray<PhrasePart> parts, ImmutableArray<SourceSpan> tokens)
    {
        bool[][] isOpen = Open(parts, tokens);
        return isOpen[0][0] ? Fit(parts, 0, tokens, 0, isOpen, ImmutableDictionary<string, SourceSpan>.Empty) : [];
    }

    // By part, then by token: whether the phrase from that part on can be read from that token on. Without it, words that end wrongly would be
    // tried in every way before that is seen.
    private static bool[][] Open(ImmutableArray<PhrasePart> parts, ImmutableArray<SourceSpan> tokens)
    {
        bool[][] isOpen = [.. Enumerable.Range(0, parts.Length + 1).Select(_ => new bool[tokens.Length + 1])];
        string[] texts = [.. tokens.Select(t => t.Text)];
        isOpen[^1][tokens.Length] = true;
        for (int part = parts.Length - 1; part >= 0; part--)
        {
            string[] said = Prose.WordsOf(parts[part].Words);
            bool isGap = parts[part].IsGap;
            for (int at = tokens.Length - 1; at >= 0; at--)
            {
                isOpen[part][at] = isGap ? isOpen[part + 1][at + 1] || isOpen[part][at + 1] : Stands(said, texts, at) && isOpen[part + 1][at + said.Length];
            }
        }

        return isOpen;
    }

    private static bool Stands(string[] said, string[] texts, int at) =>
        at + said.Length <= texts.Length && said.AsSpan().SequenceEqual(texts.AsSpan(at, said.Length), StringComparer.OrdinalIgnoreCase);

    private static IEnumerable<ImmutableDictionary<string, SourceSpan>> Fit(
        ImmutableArray<PhrasePart> parts, int part, ImmutableArray<SourceSpan> tokens, int at, bool[][] isOpen, ImmutableDictionary<string, SourceSpan> gaps)
    {
        if (part == parts.Length)
        {
            return [gaps];
        }

        if (!parts[part].IsGap)
        {
            return Fit(parts, part + 1, tokens, at + Prose.WordsOf(parts[part].Words).Length, isOpen, gaps);
        }

        return Enumerable.Range(1, tokens.Length - at).Where(length => isOpen[part + 1][at + length]).SelectMany(length =>
            Fit(parts, part + 1, tokens, at + length, isOpen, gaps.SetItem(parts[part].Words, tokens[at].To(tokens[at + length - 1]))));
    }
}
