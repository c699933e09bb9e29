using Rostrum.Text;

namespace Rostrum.Lessons.Speech;

/// <summary>How easily a spoken text is followed, by two classic formulas.</summary>
/// <remarks>R. Flesch, "A new readability yardstick", Journal of Applied Psychology 32 (1948); J. P. Kincaid and others, Research Branch Report
/// 8-75 (1975). They count lengths and know nothing of sense.</remarks>
/// <param name="Words">How many words.</param>
/// <param name="Sentences">How many sentences.</param>
/// <param name="Syllables">How many syllables, counted from the letters.</param>
public sealed record Readability(int Words, int Sentences, int Syllables)
{
    /// <summary>Flesch reading ease: 60 to 70 is standard, more is easier; null where nothing is said.</summary>
    public double? Ease => Words == 0 || Sentences == 0 ? null : 206.835 - (1.015 * Words / Sentences) - (84.6 * Syllables / Words);

    /// <summary>Flesch-Kincaid grade: years of school; null where nothing is said.</summary>
    public double? Grade => Words == 0 || Sentences == 0 ? null : (0.39 * Words / Sentences) + (11.8 * Syllables / Words) - 15.59;

    /// <summary>Both texts together.</summary>
    public Readability And(Readability other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new Readability(Words + other.Words, Sentences + other.Sentences, Syllables + other.Syllables);
    }

    /// <summary>Counts a text.</summary>
    public static Readability Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Of([.. SentenceCut.In(text).Select(c => text.Substring(c.Start, c.Length))]);
    }

    /// <summary>Counts sentences.</summary>
    internal static Readability Of(IReadOnlyCollection<string> sentences)
    {
        string[] words = [.. sentences.SelectMany(Prose.WordsOf).Where(w => w.Any(char.IsLetterOrDigit))];
        return new Readability(words.Length, sentences.Count, words.Sum(Speech.Syllables.Of));
    }
}
