namespace Rostrum.Lessons.Film.Chapters;

/// <summary>A part of a video that viewers can jump to.</summary>
/// <remarks>Two chapters with equal start and title are equal. Every form of a chapter list can hold every chapter.</remarks>
public sealed record Chapter
{
    /// <summary>Takes what is written down anywhere and makes it fit for all forms.</summary>
    /// <param name="start">From the beginning of the video; what is beyond whole milliseconds is cut.</param>
    /// <param name="title">Line ends and control characters become blanks; runs of blanks become one, and there is none at the ends.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="start"/> is negative or later than <see cref="FilmTime.Latest"/>.</exception>
    public Chapter(TimeSpan start, string title)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentOutOfRangeException.ThrowIfLessThan(start, TimeSpan.Zero);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(start, FilmTime.Latest);
        Start = TimeSpan.FromMilliseconds(start.Ticks / TimeSpan.TicksPerMillisecond);
        Title = OneLine.Of(title);
    }

    /// <summary>When it begins, in whole milliseconds from the beginning of the video.</summary>
    public TimeSpan Start { get; }

    /// <summary>What viewers read; one line, perhaps empty.</summary>
    public string Title { get; }
}
