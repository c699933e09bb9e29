using System.Collections.Immutable;
using Rostrum.Lessons.Captions;

namespace Rostrum.Lessons.Review;

/// <summary>How well each word that was heard fits each topic, and how likely a topic ends before it.</summary>
internal sealed class TopicScores
{
    // So many words of all topics together are mixed into each, so that one foreign word does not rule a topic out.
    private const double Mixed = 20;
    private const double Least = -1.5;
    private const double Most = 3;

    // How long a word takes that is spoken without a pause: found on captions that time each word.
    private const double MillisecondsOfLetter = 45;
    private const double MillisecondsOfWord = 140;
    private const double LongPause = 500;

    private const double OfPause = 2;
    private const double OfOpening = 1;

    private static readonly HashSet<string> Openings = ["so", "now", "okay", "ok", "next", "then", "alright", "right", "let's", "let", "first", "finally", "last"];

    private readonly double[][] _byStem;
    private readonly int[] _stems;
    private readonly double[] _breaks;

    /// <summary>Works them out.</summary>
    /// <param name="topics">The topics.</param>
    /// <param name="words">What was heard.</param>
    public TopicScores(ImmutableArray<TopicWords> topics, ImmutableArray<TimedWord> words)
    {
        var all = topics.SelectMany(t => t.Counts).GroupBy(c => c.Key, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Sum(c => c.Value), StringComparer.Ordinal);
        double sum = all.Values.Sum();
        double[] sizes = [.. topics.Select(t => t.Counts.Values.Sum())];
        string[] stems = [.. all.Keys.Order(StringComparer.Ordinal)];
        var index = stems.Select((s, i) => (s, i)).ToDictionary(p => p.s, p => p.i, StringComparer.Ordinal);
        _byStem = [.. stems.Select(s => topics.Select((t, k) => Fit(t.Counts.GetValueOrDefault(s), sizes[k], all[s] / sum)).ToArray())];
        _stems = [.. words.Select(w => TopicWords.StemOf(w.Text) is { } stem ? index.GetValueOrDefault(stem, -1) : -1)];
        _breaks = [.. words.Select((_, i) => i == 0 ? 0 : BreakBefore(words[i - 1], words[i]))];
    }

    /// <summary>What the word adds to the topic: more than 0 where it speaks for it.</summary>
    public double Of(int word, int topic) => _stems[word] < 0 ? 0 : _byStem[_stems[word]][topic];

    /// <summary>How much speaks for a new topic before the word: 0 to 3.</summary>
    public double Break(int word) => _breaks[word];

    // The logarithm of how much more often the topic says the word than all together do.
    private static double Fit(double count, double size, double share) => Math.Clamp(Math.Log((count + (Mixed * share)) / (size + Mixed) / share), Least, Most);

    private static double BreakBefore(TimedWord before, TimedWord word)
    {
        double pause = (word.Start - before.Start).TotalMilliseconds - MillisecondsOfWord - (MillisecondsOfLetter * before.Text.Length);
        double ended = before.Text[^1] is '.' or '!' or '?' ? 1 : Math.Clamp(pause / LongPause, 0, 1);
        return (ended * OfPause) + (Openings.Contains(word.Text.TrimEnd(',', '.').ToLowerInvariant()) ? OfOpening : 0);
    }
}
