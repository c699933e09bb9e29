using Rostrum.Lessons.Film;

namespace Rostrum.Lessons.Published;

/// <summary>A moment of a published video.</summary>
/// <param name="At">From its beginning, in whole seconds.</param>
/// <param name="IsEstimated">True where it was worked out from the words of the lesson, false where captions say it.</param>
public readonly record struct VideoTime(TimeSpan At, bool IsEstimated)
{
    private const string About = "about ";

    /// <summary>As it stands in the file: <c>6:33</c>, or <c>about 6:33</c> for an estimate.</summary>
    public string InWords => $"{(IsEstimated ? About : "")}{FilmTime.Write(At)}";

    /// <summary>A moment, what is beyond whole seconds cut, so that who jumps to it misses nothing.</summary>
    public static VideoTime Of(TimeSpan at, bool isEstimated) => new(TimeSpan.FromSeconds(Math.Clamp(at.Ticks, 0, FilmTime.Latest.Ticks) / TimeSpan.TicksPerSecond), isEstimated);

    /// <summary>Reads a moment; null where it is none.</summary>
    /// <param name="written">As <see cref="InWords"/> writes it.</param>
    public static VideoTime? Read(string written)
    {
        ArgumentNullException.ThrowIfNull(written);
        bool isEstimated = written.StartsWith(About, StringComparison.OrdinalIgnoreCase);
        return FilmTime.Read((isEstimated ? written[About.Length..] : written).Trim()) is { } at ? Of(at, isEstimated) : null;
    }
}
