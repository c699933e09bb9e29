using System.Collections.Immutable;
using Rostrum.Play;
using Rostrum.Rulings.Tallies;
using Rostrum.Sheets.Model;

namespace Rostrum.Cli.Reports;

/// <summary>The answer of <c>play --json</c>; <c>tallies</c> is empty unless they are asked for.</summary>
internal sealed record PlayReport(int Format, string Game, ImmutableArray<string> Variants, ulong Seed, ImmutableArray<MoveItem> Moves, ResultItem Result, ImmutableArray<SeatItem> Tallies)
{
    /// <summary>A game as it is reported.</summary>
    public static PlayReport Of(GameTable table, ulong seed, IEnumerable<PlayedMove> moves, GameResult result, ImmutableArray<Tally> tallies) => new(
        ReportJson.Format, table.Sheet.Game, table.Sheet.VariantsOn, seed,
        [.. moves.Select(m => new MoveItem(m.Turn, m.Seat + 1, m.Player ?? "chance", m.Words, m.Options, m.End?.Name, Citation.Tell(m.Cite)))],
        new ResultItem(result.End, Citation.Tell(result.Cite), result.Turns, result.TieBreak, [.. result.Seats.Select(s => new SeatResultItem(s.Seat + 1, s.Player, s.Total, s.Rank, s.Wins))]),
        [.. tallies.Select(SeatItem.Of)]);
}

/// <summary>A move; <c>seat</c> is null for chance. <c>end</c> names the end that a step of the sheet brought, which is nothing that a player says; null for all others.</summary>
internal sealed record MoveItem(int Turn, int? Seat, string Player, string Words, int Options, string? End, string Cite);

/// <summary>How the game came out.</summary>
internal sealed record ResultItem(string? End, string Cite, int Turns, string? TieBreak, ImmutableArray<SeatResultItem> Seats);

/// <summary>How it came out for a seat.</summary>
internal sealed record SeatResultItem(int Seat, string Player, int? Total, int Rank, bool Wins);
