using System.Text;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Loading;
using Rostrum.Text;

namespace Rostrum.Benchmarks;

/// <summary>A made-up board of 61 hexes, full, with ten scoring clauses of different sorts: groups, ways, neighbours, lines, areas, drawings, numbers.</summary>
internal static class HexField
{
    private const string Sheet = """
        rule sheet: 1
        game: Hex field
        players: 2
        sources:
          book: {title: Rulebook, pages: 9}
        pieces:
          stone: {each player: 40, attributes: {colour: [red, gold, blue]}}
        signs: {s: stone, r: red, g: gold, b: blue}
        cards:
          wish: {columns: {picture: drawing}, rows: {First wish: {picture: r g / ~ b r}}}
        boards:
          field:
            hexes: radius 4
            rows: row
            lines: {rising: slope, falling: slant}
            areas: {side: {far: a1 to a5 b1 to b6 c1 to c7, near: g1 to g7 h1 to h6 i1 to i5}}
            values: {toll: {e5: 7, d4 d5 e4 e6 f4 f5: 4}}
        words:
          step (space s, space t): s is next to t and colour of top of s is colour of top of t
        score:
          stones: {says: Each stone of yours scores 1., cite: book 1, points: count(my stones in field)}
          gold: {says: A gold stone scores 1 for each blue one beside it., cite: book 2, each: s in field where s shows my gold stone, points: count(n in neighbours of s where n shows a blue stone)}
          kinds: {says: A red stone scores 1 for each colour beside it., cite: book 2, each: s in field where s shows my red stone, points: different(n in neighbours of s, colour of top of n)}
          group: {says: The largest group of your stones scores 1 for each., cite: book 3, points: "largest(g in groups(s in field where s shows my stone, alike in owner of top of s), count(g))"}
          way: {says: The longest way of one colour scores 1 a space., cite: book 3, points: "longest way(s in field where s shows my stone, joined by step, counted as span)"}
          rows: {says: A row with three of your gold stones scores 5., cite: book 4, each: r in rows of field where count(my gold stones in r) is at least 3, points: 5}
          slopes: {says: Most of your stones in one slope score 1 each., cite: book 4, points: "largest(r in slopes of field, count(my stones in r))"}
          sides: {says: A side in which you have more stones than the other scores 6., cite: book 5, each: f in sides of field where count(my stones in f) is more than count(their stones in f), points: 6}
          toll: {says: A stone scores what is printed under it., cite: book 6, each: s in field where s shows my stone and toll of s is not nothing, points: toll of s}
          wish: {says: Each place of the drawing scores 3., cite: book 7, points: "3 times count(fits(picture of First wish, field, rotated))"}
        """;

    /// <summary>The full board.</summary>
    public static Position Position { get; } = Read();

    private static Position Read()
    {
        var folder = GameFolder.InMemory("hexes", (SheetReader.FileName, Sheet));
        var problems = new DiagnosticBag();
        PositionFile file = PositionReader.Read(Table.Sound(SheetReader.Read(folder, Table.Idioms, [])), new SourceText("full.yaml", Drawing()), problems);
        return file.Position ?? throw new InvalidOperationException(string.Join('\n', problems.InOrder().Select(p => $"{p.At}: {p.Message}")));
    }

    // Colours and owners by a fixed mixture.
    private static string Drawing()
    {
        var text = new StringBuilder("field: |\n");
        int cell = 0;
        for (int row = 0; row < 9; row++)
        {
            text.Append("  ").Append((char)('a' + row)).Append(new string(' ', 1 + (2 * Math.Abs(row - 4))));
            for (int i = 0; i < 9 - Math.Abs(row - 4); i++, cell++)
            {
                text.Append("rgb"[(cell * 7 / 3) % 3]).Append(1 + ((cell * cell / 5) % 2)).Append("  ");
            }

            text.Append('\n');
        }

        return text.Append("turn of: seat 1\n").ToString();
    }
}
