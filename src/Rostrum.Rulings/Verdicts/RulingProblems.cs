using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <summary>Messages about words that ask for a ruling (ROS024x).</summary>
internal static class RulingProblems
{
    public static Diagnostic NothingAsked(SourceSpan at) => new(
        "ROS0240", Severity.Error, at, "There is no question here.", "Give an action, such as its phrase in the sheet says, or a truth.");

    public static Diagnostic AsAQuestion(SourceSpan at) => new(
        "ROS0240", Severity.Error, at, "A truth is told as a statement, not asked as a question.", "Write 'C1 is empty' for 'is C1 empty?'.");

    public static Diagnostic NothingThere(SourceSpan at, string choice) => new(
        "ROS0242", Severity.Error, at, $"Nothing lies on '{at.Text}' that '{choice}' could be.", "Name a space where such a thing lies, or the thing.");

    public static Diagnostic SeveralFit(SourceSpan at, IEnumerable<string> fitting) => new(
        "ROS0244", Severity.Error, at, $"'{at.Text}' can mean {Prose.Or(fitting)}.", "Say which one is meant.");

    public static Diagnostic NoSuchAction(SourceSpan at, string written, ActionPhrase nearest) => new(
        "ROS0241", Severity.Error, at, $"No action reads '{written}'.", $"Write it as the sheet does: '{nearest.InWords}'.");

    public static Diagnostic NoActions(SourceSpan at) => new(
        "ROS0241", Severity.Error, at, $"The sheet has no action, so '{at.Text}' cannot have been done.", "Write the action under 'actions' of the sheet, with its phrase.");

    /// <summary>The phrase that shares the most words with others, the first of those that begin alike before the rest.</summary>
    public static ActionPhrase Nearest(Sheet sheet, string words)
    {
        string[] asked = Prose.WordsOf(words.ToLowerInvariant());
        return sheet.Actions.Select(a => a.Action.Phrase).OrderByDescending(p => Fixed(p).Intersect(asked).Count()).ThenByDescending(p => NearSpelling.Find(asked[0], Fixed(p).Take(1)) is not null).First();
    }

    /// <summary>The words of a phrase outside its gaps.</summary>
    public static string[] Fixed(ActionPhrase phrase) => [.. phrase.Parts.Where(p => !p.IsGap).SelectMany(p => Prose.WordsOf(p.Words)).Select(w => w.ToLowerInvariant())];

    public static Diagnostic NotAChoice(SourceSpan at, string choice, string? nearest, IReadOnlyCollection<string> examples, int all) => new(
        "ROS0242", Severity.Error, at, $"'{at.Text}' names nothing that '{choice}' could be.",
        nearest is not null ? $"Did you mean '{nearest}'?"
            : examples.Count == 0 ? "Here there is nothing to choose from."
            : all > examples.Count ? $"It can be one of {all}, such as {Prose.Or(examples)}." : $"It can be {Prose.Or(examples)}.");

    public static Diagnostic NotAThing(SourceSpan at, string? nearest, IEnumerable<string> kinds) => new(
        "ROS0242", Severity.Error, at, $"'{at.Text}' is no word for a piece or a card of this game.",
        nearest is not null ? $"Did you mean '{nearest}'?" : $"{string.Join(". ", kinds.Select(Prose.Sentence))}.");

    public static Diagnostic NotASpace(SourceSpan at, string choice, string noun, string nouns, string? nearest, IReadOnlyList<string> names) => new(
        "ROS0242", Severity.Error, at, $"There is no {noun} '{at.Text}' for '{choice}'.",
        nearest is not null ? $"Did you mean '{nearest}'?" : $"The {nouns} are {names[0]} to {names[^1]}.");

    public static Diagnostic WrongNumber(SourceSpan at, string choice, long wanted, int found) => new(
        "ROS0243", Severity.Error, at, $"'{choice}' takes {wanted}, and {Prose.Count(found, "is", "are")} named.", $"Name {wanted}, joined with 'and'.");
}
