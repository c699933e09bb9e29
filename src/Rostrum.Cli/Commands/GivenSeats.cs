using System.Collections.Immutable;
using Rostrum.Rulings.Positions;

namespace Rostrum.Cli.Commands;

/// <summary>Finds the seats of which a position says anything.</summary>
internal static class GivenSeats
{
    /// <summary>0-based, in order; only the seat whose turn it is where nothing is said of any.</summary>
    public static ImmutableArray<int> Of(Position position)
    {
        ImmutableArray<int> given = [.. Enumerable.Range(0, position.Seats).Where(s => IsGiven(position, s))];
        return given.IsEmpty ? [position.Me] : given;
    }

    // What lies on the table for everybody has one layer and belongs to no seat.
    private static bool IsGiven(Position position, int seat)
    {
        bool boards = position.Sheet.Boards.Where((b, i) => b.Place.EachPlayer && position.Boards[i][seat].Any(s => s.IsGiven)).Any();
        bool places = position.Sheet.Places.Where((p, i) => p.Place.EachPlayer && position.Places[i][seat].Any(s => s.IsGiven)).Any();
        bool marks = position.Sheet.Marks.Where((m, i) => m.EachPlayer && position.Marks[i][seat] is not null).Any();
        return boards || places || marks;
    }
}
