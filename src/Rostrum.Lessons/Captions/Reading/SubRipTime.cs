namespace Rostrum.Lessons.Captions.Reading;

/// <summary>Times of SubRip, read leniently: comma or full stop, one digit of hours or more or none, a fraction of one to three digits or none.</summary>
internal static class SubRipTime
{
    /// <summary>Reads the line with the times of a cue.</summary>
    /// <returns>The times and the rectangle behind them; null where it is no such line.</returns>
    public static (TimeSpan Start, TimeSpan End, CueRectangle? Rectangle)? ReadLine(string line)
    {
        // Most lines are words, and have no arrow.
        if (!line.Contains("->", StringComparison.Ordinal))
        {
            return null;
        }

        var scan = new LineScan(line);
        scan.SkipBlanks();
        if (Read(scan) is not { } start)
        {
            return null;
        }

        scan.SkipBlanks();
        if (!scan.Take(WebVttTime.Arrow) && !scan.Take("->"))
        {
            return null;
        }

        scan.SkipBlanks();
        return Read(scan) is { } end && (scan.IsAtEnd || Blanks.IsBlank(scan.Next)) ? (start, end, Rectangle(scan.Rest)) : null;
    }

    private static TimeSpan? Read(LineScan scan)
    {
        string first = scan.Digits();
        if (first.Length == 0 || !scan.Take(":") || scan.Digits() is not { Length: 1 or 2 } second)
        {
            return null;
        }

        bool hasHours = scan.Take(":");
        string third = hasHours ? scan.Digits() : "";
        if ((hasHours && third.Length is not (1 or 2)) || (!hasHours && first.Length > 3) || Fraction(scan) is not { } milliseconds)
        {
            return null;
        }

        (string hours, string minutes, string seconds) = hasHours ? (first, second, third) : ("", first, second);
        (int m, int s) = (LineScan.Number(minutes), LineScan.Number(seconds));
        return (hasHours && m > 59) || s > 59 ? null : LineScan.Time(hours, m, s, milliseconds);
    }

    // ',5' is half a second; digits beyond the third are cut.
    private static int? Fraction(LineScan scan)
    {
        if (!scan.Take(",") && !scan.Take("."))
        {
            return 0;
        }

        string digits = scan.Digits();
        return digits.Length == 0 ? null : LineScan.Number(digits.Length > 3 ? digits[..3] : digits.PadRight(3, '0'));
    }

    private static CueRectangle? Rectangle(string rest)
    {
        var sides = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach ((string name, string value) in WebVttSettings.Pairs(rest))
        {
            if (int.TryParse(value, System.Globalization.CultureInfo.InvariantCulture, out int side))
            {
                sides[name] = side;
            }
        }

        return sides.TryGetValue("X1", out int x1) && sides.TryGetValue("X2", out int x2) && sides.TryGetValue("Y1", out int y1) && sides.TryGetValue("Y2", out int y2)
            ? new CueRectangle(x1, x2, y1, y2)
            : null;
    }
}
