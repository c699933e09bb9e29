using System.Collections.Immutable;

namespace Rostrum.Lessons.Captions.Breaking;

/// <summary>Puts the words of one caption on lines: as few as they need, broken where it costs least.</summary>
/// <param name="Cost">What the breaks cost, and the raggedness of the lines.</param>
/// <param name="First">Where the second line begins; the caption's end where there is one line.</param>
/// <param name="Second">Where the third line begins; the caption's end where there are fewer.</param>
internal readonly record struct LineBreaks(long Cost, int First, int Second)
{
    /// <summary>The most lines that a guide may ask for.</summary>
    public const int Most = 3;

    /// <summary>The best way for words <paramref name="from"/> to <paramref name="to"/> (half open); null where they do not fit.</summary>
    /// <remarks>A word alone always fits: it cannot be made shorter.</remarks>
    public static LineBreaks? Of(BreakText text, int from, int to, CaptionGuide guide)
    {
        if (text.Width(from, to) <= guide.CharactersPerLine || to - from == 1)
        {
            return new LineBreaks(0, to, to);
        }

        LineBreaks? two = guide.Lines >= 2 ? BestOfTwo(text, from, to, guide) : null;
        return two ?? (guide.Lines >= 3 ? BestOfThree(text, from, to, guide) : null);
    }

    /// <summary>How many lines there are.</summary>
    /// <param name="to">The caption's end.</param>
    public int Count(int to) => 1 + (First < to ? 1 : 0) + (Second < to ? 1 : 0);

    /// <summary>The lines.</summary>
    public ImmutableArray<string> Lines(BreakText text, int from, int to)
    {
        ImmutableArray<string>.Builder lines = ImmutableArray.CreateBuilder<string>(Most);
        lines.Add(text.Line(from, First));
        if (First < to)
        {
            lines.Add(text.Line(First, Second));
        }

        if (Second < to)
        {
            lines.Add(text.Line(Second, to));
        }

        return lines.ToImmutable();
    }

    private static LineBreaks? BestOfTwo(BreakText text, int from, int to, CaptionGuide guide)
    {
        LineBreaks? best = null;
        for (int first = from + 1; first < to; first++)
        {
            (int upper, int lower) = (text.Width(from, first), text.Width(first, to));
            if (upper > guide.CharactersPerLine)
            {
                break;
            }

            long cost = (text.BreakBehind(first - 1) / BreakCosts.LineShare) + (Math.Abs(upper - lower) / BreakCosts.RaggedCharacters);
            if (lower <= guide.CharactersPerLine && (best is null || cost < best.Value.Cost))
            {
                best = new LineBreaks(cost, first, to);
            }
        }

        return best;
    }

    private static LineBreaks? BestOfThree(BreakText text, int from, int to, CaptionGuide guide)
    {
        LineBreaks? best = null;
        for (int first = from + 1; first < to && text.Width(from, first) <= guide.CharactersPerLine; first++)
        {
            long cost = text.BreakBehind(first - 1) / BreakCosts.LineShare;
            if (BestOfTwo(text, first, to, guide) is { } rest && (best is null || cost + rest.Cost < best.Value.Cost))
            {
                best = new LineBreaks(cost + rest.Cost, first, rest.First);
            }
        }

        return best;
    }
}
