using System.Globalization;
using Rostrum.Lessons.Film;
using Rostrum.Text;

namespace Rostrum.Lessons.Scripts;

/// <summary>How fast a presenter speaks, in words a minute.</summary>
public static class Pace
{
    /// <summary>Taken where the lesson does not say: 150, the upper end of the usual advice for narration (visualculture.com.au, digitalwriting101.net).</summary>
    public const int Usual = 150;

    /// <summary>The slowest that is taken for a pace; our choice, about half of a lecture's.</summary>
    public const int Slowest = 60;

    /// <summary>The fastest that is taken for a pace; our choice, twice the usual.</summary>
    public const int Fastest = 300;

    /// <summary>Reads a pace; null where it is no whole number from <see cref="Slowest"/> to <see cref="Fastest"/>.</summary>
    /// <param name="written">Digits and nothing else.</param>
    public static int? Read(string written) =>
        int.TryParse(written, NumberStyles.None, CultureInfo.InvariantCulture, out int pace) && pace is >= Slowest and <= Fastest ? pace : null;

    /// <summary>How long so many words last, rounded to whole seconds.</summary>
    /// <param name="words">How many words.</param>
    /// <param name="wordsAMinute">The pace.</param>
    public static int Seconds(int words, int wordsAMinute) => (int)Math.Round(words * 60.0 / wordsAMinute, MidpointRounding.AwayFromZero);

    /// <summary>The pace at the head of a lesson, or the usual one where it is none.</summary>
    /// <param name="written">As it stands there.</param>
    /// <param name="at">Where to tell that it is none.</param>
    /// <param name="problems">Receives ROS0687.</param>
    internal static int Of(string written, SourceSpan at, DiagnosticBag problems)
    {
        if (Read(written) is { } pace)
        {
            return pace;
        }

        problems.Add(FilmProblems.NoPace(at, written));
        return Usual;
    }
}
