using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Checking;

/// <summary>Messages about clauses that clash, never hold or never end once the game is played (ROS042x). All are warnings: rulings and tallies do not need them.</summary>
internal static class CourseProblems
{
    public static Diagnostic ActionsInCircle(SourceSpan at, string[] actions) => new(
        "ROS0421", Severity.Warning, at, actions.Length == 1 ? $"'{actions[0]}' is a step of itself, so it would never be done." : $"{Prose.And(actions.Select(a => $"'{a}'"))} are steps of each other, so none of them would ever be done.",
        "Take one of these steps out; what is done again and again stands under 'repeat'.");

    public static Diagnostic LoopNeverChanges(SourceSpan at, string condition) => new(
        "ROS0422", Severity.Warning, at, $"Nothing that is repeated here changes whether '{Prose.Clip(condition)}' holds, so the steps are done for ever or only once.",
        "Ask something that the steps change, or write how often, as in 'repeat 3 times'.");

    public static Diagnostic LoopWithoutEnd(SourceSpan at) => new(
        "ROS0423", Severity.Warning, at, "These steps are repeated for ever: nothing here ends the turn or the game.",
        "Write 'repeat until' with a condition, or 'end turn' or an end of the game in one of the steps.");

    public static Diagnostic GameWithoutEnd(SourceSpan at) => new(
        "ROS0424", Severity.Warning, at, "Turn follows turn, and nothing ends the game.", "Say under 'end' when it is over.");

    public static Diagnostic Impossible(SourceSpan at, string player, int turn, ulong seed) => new(
        "ROS0425", Severity.Warning, at, $"This must be done and may be impossible: in turn {turn} of a game that played itself, {player} could do nothing of it, and the turn passed.",
        $"Say what happens then with 'first possible of', or let an end ask for it; 'rostrum play' with '--seed {seed}' shows that game.");

    public static Diagnostic LawsContradict(SourceSpan at, string action, string law, string other, SourceSpan first) => new(
        "ROS0426", Severity.Warning, at, $"'{Prose.Clip(action)}' is never possible: '{Prose.Clip(law)}' and '{Prose.Clip(other)}' ask the opposite of each other.", "Mend one of the two.")
    {
        Related = [new RelatedPlace(first, "the other one asks this")],
    };

    public static Diagnostic NeverHolds(SourceSpan at, string owner, string why) => new(
        "ROS0427", Severity.Warning, at, $"{Prose.Sentence(owner)} never comes: {why}.", "Mend the number, or leave this out.");

    public static Diagnostic CardNeverMet(SourceSpan at, string card, string why) => new(
        "ROS0428", Severity.Warning, at, $"'{Prose.Clip(card)}' can never be met: {why}.", "Mend the card, or what there is of it.");

    public static Diagnostic ReadsUnseen(SourceSpan at, string owner, Place place) => new(
        "ROS0429", Severity.Warning, at, $"{Prose.Sentence(owner)} asks what lies in '{place.Name}', and whoever acts cannot see that.",
        "Ask how many there are, or show them first.");

    /// <param name="at">The question.</param>
    /// <param name="action">The action that it asks about.</param>
    /// <param name="choice">What the action chooses first; null where it chooses nothing.</param>
    public static Diagnostic NotMyTurnBefore(SourceSpan at, string action, string? choice) => new(
        "ROS0430", Severity.Warning, at, "This never holds: 'the turn before' is the turn just before this one, and that was another player's.",
        $"Ask 'the round before by me' for what you did in your own last turn{(choice is null ? "" : $", or for what you chose then, as in '{choice} of my last {action}'")}.");

    /// <param name="at">The step.</param>
    /// <param name="step">The step in its own words.</param>
    /// <param name="found">How many there were.</param>
    /// <param name="player">Who acted.</param>
    /// <param name="turn">From 1.</param>
    /// <param name="seed">The seed of that game.</param>
    /// <param name="law">What a law would need.</param>
    /// <param name="choice">What could be chosen instead; null where that is no way out.</param>
    public static Diagnostic NotThere(SourceSpan at, string step, long found, string player, int turn, ulong seed, string law, string? choice) => new(
        "ROS0431", Severity.Warning, at,
        $"In turn {turn} of a game that played itself, {player} did '{Prose.Clip(step, 80)}', and there {(found == 0 ? "was none" : found == 1 ? "was only 1" : $"were only {found}")}: a move takes what is there, and the turn goes on.",
        $"If it may not be done then, write a law with 'needs: {law}'{(choice is null ? "" : $", or choose one that is there, as in 'what: {choice}'")}; 'rostrum play' with '--seed {seed}' shows that game.");
}
