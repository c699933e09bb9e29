using System.Globalization;

namespace Rostrum.Lessons.Captions.Reading;

/// <summary>Walks along one line of text.</summary>
/// <param name="text">The line.</param>
internal sealed class LineScan(string text)
{
    // The longest time that a TimeSpan can hold has eight digits of hours; a ninth would not be a video.
    private const int MostHourDigits = 8;

    /// <summary>The 0-based place of the next character.</summary>
    public int At { get; private set; }

    /// <summary>True behind the last character.</summary>
    public bool IsAtEnd => At == text.Length;

    /// <summary>What follows.</summary>
    public string Rest => text[At..];

    /// <summary>The next character; NUL at the end.</summary>
    public char Next => IsAtEnd ? '\0' : text[At];

    /// <summary>Goes over blanks.</summary>
    public void SkipBlanks()
    {
        while (!IsAtEnd && Blanks.IsBlank(Next))
        {
            At++;
        }
    }

    /// <summary>Goes over the sign if it is next.</summary>
    public bool Take(string sign)
    {
        bool isNext = text.AsSpan(At).StartsWith(sign, StringComparison.Ordinal);
        At += isNext ? sign.Length : 0;
        return isNext;
    }

    /// <summary>Goes over digits.</summary>
    /// <returns>The digits; empty where there are none.</returns>
    public string Digits()
    {
        int from = At;
        while (!IsAtEnd && char.IsAsciiDigit(Next))
        {
            At++;
        }

        return text[from..At];
    }

    /// <summary>The time of these digits, or null where it is longer than any video.</summary>
    public static TimeSpan? Time(string hours, int minutes, int seconds, int milliseconds)
    {
        string significant = hours.TrimStart('0');
        if (significant.Length > MostHourDigits)
        {
            return null;
        }

        long wholeHours = significant.Length == 0 ? 0 : long.Parse(significant, NumberStyles.None, CultureInfo.InvariantCulture);
        return TimeSpan.FromTicks((((((wholeHours * 60) + minutes) * 60) + seconds) * TimeSpan.TicksPerSecond) + (milliseconds * TimeSpan.TicksPerMillisecond));
    }

    /// <summary>Digits as a number; 0 for none.</summary>
    /// <param name="digits">At most nine.</param>
    public static int Number(string digits) => digits.Length == 0 ? 0 : int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);
}
