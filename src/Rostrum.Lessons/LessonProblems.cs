using Rostrum.Text;

namespace Rostrum.Lessons;

/// <summary>Messages about lessons: ROS06xx.</summary>
internal static class LessonProblems
{
    private const int MostNamed = 3;

    public static Diagnostic WrongClaim(SourceSpan at, string said, string found, string why) => new(
        "ROS0601", Severity.Error, at, $"The lesson says '{Prose.Clip(said)}', and the sheet says {found}.", why.Length == 0 ? "Change what is said, or the sheet." : why);

    public static Diagnostic UnsettledClaim(SourceSpan at, string said, string why) => new(
        "ROS0602", Severity.Error, at, $"The lesson says '{Prose.Clip(said)}', and that cannot be settled: {why}.", "Say which reading you follow, or leave the number open.");

    public static Diagnostic UnreadableTarget(SourceSpan at, string target) => new(
        "ROS0603", Severity.Error, at, $"'{Prose.Clip(target)}' does not say what to check.",
        "Write 'tally:POSITION/CLAUSE', 'rule:POSITION/ACTION', 'value:FORMULA' or 'fact:NAME'.");

    public static Diagnostic Unknown(SourceSpan at, string what, string name, IEnumerable<string> known)
    {
        string? near = NearSpelling.Find(name, known);
        string[] some = [.. known.Distinct().Take(8).Select(k => $"'{k}'")];
        return new("ROS0604", Severity.Error, at, $"There is no {what} '{Prose.Clip(name)}'.",
            near is not null ? $"Did you mean '{near}'?" : some.Length > 0 ? $"There are {Prose.And(some)}{(known.Distinct().Count() > 8 ? " and more" : "")}." : "Check the name.");
    }

    public static Diagnostic UnsoundPosition(SourceSpan at, string name) => new(
        "ROS0604", Severity.Error, at, $"The position '{Prose.Clip(name)}' has errors, so nothing can be asked of it.", $"Mend 'positions/{Prose.Clip(name)}.yaml' first.");

    public static Diagnostic ShotTarget(SourceSpan at, string target, bool isMisspelt) => new(
        "ROS0605", isMisspelt ? Severity.Error : Severity.Warning, at, $"'{Prose.Clip(target)}' is no shot of a position.", "Write 'position:NAME', perhaps with 'show CLAUSE' or 'show CLAUSE at SPACE'.");

    public static Diagnostic ShotOption(SourceSpan at, string position, string option) => new(
        "ROS0605", Severity.Error, at, $"'{Prose.Clip(option)}' behind the position '{Prose.Clip(position)}' says nothing that a shot can show.",
        $"Write 'position:{position}', or 'position:{position} show CLAUSE' with a scoring clause.");

    public static Diagnostic FrontMatterLine(SourceSpan at, string line) => new(
        "ROS0606", Severity.Warning, at, $"'{Prose.Clip(line)}' at the head of the lesson has no colon.", "Write 'title: How to play', one a line.");

    public static Diagnostic NoNumber(SourceSpan at, string said, string found) => new(
        "ROS0607", Severity.Error, at, $"'{Prose.Clip(said)}' is no number, and the sheet says {found}.", "Say the number itself in the brackets, in digits or words.");

    public static Diagnostic BlankInTarget(SourceSpan at, string target) => new(
        "ROS0608", Severity.Error, at, $"'{Prose.Clip(target)}' holds a blank, so this is no link and nothing is checked.", "Put the target into < and >.")
    {
        Fix = Fix.Replace(at, $"<{target}>"),
    };

    // One for the whole lesson: a script without any check would otherwise drown what is wrong in it.
    public static Diagnostic UncheckedNumbers(SourceSpan at, IReadOnlyList<string> said, string first, string? write) => new(
        "ROS0609",
        Severity.Warning,
        at,
        said.Count == 1 ? $"{said[0]} is said without a check." : $"{said.Count} numbers are said without a check: {Some(said)}.",
        $"Write '{write ?? $"[{first}](fact:NAME)"}', or '[{first}](unchecked)' where no check is wanted.");

    public static Diagnostic TooDeep(SourceSpan at) => new(
        "ROS0610", Severity.Error, at, "Quotes or lists of this lesson lie more than a hundred deep in each other, so it cannot be read.",
        "Take '>' or '-' away where a line begins with many of them.");

    public static Diagnostic NoPace(SourceSpan at, string written) => new(
        "ROS0623", Severity.Warning, at, $"'{Prose.Clip(written)}' is no pace.", $"Write how many words you speak a minute, {Scripts.LessonPace.Slowest} to {Scripts.LessonPace.Fastest}: 'pace: 140'.");

    private static string Some(IReadOnlyList<string> said) =>
        said.Count <= MostNamed ? Prose.And(said) : $"{string.Join(", ", said.Take(MostNamed))} and {said.Count - MostNamed} more";
}
