namespace Rostrum.Text;

/// <summary>Small tools for sentences that people read: lists, plurals, numbers, clipped quotes.</summary>
public static class Prose
{
    private static readonly string[] Words =
        ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    /// <summary>The words between blanks and line ends.</summary>
    public static string[] WordsOf(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    /// <summary>All blanks and line ends as one blank.</summary>
    public static string Fold(string text) => string.Join(' ', WordsOf(text));

    /// <summary>Joins as English does: <c>a</c>, <c>a and b</c>, <c>a, b and c</c>.</summary>
    public static string And(IEnumerable<string> parts) => Join(parts, "and");

    /// <summary>Joins as English does: <c>a</c>, <c>a or b</c>, <c>a, b or c</c>.</summary>
    public static string Or(IEnumerable<string> parts) => Join(parts, "or");

    /// <summary><c>1 piece</c>, <c>3 pieces</c>.</summary>
    public static string Count(long number, string one, string many) => $"{number} {(number is 1 or -1 ? one : many)}";

    /// <summary>The number as a word up to twelve, in digits beyond; 0 is <c>no</c>.</summary>
    public static string Word(long number) => number is >= 0 and <= 12 ? Words[number] : number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The number that a word up to twelve stands for, or null.</summary>
    public static int? NumberOf(string word)
    {
        int at = Array.IndexOf(Words, word.ToLowerInvariant());
        return at > 0 ? at : null;
    }

    /// <summary>The word with <c>a</c> or <c>an</c> before it, chosen by its first letter.</summary>
    public static string A(string word) => word.Length > 0 && "aeiouAEIOU".Contains(word[0], StringComparison.Ordinal) ? $"an {word}" : $"a {word}";

    /// <summary>A sentence as a part of another: the first letter made small, the sign at its end left out.</summary>
    public static string Begun(string sentence) => sentence.TrimEnd('.', ':') is { Length: > 0 } words ? char.ToLowerInvariant(words[0]) + words[1..] : "";

    /// <summary>The usual English plural: <c>jugs</c>, <c>dishes</c>, <c>berries</c>, <c>shelves</c>.</summary>
    public static string Plural(string singular) => singular switch
    {
        _ when singular.EndsWith("shelf", StringComparison.Ordinal) || singular.EndsWith("leaf", StringComparison.Ordinal) => singular[..^1] + "ves",
        _ when singular.EndsWith('s') || singular.EndsWith('x') || singular.EndsWith("ch", StringComparison.Ordinal) || singular.EndsWith("sh", StringComparison.Ordinal) => singular + "es",
        _ when singular.Length > 1 && singular.EndsWith('y') && !"aeiou".Contains(singular[^2], StringComparison.Ordinal) => singular[..^1] + "ies",
        _ => singular + "s",
    };

    /// <summary>The words with a full stop, unless a sign ends them already.</summary>
    public static string Ended(string words) => words.Length == 0 || words[^1] is '.' or '!' or '?' ? words : words + ".";

    /// <summary>The first letter made large.</summary>
    public static string Sentence(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>At most <paramref name="limit"/> characters on one line, with an ellipsis where it was cut.</summary>
    public static string Clip(string words, int limit = 40)
    {
        string flat = words.ReplaceLineEndings(" ");
        return flat.Length <= limit ? flat : string.Concat(flat.AsSpan(0, limit - 1), "…");
    }

    private static string Join(IEnumerable<string> parts, string word)
    {
        string[] all = [.. parts];
        return all.Length switch
        {
            0 => "",
            1 => all[0],
            _ => $"{string.Join(", ", all[..^1])} {word} {all[^1]}",
        };
    }
}
