using System.Collections.Immutable;

namespace Rostrum.Play.Ending;

/// <summary>Who can end the game with the next turn.</summary>
/// <param name="Over">The end that has come already, so that nobody has a turn; null where the game goes on.</param>
/// <param name="Seats">One answer for each seat, in order; empty where the game is over.</param>
/// <param name="Assumed">What the position does not tell and play took for granted, in sentences.</param>
public sealed record Threats(string? Over, ImmutableArray<SeatThreat> Seats, ImmutableArray<string> Assumed);

/// <summary>Whether a seat, if it is to move, can end the game with its next turn.</summary>
/// <param name="Seat">0-based.</param>
/// <param name="CanEnd">Whether it can, extra turns before anybody else moves included.</param>
/// <param name="Line">One turn after which an end has come, with the extra turns behind it: the phrases of what is decided, and how chance comes out; empty where none was found.</param>
/// <param name="End">The name of that end; null where none was found, and where the course is simply done.</param>
/// <param name="TurnsLeft">By seat: how many turns it still has after that; empty where none was found.</param>
public sealed record SeatThreat(int Seat, CanEnd CanEnd, ImmutableArray<string> Line, string? End, ImmutableArray<int> TurnsLeft)
{
    /// <summary>How many extra turns of the same player it takes behind the next turn; where no end was found, how many were looked at.</summary>
    public int ExtraTurns { get; init; }
}

/// <summary>Whether a seat can end the game with its next turn.</summary>
public enum CanEnd
{
    /// <summary>Whatever it decides, the game goes on.</summary>
    No,

    /// <summary>The search was given up before it had looked at every turn.</summary>
    Unknown,

    /// <summary>Only if chance, or what others decide in that turn, comes out so.</summary>
    ByChance,

    /// <summary>However chance comes out.</summary>
    Yes,
}
