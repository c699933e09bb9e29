using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Lessons.Findings;

/// <summary>Messages about a script as a whole: ROS0611 to ROS0622.</summary>
internal static class ScriptProblems
{
    private const int MostNamed = 6;

    /// <summary>What may be dismissed: findings that judge the script, not those that say that something in it is wrong.</summary>
    public static ImmutableArray<string> Dismissible { get; } = ["ROS0611", "ROS0612", "ROS0613", "ROS0614", "ROS0615", "ROS0616", "ROS0617", "ROS0618", "ROS0619"];

    public static Diagnostic NeverSaid(SourceSpan at, string clause, string says, string page, string key) => new(
        "ROS0611", Severity.Warning, at, $"{Prose.Sentence(clause)} is never said ({page}): {Prose.Clip(says, 100)}", $"Say it, or write '<!-- left out: {key} -->' where you leave it out on purpose.");

    public static Diagnostic OnlyShown(SourceSpan at, string clause, string page, string key) => new(
        "ROS0611", Severity.Warning, at, $"{Prose.Sentence(clause)} is shown in a caption and never said ({page}).", $"Nobody hears a caption: say it, or write '<!-- left out: {key} -->'.");

    public static Diagnostic RowsNeverSaid(SourceSpan at, string table, IReadOnlyList<string> numbers, string page) => new(
        "ROS0611", Severity.Warning, at, $"Of the table '{Prose.Clip(table)}' {(numbers.Count == 1 ? "the number" : "the numbers")} {Some(numbers)} {(numbers.Count == 1 ? "is" : "are")} never said ({page}).",
        "Say every row, or say aloud that there are more.");

    public static Diagnostic UsedTooEarly(SourceSpan at, string term, string topic, int line, int sentences, string time) => new(
        "ROS0612", Severity.Warning, at, $"'{Prose.Clip(term)}' is used {time} before the topic '{Prose.Clip(topic)}' (line {line}) tells what it is; {Prose.Count(sentences, "sentence uses", "sentences use")} it until then.",
        $"Tell what it is here, move the topic, or say that it comes later: '[…](<later:{Prose.Clip(topic)}>)'.");

    public static Diagnostic BetterOrder(SourceSpan at, IReadOnlyList<string> topics, long before, long after, bool isExact) => new(
        "ROS0613", Severity.Warning, at,
        $"In this order of the topics {Prose.Count(before, "sentence uses", "sentences use")} what is not told yet; {(after == 0 ? "none does" : $"{after} would")} in this one: {string.Join(" · ", topics.Select(t => Prose.Clip(t)))}.",
        isExact ? "No order has fewer. Move the topics, or dismiss this with a note." : "There may be an order with still fewer: with more than 20 topics not all are tried.");

    public static Diagnostic NotDelivered(SourceSpan at, string said, int announced, int delivered, IReadOnlyList<string> missing) => new(
        "ROS0614", Severity.Warning, at,
        $"'{Prose.Clip(said)}' announces {announced}, and {(delivered == 0 ? "none comes" : $"{delivered} {(delivered == 1 ? "comes" : "come")}")}{(missing.Count > 0 ? $"; never said: {Some(missing)}" : "")}.",
        "Say the rest, or change the number.");

    public static Diagnostic AnnouncesOther(SourceSpan at, string said, long number, int announced) => new(
        "ROS0614", Severity.Warning, at, $"'{Prose.Clip(said)}' says {number}, and its mark counts {announced}.", "Make both the same number.");

    public static Diagnostic NotKept(SourceSpan at, string said, string name) => new(
        "ROS0615", Severity.Warning, at, $"'{Prose.Clip(said)}' promises '{Prose.Clip(name)}' for later, and it never comes.", "Teach it behind this place, or take the promise out.");

    public static Diagnostic ForbiddenName(SourceSpan at, string said, string name) => new(
        "ROS0616", Severity.Warning, at, $"'{Prose.Clip(said)}' may not be said: it is '{Prose.Clip(name)}'.", $"Say '{Prose.Clip(name)}', or take '{Prose.Clip(said)}' out of 'never' in the sheet.");

    public static Diagnostic OnlyOtherName(SourceSpan at, string said, string name) => new(
        "ROS0616", Severity.Warning, at, $"The lesson says '{Prose.Clip(said)}' and never '{Prose.Clip(name)}', the name that the rules use.", $"Say '{Prose.Clip(name)}' once beside it, so that viewers find it in the rules.");

    public static Diagnostic ChangeNeverSaid(SourceSpan at, string variant, string clause, string says, string page, string key) => new(
        "ROS0617", Severity.Warning, at, $"'{Prose.Clip(variant)}' changes {clause}, and this is never said ({page}): {Prose.Clip(says, 100)}",
        $"Say it where you speak of '{Prose.Clip(variant)}', or write '<!-- left out: {key} -->'.");

    public static Diagnostic ChangesNeverSaid(SourceSpan at, string variant, int changes, IReadOnlyList<string> missing) => new(
        "ROS0617", Severity.Warning, at, $"'{Prose.Clip(variant)}' changes {Prose.Count(changes, "rule", "rules")}, and {missing.Count} of them are never said: {Some(missing)}.",
        $"Say them where you speak of '{Prose.Clip(variant)}', or write '<!-- left out: {variant} -->'.");

    public static Diagnostic ManyTerms(SourceSpan at, int number, int most, IReadOnlyList<string> terms) => new(
        "ROS0618", Severity.Warning, at, $"{number} new things are named before the first example ({Some(terms)}); people keep about {most} in mind.",
        "Show an example earlier, or name some of them where they are needed.");

    public static Diagnostic NeverPutRight(SourceSpan at, string said, string name) => new(
        "ROS0619", Severity.Warning, at, $"'{Prose.Clip(said)}' simplifies '{Prose.Clip(name)}', and that is never put right.",
        $"Say aloud that you simplify, or put it right later: '[…](<put right:{Prose.Clip(name)}>)'.");

    public static Diagnostic UnknownName(SourceSpan at, string mark, string name, string? near) => new(
        "ROS0620", Severity.Error, at, $"'{mark}' names '{Prose.Clip(name)}', and neither the sheet nor the lesson has that.", near is null ? "Check the name: a clause, a variant, a topic or a term." : $"Did you mean '{near}'?");

    public static Diagnostic NoCount(SourceSpan at, string written) => new(
        "ROS0620", Severity.Error, at, $"'count:{Prose.Clip(written)}' announces no number.", "Write 'count:4', or name the four: '<count:4 bowls, jugs, plates, lamps>'.");

    public static Diagnostic NamesAreNotSoMany(SourceSpan at, int announced, int names) => new(
        "ROS0620", Severity.Error, at, $"The mark counts {announced} and names {names}.", "Name as many as you count, or none.");

    public static Diagnostic UnusedDismissal(SourceSpan at, string id, string concerns) => new(
        "ROS0621", Severity.Warning, at, $"Nothing is found any more that '{Prose.Clip(concerns)}' below {id} would let stand.", "Take it out.");

    public static Diagnostic NoNote(SourceSpan at, string concerns) => new(
        "ROS0622", Severity.Error, at, $"'{Prose.Clip(concerns)}' lets something stand and does not say why.", "Write the words that it concerns, and behind a colon your reason: 'solo: I teach it in a lesson of its own'.");

    public static Diagnostic NoSuchFinding(SourceSpan at, string id, IEnumerable<string> known) => new(
        "ROS0622", Severity.Error, at, $"'{Prose.Clip(id)}' is no finding that can be dismissed.", $"Write one of {string.Join(", ", known)}; what is wrong in the lesson must be mended.");

    private static string Some(IReadOnlyList<string> names) =>
        names.Count <= MostNamed ? Prose.And(names.Select(n => $"'{Prose.Clip(n)}'")) : $"{string.Join(", ", names.Take(MostNamed).Select(n => $"'{Prose.Clip(n)}'"))} and {names.Count - MostNamed} more";
}
