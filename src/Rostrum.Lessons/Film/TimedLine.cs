using System.Text.RegularExpressions;

namespace Rostrum.Lessons.Film;

/// <summary>A line of a video's description with a time at its beginning: <c>3:12 The aim</c>.</summary>
/// <param name="Time">Null where what stands there looks like a time and is none, such as <c>0:75</c>.</param>
/// <param name="Written">The time as written.</param>
/// <param name="Words">What follows, without a sign between; may be empty.</param>
internal sealed partial record TimedLine(TimeSpan? Time, string Written, string Words)
{
    /// <summary>Reads a line leniently: signs of a list and a number before the time, brackets around it, a dash or colon behind it.</summary>
    /// <returns>Null for a line that does not begin with a time.</returns>
    public static TimedLine? Read(string line)
    {
        Match match = Form().Match(line);
        if (!match.Success)
        {
            return null;
        }

        string rest = OneLine.Of(match.Groups["rest"].Value);
        string written = match.Groups["time"].Value;
        return new TimedLine(FilmTime.Read(written), written, rest[Separator().Match(rest).Length..].Trim());
    }

    /// <summary>The line, without a line end. Words that begin with a sign which readers skip get one more, so that theirs stays.</summary>
    public static string Write(TimeSpan time, string words) =>
        $"{FilmTime.Write(time)} {(Separator().IsMatch(words) ? "- " : "")}{words}".TrimEnd();

    [GeneratedRegex(@"^[\s\uFEFF•*·>–—-]*(?:[0-9]{1,3}[.)]\s+)?[(\[]?(?<time>[0-9]{1,5}:[0-9]{2}(?::[0-9]{2})?(?:\.[0-9]{1,9})?)(?![0-9])(?!:[0-9])[)\]]?(?<rest>.*)$")]
    private static partial Regex Form();

    [GeneratedRegex(@"^[-–—:|]+(?:\s+|$)")]
    private static partial Regex Separator();
}
