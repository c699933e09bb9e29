using System.Collections.Immutable;
using Rostrum.Rulings.Boards;
using Rostrum.Rulings.Tests.Reference;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Boards;

/// <summary>Shapes of n hexes that hang together, laid by our code and counted against published counts. They are grown here in half steps and
/// rows: neighbours are two half steps on, or one half step in the next row.</summary>
public sealed class PolyhexTests
{
    private const int Largest = 6;

    private static readonly (int Column, int Row)[] Steps = [(2, 0), (-2, 0), (1, 1), (-1, 1), (1, -1), (-1, -1)];

    // A shape is written as its cells in order, moved to the corner: "0,0 2,0".
    private static readonly string[][] Fixed = Grow();

    private static readonly SheetBoard[] Boards = [.. Enumerable.Range(0, Largest + 1).Select(n => SheetBoard.Of($"hexes: {n + 1} across {n + 1} up"))];

    public static TheoryData<int> Sizes => [.. Enumerable.Range(1, Largest)];

    // Source: polyhexes.csv, OEIS A001207 (fixed).
    [Theory]
    [MemberData(nameof(Sizes))]
    public void Fixed_shapes_as_many_as_published(int cells) => Assert.Equal(Published(cells, 1), Fixed[cells].Length);

    // Source: polyhexes.csv, OEIS A006535 (one-sided) and A000228 (free).
    [Theory]
    [MemberData(nameof(Sizes))]
    public void Shapes_that_turn_or_turn_over_into_one_another_as_many_as_published(int cells)
    {
        Assert.Equal(Published(cells, 2), Fixed[cells].Select(s => Orientations(s, rotated: true, mirrored: false)[0]).Distinct().Count());
        Assert.Equal(Published(cells, 3), Fixed[cells].Select(s => Orientations(s, rotated: true, mirrored: true)[0]).Distinct().Count());
    }

    // Source: orientation_counts.csv (recomputed by a program that shares no code with ours).
    [Theory]
    [MemberData(nameof(Sizes))]
    public void Shapes_have_as_many_orientations_as_known(int cells)
    {
        var counted = Fixed[cells].Select(s => Orientations(s, rotated: true, mirrored: true)).GroupBy(o => o[0])
            .GroupBy(g => g.First().Length).OrderBy(g => g.Key).Select(g => (g.Key, g.Count()));
        var known = ReferenceTable.Rows("orientation_counts.csv").Where(r => r[0].StartsWith("hex", StringComparison.Ordinal) && ReferenceTable.Number(r[1]) == cells)
            .Select(r => (ReferenceTable.Number(r[2]), ReferenceTable.Number(r[3])));

        Assert.Equal(known, counted);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Without_permission_a_shape_lies_as_drawn(int cells) =>
        Assert.All(Fixed[cells].Take(20), s => Assert.Equal([s], Orientations(s, rotated: false, mirrored: false)));

    private static int Published(int cells, int column) => ReferenceTable.Number(ReferenceTable.Row("polyhexes.csv", $"{cells}")[column]);

    // The distinct shapes under the placements on a board that is just large enough, in order.
    private static string[] Orientations(string shape, bool rotated, bool mirrored)
    {
        (int Column, int Row)[] cells = CellsOf(shape);
        var drawing = new Drawing(
            cells.Length,
            cells.Length,
            [.. cells.Select(c => TestBoard.Cell((c.Column - (c.Row % 2)) / 2, c.Row, '#') with { HalfSteps = c.Row % 2 })],
            new SourceText("drawing", "").Whole);
        SheetBoard board = Boards[cells.Length];

        ImmutableArray<DrawingPlacement> placements = board.Geometry.Placements(drawing, rotated, mirrored);

        return
        [
            .. placements.Select(p => Told(p.Spaces.Select(s => (board.Facts.Spaces[s].Column, board.Facts.Spaces[s].Row)))).Distinct().Order(StringComparer.Ordinal),
        ];
    }

    private static string[][] Grow()
    {
        var sizes = new List<string[]> { Array.Empty<string>(), new[] { "0,0" } };
        for (int n = 2; n <= Largest; n++)
        {
            sizes.Add([.. sizes[n - 1].SelectMany(Grown).Distinct()]);
        }

        return [.. sizes];
    }

    private static IEnumerable<string> Grown(string shape)
    {
        (int Column, int Row)[] cells = CellsOf(shape);
        return cells.SelectMany(c => Steps.Select(s => (c.Column + s.Column, c.Row + s.Row))).Except(cells).Select(added => Told(cells.Append(added)));
    }

    // Moved to the lowest row and to the left, so that column and row of a cell are both even or both odd.
    private static string Told(IEnumerable<(int Column, int Row)> cells)
    {
        (int Column, int Row)[] all = [.. cells];
        int low = all.Min(c => c.Row);
        int left = all.Min(c => c.Column - (c.Row - low));
        (int Column, int Row)[] moved = [.. all.Select(c => (c.Column - left, c.Row - low))];
        int whole = moved.Min(c => c.Column - (c.Row % 2)) / 2 * 2;
        return string.Join(' ', moved.Select(c => (c.Column - whole, c.Row)).Order().Select(c => $"{c.Item1},{c.Item2}"));
    }

    private static (int Column, int Row)[] CellsOf(string shape) =>
        [.. shape.Split(' ').Select(c => c.Split(',')).Select(c => (ReferenceTable.Number(c[0]), ReferenceTable.Number(c[1])))];
}
