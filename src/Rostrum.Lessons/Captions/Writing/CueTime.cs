using System.Globalization;

namespace Rostrum.Lessons.Captions.Writing;

/// <summary>Writes times as both formats have them.</summary>
internal static class CueTime
{
    /// <summary><c>01:02:03.004</c>; parts of a millisecond are cut.</summary>
    /// <param name="time">Not negative.</param>
    /// <param name="point">A full stop for WebVTT, a comma for SubRip.</param>
    public static string Write(TimeSpan time, char point)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(time, TimeSpan.Zero);
        return string.Create(CultureInfo.InvariantCulture, $"{time.Ticks / TimeSpan.TicksPerHour:00}:{time.Minutes:00}:{time.Seconds:00}{point}{time.Milliseconds:000}");
    }
}
