using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Claims;

namespace Rostrum.Lessons.Speech;

/// <summary>Places at which a script and a recording surely say the same: three words in a row that each holds exactly once, in the same order in both.</summary>
/// <remarks>The longest sequence of such places that goes forward in both is kept, as in patience diff (Bram Cohen; named from memory), by C. Schensted,
/// "Longest increasing and decreasing subsequences", Canadian Journal of Mathematics 13, 1961. A presenter who
/// speaks freely gives few of them, and then times are estimates.</remarks>
internal static partial class WordAnchors
{
    /// <summary>So many words in a row seldom come twice in a lesson, and machines that write captions get most such runs right.</summary>
    public const int WordsInARow = 3;

    /// <summary>The words of a text in small letters, numbers in digits, signs left out.</summary>
    public static IEnumerable<string> WordsOf(string text) => Word().Matches(text.ToLowerInvariant()).Select(m => Plain(m.Value));

    /// <summary>Pairs of places, rising in both.</summary>
    /// <param name="script">The words of the script.</param>
    /// <param name="heard">The words of the recording.</param>
    public static ImmutableArray<(int Script, int Heard)> Between(IReadOnlyList<string> script, IReadOnlyList<string> heard)
    {
        Dictionary<string, int> there = Once(heard);
        (int Script, int Heard)[] pairs = [.. Once(script).Where(p => p.Value >= 0 && there.GetValueOrDefault(p.Key, -1) >= 0).Select(p => (p.Value, there[p.Key])).OrderBy(p => p.Value)];
        return LongestRising(pairs);
    }

    // What stands more than once is marked by -1.
    private static Dictionary<string, int> Once(IReadOnlyList<string> words)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        for (int i = 0; i + WordsInARow <= words.Count; i++)
        {
            string row = string.Join(' ', words.Skip(i).Take(WordsInARow));
            places[row] = places.ContainsKey(row) ? -1 : i;
        }

        return places;
    }

    // The longest subsequence whose second parts rise, by halving; the first parts rise already.
    private static ImmutableArray<(int Script, int Heard)> LongestRising((int Script, int Heard)[] pairs)
    {
        var ends = new List<int>();
        int[] before = new int[pairs.Length];
        for (int i = 0; i < pairs.Length; i++)
        {
            int at = ends.BinarySearch(i, Comparer<int>.Create((a, b) => pairs[a].Heard.CompareTo(pairs[b].Heard)));
            at = at < 0 ? ~at : at;
            before[i] = at > 0 ? ends[at - 1] : -1;
            if (at == ends.Count)
            {
                ends.Add(i);
            }
            else
            {
                ends[at] = i;
            }
        }

        var run = new Stack<(int, int)>();
        for (int i = ends.Count == 0 ? -1 : ends[^1]; i >= 0; i = before[i])
        {
            run.Push(pairs[i]);
        }

        return [.. run];
    }

    private static string Plain(string word) => SpokenNumber.Read(word) is { } number && word != "no" ? number.ToString(CultureInfo.InvariantCulture) : word;

    [GeneratedRegex(@"[\p{L}\d]+(?:['’]\p{L}+)?", RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
