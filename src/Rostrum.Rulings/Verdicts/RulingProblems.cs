using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <summary>Messages about words that ask for a ruling (ROS024x).</summary>
internal static class RulingProblems
{
    public static Diagnostic NothingAsked(SourceSpan at) => new(
        "ROS0240", Severity.Error, at, "There is no question here.", "Give an action, such as its phrase in the sheet says, or a truth.");

    public static Diagnostic NoSuchAction(SourceSpan at, string written, ActionPhrase nearest) => new(
        "ROS0241", Severity.Error, at, $"No action reads '{written}'.", $"Write it as the sheet does: '{nearest.InWords}'.");

    public static Diagnostic NotAChoice(SourceSpan at, string written, string choice, string? nearest) => new(
        "ROS0242", Severity.Error, at, $"'{written}' names nothing that '{choice}' could be.",
        nearest is null ? $"Name what the action takes for '{choice}', in the words of the sheet." : $"Did you mean '{nearest}'?");

    public static Diagnostic WrongNumber(SourceSpan at, string choice, long wanted, int found) => new(
        "ROS0243", Severity.Error, at, $"'{choice}' is a choice of {wanted}, and {found} are named.", $"Name {wanted}, joined with 'and'.");
}
