using System.Collections.Immutable;
using Rostrum.Rulings.Boards;
using Rostrum.Rulings.Tests.Reference;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Boards;

/// <summary>Shapes of n squares that hang together, laid by our code and counted against published counts.</summary>
public sealed class PolyominoTests
{
    private const int Largest = 6;

    // A shape is written as its cells in order, moved to the corner: "0,0 1,0".
    private static readonly string[][] Fixed = Grow();

    public static TheoryData<int> Sizes => [.. Enumerable.Range(1, Largest)];

    // Source: polyominoes.csv, OEIS A001168 (fixed).
    [Theory]
    [MemberData(nameof(Sizes))]
    public void Fixed_shapes_as_many_as_published(int cells) =>
        Assert.Equal(Published(cells, 1), Fixed[cells].Length);

    // Source: polyominoes.csv, OEIS A000988 (one-sided: shapes that turn into one another count once).
    [Theory]
    [MemberData(nameof(Sizes))]
    public void One_sided_shapes_as_many_as_published(int cells) =>
        Assert.Equal(Published(cells, 2), Fixed[cells].Select(s => Orientations(s, mirrored: false)[0]).Distinct().Count());

    // Source: polyominoes.csv, OEIS A000105 (free: turned and turned over).
    [Theory]
    [MemberData(nameof(Sizes))]
    public void Free_shapes_as_many_as_published(int cells) =>
        Assert.Equal(Published(cells, 3), Fixed[cells].Select(s => Orientations(s, mirrored: true)[0]).Distinct().Count());

    // Source: orientation_counts.csv (recomputed by a program that shares no code with ours).
    [Theory]
    [MemberData(nameof(Sizes))]
    public void Shapes_have_as_many_orientations_as_known(int cells)
    {
        var counted = Fixed[cells].Select(s => Orientations(s, mirrored: true)).GroupBy(o => o[0])
            .GroupBy(g => g.First().Length).OrderBy(g => g.Key).Select(g => (g.Key, g.Count()));
        var known = ReferenceTable.Rows("orientation_counts.csv").Where(r => r[0] == "square" && ReferenceTable.Number(r[1]) == cells)
            .Select(r => (ReferenceTable.Number(r[2]), ReferenceTable.Number(r[3])));

        Assert.Equal(known, counted);
    }

    private static int Published(int cells, int column) =>
        ReferenceTable.Number(ReferenceTable.Row("polyominoes.csv", $"{cells}")[column]);

    // The distinct shapes under the placements on a board that is just large enough, in order.
    private static string[] Orientations(string shape, bool mirrored)
    {
        (int Column, int Row)[] cells = CellsOf(shape);
        int size = cells.Length;
        BoardFacts board = TestBoard.Of(new Place("board", PlaceForm.Board, false, 0, null), size, size);
        var drawing = new Drawing(size, size, [.. cells.Select(c => TestBoard.Cell(c.Column, c.Row, '#'))], new SourceText("drawing", "").Whole);

        ImmutableArray<DrawingPlacement> placements = BoardGeometry.Of(board).Placements(drawing, rotated: true, mirrored);

        return
        [
            .. placements.Select(p => Told(p.Spaces.Select(s => (board.Spaces[s].Column, board.Spaces[s].Row)))).Distinct().Order(StringComparer.Ordinal),
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
        return cells.SelectMany(c => new[] { (c.Column + 1, c.Row), (c.Column - 1, c.Row), (c.Column, c.Row + 1), (c.Column, c.Row - 1) })
            .Except(cells).Select(added => Told(cells.Append(added)));
    }

    private static string Told(IEnumerable<(int Column, int Row)> cells)
    {
        (int Column, int Row)[] all = [.. cells];
        return string.Join(' ', all.Select(c => (c.Column - all.Min(o => o.Column), c.Row - all.Min(o => o.Row))).Order().Select(c => $"{c.Item1},{c.Item2}"));
    }

    private static (int Column, int Row)[] CellsOf(string shape) =>
        [.. shape.Split(' ').Select(c => c.Split(',')).Select(c => (ReferenceTable.Number(c[0]), ReferenceTable.Number(c[1])))];
}
