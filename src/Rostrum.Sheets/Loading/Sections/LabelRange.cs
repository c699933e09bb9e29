using System.Globalization;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Labels in a row: <c>A to E</c>, <c>1 to 4</c>, <c>s1 to s6</c>.</summary>
internal static class LabelRange
{
    private const int Most = 4000;

    /// <summary>All labels from the first to the last; only the two themselves where no order joins them.</summary>
    public static IEnumerable<string> Between(string first, string last)
    {
        (string head, string firstTail) = Cut(first);
        (string lastHead, string lastTail) = Cut(last);
        if (firstTail.Length > 0 && head == lastHead && Number(firstTail) is { } low && Number(lastTail) is { } high && low <= high && high - low < Most)
        {
            return Enumerable.Range(low, high - low + 1).Select(n => head + n.ToString(CultureInfo.InvariantCulture));
        }

        bool areLetters = first.Length == 1 && last.Length == 1 && char.IsLetter(first[0]) && first[0] <= last[0] && last[0] - first[0] < 100;
        return areLetters ? Enumerable.Range(first[0], last[0] - first[0] + 1).Select(c => ((char)c).ToString()) : [first, last];
    }

    /// <summary>The usual labels: A, B, C … for columns, 1, 2, 3 … for rows.</summary>
    public static IEnumerable<string> Usual(int count, bool letters) =>
        Enumerable.Range(0, count).Select(i => letters ? Letters(i) : (i + 1).ToString(CultureInfo.InvariantCulture));

    private static string Letters(int index) => index < 26 ? ((char)('A' + index)).ToString() : Letters((index / 26) - 1) + (char)('A' + (index % 26));

    private static (string Head, string Tail) Cut(string label)
    {
        int at = label.Length;
        while (at > 0 && char.IsAsciiDigit(label[at - 1]))
        {
            at--;
        }

        return (label[..at], label[at..]);
    }

    private static int? Number(string digits) => int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : null;
}
