using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <summary>One way to read words as the phrase of an action.</summary>
/// <param name="Action">The action.</param>
/// <param name="Gaps">The words that stand in each gap, by the name of the choice.</param>
internal sealed record PhraseMatch(ActionFacts Action, ImmutableDictionary<string, SourceSpan> Gaps)
{
    /// <summary>Every way to read the words as an action of the sheet; the shortest gaps first.</summary>
    public static IEnumerable<PhraseMatch> All(Sheet sheet, SourceSpan words)
    {
        ImmutableArray<SourceSpan> tokens = TokensOf(words);
        return sheet.Actions.SelectMany(a => Fit(a.Action.Phrase.Parts, 0, tokens, 0, ImmutableDictionary<string, SourceSpan>.Empty).Select(g => new PhraseMatch(a, g)));
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

    private static IEnumerable<ImmutableDictionary<string, SourceSpan>> Fit(
        ImmutableArray<PhrasePart> parts, int part, ImmutableArray<SourceSpan> tokens, int at, ImmutableDictionary<string, SourceSpan> gaps)
    {
        if (part == parts.Length)
        {
            return at == tokens.Length ? [gaps] : [];
        }

        if (!parts[part].IsGap)
        {
            string[] fixedWords = Prose.WordsOf(parts[part].Words);
            bool stands = at + fixedWords.Length <= tokens.Length && fixedWords.Zip(tokens.Skip(at)).All(p => string.Equals(p.First, p.Second.Text, StringComparison.OrdinalIgnoreCase));
            return stands ? Fit(parts, part + 1, tokens, at + fixedWords.Length, gaps) : [];
        }

        return Enumerable.Range(1, Math.Max(0, tokens.Length - at)).SelectMany(length =>
            Fit(parts, part + 1, tokens, at + length, gaps.SetItem(parts[part].Words, tokens[at].To(tokens[at + length - 1]))));
    }
}
