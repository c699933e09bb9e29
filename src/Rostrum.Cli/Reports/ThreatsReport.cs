using System.Collections.Immutable;
using Rostrum.Play;
using Rostrum.Play.Ending;

namespace Rostrum.Cli.Reports;

/// <summary>The answer of <c>threats --json</c>; <c>over</c> names the end that has come already, and is null where the game goes on.</summary>
internal sealed record ThreatsReport(int Format, string Game, string Position, ImmutableArray<string> Variants, string? Over, ImmutableArray<ThreatItem> Seats, ImmutableArray<string> Assumed)
{
    /// <summary>The threats as they are reported.</summary>
    public static ThreatsReport Of(GameTable table, string position, Threats threats) => new(
        ReportJson.Format, table.Sheet.Game, position, table.Sheet.VariantsOn, threats.Over, [.. threats.Seats.Select(t => ThreatItem.Of(t, table))], threats.Assumed);
}

/// <summary>What a seat can do if it is to move; <c>canEnd</c> is <c>yes</c>, <c>byChance</c>, <c>no</c> or <c>unknown</c>.</summary>
/// <param name="Seat">1-based.</param>
/// <param name="Player">Its name.</param>
/// <param name="CanEnd">Whether it can end the game.</param>
/// <param name="Line">One turn that does it; empty where none was found.</param>
/// <param name="End">The end that comes; null where none was found, and where the course is simply done.</param>
/// <param name="TurnsLeft">By seat, in order: the turns after that one; empty where none was found.</param>
/// <param name="ExtraTurns">How many extra turns of the same player it takes behind the next one; where none was found, how many were looked at.</param>
internal sealed record ThreatItem(int Seat, string Player, string CanEnd, ImmutableArray<string> Line, string? End, ImmutableArray<int> TurnsLeft, int ExtraTurns)
{
    /// <summary>A threat as it is reported.</summary>
    public static ThreatItem Of(SeatThreat threat, GameTable table) => new(
        threat.Seat + 1, table.NameOf(threat.Seat), Told(threat.CanEnd), threat.Line, threat.End, threat.TurnsLeft, threat.ExtraTurns);

    private static string Told(CanEnd can) => can switch
    {
        Rostrum.Play.Ending.CanEnd.Yes => "yes",
        Rostrum.Play.Ending.CanEnd.ByChance => "byChance",
        Rostrum.Play.Ending.CanEnd.No => "no",
        _ => "unknown",
    };
}
