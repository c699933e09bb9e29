using System.Text;
using Rostrum.Text;

namespace Rostrum.Benchmarks;

/// <summary>A sheet of a thousand clauses and cards, such as a large game with all its modules would have: made, not written.</summary>
internal static class LargeSheet
{
    /// <summary>How many scoring clauses, half of them from idioms.</summary>
    public const int Scores = 200;

    /// <summary>How many laws.</summary>
    public const int Laws = 200;

    /// <summary>How many words.</summary>
    public const int Words = 100;

    /// <summary>How many cards, each with a drawing or a condition.</summary>
    public const int Cards = 500;

    private const string Head = """
        rule sheet: 1
        game: A large game
        players: 1 to 4
        sources:
          book: {title: Rulebook, pages: 99, rank: 1}
        pieces:
          ware:
            plural: ware
            attributes:
              form: [bowl, jug, plate, lamp]
              glaze: [ash, iron, copper]
            count of each glaze: {bowl: 8, jug: 6, plate: 6, lamp: 4}
        signs: {b: bowl, j: jug, p: plate, l: lamp, a: ash, i: iron, c: copper}
        boards:
          field: {of: each player, spaces: shelf, holds: 1 ware, stands: upright, squares: 8 across 8 up, columns: bay, rows: tier}
        places:
          carried: {heap of: ware, of: each player}
          accepted: {heap of: task, of: each player}
        cards:
          task:
            file: tasks.csv
            columns: {worth: number, picture: drawing, asks: condition, cite: source}
        actions:
          place:
            phrase: place (what) on (spot)
            choose:
              what: a ware in my carried
              spot: a shelf in my field where it is empty
            do: move what to spot

        """;

    private static readonly string[] Forms = ["bowl", "jug", "plate", "lamp"];
    private static readonly string[] Glazes = ["ash", "iron", "copper"];

    /// <summary>The folder of the game.</summary>
    public static GameFolder Folder { get; } = GameFolder.InMemory("large", ("sheet.yaml", Sheet()), ("tasks.csv", Tasks()));

    /// <summary>The folder of a game of a thousand cards, each with a drawing of four squares, and the clause that scores them.</summary>
    public static GameFolder OfCards { get; } = GameFolder.InMemory("cards", ("sheet.yaml", Head + DrawingScore), ("tasks.csv", Drawings()));

    private const string DrawingScore = """
        score:
          tasks: {cite: book 1, each: t in my accepted where any(fits(picture of t, my field, rotated, mirrored)), points: worth of t}

        """;

    private static string Drawings()
    {
        var text = new StringBuilder("name,worth,picture,asks,cite\n");
        Lines(text, 2 * Cards, i => $"Task {i},{2 + (i % 8)},{Forms[i % 4][0]}{Glazes[i % 3][0]} . / {Forms[(i / 4) % 4][0]} {Glazes[(i / 3) % 3][0]} / - {Forms[(i / 7) % 4][0]},,book {1 + (i % 99)}\n");
        return text.ToString();
    }

    /// <summary>Writes the folder of a thousand cards.</summary>
    public static void WriteCards(string folder)
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "sheet.yaml"), Head + DrawingScore);
        File.WriteAllText(Path.Combine(folder, "tasks.csv"), Drawings());
    }

    /// <summary>Writes the game's two files into a folder, which is made where it is missing.</summary>
    public static void Write(string folder)
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "sheet.yaml"), Sheet());
        File.WriteAllText(Path.Combine(folder, "tasks.csv"), Tasks());
    }

    private static string Sheet()
    {
        var text = new StringBuilder(Head);
        text.Append("words:\n");
        Lines(text, Words, i => $"  apart {Letters(i)} (shelf s, shelf t): distance(s, t) is at least {1 + (i % 4)} and not (s shows a {Forms[i % 4]} and t shows a {Glazes[i % 3]} ware)\n");
        text.Append("laws:\n");
        Lines(text, Laws, i => $"""
              law {i}:
                says: A {Glazes[i % 3]} {Forms[i % 4]} keeps away from {Forms[(i + 1) % 4]}s, as rule {i} asks.
                cite: book {1 + (i % 99)}
                binds: place
                forbids: what is a {Glazes[i % 3]} {Forms[i % 4]} and any(s in neighbours of spot where s shows a {Forms[(i + 1) % 4]} and not (apart {Letters(i % Words)}(s, spot)))

            """);
        text.Append("score:\n");
        Lines(text, Scores, i => i % 2 == 0
            ? $"""
                  clause {i}:
                    says: A {Forms[i / 2 % 4]} scores one point for each different glaze among its neighbours.
                    cite: book {1 + (i % 99)}
                    each: s in my field where s shows a {Forms[i / 2 % 4]}
                    points: different(n in neighbours of s where n shows a {Glazes[i % 3]} ware, glaze of top of n)

                """
            : $"  clause {i}: {{cite: book {1 + (i % 99)}, idiom: different neighbours, of: {Forms[i / 2 % 4]}, sees: ware, by: glaze}}\n");
        return text.ToString();
    }

    private static string Tasks()
    {
        var text = new StringBuilder("name,worth,picture,asks,cite\n");
        Lines(text, Cards, i => i % 2 == 0
            ? $"Task {i},{2 + (i % 8)},{Forms[i / 2 % 4][0]}{Glazes[i % 3][0]} . / {Forms[(i / 2 + 1) % 4][0]} {Glazes[(i + 1) % 3][0]},,book {1 + (i % 99)}\n"
            : $"Task {i},{2 + (i % 8)},,count({Glazes[i % 3]} {Forms[i / 2 % 4]}s in my field) is at least {1 + (i % 5)},book {1 + (i % 99)}\n");
        return text.ToString();
    }

    private static void Lines(StringBuilder text, int count, Func<int, string> line)
    {
        for (int i = 0; i < count; i++)
        {
            text.Append(line(i));
        }
    }

    // Three letters that are no word of the language.
    private static string Letters(int number) => $"Q{(char)('a' + (number / 26))}{(char)('a' + (number % 26))}";
}
