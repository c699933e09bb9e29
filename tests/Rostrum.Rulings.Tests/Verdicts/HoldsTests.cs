using Rostrum.Rulings.Games;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Verdicts;

/// <summary>What a board says that a space holds binds every action, without a law of its own.</summary>
public sealed class HoldsTests
{
    private const string Sheet = """
        rule sheet: 1
        game: Hooks
        players: 1
        pieces: {lantern: {count: 9}}
        signs: {l: lantern}
        boards: {wall: {squares: 3 across 1 up, holds: 2}}
        actions:
          hang: {phrase: hang (what) on (spot), choose: {what: one of supply, spot: a space in wall}, do: move what to spot}
        """;

    [Theory]
    [InlineData(". l .", "legal")]
    [InlineData(". 2l .", "illegal")]
    [InlineData(". 3l .", "illegal")]
    public void A_full_space_takes_nothing_more(string wall, string verdict) => Assert.Equal(verdict, On(wall).Ruling!.Verdict);

    [Fact]
    public void The_refusal_names_board_and_space()
    {
        Breach breach = Assert.Single(Assert.IsType<Ruling.Illegal>(On(". 2l .").Ruling).Breaches);

        Assert.Equal(("wall", "A space of 'wall' holds 2 things at the most.", "afterwards 3 things lie on B1"), (breach.Clause, breach.Says, breach.Because));
    }

    private static RulingAnswer On(string wall)
    {
        string position = $"wall: |\n  1 {wall}\n  / A B C\n";
        var game = new Game(GameFolder.InMemory("hooks", (SheetReader.FileName, Sheet), ("positions/p.yaml", position)), ShippedGames.Idioms);
        return Ruling.On(game.Open(new SourceText("positions/p.yaml", position)).Position!, "hang lantern on B1");
    }
}
