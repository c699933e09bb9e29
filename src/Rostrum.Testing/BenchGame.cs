using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Testing;

/// <summary>The bench game: the small sheet and position of which the table of operations, the idiom files and the pages of
/// <c>docs/diagnostics</c> speak, read through the real loader.</summary>
public static class BenchGame
{
    /// <summary>The name of its one position.</summary>
    public const string PositionName = "bench";

    /// <summary>The sheet: a field of 3 by 3 for each of two players, ware, sticks, orders, a market, dice, and the action <c>lay</c>.</summary>
    public const string SheetText = """
        rule sheet: 1
        game: Bench
        players: 2
        sources:
          book: {title: Rulebook, printing: first, pages: 4}
        pieces:
          ware:
            plural: ware
            attributes: {form: [bowl, jug, plate, lamp], glaze: [ash, iron, copper]}
            states: {wear: [whole, cracked]}
            count of each glaze: {bowl: 4, jug: 4, plate: 4, lamp: 4}
          stick: {count: 30, never: [twig]}
        dice:
          fire die: {plural: fire dice, count: 3, faces: 1 2 3 4 5 crescent}
          ice die: {plural: ice dice, count: 1, faces: 1 to 6}
        cards:
          order:
            columns: {picture: drawing, pay: number}
            rows:
              First order:
                pay: 3
                picture: |
                  | [j]
                  | p
              Second order:
                pay: 2
                picture: |
                  | l l
        signs: {b: bowl, j: jug, p: plate, l: lamp, a: ash, i: iron, c: copper, "!": cracked}
        boards:
          field:
            of: each player
            squares: 3 across 3 up
            stands: upright
            columns: bay A to C
            rows: tier 1 to 3
            spaces: shelf
            holds: 1 ware
        places:
          sticks: {heap of: stick, of: each player}
          orders: {heap of: order, of: each player}
          shards: {heap of: ware, of: each player}
          tray: {heap of: [fire die, ice die], of: each player}
          market: {row of: 3, slots: stall, holds: ware and sticks}
        marks:
          coins: {holds: 0 to 20, of: each player}
          promise: {holds: 0 to 20, of: each player}
        words:
          touching (shelf s, shelf t): s is next to t
          clash (ware v, ware w): (v is copper and w is ash) or (v is ash and w is copper)
          set worth (set of ware w): 5 if count(w) is 2 and different(v in w, form of v) is 1 otherwise 0
          cost (ware w): 3 if w is a jug otherwise 1
          filled (order c): any(fits(picture of c, my field))
        tables:
          run worth: {1: 1, 2: 3, 3: 6}
          ladder: {0: 0, 1: 2, 2: 5, 3: 9, beyond: last}
        actions:
          lay:
            phrase: lay (what) on (spot)
            choose:
              what: a ware in market
              spot: a shelf in my field
            do: move what to spot
          trade:
            phrase: trade (pair)
            choose: {pair: 2 shelves in my field where it is not empty}
            do: swap first of pair and last of pair
        laws:
          free shelf: {says: Ware goes on an empty shelf., cite: book 2, binds: lay, needs: spot is empty}
        score:
          jugs: {says: A jug scores 2 points., cite: book 3, each: s in my field where s shows a jug, points: 2}
          lamps:
            says: A lamp scores its tier.
            cite: book 3
            each: s in my field where s shows a lamp
            readings:
              from the floor: {points: order of tier of s}
              from the top: {points: 4 - order of tier of s}
        variants:
          Steps:
            cite: book 4
            boards:
              field:
                squares: removed
                columns: bay
                rows: tier
                drawn: |
                  3 - - .
                  2 - . .
                  1 . . .
                  / A B C
        facts:
          sticks to start: {is: 4, cite: book 1}
          start player: {is: Black, cite: book 1}
        """;

    /// <summary>The position on which the examples of the table of operations give what the table says.</summary>
    public const string PositionText = """
        seat 1:
          field: |
            3 li .  .
            2 ji bi .
            1 pa jc bc
            / A  B  C
          sticks: 4
          orders: [First order]
          shards: nothing
        market: [iron bowl, ash jug, nothing]
        turn of: seat 1
        """;

    /// <summary>The files of the game.</summary>
    public static GameFolder Folder { get; } = With(PositionText);

    /// <summary>The idiom library of the repository.</summary>
    public static IdiomLibrary Idioms { get; } =
        IdiomLibrary.Read(GameFolder.InMemory("idioms", [.. TestFiles.In("idioms", "*.yaml").Select(f => (f["idioms/".Length..], TestFiles.Read(f)))]), new DiagnosticBag());

    /// <summary>The sheet, read with the idiom library.</summary>
    public static SheetReading Reading { get; } = SheetReader.Read(Folder, Idioms, []);

    /// <summary>The sheet.</summary>
    public static Sheet Sheet => Reading.Sheet!;

    /// <summary>The position.</summary>
    public static Position Position { get; } = Read(PositionText).Position!;

    /// <summary>The game with its sheet and one position, <see cref="PositionName"/>.</summary>
    public static Game Game => new(Folder, Idioms);

    /// <summary>The game's files with another text of the position.</summary>
    public static GameFolder With(string position) =>
        GameFolder.InMemory(PositionName, (SheetReader.FileName, SheetText), ($"positions/{PositionName}.yaml", position));

    /// <summary>The bench position with another field.</summary>
    /// <param name="field">A drawing on one line, from the top row down: <c>. . . / ja . . / pa . .</c>.</param>
    /// <param name="mine">What seat 1 has instead of four sticks, an order and no shards, or beside them: <c>sticks</c> and <c>7</c>.</param>
    /// <param name="theirs">What seat 2 has; a <c>field</c> is drawn on one line.</param>
    /// <returns>The text of the position.</returns>
    public static string PositionWith(string field, IReadOnlyList<(string Place, string Holds)> mine, IReadOnlyList<(string Place, string Holds)> theirs)
    {
        (string, string)[] usual = [("sticks", "4"), ("orders", "[First order]"), ("shards", "nothing")];
        IEnumerable<(string, string)> own = usual.Where(u => !mine.Any(m => m.Place == u.Item1)).Concat(mine).Prepend(("field", field));
        string other = theirs.Count == 0 ? "" : $"seat 2:\n{Lines(theirs)}";
        return $"seat 1:\n{Lines(own)}{other}market: [iron bowl, ash jug, nothing]\nturn of: seat 1\n";
    }

    private static string Lines(IEnumerable<(string Place, string Holds)> holdings) =>
        string.Concat(holdings.Select(h => h.Place == "field" ? $"  field: |\n{Drawn(h.Holds, 4)}\n    / A B C\n" : $"  {h.Place}: {h.Holds}\n"));

    // A drawing on one line as rows with their labels.
    private static string Drawn(string drawing, int indent)
    {
        string[] rows = drawing.Split('/');
        return string.Join('\n', rows.Select((row, i) => $"{new string(' ', indent)}{rows.Length - i} {row.Trim()}"));
    }

    /// <summary>Reads a position of the bench game, with the variants that it names.</summary>
    /// <param name="text">The text of its file.</param>
    public static OpenedPosition Read(string text) => Game.Open(new SourceText($"positions/{PositionName}.yaml", text));
}
