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

    // 'nine hundred and ninety nine thousand nine hundred and ninety nine' has eleven; a stranger's lesson may say 'hundred' without end.
    private const int MostWords = 12;

    /// <summary>The number that the words say; null where they say none.</summary>
    public static long? Read(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        string said = words.Trim().TrimEnd('.', ',', ';', '!', '?').ToLowerInvariant();
        return said switch
        {
            _ when said.StartsWith("minus ", StringComparison.Ordinal) => -Positive(said["minus ".Length..].TrimStart()),
            ['-' or '\u2212', ..] => -Positive(said[1..].TrimStart()),
            _ => Positive(said),
        };
    }

    private static long? Positive(string said)
    {
        if (long.TryParse(said.Replace(",", "", StringComparison.Ordinal), NumberStyles.None, CultureInfo.InvariantCulture, out long number))
        {
            return number;
        }

        return said switch
        {
            "no" or "none" or "nothing" => 0,
            "once" => 1,
            "twice" => 2,
            _ => InWords(said.Split([' ', '-'], MostWords + 1, StringSplitOptions.RemoveEmptyEntries)),
        };
    }

    private static long? InWords(string[] parts)
    {
        if (parts.Length is 0 or > MostWords)
        {
            return null;
        }

        if (Array.IndexOf(parts, "thousand") is var thousand and >= 0)
        {
            return Large(parts, thousand, 1000);
        }

        if (Array.IndexOf(parts, "hundred") is var hundred and >= 0)
        {
            return Large(parts, hundred, 100);
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

    // 'a hundred', 'two hundred and five'; what follows the large word is smaller than it.
    private static long? Large(string[] parts, int at, int size)
    {
        string[] rest = [.. parts[(at + 1)..].SkipWhile(p => p == "and")];
        long? many = parts[..at] is ["a"] ? 1 : InWords(parts[..at]);
        long? more = rest.Length == 0 ? 0 : InWords(rest);
        return more < size ? (many * size) + more : null;
    }
}
