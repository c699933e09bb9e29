using Rostrum.Play.Counting;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.Course;

/// <summary>How often a power may be used: in a game, a round, a turn. One player lays stones in a row of three from the left; the power lays one anywhere.</summary>
public sealed class PowerLimitTests
{
    // Worked out by hand. Without the power there is one line. With it, each turn may also take one of the free spaces that is not the leftmost.
    [Theory]
    [InlineData("", 1, 3)]
    [InlineData("", 2, 6)]
    [InlineData("limit: once a turn, ", 2, 6)]
    [InlineData("limit: once a round, ", 2, 6)]
    [InlineData("limit: once a game, ", 2, 4)]
    [InlineData("limit: 2 times a game, ", 2, 6)]
    public void A_power_is_offered_as_often_as_its_limit_says(string limit, int plies, int lines)
    {
        PlyCount last = GameTable.Of(Sheet(limit)).Count(plies).Last();

        Assert.Equal((UInt128)lines, last.Lines);
    }

    private static Sheets.Model.Sheet Sheet(string limit)
    {
        string text = $$$"""
            rule sheet: 1
            game: Row of three
            players: 1
            pieces: {stone: {count: 3}}
            boards: {row: {squares: 3 across 1 up}}
            turn: lay
            actions:
              lay: {phrase: lay on (spot), choose: {spot: a space in row where it is empty}, do: move a stone from supply to spot}
            laws:
              from the left: {binds: lay, needs: no(s in row where s is empty and order of s is less than order of spot)}
            powers:
              Leaper: {lifts: from the left, {{{limit}}}for: lay}
            end:
              full: {if: row is full, winner: nobody}
            """;
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("row", (SheetReader.FileName, text)), ShippedGames.Idioms, []);
        Assert.Empty(reading.Problems.Where(p => p.Severity == Severity.Error).Select(p => p.Message));
        return reading.Sheet!;
    }
}
