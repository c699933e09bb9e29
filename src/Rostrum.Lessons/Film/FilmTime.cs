using System.Globalization;

namespace Rostrum.Lessons.Film;

/// <summary>Times of a film as people write them: <c>0:00</c>, <c>12:05</c>, <c>1:02:03</c>.</summary>
public static class FilmTime
{
    /// <summary>No film is longer than this; a later time was read or worked out from something that is no film.</summary>
    public static readonly TimeSpan Latest = TimeSpan.FromHours(1000);

    /// <summary>The time in whole seconds, what is beyond them left out, so that who jumps to it misses nothing.</summary>
    /// <param name="time">Zero to <see cref="Latest"/>.</param>
    /// <returns>Minutes and seconds, with hours before them where there are any.</returns>
    public static string Write(TimeSpan time)
    {
        long seconds = time.Ticks / TimeSpan.TicksPerSecond;
        (long hours, long minutes, long rest) = (seconds / 3600, seconds / 60 % 60, seconds % 60);
        return hours > 0
            ? string.Create(CultureInfo.InvariantCulture, $"{hours}:{minutes:00}:{rest:00}")
            : string.Create(CultureInfo.InvariantCulture, $"{minutes}:{rest:00}");
    }

    /// <summary>Reads <c>mm:ss</c> or <c>hh:mm:ss</c>, with a fraction of a second or without.</summary>
    /// <param name="written">The time and nothing else.</param>
    /// <returns>Null where it is no time: more than 59 seconds, more than 59 minutes of an hour, later than <see cref="Latest"/>.</returns>
    public static TimeSpan? Read(string written)
    {
        ArgumentNullException.ThrowIfNull(written);
        string[] whole = written.Split(['.', ','], 2);
        string[] parts = whole[0].Split(':');
        if (parts.Length is not (2 or 3) || !IsNumber(parts[0], 1, 5) || !parts.Skip(1).All(p => IsNumber(p, 2, 2)) || (whole.Length == 2 && !IsNumber(whole[1], 1, 9)))
        {
            return null;
        }

        long[] numbers = [.. parts.Select(p => long.Parse(p, NumberStyles.None, CultureInfo.InvariantCulture))];
        long nanoseconds = whole.Length == 2 ? long.Parse(whole[1].PadRight(9, '0'), NumberStyles.None, CultureInfo.InvariantCulture) : 0;
        TimeSpan time = TimeSpan.FromSeconds(numbers.Aggregate(0L, (sum, n) => (sum * 60) + n)) + TimeSpan.FromTicks(nanoseconds / TimeSpan.NanosecondsPerTick);
        return numbers[^1] > 59 || (numbers.Length == 3 && numbers[1] > 59) || time > Latest ? null : time;
    }

    private static bool IsNumber(string digits, int fewest, int most) =>
        digits.Length >= fewest && digits.Length <= most && digits.All(char.IsAsciiDigit);
}
