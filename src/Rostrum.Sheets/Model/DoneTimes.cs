using System.Collections.Immutable;

namespace Rostrum.Sheets.Model;

/// <summary>The words for the times at which something was done: in formulas, and as keys of positions.</summary>
public static class DoneTimes
{
    /// <summary>Each time with its words, the latest first.</summary>
    public static ImmutableArray<(DoneWhen When, string Words)> All { get; } =
    [
        (DoneWhen.ThisTurn, "this turn"),
        (DoneWhen.TurnBefore, "the turn before"),
        (DoneWhen.ThisRound, "this round"),
        (DoneWhen.RoundBefore, "the round before"),
        (DoneWhen.Before, "before"),
    ];

    /// <summary>The time that words name; null where they name none.</summary>
    public static DoneWhen? Named(string words) => All.Where(t => t.Words == words).Select(t => (DoneWhen?)t.When).FirstOrDefault();
}
