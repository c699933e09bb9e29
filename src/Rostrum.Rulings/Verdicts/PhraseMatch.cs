using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <summary>One way to read words as the phrase of an action.</summary>
/// <param name="Action">The action.</param>
/// <param name="Gaps">The words that stand in each gap, by the name of the choice.</param>
internal sealed record PhraseMatch(ActionFacts Action, ImmutableDictionary<string, string> Gaps)
{
    /// <summary>Every way to read the words as an action of the sheet; the shortest gaps first.</summary>
    public static IEnumerable<PhraseMatch> All(Sheet sheet, string words)
    {
        string[] tokens = Prose.WordsOf(words);
        return sheet.Actions.SelectMany(a => Fit(a.Action.Phrase.Parts, 0, tokens, 0, ImmutableDictionary<string, string>.Empty).Select(g => new PhraseMatch(a, g)));
    }

    private static IEnumerable<ImmutableDictionary<string, string>> Fit(ImmutableArray<PhrasePart> parts, int part, string[] tokens, int at, ImmutableDictionary<string, string> gaps)
    {
        if (part == parts.Length)
        {
            return at == tokens.Length ? [gaps] : [];
        }

        if (!parts[part].IsGap)
        {
            string[] fixedWords = Prose.WordsOf(parts[part].Words);
            bool stands = at + fixedWords.Length <= tokens.Length && fixedWords.Zip(tokens.Skip(at)).All(p => string.Equals(p.First, p.Second, StringComparison.OrdinalIgnoreCase));
            return stands ? Fit(parts, part + 1, tokens, at + fixedWords.Length, gaps) : [];
        }

        return Enumerable.Range(1, Math.Max(0, tokens.Length - at)).SelectMany(length =>
            Fit(parts, part + 1, tokens, at + length, gaps.SetItem(parts[part].Words, string.Join(' ', tokens.Skip(at).Take(length)))));
    }
}
