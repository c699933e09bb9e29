using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Loading;

/// <summary>Reads <c>not modelled</c>, perhaps with a bound: <c>not modelled, at least 0</c>, <c>not modelled, between 0 and 3</c>.</summary>
internal static class GapReader
{
    private const string Words = "not modelled";

    /// <summary>The gap; null where the text is something else.</summary>
    public static Term.NotModelled? Read(FormulaText text, Sort wanted, string owner, DiagnosticBag problems)
    {
        string folded = Prose.Fold(text.Text);
        if (folded != Words && !folded.StartsWith(Words + ",", StringComparison.Ordinal))
        {
            return null;
        }

        string bound = folded.Length > Words.Length ? folded[(Words.Length + 1)..].Trim() : "";
        (long? low, long? high) = Bounds(bound);
        if (bound.Length > 0 && low is null && high is null)
        {
            int at = text.Text.IndexOf(',', StringComparison.Ordinal) + 1;
            string rest = text.Text[at..];
            int skip = rest.Length - rest.TrimStart().Length;
            problems.Add(SheetProblems.UnknownWord(text.Part(at + skip, rest.Trim().Length).Span, bound, "a bound of what is not modelled", ["at least 0", "at most 3", "between 0 and 3"]));
        }

        return new Term.NotModelled(owner, low, high, wanted, Origin.Of(text.Span));
    }

    private static (long? Low, long? High) Bounds(string words)
    {
        if (words.StartsWith("at least ", StringComparison.Ordinal))
        {
            return (OutlineAsk.NumberIn(words[9..]), null);
        }

        if (words.StartsWith("at most ", StringComparison.Ordinal))
        {
            return (null, OutlineAsk.NumberIn(words[8..]));
        }

        int and = words.IndexOf(" and ", StringComparison.Ordinal);
        return words.StartsWith("between ", StringComparison.Ordinal) && and > 8
            ? (OutlineAsk.NumberIn(words[8..and]), OutlineAsk.NumberIn(words[(and + 5)..]))
            : (null, null);
    }
}
