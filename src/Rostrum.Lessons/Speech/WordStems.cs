using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Claims;

namespace Rostrum.Lessons.Speech;

/// <summary>The words of a text that carry meaning, cut to stems, so that <c>swapped</c> and <c>a swap</c>, <c>2</c> and <c>two</c> are one.</summary>
/// <remarks>Rough on purpose: both sides of a comparison are cut in the same way, so a stem need not be a word. Endings: plural, <c>-ing</c>,
/// <c>-ed</c>, <c>-ly</c>, a final <c>e</c>; forms that no ending gives (<c>laid</c>, <c>dice</c>) stand in a list of what tables see.</remarks>
internal static partial class WordStems
{
    // Nobody says a longer word; a stranger's file may hold one.
    private const int LongestWord = 60;

    // Words that any sentence may hold. 'more', 'fewer', 'most' are not among them: rules turn on them.
    private static readonly FrozenSet<string> Small = Set(
        "a an the of in on to for each at with and or from per without it its is are be was were that this these those their they them as by if then than so not no " +
        "nor but who whom whose which what when where while there here any all every some one's your you yours our we us i me my his her he she do does did has " +
        "have had can could may might must will would shall should only also still just too very own other others same such both either neither how up out into " +
        "onto over off again back down about before after between during until once ever never always s t re ve ll d m");

    private static readonly FrozenDictionary<string, string> Irregular = Pairs(
        "laid lay, lies lie, lain lie, lying lie, took take, taken take, kept keep, won win, stood stand, held hold, drew draw, drawn draw, gave give, given give, burnt burn, " +
        "dealt deal, chose choose, chosen choose, broke break, broken break, spent spend, dice die, went go, goes go, gone go, rung ring, rang ring, began begin, begun begin, " +
        "feet foot, shown show, ends end, men man, thrown throw, threw throw, rose rise, risen rise, bought buy, sold sell, lost lose, built build, ran run, made make, " +
        "fewest fewer, first 1, single 1, second 2, twice 2, third 3, fourth 4, fifth 5, sixth 6, seventh 7, eighth 8, ninth 9, tenth 10, twelfth 12");

    /// <summary>The stems in the order of the text, with repetitions.</summary>
    public static ImmutableArray<string> Of(string text) => [.. In(text).Select(s => s.Stem)];

    /// <summary>The stems with their place in the text.</summary>
    public static IEnumerable<(string Stem, int Start, int Length)> In(string text) =>
        from word in Word().EnumerateAll(text)
        let lower = word.Said.ToLowerInvariant()
        where !Small.Contains(lower)
        select (OfWord(lower), word.Start, word.Said.Length);

    /// <summary>The stem of one word in small letters.</summary>
    public static string OfWord(string lower)
    {
        if (Irregular.TryGetValue(lower, out string? known))
        {
            return known;
        }

        if (SpokenNumber.Read(lower) is { } number && lower != "no" && lower != "nothing" && lower != "none")
        {
            return number.ToString(CultureInfo.InvariantCulture);
        }

        string stem = lower.Length > LongestWord ? lower[..LongestWord] : lower;
        stem = Verb(Singular(stem.EndsWith("'s", StringComparison.Ordinal) || stem.EndsWith("’s", StringComparison.Ordinal) ? stem[..^2] : stem));
        stem = stem.Length > 5 && stem.EndsWith("ly", StringComparison.Ordinal) ? stem[..^2] : stem;
        return stem.Length > 3 && stem[^1] == 'e' ? stem[..^1] : stem;
    }

    private static string Singular(string word) => word switch
    {
        _ when word.Length > 4 && word.EndsWith("ves", StringComparison.Ordinal) => word[..^3] + "f",
        _ when word.Length > 4 && word.EndsWith("ies", StringComparison.Ordinal) => word[..^3] + "y",
        _ when word.Length > 4 && (word.EndsWith("ches", StringComparison.Ordinal) || word.EndsWith("shes", StringComparison.Ordinal) || word.EndsWith("xes", StringComparison.Ordinal) || word.EndsWith("sses", StringComparison.Ordinal)) => word[..^2],
        _ when word.Length > 3 && word[^1] == 's' && word[^2] != 's' => word[..^1],
        _ => word,
    };

    // 'swapped' and 'swapping' lose the doubled letter too; 'filled' and 'passed' keep theirs.
    private static string Verb(string word)
    {
        int cut = word.EndsWith("ing", StringComparison.Ordinal) ? 3 : word.EndsWith("ed", StringComparison.Ordinal) ? 2 : 0;
        if (cut == 0 || word.Length - cut < 3)
        {
            return word;
        }

        string rest = word[..^cut];
        return rest.Length > 3 && rest[^1] == rest[^2] && rest[^1] is not ('l' or 's') ? rest[..^1] : rest;
    }

    private static IEnumerable<(string Said, int Start)> EnumerateAll(this Regex words, string text)
    {
        for (Match word = words.Match(text); word.Success; word = word.NextMatch())
        {
            yield return (word.Value, word.Index);
        }
    }

    private static FrozenSet<string> Set(string words) => words.Split(' ').ToFrozenSet(StringComparer.Ordinal);

    private static FrozenDictionary<string, string> Pairs(string pairs) =>
        pairs.Split(", ").Select(p => p.Split(' ')).ToFrozenDictionary(p => p[0], p => OfPlain(p[1]), StringComparer.Ordinal);

    // What a form in the list stands for is cut like any word.
    private static string OfPlain(string word) => word.Length > 3 && word[^1] == 'e' ? word[..^1] : word;

    [GeneratedRegex(@"\b(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)-(?:one|two|three|four|five|six|seven|eight|nine)\b|[\p{L}\d]+(?:['’]\p{L}+)?", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Word();
}
