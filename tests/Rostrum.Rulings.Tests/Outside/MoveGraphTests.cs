using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Rulings.Tests.Reference;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Outside;

/// <summary>What a knight, a king and a step reach, as a sample sheet says it, against published numbers.</summary>
/// <remarks>Reference/move_graphs.csv (directed moves of a knight: OEIS A035008) and Reference/knight_distance_infinite_board.csv (OEIS A018837, A018838).</remarks>
public sealed class MoveGraphTests
{
    // The leap that a sheet can only list: a map of far more squares than the way needs, its corner at 4 to the left and below of the start.
    private const int Margin = 4;
    private const int Side = 18;

    public static TheoryData<string, int> Small => [.. Rows.Select(r => (Move: r[0], Side: ReferenceTable.Number(r[1]))).Where(r => r.Side <= 8)];

    public static TheoryData<string, int> Stepped => [.. Small.Select(r => r.Data).Where(r => r.Item1 != "knight")];

    private static string[][] Rows => ReferenceTable.Rows("move_graphs.csv");

    [Theory]
    [MemberData(nameof(Small))]
    public void Moves_from_square_to_square(string move, int side) => Assert.Equal(Published(move, side)[3], Points(move, side, "moves"));

    [Theory]
    [MemberData(nameof(Small))]
    public void A_board_that_hangs_together_is_one_part(string move, int side) => Assert.Equal(Published(move, side)[4] == "yes", Points(move, side, "parts") == "1");

    // On three squares a knight never reaches the middle, and its longest way is round the others.
    [Theory]
    [MemberData(nameof(Small))]
    public void The_greatest_shortest_way_is_the_diameter(string move, int side) => Assert.Equal(Published(move, side)[5] is { Length: > 0 } far ? far : "4", Points(move, side, "longest"));

    [Theory]
    [MemberData(nameof(Stepped))]
    public void The_greatest_distance_is_the_diameter(string move, int side) => Assert.Equal(Published(move, side)[5], Points(move, side, "diameter"));

    [Theory]
    [MemberData(nameof(Stepped))]
    public void The_least_of_the_greatest_distances_is_the_radius(string move, int side) => Assert.Equal(Published(move, side)[6], Points(move, side, "radius"));

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(8)]
    public void A_knight_on_a_board_without_end(int n)
    {
        Position empty = Game.Position(KnightMap(n), "{}");
        string[] published = ReferenceTable.Row("knight_distance_infinite_board.csv", $"{n}");

        Assert.Equal([published[1], published[2]], Tally.Of(empty, 0).Lines.Select(l => $"{l.Points.Certain}"));
    }

    private static string[] Published(string move, int side) => Rows.Single(r => r[0] == move && r[1] == $"{side}");

    private static string Points(string move, int side, string clause)
    {
        string text = TestFiles.Read("tests/Rostrum.Rulings.Tests/Samples/leapers.yaml");
        string[] variants = [.. new[] { move, $"board of {side}" }.Where(v => text.Contains($"\n  {v}:", StringComparison.Ordinal))];
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("leapers", (SheetReader.FileName, text)), ShippedGames.Idioms, variants);
        Assert.Empty(reading.Problems.Select(p => $"{p.At}: {p.Message}"));
        return $"{Tally.Of(Position.Blank(reading.Sheet!, "blank", 1), 0, new HashSet<string> { clause }).Lines.Single(l => l.Clause == clause).Points.Certain}";
    }

    private static Sheet KnightMap(int n)
    {
        (int X, int Y)[] squares = [.. Enumerable.Range(0, Side * Side).Select(i => (i % Side, i / Side))];
        string map = string.Concat(squares.Select(s => $"{Name(s)},\"{string.Join(", ", squares.Where(t => Math.Abs(t.X - s.X) * Math.Abs(t.Y - s.Y) == 2).Select(Name))}\"\n"));
        string sheet = $"""
            boards:
              map:
                file: map.csv
            score:
              straight: distance({Name((Margin, Margin))}, {Name((Margin + n, Margin))})
              slanting: distance({Name((Margin, Margin))}, {Name((Margin + n, Margin + n))})
            """;
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("knight", (SheetReader.FileName, sheet), ("map.csv", $"name,next to\n{map}")), ShippedGames.Idioms, []);
        Assert.Empty(reading.Problems.Where(p => p.Severity == Severity.Error).Select(p => $"{p.At}: {p.Message}"));
        return reading.Sheet!;
    }

    private static string Name((int X, int Y) square) => $"x{square.X}y{square.Y}";
}
