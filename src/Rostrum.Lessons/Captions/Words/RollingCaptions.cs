using System.Collections.Immutable;

namespace Rostrum.Lessons.Captions.Words;

/// <summary>Finds the lines that captions made by machine show a second time.</summary>
/// <remarks>A cue <i>shows again</i> as many first lines as are equal to the last lines of the cue before, where it follows within
/// <see cref="NearMilliseconds"/>. That alone proves nothing: people say a thing twice. A pair is a sign of rolling only where the second cue adds
/// a new line or is a filler of at most <see cref="FillerMilliseconds"/>; the file rolls where at least half of its pairs are such signs.</remarks>
public static class RollingCaptions
{
    /// <summary>How soon a cue follows the one before if its lines only rolled up; in milliseconds. Found by us: such files leave no gap at all.</summary>
    public const int NearMilliseconds = 100;

    /// <summary>How long a cue is at most that only fills the moment of rolling; in milliseconds. Found by us: such files use 10.</summary>
    public const int FillerMilliseconds = 50;

    /// <summary>How many first lines of each cue are only shown again; 0 for every cue of a file that does not roll.</summary>
    internal static int[] RepeatedLines(ImmutableArray<ShownCue> shown)
    {
        var repeated = new int[shown.Length];
        int signs = 0;
        for (int i = 1; i < shown.Length; i++)
        {
            repeated[i] = IsNear(shown[i - 1].Cue, shown[i].Cue) ? Repeated(shown[i - 1].Words, shown[i].Words) : 0;
            signs += repeated[i] > 0 && (repeated[i] < shown[i].Words.Length || IsFiller(shown[i].Cue)) ? 1 : 0;
        }

        return signs > 0 && 2 * signs >= shown.Length - 1 ? repeated : new int[shown.Length];
    }

    private static bool IsNear(Cue before, Cue cue) => (cue.Start - before.End).TotalMilliseconds <= NearMilliseconds;

    private static bool IsFiller(Cue cue) => cue.Duration.TotalMilliseconds <= FillerMilliseconds;

    private static int Repeated(ImmutableArray<string> before, ImmutableArray<string> lines)
    {
        int count = Math.Min(before.Length, lines.Length);
        while (!before.AsSpan()[^count..].SequenceEqual(lines.AsSpan()[..count]))
        {
            count--;
        }

        return count;
    }
}
