using System.Diagnostics;
using System.Globalization;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Benchmarks;

/// <summary>How the time of each operation over boards and sets grows with their size, up to its limit: processor time of a tally of one clause.</summary>
internal static class Growth
{
    private const int Rounds = 5;
    private static readonly int[] Sides = [3, 4, 5, 6, 7, 8];
    private static readonly int[] WideSides = [4, 8, 12, 16, 20];

    private static readonly (string Name, string Points, int[] Sides)[] OnBoards =
    [
        ("distances to a corner", "sum(s in my field, distance(s, first of spaces of my field))", WideSides),
        ("distance by leaps of 2 and 1", "distance(first of spaces of my field, last of spaces of my field, joined by leap)", WideSides),
        ("straights of three", "count(straights(my field, 3))", WideSides),
        ("groups", "count(groups(my field, joined by touching))", WideSides),
        ("group", "longest way(my field, joined by touching, counted as group)", WideSides),
        ("span", "longest way(my field, joined by touching, counted as span)", WideSides),
        ("walk, full board", "longest way(my field, joined by touching, counted as walk)", Sides),
        ("walk, three in four spaces", "longest way(s in my field where not hole(s), joined by touching, counted as walk)", Sides),
        ("bare, full board", "longest way(my field, joined by touching, counted as bare)", Sides),
        ("bare, three in four spaces", "longest way(s in my field where not hole(s), joined by touching, counted as bare)", Sides),
        ("walk by leaps of 2 and 1", "longest way(my field, joined by leap, counted as walk)", Sides),
        ("bare by leaps of 2 and 1", "longest way(my field, joined by leap, counted as bare)", Sides),
        ("most pairs", "most pairs(my field, my other, joined by linked)", [4, 8, 12, 14]),
    ];

    private static readonly (string Name, string Worth, int Symbols, int[] Cards)[] OnCards =
    [
        ("best split, sets of three, 6 symbols", "trio", 6, [6, 12, 18, 24]),
        ("best split, sets of at most four, 16 sorts", "fours", 4, [6, 12, 18, 24]),
        ("best split, sets of at most four, 24 sorts", "fours", 6, [6, 12, 18, 24]),
        ("best split, sets of any size", "broad", 5, [6, 9, 12, 15]),
    ];

    /// <summary>Measures everything and writes a table: least and median of the rounds in milliseconds, and a bar that grows by one for each doubling.</summary>
    public static void Run(TextWriter output)
    {
        output.WriteLine("| what | size | answer | least ms | median ms | |");
        output.WriteLine("| --- | --- | --- | --- | --- | --- |");
        foreach ((string name, string points, int[] sides) in OnBoards)
        {
            foreach (int side in sides)
            {
                Measure(output, name, side * side, BoardSheet(side, points), "seat 1: {}\nturn of: seat 1\n");
            }
        }

        foreach (int side in WideSides)
        {
            Measure(output, "fits of three squares, turned and mirrored", side * side, DrawingSheet(side), FullBoard(side));
        }

        foreach ((string name, string worth, int symbols, int[] cards) in OnCards)
        {
            foreach (int count in cards)
            {
                Measure(output, name, count, CardSheet(count, symbols, worth), $"seat 1:\n  badges: [{string.Join(", ", Enumerable.Range(1, count).Select(i => $"Badge {i}"))}]\nturn of: seat 1\n");
            }
        }
    }

    private static void Measure(TextWriter output, string name, int size, string sheet, string position)
    {
        Position table = Read(sheet, position);
        Points points = Tally.Of(table, 0).Lines[0].Points;
        double[] rounds = [.. Enumerable.Range(0, Rounds).Select(_ => Milliseconds(() => Tally.Of(table, 0))).Order()];
        string bar = new('▇', Math.Max(1, (int)Math.Log2(Math.Max(1, rounds[0] * 50))));
        output.WriteLine($"| {name} | {size} | {points.InWords}{(points.IsCertain ? "" : " (refused)")} | {Say(rounds[0])} | {Say(rounds[Rounds / 2])} | {bar} |");
        output.Flush();
    }

    // Repeated until it takes long enough to be seen by the clock.
    private static double Milliseconds(Action act)
    {
        using Process self = Process.GetCurrentProcess();
        TimeSpan before = self.TotalProcessorTime;
        for (int times = 1; ; times++)
        {
            act();
            self.Refresh();
            double spent = (self.TotalProcessorTime - before).TotalMilliseconds;
            if (spent > 60)
            {
                return spent / times;
            }
        }
    }

    private static Position Read(string sheet, string position)
    {
        var problems = new DiagnosticBag();
        Sheet read = Table.Sound(SheetReader.Read(GameFolder.InMemory("growth", ("sheet.yaml", sheet)), IdiomLibrary.Empty, []));
        return PositionReader.Read(read, new SourceText("growth.yaml", position), problems).Position
            ?? throw new InvalidOperationException(string.Join('\n', problems.InOrder().Select(p => p.Message)));
    }

    private static string BoardSheet(int side, string points) => $$"""
        boards:
          field: {of: each player, squares: {{side}} across {{side}} up, columns: bay, rows: tier, spaces: shelf}
          other: {of: each player, squares: {{side}} across {{side}} up, columns: lane, rows: level, spaces: shelf}
        words:
          touching (shelf s, shelf t): s is next to t
          hole (shelf s): order of s - 4 times down(order of s, by 4) is 1
          leap (shelf s, shelf t): difference(order of bay of s, order of bay of t) times difference(order of tier of s, order of tier of t) is 2
          linked (shelf s, shelf t): difference(order of s, order of t) is at most 1
        score:
          measured: {{points}}
        """;

    private static string DrawingSheet(int side) => $$"""
        pieces:
          stone: {count: 999}
        signs: {x: stone}
        cards:
          wish:
            columns: {picture: drawing}
            rows:
              First wish:
                picture: x x / - x
        boards:
          field:
            of: each player
            squares: {{side}} across {{side}} up
        score:
          measured:
            points: count(fits(picture of First wish, my field, rotated, mirrored))
        """;

    private static string FullBoard(int side) =>
        $"seat 1:\n  field: |\n{string.Concat(Enumerable.Range(0, side).Select(_ => $"    |{string.Concat(Enumerable.Repeat(" x", side))}\n"))}turn of: seat 1\n";

    private static string CardSheet(int cards, int symbols, string worth) => $$"""
        cards:
          badge:
            attributes: {symbol: [sun, moon, star, leaf, drop, bird], colour: [red, blue, green, white]}
            rows:
        {{string.Join('\n', Enumerable.Range(0, cards).Select(i => $"      Badge {i + 1}: {{symbol: {"sun moon star leaf drop bird".Split(' ')[i % symbols]}, colour: {"red blue green white".Split(' ')[i / symbols % 4]}}}"))}}
        places:
          badges: {heap of: badge, of: each player}
        words:
          symbol count (set of badge w): different(b in w, symbol of b)
          colour count (set of badge w): different(b in w, colour of b)
          trio (set of badge w): 0 if count(w) is not 3 otherwise (5 if symbol count(w) is 3 otherwise (4 if symbol count(w) is 1 otherwise 0))
          fours (set of badge w): 0 if count(w) is at least 5 otherwise (2 times count(w) - 1 if symbol count(w) is count(w) and colour count(w) is count(w) otherwise 0)
          broad (set of badge w): symbol count(w) times colour count(w)
        score:
          measured: best split(my badges, worth {{worth}})
        """;

    private static string Say(double value) => value.ToString(value < 10 ? "0.00" : "N0", CultureInfo.InvariantCulture);
}
