using System.Text.RegularExpressions;

namespace Rostrum.Lessons.Numbers;

/// <summary>The words around a number, and how well a name fits them.</summary>
/// <remarks>Only the sentence of the number counts. The words behind it weigh more than those before it, and the next one most:
/// <c>four forms</c> speaks of forms.</remarks>
internal sealed partial class WordsAround
{
    private const int Far = 400;
    private const int Reach = 6;

    private static readonly string[] Small = ["a", "an", "the", "of", "in", "on", "to", "for", "each", "at", "with", "and", "or", "from", "per", "without", "more"];

    private static readonly string[] OfPoints = ["point", "score", "scoring", "worth", "make", "give", "total"];

    private readonly string? _next;
    private readonly Dictionary<string, double> _weights = new(StringComparer.Ordinal);

    /// <summary>Takes the words of the sentence.</summary>
    /// <param name="text">The passage.</param>
    /// <param name="start">Where the number begins.</param>
    /// <param name="end">Where it ends.</param>
    public WordsAround(string text, int start, int end)
    {
        string before = SentenceEnd().Split(text[Math.Max(0, start - Far)..start])[^1];
        string behind = SentenceEnd().Split(text[end..Math.Min(text.Length, end + Far)])[0];
        string[] next = [.. Stems(behind).Take(Reach)];
        _next = next.FirstOrDefault();
        for (int i = 0; i < next.Length; i++)
        {
            Weigh(next[i], i == 0 ? 3 : 2);
        }

        foreach (string word in Stems(before).TakeLast(Reach))
        {
            Weigh(word, 1);
        }
    }

    /// <summary>How well a name fits; 0 where less than two thirds of its words are near, or where they weigh too little.</summary>
    /// <param name="name">The name.</param>
    /// <param name="least">What the words that are near must weigh together: 3 right behind the number, 2 further on, 1 before it.</param>
    public double Fit(string name, double least)
    {
        string[] words = [.. Stems(name).Distinct()];
        int far = words.Count(w => !_weights.ContainsKey(w));
        double met = words.Sum(w => _weights.GetValueOrDefault(w));
        return met < least || far * 3 > words.Length ? 0 : met - ((double)far / words.Length);
    }

    /// <summary>True where a name stands right behind the number and nothing near speaks of points: then the number tells how many there are of it.</summary>
    public bool Counts(string name) => Stems(name).Any(w => w == _next) && !OfPoints.Any(w => _weights.ContainsKey(w));

    private void Weigh(string word, double weight) => _weights[word] = Math.Max(weight, _weights.GetValueOrDefault(word));

    // Enough of a stem for English plurals: dice, boxes and potteries stay apart, which costs a proposal and nothing more.
    private static IEnumerable<string> Stems(string words) =>
        Word().Matches(words).Select(m => m.Value.ToLowerInvariant()).Where(w => !Small.Contains(w)).Select(w => w.Length > 3 ? w.TrimEnd('s') : w);

    [GeneratedRegex(@"[\p{L}\d]+", RegexOptions.CultureInvariant)]
    private static partial Regex Word();

    [GeneratedRegex(@"(?<=[.!?:;])\s", RegexOptions.CultureInvariant)]
    private static partial Regex SentenceEnd();
}
