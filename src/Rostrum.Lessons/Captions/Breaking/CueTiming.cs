namespace Rostrum.Lessons.Captions.Breaking;

/// <summary>When a caption is seen, in milliseconds, and what is wrong with it.</summary>
/// <param name="Start">When its first word begins.</param>
/// <param name="End">When it goes.</param>
/// <param name="Needed">How long a reader needs.</param>
internal readonly record struct CueTiming(long Start, long End, long Needed)
{
    /// <summary>The time of a caption: from its first word to the end of its last, longer where a reader needs it, but never into the next.</summary>
    /// <remarks>It depends on nothing but its own words and the beginning of the next, which is what lets each caption be weighed alone.</remarks>
    public static CueTiming Of(BreakText text, int from, int to, int characters, CaptionGuide guide)
    {
        long start = text.Start(from);
        long needed = guide.ReadingMilliseconds(characters, to - from);
        long wanted = Math.Max(text.End(to - 1), start + Math.Max(needed, Shortest(guide)));
        long latest = start + Longest(guide);
        long end = Math.Min(wanted, latest);
        return new CueTiming(start, to < text.Count ? Math.Min(end, text.Start(to) - guide.GapMilliseconds) : end, needed);
    }

    /// <summary>What the time costs.</summary>
    /// <param name="spokenEnd">When the last word ends.</param>
    /// <param name="guide">The guide.</param>
    public long Cost(long spokenEnd, CaptionGuide guide)
    {
        long seen = End - Start;
        if (seen <= 0)
        {
            return BreakCosts.Unseen;
        }

        long tooShort = Math.Max(0, Shortest(guide) - seen);
        long tooLong = Math.Max(0, spokenEnd - Start - Longest(guide));
        long tooFast = Math.Max(0, Needed - seen);
        return ((tooShort + tooLong) / 10 * BreakCosts.WrongLength) + (tooFast / 10 * BreakCosts.TooFast);
    }

    private static long Shortest(CaptionGuide guide) => (long)Math.Ceiling(guide.Shortest.TotalMilliseconds);

    private static long Longest(CaptionGuide guide) => (long)Math.Floor(guide.Longest.TotalMilliseconds);
}
