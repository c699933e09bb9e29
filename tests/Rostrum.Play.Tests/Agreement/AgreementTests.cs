using CsCheck;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

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
        Agree(Read(TableBench.SheetText.Replace("count: 40, attributes", "count of each land: {wood: 15, lake: 15, hill: 10}, attributes", StringComparison.Ordinal)), 2, 100);
    }

    [Fact]
    public void Every_formula_of_marks_dice_and_cards_means_the_same_in_play_as_in_rulings() => Agree(Read(OddSheet), 2, 300);

    [Fact]
    public void Every_formula_of_pieces_larger_than_a_space_means_the_same_in_play_as_in_rulings() =>
        Agree(Read(TestFiles.Read("tests/Rostrum.Play.Tests/Sheets/paving-yard.yaml")), 2, 400);

    // What no shipped game has: marks of spaces, faces, decks, copies of cards, owners that change, values that are numerals.
    private const string OddSheet = """
        rule sheet: 1
        game: Odd
        players: 2
        pieces:
          flag: {count: 6, states: {keeper: players, side: [plain, 5]}}
          crate: {attributes: {wood: [oak, ash], weight: [1, 2, 3]}, count of each wood: {1: 3, 2: 2, 3: 1}}
        dice:
          red die: {plural: red dice, count: 3, faces: 1 to 6}
          odd die: {plural: odd dice, count: 2, faces: 1 2 3 star}
        cards:
          ticket:
            attributes: {fare: [1, 4]}
            columns: {pay: number, good: condition}
            rows:
              Short trip: {fare: 1, pay: 2, good: "count(crates in yard) is at least 2", count: 3}
              Long trip: {fare: 4, pay: 5, good: "red most is 3", count: 1}
        boards:
          yard: {squares: 4 across 3 up, columns: lane A to D, rows: row 1 to 3, spaces: bay, neighbours: sides and corners}
        places:
          tray: {heap of: [red die, odd die]}
          queue: {deck of: ticket}
          hand: {hand of: ticket, of: each player}
        marks:
          dust: {holds: 0 to 9, of: each bay}
          heading: {holds: bay, of: each player}
          calm: {holds: yes or no}
        words:
          red most: largest(d in red dice in tray, face of d)
          heavy (crate c): weight of c is at least 2
          kept (flag t, flag u): keeper of t is keeper of u and owner of t is nothing and (side of t is 5 or side of u is at least 4)
          dusty (bay b): dust of b is more than 4
        """;

    private static Sheet Read(string text)
    {
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("odd", (SheetReader.FileName, text)), BenchGame.Idioms, []);
        Assert.Empty(reading.Problems.Where(p => p.Severity == Severity.Error).Select(p => $"{p.At}: {p.Message} {p.Hint}"));
        return reading.Sheet!;
    }

    private static void Agree(Sheet sheet, int seats, int tables)
    {
        var agreement = new Agreement(sheet, seats);

        RandomTable.Seeds.Hold(seed => Assert.Empty(agreement.On(seed).Take(5)), cases: tables);

        Assert.True(agreement.Compared > agreement.Open, $"Of {agreement.Questions} formulas {agreement.Compared} answers were compared, {agreement.Open} were open.");
    }
}
