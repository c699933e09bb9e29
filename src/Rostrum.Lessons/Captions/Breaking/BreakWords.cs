using System.Collections.Frozen;
using Rostrum.Lessons.Claims;

namespace Rostrum.Lessons.Captions.Breaking;

/// <summary>Which English words belong together.</summary>
internal static class BreakWords
{
    private static readonly FrozenSet<string> Articles = Set("a an the");

    private static readonly FrozenSet<string> Conjunctions = Set(
        "and but or nor so yet because although though while when whenever where wherever if unless until since that which who whom whose as than whether before after then");

    private static readonly FrozenSet<string> Prepositions = Set(
        "of to in on at by for from with without into onto over under above below between among through across behind beside during against toward towards around about " +
        "along upon within per");

    // A full stop behind them ends no sentence.
    private static readonly FrozenSet<string> Abbreviations = Set("p pp vs mr mrs ms dr e.g i.e fig vol cf");

    private static readonly FrozenSet<string> LargeNumbers = Set("hundred thousand million");

    /// <summary>What breaking between two words costs, at the end of a caption.</summary>
    /// <param name="left">The word before the break.</param>
    /// <param name="right">The word behind it.</param>
    /// <param name="beyond">The word after that; empty at the end.</param>
    /// <param name="before">The word before <paramref name="left"/>; empty at the beginning.</param>
    /// <param name="pauseMilliseconds">The silence between them.</param>
    public static long Cost(string before, string left, string right, string beyond, long pauseMilliseconds)
    {
        bool isPause = pauseMilliseconds >= BreakCosts.PauseMilliseconds;
        string small = Bare(left);
        return left switch
        {
            _ when EndsSentence(left, right) => BreakCosts.SentenceEnd,
            _ when EndsClause(left) => BreakCosts.Clause,
            _ when Articles.Contains(small) || IsInsideNumber(before, left, right, beyond) => BreakCosts.Never,
            _ when isPause => BreakCosts.Clause,
            _ when Conjunctions.Contains(small) || Prepositions.Contains(small) || IsAbbreviation(left) => BreakCosts.BehindSmallWord,
            _ when Conjunctions.Contains(Bare(right)) => BreakCosts.BeforeConjunction,
            _ when Prepositions.Contains(Bare(right)) => BreakCosts.BeforePreposition,
            _ => BreakCosts.Elsewhere,
        };
    }

    /// <summary>True where a sentence ends with this word and another may begin with the next.</summary>
    public static bool EndsSentence(string word, string next)
    {
        string bare = word.TrimEnd('"', '\'', '’', '”', ')', ']');
        return bare switch
        {
            [.., '?' or '!' or '…'] => true,
            [.., '.'] => !IsAbbreviation(bare) && (next.Length == 0 || !char.IsLower(next[0])),
            _ => false,
        };
    }

    private static bool IsAbbreviation(string word) => word.EndsWith('.') && Abbreviations.Contains(Bare(word));

    private static bool EndsClause(string word) => word.TrimEnd('"', '\'', '’', '”', ')', ']') is [.., ',' or ';' or ':' or '–' or '—'];

    // 'twenty five', '12 000', 'two hundred', 'hundred and five'; a sign behind a word ends its number.
    private static bool IsInsideNumber(string before, string left, string right, string beyond) => Bare(right) == "and"
        ? IsLarge(left) && IsNumber(Bare(beyond))
        : IsNumber(Bare(right)) && ((IsOpen(left) && IsNumber(Plain(left))) || (Plain(left) == "and" && IsLarge(before)));

    private static bool IsOpen(string word) => char.IsLetterOrDigit(word[^1]);

    private static bool IsLarge(string word) => LargeNumbers.Contains(Plain(word));

    // 'no' and 'once' are numbers to a claim, and words here.
    private static bool IsNumber(string word) => word.Length > 0 && (char.IsAsciiDigit(word[0]) || LargeNumbers.Contains(word) ||
        (word is not ("no" or "none" or "nothing" or "once" or "twice") && SpokenNumber.Read(word) is not null));

    private static string Plain(string word) => word.TrimStart('"', '\'', '‘', '“', '(', '[').ToLowerInvariant();

    private static string Bare(string word) => Plain(word).TrimEnd('"', '\'', '’', '”', ')', ']', '.', ',', ';', ':', '?', '!', '…');

    private static FrozenSet<string> Set(string words) => words.Split(' ').ToFrozenSet(StringComparer.Ordinal);
}
