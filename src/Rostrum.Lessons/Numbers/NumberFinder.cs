using System.Text.RegularExpressions;

namespace Rostrum.Lessons.Numbers;

/// <summary>Finds the numbers of a text that count something: digits and number words.</summary>
/// <remarks>Left out are ordinals, numbers inside a name (<c>Commission 12</c>, <c>page 5</c>, <c>B2</c>), dates and times, and <c>one</c> where it
/// stands for a thing. Better a number too few than an alarm too many: <c>one</c> counts only before a word of the game.</remarks>
/// <param name="words">The words and names of the game.</param>
internal sealed partial class NumberFinder(GameWords words)
{
    private const int Reach = 100;
    private const string Ones = "one|two|three|four|five|six|seven|eight|nine";
    private const string Teens = "ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen";
    private const string Small = $"(?:(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[-\\s](?:{Ones}))?|zero|{Teens}|{Ones})";
    private const string Large = $"(?:(?:a|{Small})\\s(?:hundred|thousand)(?:(?:\\sand)?\\s{Small})?)";
    private const string Months = "January|February|March|April|May|June|July|August|September|October|November|December";

    /// <summary>Each number with its place in the text.</summary>
    public IEnumerable<(int Start, string Said)> In(string text)
    {
        var inName = new bool[text.Length];
        foreach (Match name in Dates().Matches(text).Concat(LinksThatAreNone().Matches(text)).Concat(words.NamesIn(text)))
        {
            inName.AsSpan(name.Index, name.Length).Fill(true);
        }

        return Digits().Matches(text).Concat(Words().Matches(text))
            .Where(m => !inName.AsSpan(m.Index, m.Length).Contains(true))
            .Where(m => !m.Value.Equals("one", StringComparison.OrdinalIgnoreCase) || CountsOne(text, m))
            .OrderBy(m => m.Index)
            .Select(m => (m.Index, m.Value));
    }

    private bool CountsOne(string text, Match one) => !Pronoun().IsMatch(text[Math.Max(0, one.Index - Reach)..one.Index]) && words.Follow(text[(one.Index + one.Length)..Math.Min(text.Length, one.Index + Reach)]);

    [GeneratedRegex(@"(?<![\w.:/#§]|\p{L}-)(?:minus\s)?(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?(?!\d|[:/]\d|(?:st|nd|rd|th)\b|\p{Lu})", RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex Digits();

    [GeneratedRegex($@"(?<![\w'’]|\w-)(?:minus\s)?(?:{Large}|{Small}|twice)(?![\w'’])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex Words();

    [GeneratedRegex($@"\d{{4}}-\d{{1,2}}-\d{{1,2}}|\d{{1,2}}[:/]\d{{1,2}}(?:[:/]\d{{2,4}})?|\b\d{{1,2}}\s(?:{Months})\b(?:\s\d{{4}})?|\b(?:{Months})\s\d{{1,4}}\b(?:,?\s\d{{4}})?|\b(?:in|since|from|of|until|before|after)\s(?:19|20)\d\d\b(?!\s\p{{Ll}})", RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex Dates();

    // What was meant for a link and is told as such.
    [GeneratedRegex(@"\[[^\[\]]*\]\([^()]*\)", RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex LinksThatAreNone();

    [GeneratedRegex(@"\b(?:the|this|that|these|which|each|every|no|any|another|other|either|neither)\s$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex Pronoun();
}
