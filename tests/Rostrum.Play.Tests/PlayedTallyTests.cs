using Rostrum.Play.Players;
using Rostrum.Rulings.Tallies;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;

namespace Rostrum.Play.Tests;

/// <summary>The totals of games that played themselves, against the tally that gives reasons: two evaluators that share no code.</summary>
public sealed class PlayedTallyTests
{
    private const int Seeds = 5;

    public static TheoryData<string> Played => [.. ShippedGames.Names.Where(n => SheetOf(n) is { Score.IsEmpty: false } sheet && sheet.Blocks.Any(b => b.Name is "turn" or "course"))];

    [Theory]
    [MemberData(nameof(Played))]
    public void Totals_of_a_game_are_those_of_its_tally(string name)
    {
        var table = GameTable.Of(SheetOf(name));
        for (ulong seed = 1; seed <= Seeds; seed++)
        {
            var game = new PlayedGame(table, [.. Enumerable.Repeat(PlayerKind.Random, table.Seats)], seed);
            Assert.NotEmpty(game.Moves().ToArray());

            long?[] told = [.. Enumerable.Range(0, table.Seats).Select(s => Tally.Of(game.Position, s).Lines.Sum(l => l.Points.Certain))];

            Assert.Equal(game.Result!.Seats.Select(s => (long?)s.Total), told);
        }
    }

    [Fact]
    public void Every_game_that_scores_is_among_them() => Assert.True(Played.Count >= 8);

    private static Sheet SheetOf(string name) => SheetReader.Read(ShippedGames.Folder($"games/{name}"), ShippedGames.Idioms, []).Sheet!;
}
