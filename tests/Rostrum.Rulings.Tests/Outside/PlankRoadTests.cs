using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Testing;

namespace Rostrum.Rulings.Tests.Outside;

/// <summary>The demo game Plank Road against the check values that came with its rules.</summary>
/// <remarks>Source of every number: our own enumeration in the game's description, by two programs in two languages that agree and share no code with this one.</remarks>
public sealed class PlankRoadTests
{
    private static readonly int[] Lines = [30, 552, 9_312, 92_568];

    private static readonly int[] Distinct = [30, 552, 7_368, 48_744];

    [Theory]
    [InlineData("P1", 0, 0, 0, 0)]
    [InlineData("P1", 1, 11, 8, 14)]
    [InlineData("P2", 0, 18, 14, 18)]
    [InlineData("P2", 1, 8, 6, 11)]
    public void The_worked_examples_under_all_three_readings(string position, int seat, int walk, int span, int group)
    {
        Tally tally = Tally.Of(Opened(position), seat);

        string[] totals = [.. new[] { "walk", "span", "group" }.Select(r => $"{tally.Readings.Where(t => t.Name == r).Select(t => t.Total).Append(tally.Total).First().Certain}")];

        Assert.Equal([$"{walk}", $"{span}", $"{group}"], totals);
    }

    [Fact]
    public void No_reading_is_decided() => Assert.Equal(["walk", "span", "group"], Tally.Of(Opened("P1"), 1).Readings.Select(r => r.Name));

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Lines_of_play_and_positions(int turns) => Counted(turns);

    [Fact]
    [Trait("Category", "Slow")]
    public void Lines_of_play_and_positions_of_four_turns() => Counted(4);

    // Positions with the number of lines that lead to each.
    private static void Counted(int turns)
    {
        Dictionary<string, (Position Position, int Lines)> at = new() { [""] = (PlankRoadPlay.Start, 1) };
        for (int turn = 0; turn < turns; turn++)
        {
            at = at.Values.SelectMany(f => PlankRoadPlay.Next(f.Position).Select(p => (Position: p, f.Lines))).GroupBy(n => PlankRoadPlay.Key(n.Position))
                .ToDictionary(g => g.Key, g => (g.First().Position, g.Sum(n => n.Lines)));
        }

        Assert.Equal((Lines[turns - 1], Distinct[turns - 1]), (at.Values.Sum(p => p.Lines), at.Count));
    }

    private static Position Opened(string name)
    {
        Rostrum.Rulings.Games.Game game = ShippedGames.Open("plank-road");
        return game.Open(game.PositionText(name).Text!).Position!;
    }
}
