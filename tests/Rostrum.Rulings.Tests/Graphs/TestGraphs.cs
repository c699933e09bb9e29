using Rostrum.Rulings.Evaluation;

namespace Rostrum.Rulings.Tests.Graphs;

/// <summary>Graphs made without our boards: by offsets on a grid, by chance from a seed, and by their textbook definition.</summary>
internal static class TestGraphs
{
    private static readonly (int X, int Y)[] Sides = [(1, 0), (0, 1)];
    private static readonly (int X, int Y)[] SidesAndCorners = [(1, 0), (0, 1), (1, 1), (1, -1)];

    // A hex grid is a square grid with one diagonal of each square.
    private static readonly (int X, int Y)[] HexSides = [(1, 0), (0, 1), (1, -1)];

    /// <summary>Squares joined along their sides.</summary>
    public static Graph Squares(int across, int up) => Grid(Cells(across, up), Sides);

    /// <summary>Squares joined along their sides and at their corners.</summary>
    public static Graph Kings(int size) => Grid(Cells(size, size), SidesAndCorners);

    /// <summary>A board of hexes with the given number along each side.</summary>
    public static Graph Hexagon(int side) => Grid([.. Cells((2 * side) - 1, (2 * side) - 1).Where(c => Math.Abs(c.X + c.Y - (2 * side) + 2) < side)], HexSides);

    /// <summary>The corners of a cube of so many dimensions.</summary>
    public static Graph Cube(int dimensions) => Graph.Of(1 << dimensions, (i, j) => System.Numerics.BitOperations.PopCount((uint)(i ^ j)) == 1);

    /// <summary>So many elements in a ring.</summary>
    public static Graph Ring(int count) => Graph.Of(count, (i, j) => Math.Abs(i - j) is 1 || Math.Abs(i - j) == count - 1);

    /// <summary>A ring with one more element that is joined with all of it.</summary>
    public static Graph Wheel(int rim) => Graph.Of(rim + 1, (i, j) => i == rim || j == rim || Math.Abs(i - j) is 1 || Math.Abs(i - j) == rim - 1);

    /// <summary>Every two of so many elements joined.</summary>
    public static Graph Complete(int count) => Graph.Of(count, (_, _) => true);

    /// <summary>One element joined with each of the others, which are not joined.</summary>
    public static Graph Star(int leaves) => Graph.Of(leaves + 1, (i, j) => i == 0 || j == 0);

    /// <summary>Two sets, every one of the first joined with every one of the second.</summary>
    public static Graph Bipartite(int ones, int others) => Graph.Of(ones + others, (i, j) => i < ones != j < ones);

    /// <summary>The Petersen graph: two rings of five, the inner one joined in steps of two, and spokes.</summary>
    public static Graph Petersen() => Graph.Of(10, (i, j) =>
        (i < 5 && j < 5 && Math.Abs(i - j) is 1 or 4) || (i >= 5 && j >= 5 && Math.Abs(i - j) is 2 or 3) || Math.Abs(i - j) == 5);

    /// <summary>Three squares one in another, eight points each, joined along their sides and through the middles of the sides.</summary>
    public static Graph Morris() => Graph.Of(24, (i, j) =>
        i / 8 == j / 8 ? Math.Abs(i - j) is 1 or 7 : i % 8 == j % 8 && i % 2 == 1 && Math.Abs(i - j) == 8);

    /// <summary>Some squares or hexes of a grid, chosen by chance, or a graph whose joins are chosen by chance.</summary>
    public static Graph Random(Random random, int most) => random.Next(3) switch
    {
        0 => Grid(Some(random, Cells(4, 4), most), Sides),
        1 => Grid(Some(random, Cells(4, 4), most), HexSides),
        _ => ByChance(random, random.Next(1, most)),
    };

    /// <summary>So many cells of a grid of sides 8, chosen by chance.</summary>
    public static Graph Cut(Random random, bool isHex, int cells) => Grid(Some(random, Cells(8, 8), cells), isHex ? HexSides : Sides);

    private static Graph ByChance(Random random, int count)
    {
        int percent = random.Next(10, 60);
        bool[] joined = [.. Enumerable.Range(0, count * count).Select(_ => random.Next(100) < percent)];
        return Graph.Of(count, (i, j) => joined[(Math.Min(i, j) * count) + Math.Max(i, j)]);
    }

    private static (int X, int Y)[] Some(Random random, (int X, int Y)[] cells, int most)
    {
        random.Shuffle(cells);
        return cells[..Math.Min(most, cells.Length)];
    }

    private static (int X, int Y)[] Cells(int across, int up) => [.. Enumerable.Range(0, up).SelectMany(y => Enumerable.Range(0, across).Select(x => (x, y)))];

    private static Graph Grid((int X, int Y)[] cells, (int X, int Y)[] steps) =>
        Graph.Of(cells.Length, (i, j) => steps.Contains((cells[j].X - cells[i].X, cells[j].Y - cells[i].Y)) || steps.Contains((cells[i].X - cells[j].X, cells[i].Y - cells[j].Y)));
}
