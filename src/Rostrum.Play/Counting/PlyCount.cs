using System.Collections.Immutable;

namespace Rostrum.Play.Counting;

/// <summary>What was counted at one ply: after so many turns.</summary>
/// <param name="Ply">How many turns were played.</param>
/// <param name="Lines">How many lines of play there are: sequences of turns that differ in a decision or in how chance came out.</param>
/// <param name="Distinct">How many positions they lead to that can be told apart; null where that was not counted.</param>
/// <param name="Ended">How many of the lines end here.</param>
/// <param name="Results">The lines and positions that end here, by who wins.</param>
public sealed record PlyCount(int Ply, UInt128 Lines, long? Distinct, UInt128 Ended, ImmutableArray<EndedCount> Results);

/// <summary>Lines and positions that end at a ply with one result.</summary>
/// <param name="Winners">The 0-based seats that win; empty for nobody.</param>
/// <param name="Lines">How many lines.</param>
/// <param name="Positions">How many positions; null where that was not counted.</param>
public sealed record EndedCount(ImmutableArray<int> Winners, UInt128 Lines, long? Positions);
