using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Claims;

namespace Rostrum.Lessons.Review;

/// <summary>Makes words and numbers of what was heard: number words and digits alike, hesitations left out, amounts that were taken back marked.</summary>
internal static class SpeechReader
{
    // Between an amount and the one that takes its place: 'three, no, sorry, make that two'.
    private const int MostBetweenRepair = 6;

    private const int MostNumberWords = 12;

    // A word takes as long as so many letters more than it has; a pause lasts so many milliseconds at least.
    private const int LettersOfAWord = 7;
    private const double LeastPause = 260;
    private const int FewestTimed = 20;

    private static readonly HashSet<string> Hesitations = ["uh", "um", "er", "erm", "uhm", "hmm", "mhm", "ah", "mm"];

    private static readonly string[][] Repairs =
    [
        ["make", "that"], ["no", "wait"], ["wait"], ["sorry"], ["scratch", "that"], ["i", "mean"], ["or", "rather"], ["correction"], ["pardon"], ["excuse", "me"], ["no"], ["actually"], ["my", "mistake"], ["oops"], ["well", "no"],
    ];

    private static readonly Dictionary<string, long> Homophones = new(StringComparer.Ordinal) { ["for"] = 4, ["to"] = 2, ["too"] = 2, ["won"] = 1, ["ate"] = 8, ["tree"] = 3, ["sex"] = 6, ["fore"] = 4 };

    private static readonly string[] OrdinalWords = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth"];

    /// <summary>The tokens of a stretch of speech.</summary>
    public static ImmutableArray<SpokenToken> Read(IReadOnlyList<TimedWord> words)
    {
        var tokens = new List<SpokenToken>(words.Count);
        (string Text, bool Ends)[] bare = [.. words.Select(w => Bare(w.Text))];
        MarkPauses(words, bare);
        for (int i = 0; i < words.Count; i++)
        {
            if (bare[i].Text.Length == 0 || Hesitations.Contains(bare[i].Text))
            {
                continue;
            }

            int length = NumberLength(bare, i, out long number);
            if (length > 0)
            {
                string said = string.Join(' ', bare[i..(i + length)].Select(b => b.Text));
                tokens.Add(new SpokenToken(said, "", number, words[i].Start, words[i + length - 1].End) { EndsSentence = bare[i + length - 1].Ends });
                i += length - 1;
                continue;
            }

            foreach (string part in bare[i].Text.Split('-', StringSplitOptions.RemoveEmptyEntries))
            {
                tokens.Add(Word(part, words[i], bare[i].Ends));
            }
        }

        MarkRepairs(tokens);
        return [.. tokens];
    }

    // A word that takes far longer than its letters need has a pause behind it. Only where the file times words by themselves.
    private static void MarkPauses(IReadOnlyList<TimedWord> words, (string Text, bool Ends)[] bare)
    {
        double[] shares = [.. Enumerable.Range(0, Math.Max(0, words.Count - 1)).Where(i => words[i].IsTimed && words[i + 1].IsTimed).Select(i => Taken(words, i) / Needed(words[i])).Order()];
        if (shares.Length < FewestTimed)
        {
            return;
        }

        double usual = shares[shares.Length / 2];
        for (int i = 0; i + 1 < words.Count; i++)
        {
            if (words[i].IsTimed && words[i + 1].IsTimed && Taken(words, i) - (usual * Needed(words[i])) > LeastPause)
            {
                bare[i].Ends = true;
            }
        }
    }

    private static double Taken(IReadOnlyList<TimedWord> words, int at) => (words[at + 1].Start - words[at].Start).TotalMilliseconds;

    private static double Needed(TimedWord word) => word.Text.Length + LettersOfAWord;

    private static SpokenToken Word(string text, TimedWord word, bool ends)
    {
        int ordinal = Array.IndexOf(OrdinalWords, text) + 1;
        if (ordinal == 0 && text.Length > 2 && (text.EndsWith("st", StringComparison.Ordinal) || text.EndsWith("nd", StringComparison.Ordinal) || text.EndsWith("rd", StringComparison.Ordinal) || text.EndsWith("th", StringComparison.Ordinal)))
        {
            _ = int.TryParse(text[..^2], NumberStyles.None, CultureInfo.InvariantCulture, out ordinal);
        }

        string stem = Stems.IsSmall(text) || ordinal > 0 ? "" : Stems.Of(text);
        return new SpokenToken(text, stem, ordinal > 0 ? ordinal : null, word.Start, word.End)
        {
            IsOrdinal = ordinal > 0,
            EndsSentence = ends,
            Homophone = Homophones.TryGetValue(text, out long number) ? number : null,
        };
    }

    // Small letters; a stop at the end tells that a sentence ends.
    private static (string Text, bool Ends) Bare(string text)
    {
        string trimmed = text.Trim();
        bool ends = trimmed.Length > 0 && trimmed.TrimEnd('"', '\'', ')', '”', '’').LastOrDefault() is '.' or '!' or '?' or ':' or ';';
        bool isMinus = trimmed.Length > 1 && trimmed[0] is '-' or '\u2212' && char.IsDigit(trimmed[1]);
        string bare = new string([.. trimmed.Where(c => char.IsLetterOrDigit(c) || c is '\'' or '-' or '’')]).Replace('’', '\'').Trim('-', '\'').ToLowerInvariant();
        // 'Four's five' says four is five; 'that one's' is no number.
        bool isShort = bare.EndsWith("'s", StringComparison.Ordinal) && SpokenNumber.Read(bare[..^2]) > 1;
        return (isMinus ? "-" + bare : isShort ? bare[..^2] : bare, ends);
    }

    // How many words from here on make one number; 0 for none.
    private static int NumberLength((string Text, bool Ends)[] bare, int at, out long number)
    {
        number = 0;
        int best = 0;
        string first = bare[at].Text;
        if (first is "a" or "no" or "none" or "nothing" or "once" or "twice" or "and" or "hundred" or "thousand" || (!IsNumberWord(first) && first != "minus"))
        {
            return 0;
        }

        var said = new List<string>();
        for (int i = at; i < Math.Min(bare.Length, at + MostNumberWords) && (IsNumberWord(bare[i].Text) || (i > at && bare[i].Text == "and") || (i == at && bare[i].Text == "minus")); i++)
        {
            said.Add(bare[i].Text);
            if (bare[i].Text != "and" && SpokenNumber.Read(string.Join(' ', said)) is { } read)
            {
                (best, number) = (i - at + 1, read);
            }

            if (bare[i].Ends || (said.Count == 1 && said[0].All(char.IsDigit)))
            {
                break;
            }
        }

        return best;
    }

    private static bool IsNumberWord(string word) => word is "hundred" or "thousand" || SpokenNumber.Read(word) is not null;

    private static void MarkRepairs(List<SpokenToken> tokens)
    {
        for (int i = 0; i < tokens.Count; i++)
        {
            if (tokens[i].Number is null || tokens[i].IsOrdinal)
            {
                continue;
            }

            int next = tokens.FindIndex(i + 1, t => t.Number is not null && !t.IsOrdinal);
            if (next >= 0 && next - i - 1 is > 0 and <= MostBetweenRepair && HasRepair(tokens, i + 1, next))
            {
                tokens[i] = tokens[i] with { IsTakenBack = true };
            }

            if (IsDenied(tokens, i))
            {
                tokens[i] = tokens[i] with { IsTakenBack = true };
            }
        }
    }

    private static bool HasRepair(List<SpokenToken> tokens, int from, int to) =>
        Enumerable.Range(from, to - from).Any(i => Repairs.Any(r => i + r.Length <= to && r.Select((w, k) => tokens[i + k].Text == w).All(same => same)));

    // 'not three', 'isn't three', 'instead of three', 'rather than three'.
    private static bool IsDenied(List<SpokenToken> tokens, int at) =>
        (at > 0 && ((tokens[at - 1].Text is "not" or "never" && !(at > 1 && tokens[at - 2].Text is "if" or "when" or "or")) || tokens[at - 1].Text.EndsWith("n't", StringComparison.Ordinal)))
        || (at > 1 && (tokens[at - 2].Text, tokens[at - 1].Text) is ("instead", "of") or ("rather", "than") or ("not", "just") or ("not", "the"));
}
