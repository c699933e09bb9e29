namespace Rostrum.Lessons.Film.Corrections;

/// <summary>What is right where something wrong was said in a film that is out already.</summary>
/// <remarks>Two with equal time and words are equal.</remarks>
public sealed record Correction
{
    /// <summary>Takes a correction as somebody wrote it.</summary>
    /// <param name="time">Where in the film; what is beyond whole seconds is cut.</param>
    /// <param name="words">What is right; made one line.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="time"/> is negative or later than <see cref="FilmTime.Latest"/>.</exception>
    public Correction(TimeSpan time, string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentOutOfRangeException.ThrowIfLessThan(time, TimeSpan.Zero);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(time, FilmTime.Latest);
        Time = TimeSpan.FromSeconds(time.Ticks / TimeSpan.TicksPerSecond);
        Words = OneLine.Of(words);
    }

    /// <summary>Where in the film it belongs, in whole seconds.</summary>
    public TimeSpan Time { get; }

    /// <summary>What is right; one line, perhaps empty.</summary>
    public string Words { get; }
}
