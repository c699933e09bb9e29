using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Play;

/// <summary>Something that happened in a game, told in one line.</summary>
/// <param name="Turn">The number of the turn, from 1; 0 before the first.</param>
/// <param name="Seat">Who decided, 0-based; null for chance.</param>
/// <param name="Player">The name of who decided; null for chance.</param>
/// <param name="Words">The phrase of the decision, or how chance came out.</param>
/// <param name="Options">How many legal options there were, or how many outcomes.</param>
/// <param name="Cite">Where the rules give the action; or the end that came; null for chance and where the sheet names no page.</param>
public sealed record PlayedMove(int Turn, int? Seat, string? Player, string Words, int Options, Citation? Cite)
{
    /// <summary>What was declined or ended, in words, where the phrase is only <c>no</c> or <c>done</c>; null for all others.</summary>
    public string? About { get; init; }

    /// <summary>The end that came, where a step of the sheet brought it: that is nothing that a player says; null for all others.</summary>
    public EndRule? End { get; init; }
}

/// <summary>How a game came out.</summary>
/// <param name="End">The name of the end that came; null where the course was simply done.</param>
/// <param name="Says">What the sheet says of that end; null for none.</param>
/// <param name="Cite">Where the rules give it.</param>
/// <param name="Seats">By seat: name, total, rank from 1, whether it wins.</param>
/// <param name="TieBreak">The tie-break that decided, in the author's words; null where none was needed.</param>
/// <param name="Turns">How many turns were played.</param>
public sealed record GameResult(string? End, string? Says, Citation? Cite, ImmutableArray<SeatResult> Seats, string? TieBreak, int Turns);

/// <summary>How a game came out for one seat.</summary>
/// <param name="Seat">0-based.</param>
/// <param name="Player">Its name.</param>
/// <param name="Total">Its points; null where the sheet scores nothing.</param>
/// <param name="Rank">1 for the first; equal ones share a rank.</param>
/// <param name="Wins">True for a winner.</param>
public sealed record SeatResult(int Seat, string Player, int? Total, int Rank, bool Wins);
