namespace Rostrum.Lessons.Captions.Reading;

/// <summary>Times of WebVTT: "collect a WebVTT timestamp" and the line with two of them.</summary>
internal static class WebVttTime
{
    /// <summary>The arrow between two times.</summary>
    public const string Arrow = "-->";

    /// <summary>Reads <c>mm:ss.ttt</c> or <c>hh:mm:ss.ttt</c>, with one digit of hours or more.</summary>
    /// <param name="scan">Stands behind the time afterwards, or somewhere in it.</param>
    /// <returns>Null where no time stands there.</returns>
    public static TimeSpan? Read(LineScan scan)
    {
        string first = scan.Digits();
        if (first.Length == 0 || !scan.Take(":") || scan.Digits() is not { Length: 2 } second)
        {
            return null;
        }

        bool hasHours = first.Length != 2 || LineScan.Number(first) > 59 || scan.Next == ':';
        if (!hasHours)
        {
            return Fraction(scan, "", first, second);
        }

        return scan.Take(":") && scan.Digits() is { Length: 2 } third ? Fraction(scan, first, second, third) : null;
    }

    /// <summary>Reads the line with the times of a cue.</summary>
    /// <returns>The times and what follows them; null where it is no such line.</returns>
    public static (TimeSpan Start, TimeSpan End, string Behind)? ReadLine(string line)
    {
        var scan = new LineScan(line);
        scan.SkipBlanks();
        if (Read(scan) is not { } start)
        {
            return null;
        }

        scan.SkipBlanks();
        if (!scan.Take(Arrow))
        {
            return null;
        }

        scan.SkipBlanks();
        return Read(scan) is { } end ? (start, end, scan.Rest) : null;
    }

    private static TimeSpan? Fraction(LineScan scan, string hours, string minutes, string seconds)
    {
        if (!scan.Take(".") || scan.Digits() is not { Length: 3 } thousandths)
        {
            return null;
        }

        (int m, int s) = (LineScan.Number(minutes), LineScan.Number(seconds));
        return m > 59 || s > 59 ? null : LineScan.Time(hours, m, s, LineScan.Number(thousandths));
    }
}
