using System.Text.RegularExpressions;

namespace Rostrum.Lessons.Speech;

/// <summary>Cuts a text into sentences: full units of speech that a stop, colon, semicolon, question or exclamation mark, or a dash between blanks ends.</summary>
/// <remarks>The counting rule that Flesch's readability formulas ask for. <c>p. 5</c>, <c>no. 3</c> and <c>e.g.</c> end nothing.</remarks>
internal static partial class SentenceCut
{
    /// <summary>Where each sentence begins and how long it is, blanks at its ends left out.</summary>
    public static IEnumerable<(int Start, int Length)> In(string text)
    {
        int start = 0;
        for (Match end = End().Match(text); end.Success; end = end.NextMatch())
        {
            if (Trimmed(text, start, end.Index) is { } sentence)
            {
                yield return sentence;
            }

            start = end.Index + end.Length;
        }

        if (Trimmed(text, start, text.Length) is { } last)
        {
            yield return last;
        }
    }

    private static (int Start, int Length)? Trimmed(string text, int from, int to)
    {
        while (from < to && char.IsWhiteSpace(text[from]))
        {
            from++;
        }

        while (to > from && char.IsWhiteSpace(text[to - 1]))
        {
            to--;
        }

        return text.AsSpan(from, to - from).IndexOfAnyInRange('0', '9') < 0 && !text[from..to].Any(char.IsLetter) ? null : (from, to - from);
    }

    [GeneratedRegex(@"(?<=[.!?:;…][""'”’)]?)(?<!\b(?:p|pp|no|vs|e\.g|i\.e|etc)\.)\s|\s[–—-](?=\s)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 20_000)]
    private static partial Regex End();
}
