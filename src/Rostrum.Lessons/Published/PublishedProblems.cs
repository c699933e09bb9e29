using Rostrum.Text;

namespace Rostrum.Lessons.Published;

/// <summary>Messages about the file of published videos: ROS0690 to ROS0697.</summary>
internal static class PublishedProblems
{
    private const string ByCommand = "'rostrum publish' writes it as it should be";

    public static Diagnostic NoFormat(SourceSpan at) => new(
        "ROS0690", Severity.Error, at, $"This file does not say its format, so it is not read.", $"Write 'format: {PublishedFile.Format}' into its first line.");

    public static Diagnostic OtherFormat(SourceSpan at, string format) => new(
        "ROS0690", Severity.Error, at, $"This file has the format '{Prose.Clip(format)}', and this version of Rostrum reads format {PublishedFile.Format}.",
        "Use the version that wrote it, or a later one; where the line was changed by hand, put it back.");

    public static Diagnostic UnknownKey(SourceSpan at, string key, string what, string[] known) => new(
        "ROS0691", Severity.Error, at, $"'{Prose.Clip(key)}' is nothing that {what} can have.",
        NearSpelling.Find(key, known) is { } near ? $"Did you mean '{near}'?" : $"Write one of {Prose.Or(known.Select(k => $"'{k}'"))}; remarks of your own begin with '#'.");

    public static Diagnostic Missing(SourceSpan at, string what, string key) => new(
        "ROS0692", Severity.Error, at, $"{what} has no '{key}'.", $"Write '{key}: …' below or beside it; {ByCommand}.");

    public static Diagnostic NoTime(SourceSpan at, string written) => new(
        "ROS0693", Severity.Error, at, $"'{Prose.Clip(written)}' is no time of a video.", "Write minutes and seconds as in '12:05', with 'about' before them where they are an estimate.");

    public static Diagnostic NoDay(SourceSpan at, string written) => new(
        "ROS0694", Severity.Error, at, $"'{Prose.Clip(written)}' is no day.", "Write year, month and day as in '2026-11-25'.");

    public static Diagnostic VideoTwice(SourceSpan at, string video) => new(
        "ROS0695", Severity.Error, at, $"'{Prose.Clip(video)}' stands here a second time.", "Take one of the two out, or give it the title or day that it has.");

    public static Diagnostic ClauseTwice(SourceSpan at, string clause) => new(
        "ROS0695", Severity.Error, at, $"This video says the rule '{Prose.Clip(clause)}' a second time.", "Write both times behind the 'at' of one of them, as in 'at: 3:12, 6:40', and take the other out.");

    public static Diagnostic NoList(SourceSpan at, string key) => new(
        "ROS0696", Severity.Error, at, $"Below '{key}' stands a list of which each item has names with a colon.", $"Begin each with '- ' on the line below '{key}:'; {ByCommand}.");

    public static Diagnostic NoPairs(SourceSpan at, string key) => new(
        "ROS0696", Severity.Error, at, $"Below '{key}' stands a name with a colon and its words on each line.", $"Write them as in 'book: Rulebook, first printing'; {ByCommand}.");

    public static Diagnostic TooMany(SourceSpan at, int most) => new(
        "ROS0697", Severity.Error, at, $"The videos say more than {most} rules and sentences together; from here on they are not read.", "Keep the videos of other games in the folders of those games.");
}
