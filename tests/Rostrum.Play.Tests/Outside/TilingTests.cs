using System.Globalization;
using Rostrum.Play.Counting;

namespace Rostrum.Play.Tests.Outside;

/// <summary>Ways to fill a board with straight pieces: the lines of a game for one in which each piece must cover the first free space, so that every filling is met
/// once.</summary>
/// <remarks>
/// Source of the squares: <c>placement_counts.csv</c> of the reference data, domino tilings of n x n (OEIS A004003), and P. Kasteleyn, Physica 27 (1961) 1209,
/// H. Temperley and M. Fisher, Philosophical Magazine 6 (1961) 1061, both from memory. Two rows of n are the Fibonacci numbers. Three rows of straight pieces of
/// three follow a(n) = a(n - 1) + a(n - 3), for a piece that stands leaves n - 1 columns and three that lie leave n - 3: worked out by hand.
/// </remarks>
public sealed class TilingTests
{
    [Theory]
    [InlineData(2, 2, 2, 2)]
    [InlineData(2, 3, 2, 3)]
    [InlineData(2, 4, 2, 5)]
    [InlineData(2, 5, 2, 8)]
    [InlineData(2, 9, 2, 55)]
    [InlineData(4, 4, 2, 36)]
    [InlineData(6, 6, 2, 6728)]
    [InlineData(3, 3, 3, 2)]
    [InlineData(3, 4, 3, 3)]
    [InlineData(3, 5, 3, 4)]
    [InlineData(3, 6, 3, 6)]
    [InlineData(3, 8, 3, 13)]
    [InlineData(3, 3, 2, 0)]
    public void A_board_is_filled_in_so_many_ways(int rows, int columns, int length, int fillings)
    {
        IEnumerable<PlyCount> counts = TableOf.Written(Sheet(rows, columns, length)).Count((rows * columns / length) + 1);

        Assert.Equal((UInt128)fillings, counts.SelectMany(c => c.Results).Where(r => r.Winners is [0]).Aggregate((UInt128)0, (sum, r) => sum + r.Lines));
    }

    private static string Sheet(int rows, int columns, int length) => string.Create(CultureInfo.InvariantCulture, $$$"""
        rule sheet: 1
        game: Full floor
        players: 1
        pieces: {plank: {count: {{{rows * columns / length}}}, shape: "{{{string.Join(' ', Enumerable.Repeat('.', length))}}}, rotated"}}
        boards: {floor: {squares: {{{columns}}} across {{{rows}}} up, holds: 1}}
        turn:
          - first possible of: [lay, end the game by stuck]
        actions:
          lay:
            phrase: lay (what) on (spots)
            choose: {what: a plank in supply, spots: "one of fits(what, floor) where all(s in spaces of it, s is empty)"}
            do: move what to spots
        laws:
          in order: {binds: lay, needs: "first of (floor where it is empty) is in spaces of spots"}
        end:
          full: {if: floor is full, winner: me}
          stuck: {winner: nobody}
        """);
}
