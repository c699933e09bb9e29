using System.Globalization;

namespace Rostrum.Lessons.Scripts;

/// <summary>How fast a presenter speaks, in words a minute.</summary>
/// <remarks>150 is the usual advice for narration; lectures are slower (100 to 120), talk at a table is often faster.</remarks>
public static class LessonPace
{
    /// <summary>The pace of a lesson that names none.</summary>
    public const int Usual = 150;

    /// <summary>The slowest that is taken.</summary>
    public const int Slowest = 60;

    /// <summary>The fastest that is taken.</summary>
    public const int Fastest = 300;

    /// <summary>The pace that is written; null unless it is a number from <see cref="Slowest"/> to <see cref="Fastest"/>.</summary>
    public static int? Read(string written) =>
        int.TryParse(written, NumberStyles.None, CultureInfo.InvariantCulture, out int pace) && pace is >= Slowest and <= Fastest ? pace : null;

    /// <summary>How long so many words last, rounded to whole seconds.</summary>
    /// <param name="words">How many words.</param>
    /// <param name="wordsAMinute">The pace.</param>
    public static int Seconds(int words, int wordsAMinute) => (int)Math.Round(words * 60.0 / wordsAMinute, MidpointRounding.AwayFromZero);
}
