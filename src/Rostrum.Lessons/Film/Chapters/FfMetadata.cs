using System.Collections.Immutable;
using System.Numerics;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>A line <c>key=value</c> of a metadata file.</summary>
/// <param name="Key">Without escapes.</param>
/// <param name="Value">Without escapes; may hold line ends.</param>
public sealed record FfTag(string Key, string Value);

/// <summary>A chapter of a metadata file, as it stands there.</summary>
/// <param name="Numerator">Of the time base: so many seconds, 1 or more …</param>
/// <param name="Denominator">… in so many units, 1 or more.</param>
/// <param name="Start">In units of the time base.</param>
/// <param name="End">In units of the time base; null where the file does not say.</param>
/// <param name="Tags">In the order of the file, the title among them.</param>
public sealed record FfChapter(int Numerator, int Denominator, long Start, long? End, ImmutableArray<FfTag> Tags)
{
    /// <summary>What viewers read; empty where there is none.</summary>
    public string Title => Tags.LastOrDefault(t => t.Key.Equals("title", StringComparison.OrdinalIgnoreCase))?.Value ?? "";

    /// <summary>When it begins; null where that is before the film or behind <see cref="FilmTime.Latest"/>.</summary>
    public TimeSpan? StartTime => Time(Start);

    /// <summary>When it ends; null where that is not said, before the film or behind <see cref="FilmTime.Latest"/>.</summary>
    public TimeSpan? EndTime => End is { } end ? Time(end) : null;

    private TimeSpan? Time(long units)
    {
        BigInteger ticks = (BigInteger)units * Numerator * TimeSpan.TicksPerSecond / Denominator;
        return ticks < 0 || ticks > FilmTime.Latest.Ticks ? null : TimeSpan.FromTicks((long)ticks);
    }
}

/// <summary>A metadata file of FFmpeg.</summary>
/// <param name="Tags">Of the whole film, in the order of the file.</param>
/// <param name="Sections">The chapters as they stand there, in the order of the file.</param>
/// <param name="Streams">The tags of each stream, in the order of the file.</param>
/// <param name="Chapters">The chapters whose times can be read, with what is wrong with the file.</param>
public sealed record FfMetadata(
    ImmutableArray<FfTag> Tags, ImmutableArray<FfChapter> Sections, ImmutableArray<ImmutableArray<FfTag>> Streams, PlacedChapters Chapters);
