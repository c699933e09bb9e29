using System.Collections.Immutable;

namespace Rostrum.Lessons.Captions.Breaking;

/// <summary>Finds where captions end so that everything together costs least.</summary>
/// <remarks>Dynamic programming over the places between words, as Knuth and Plass break paragraphs (Software: Practice and Experience 11, 1981): the
/// best way to break the first j words ends with some caption i..j, and before i stands the best way to break the first i. A caption has at most
/// as many words as fit on its lines, so that the work grows with the number of words and no faster.</remarks>
internal static class CaptionPlan
{
    /// <summary>The places at which captions end, ascending; the last is the number of words.</summary>
    public static (ImmutableArray<int> Ends, long Cost) Best(BreakText text, CaptionGuide guide)
    {
        var cost = new long[text.Count + 1];
        var begin = new int[text.Count + 1];
        Array.Fill(cost, long.MaxValue, 1, text.Count);
        for (int from = 0; from < text.Count; from++)
        {
            for (int to = from + 1; to <= text.Count && CueCost(text, from, to, guide) is { } one; to++)
            {
                if (cost[from] + one < cost[to])
                {
                    (cost[to], begin[to]) = (cost[from] + one, from);
                }
            }
        }

        return (Ends(begin), cost[^1]);
    }

    /// <summary>What one caption costs; null where its words do not fit.</summary>
    /// <param name="text">The words.</param>
    /// <param name="from">Its first word.</param>
    /// <param name="to">The word behind its last.</param>
    /// <param name="guide">The guide.</param>
    public static long? CueCost(BreakText text, int from, int to, CaptionGuide guide)
    {
        if (LineBreaks.Of(text, from, to, guide) is not { } lines)
        {
            return null;
        }

        var timing = CueTiming.Of(text, from, to, Characters(text, from, to, lines), guide);
        return BreakCosts.Cue + text.BreakBehind(to - 1) + lines.Cost + timing.Cost(text.End(to - 1), guide) + InsideCost(text, from, to);
    }

    /// <summary>How many characters are read: those of the lines, the breaks between them not counted.</summary>
    public static int Characters(BreakText text, int from, int to, LineBreaks lines) => text.Width(from, to) - lines.Count(to) + 1;

    private static long InsideCost(BreakText text, int from, int to)
    {
        long cost = 0;
        for (int i = from; i + 1 < to; i++)
        {
            cost += text.EndsSentence(i) ? BreakCosts.SentenceInside : 0;
            cost += text.PauseBehind(i) >= BreakCosts.SilenceMilliseconds ? BreakCosts.SilenceInside : 0;
        }

        return cost;
    }

    private static ImmutableArray<int> Ends(int[] begin)
    {
        var ends = new List<int>();
        for (int at = begin.Length - 1; at > 0; at = begin[at])
        {
            ends.Add(at);
        }

        ends.Reverse();
        return [.. ends];
    }
}
