using CsCheck;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;

namespace Rostrum.Play.Tests.Agreement;

/// <summary>The two executors mean the same: every formula of every shipped game on random tables where everything is given.</summary>
public sealed class AgreementTests
{
    public static TheoryData<string, string, int> Games => new()
    {
        { "kiln-night", "", 2 },
        { "kiln-night", "Climbing Chamber", 3 },
        { "plank-road", "", 2 },
        { "traditional/cassino", "", 2 },
        { "traditional/dominoes", "", 2 },
        { "traditional/gin-rummy", "", 2 },
        { "traditional/go", "", 2 },
    };

    [Theory]
    [MemberData(nameof(Games))]
    public void Every_formula_of_a_shipped_game_means_the_same_in_play_as_in_rulings(string game, string variant, int seats) =>
        Agree(SheetReader.Read(ShippedGames.Folder($"games/{game}"), ShippedGames.Idioms, variant.Length == 0 ? [] : [variant]).Sheet!, seats, 60);

    [Fact]
    public void Every_formula_of_the_bench_games_means_the_same_in_play_as_in_rulings()
    {
        Agree(BenchGame.Sheet, 2, 100);
        Agree(SheetReader.Read(TableBench.Folder, BenchGame.Idioms, []).Sheet!, 2, 100);
    }

    private static void Agree(Sheet sheet, int seats, int tables)
    {
        var agreement = new Agreement(sheet, seats);

        RandomTable.Seeds.Sample(seed => Assert.Empty(agreement.On(seed).Take(5)), iter: tables, threads: 1);

        Assert.True(agreement.Compared > agreement.Open, $"Of {agreement.Questions} formulas {agreement.Compared} answers were compared, {agreement.Open} were open.");
    }
}
