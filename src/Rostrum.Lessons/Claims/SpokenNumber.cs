using System.Globalization;

namespace Rostrum.Lessons.Claims;

/// <summary>Numbers as they are written in a script: digits or words.</summary>
public static class SpokenNumber
{
    private static readonly string[] Ones =
    [
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen",
        "seventeen", "eighteen", "nineteen",
    ];

    private static readonly string[] Tens = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

    /// <summary>The number that the words say; null where they say none.</summary>
    public static long? Read(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        string said = words.Trim().TrimEnd('.', ',', ';', '!', '?').ToLowerInvariant();
        if (said.StartsWith("minus ", StringComparison.Ordinal) || said.StartsWith('-') || said.StartsWith('\u2212'))
        {
            return -Read(said.TrimStart('-', '\u2212') is var bare && bare.StartsWith("minus ", StringComparison.Ordinal) ? bare[6..] : said.TrimStart('-', '\u2212'));
        }

        if (long.TryParse(said.Replace(",", "", StringComparison.Ordinal), NumberStyles.None, CultureInfo.InvariantCulture, out long number))
        {
            return number;
        }

        return said switch
        {
            "no" or "none" or "nothing" => 0,
            "once" => 1,
            "twice" => 2,
            _ => InWords(said.Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries)),
        };
    }

    private static long? InWords(string[] parts)
    {
        if (parts.Length == 0)
        {
            return null;
        }

        if (Array.FindIndex(parts, p => p is "hundred" or "thousand") is var large and >= 0)
        {
            return Large(parts[..large], parts[large] == "hundred" ? 100 : 1000, [.. parts[(large + 1)..].SkipWhile(p => p == "and")]);
        }

        int one = Array.IndexOf(Ones, parts[^1]);
        int ten = Array.IndexOf(Tens, parts[0]);
        return parts.Length switch
        {
            1 when one >= 0 => one,
            1 when ten > 1 => ten * 10,
            2 when ten > 1 && one is > 0 and < 10 => (ten * 10) + one,
            _ => null,
        };
    }

    // 'a hundred', 'two hundred and five'.
    private static long? Large(string[] how, int size, string[] rest) =>
        (how is ["a"] ? 1 : InWords(how)) * size + (rest.Length == 0 ? 0 : InWords(rest));
}
