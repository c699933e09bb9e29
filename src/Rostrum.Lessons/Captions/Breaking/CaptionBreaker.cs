using System.Collections.Immutable;

namespace Rostrum.Lessons.Captions.Breaking;

/// <summary>Makes clean captions of words with times, after a guide.</summary>
/// <remarks>Words are neither changed nor left out nor moved. Where a caption ends is weighed by <see cref="BreakCosts"/>, and the whole is the
/// cheapest there is. Which words belong together is known for English.</remarks>
public static class CaptionBreaker
{
    /// <summary>Breaks words into captions.</summary>
    /// <param name="words">In the order in which they are said; a time that runs backwards counts as the latest before it.</param>
    /// <param name="guide">The figures to keep.</param>
    /// <exception cref="ArgumentOutOfRangeException">The guide's figures contradict each other.</exception>
    /// <exception cref="ArgumentException">A word is empty or holds a blank.</exception>
    public static BrokenCaptions Break(ImmutableArray<TimedWord> words, CaptionGuide guide)
    {
        ArgumentNullException.ThrowIfNull(guide);
        guide.Check();
        if (words.Any(w => w.Text.Length == 0 || w.Text.Any(char.IsWhiteSpace)))
        {
            throw new ArgumentException("A word is empty or holds a blank.", nameof(words));
        }

        var text = new BreakText(words);
        (ImmutableArray<int> ends, long cost) = CaptionPlan.Best(text, guide);
        return new BrokenCaptions(Cues(text, ends, guide), guide, cost);
    }

    private static ImmutableArray<BrokenCue> Cues(BreakText text, ImmutableArray<int> ends, CaptionGuide guide)
    {
        ImmutableArray<BrokenCue>.Builder cues = ImmutableArray.CreateBuilder<BrokenCue>(ends.Length);
        int from = 0;
        long earliest = 0;
        foreach (int to in ends)
        {
            LineBreaks lines = LineBreaks.Of(text, from, to, guide)!.Value;
            int characters = CaptionPlan.Characters(text, from, to, lines);
            var timing = CueTiming.Of(text, from, to, characters, guide);

            // Words at one moment, which no break can part, push each other on.
            long start = Math.Max(timing.Start, earliest);
            long end = Math.Max(timing.End, start + 1);
            cues.Add(new BrokenCue(TimeSpan.FromMilliseconds(start), TimeSpan.FromMilliseconds(end), lines.Lines(text, from, to), from, to - from, characters));
            earliest = end + guide.GapMilliseconds;
            from = to;
        }

        return cues.MoveToImmutable();
    }
}
