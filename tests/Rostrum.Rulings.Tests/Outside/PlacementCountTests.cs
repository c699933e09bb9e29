using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tests.Reference;
using Rostrum.Rulings.Verdicts;

namespace Rostrum.Rulings.Tests.Outside;

/// <summary>Published numbers of legal placements, counted by asking the laws of sample sheets for each placement.</summary>
/// <remarks>The numbers stand in Reference/placement_counts.csv, each with its OEIS id and how it was obtained.</remarks>
public sealed class PlacementCountTests
{
    // OEIS A000170.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public void Queens_that_see_none_another(int side) => Assert.Equal(Published("A000170", side), Queens(side).Count);

    // OEIS A000170 and, with one of each up to eight turned and mirrored copies counted, A002562.
    [Theory]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public void Queens_up_to_symmetry(int side) => Assert.Equal(Published("A002562", side), Queens(side).Select(q => Smallest(q, side)).Distinct().Count());

    // OEIS A000170 and A002562.
    [Theory]
    [Trait("Category", "Slow")]
    [InlineData(7)]
    [InlineData(8)]
    public void Queens_on_larger_boards(int side)
    {
        List<int[]> queens = Queens(side);

        Assert.Equal(Published("A000170", side), queens.Count);
        Assert.Equal(Published("A002562", side), queens.Select(q => Smallest(q, side)).Distinct().Count());
    }

    // OEIS A063443, its index one higher.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Kings_that_do_not_touch(int side) => Assert.Equal(Published("A063443(n+1)", side), PlacementCounts.Sets(PlacementSheet.Of("kings", side)));

    // OEIS A063443, its index one higher.
    [Fact]
    [Trait("Category", "Slow")]
    public void Kings_on_a_larger_board() => Assert.Equal(Published("A063443(n+1)", 6), PlacementCounts.Sets(PlacementSheet.Of("kings", 6)));

    // OEIS A006506.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Sets_of_squares_of_which_no_two_share_a_side(int side) => Assert.Equal(Published("A006506", side), PlacementCounts.Sets(PlacementSheet.Of("lanterns", side)));

    // OEIS A002860.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Latin_squares(int side) => Assert.Equal(Published("A002860", side), Filled(PlacementSheet.Of("mosaic", side)));

    // OEIS A002860; the colours may be exchanged, so one order of the first row stands for all 120.
    [Fact]
    public void Latin_squares_of_order_five()
    {
        PlacementSheet sheet = PlacementSheet.Of("mosaic", 5);
        Position firstRow = Enumerable.Range(0, 5).Aggregate(sheet.Empty, (p, i) => PlacementCounts.With(p, sheet.Things[i], i));

        Assert.Equal(Published("A002860", 5), 120 * PlacementCounts.Full(sheet, firstRow, 5));
    }

    // OEIS A107739, its second term.
    [Fact]
    public void Grids_of_four_with_boxes_of_two_by_two() => Assert.Equal(Published("A107739(2)", 4), Filled(PlacementSheet.Of("mosaic", 4, "boxes")));

    // OEIS A004003.
    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    [InlineData(6)]
    public void Tilings_by_planks_of_two(int side) => Assert.Equal(Published("A004003", side), PlacementCounts.Pairs(PlacementSheet.Of("planks", side)));

    // Elementary: the one magic square of 1 to 9 in its eight turned and mirrored copies.
    [Fact]
    public void Magic_squares_of_one_to_nine() => Assert.Equal(Published("-", 3), Filled(PlacementSheet.Of("fifteen", 3)));

    [Theory]
    [InlineData("queens", 5, "put a queen on {0}")]
    [InlineData("kings", 4, "put a king on {0}")]
    [InlineData("lanterns", 4, "hang a lantern over {0}")]
    [InlineData("mosaic", 4, "lay red tile on {0}")]
    public void A_question_in_words_gets_the_answer_that_was_counted(string sample, int side, string words)
    {
        PlacementSheet sheet = PlacementSheet.Of(sample, side);
        Position position = PlacementCounts.With(sheet.Empty, sheet.Things[0], side + 1);
        int[] free = [.. Enumerable.Range(0, side * side).Where(s => s != side + 1)];

        string[] answers = [.. free.Select(s => Ruling.On(position, string.Format(null, words, sheet.Sheet.Boards[0].Spaces[s].Name.Name)).Ruling!.Verdict)];

        Assert.Equal(free.Select(s => sheet.Allows(position, sheet.Things[0], s) ? "legal" : "illegal"), answers);
        Assert.Contains("legal", answers);
        Assert.Contains("illegal", answers);
    }

    private static List<int[]> Queens(int side) => [.. PlacementCounts.OneInEachRow(PlacementSheet.Of("queens", side))];

    private static long Filled(PlacementSheet sheet) => PlacementCounts.Full(sheet, sheet.Empty);

    private static long Published(string id, int side) =>
        long.Parse(ReferenceTable.Rows("placement_counts.csv").Single(r => r[1] == id && ReferenceTable.Number(r[2]) == side)[3], System.Globalization.CultureInfo.InvariantCulture);

    // The first in order of the eight turned and mirrored copies.
    private static string Smallest(int[] columns, int side)
    {
        int[] turned = [.. Enumerable.Range(0, side).Select(r => side - 1 - Array.IndexOf(columns, r))];
        int[] half = [.. columns.Reverse().Select(c => side - 1 - c)];
        int[] back = [.. Enumerable.Range(0, side).Select(r => side - 1 - Array.IndexOf(half, r))];
        return new[] { columns, turned, half, back }.SelectMany(c => new[] { c, [.. c.Reverse()] }).Select(c => string.Join(' ', c)).Min(StringComparer.Ordinal)!;
    }
}
