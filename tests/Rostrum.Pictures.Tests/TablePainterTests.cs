namespace Rostrum.Pictures.Tests;

public class TablePainterTests
{
    private static readonly BoardPicture E2 = KilnNight.E2;

    [Fact]
    public void Description_names_every_piece_and_every_free_space() => Assert.Equal(
        "The board, from the lowest row. "
        + "Row 1: A1 iron plate, B1 ash plate, C1 iron plate, D1 iron plate, E1 ash bowl. "
        + "Row 2: A2 iron bowl, B2 cracked iron bowl, C2 iron jug, D2 copper lamp, E2 iron bowl. "
        + "Row 3: A3 iron bowl, B3 free, C3 cracked copper lamp, D3 free, E3 free. "
        + "Row 4: all free.",
        TablePainter.Paint(KilnNight.Table(E2)).Description);

    [Fact]
    public void Description_tells_marks_arrows_heaps_and_caption()
    {
        TablePicture picture = KilnNight.Table(KilnNight.Chamber("pa .")) with
        {
            Marks = [new SpaceMark(new SpaceAt("chamber", "B1"), MarkKind.Bad, "no"), new SpaceMark(new SpaceAt("chamber", "A1"), MarkKind.Asked)],
            Arrows = [new SpaceArrow(new SpaceAt("chamber", "A1"), new SpaceAt("chamber", "B1"), "swap")],
            Heaps = [new Heap("Sticks", "4", []), new Heap("Shards", null, [new HeapPieces(KilnNight.Ware("jc!"), 2)])],
            Caption = "Why not?",
        };

        Assert.Equal(
            "The board, from the lowest row. Row 1: A1 ash plate, B1 free. B1 is marked with a cross: no. A1 is asked about. "
            + "An arrow leads from A1 to B1: swap. Beside the board, Sticks: 4. Beside the board, Shards: 2 times cracked copper jug. Why not?",
            TablePainter.Paint(picture).Description);
    }

    [Fact]
    public void Stack_is_told_from_the_lowest_piece_up()
    {
        BoardPicture board = BoardPicture.OfRows("b", "Pile", ["A"], [new BoardRow("1", [CellPicture.Holding(KilnNight.Ware("pa"), KilnNight.Ware("ji"))])]);

        Assert.Contains("A1 ash plate under iron jug", TablePainter.Paint(KilnNight.Table(board)).Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Missing_shelves_are_neither_drawn_nor_told()
    {
        Scene scene = TablePainter.Paint(KilnNight.Table(KilnNight.E3));

        Assert.Equal(20, scene.Group("chamber").Children.OfType<SceneNode.Group>().Count());
        Assert.DoesNotContain("A3", scene.Description, StringComparison.Ordinal);
    }

    // Bays of 2, 3, 4, 5 and 6 tiers: two corners at the foot, one at the top of each end, two at each of four steps.
    [Fact]
    public void Frame_follows_the_steps_of_a_climbing_chamber() => Assert.Equal(12, FrameCorners(KilnNight.E3));

    [Fact]
    public void Frame_goes_round_a_hole() => Assert.Equal(8, FrameCorners(KilnNight.Chamber(". . .", ". - .", ". . .")));

    [Fact]
    public void Cells_that_meet_at_a_corner_keep_their_own_frames() => Assert.Equal(8, FrameCorners(KilnNight.Chamber(". -", "- .")));

    [Fact]
    public void Every_piece_stands_on_its_plank()
    {
        Scene scene = TablePainter.Paint(KilnNight.Table(KilnNight.Chamber("ba jc pi la")), shelf: 100);

        Assert.All(scene.Group("chamber").Children.OfType<SceneNode.Group>(), space =>
        {
            double floor = space.Children.OfType<SceneNode.Rectangle>().First().Box.Bottom;
            SceneNode.Path body = space.Children.OfType<SceneNode.Path>().Single(path => path.Paint.Stroke == Tones.PieceEdge && path.Paint.Fill is not null);
            Assert.Equal(floor, body.Data.Steps.Max(Lowest), 1e-6);
        });
    }

    [Fact]
    public void Cracked_ware_is_two_parts_with_a_gap_and_a_badge()
    {
        SceneNode[] nodes = [.. TablePainter.Paint(KilnNight.Table(KilnNight.Chamber("pc!"))).Group("chamber-A1").Children];

        Assert.Equal(2, nodes.OfType<SceneNode.Path>().Count(path => path.Paint.Fill == PieceColours.Find("copper").Body));
        Assert.Single(nodes.OfType<SceneNode.Circle>(), circle => circle.Paint.Fill == Tones.Flaw);
    }

    [Fact]
    public void Label_that_fits_is_on_the_tag_and_one_that_does_not_is_on_the_slip()
    {
        TablePicture picture = KilnNight.Table(E2) with
        {
            Marks = [new SpaceMark(E2.At("D3"), MarkKind.Good, "2"), new SpaceMark(E2.At("B3"), MarkKind.Bad, "stands on a bowl")],
        };

        string[] texts = [.. TablePainter.Paint(picture).Texts()];

        Assert.Contains("2", texts);
        Assert.Contains("B3: stands on a bowl", texts);
        Assert.DoesNotContain("stands on a bowl", texts);
    }

    [Theory]
    [InlineData(SpaceNames.None, false, false)]
    [InlineData(SpaceNames.Edges, true, false)]
    [InlineData(SpaceNames.Everywhere, true, true)]
    public void Names_are_written_where_they_are_wanted(SpaceNames names, bool edges, bool inside)
    {
        string[] texts = [.. TablePainter.Paint(KilnNight.Table(E2) with { Names = names }).Texts()];

        Assert.Equal((edges, inside), (texts.Contains("A"), texts.Contains("A4")));
    }

    [Theory]
    [InlineData(24)]
    [InlineData(48)]
    [InlineData(96)]
    public void Text_and_boards_stay_inside_the_picture(double shelf)
    {
        TablePicture picture = new("A title that is a good deal longer than the boards are wide, so it needs lines", [E2, KilnNight.E3 with { Name = "second" }])
        {
            Caption = "A caption of some length, which has to be broken into lines as well, because it lies on a slip of paper.",
            Heaps = [new Heap("Drying board", "two ware and all the sticks on it", [new HeapPieces(KilnNight.Ware("ba"), 12)])],
        };

        Scene scene = TablePainter.Paint(picture, shelf);

        Assert.All(scene.Flat().OfType<SceneNode.Rectangle>(), node => AssertInside(scene, node.Box.X, node.Box.Right, node.Box.Y, node.Box.Bottom));
        Assert.All(scene.Flat().OfType<SceneNode.Text>(), text => AssertInside(scene, Left(text), Left(text) + text.Width, text.At.Y - text.Size, text.At.Y + (text.Size * 0.3)));
    }

    [Fact]
    public void Scenes_of_equal_pictures_are_equal() =>
        Assert.Equal(TablePainter.Paint(KilnNight.Table(KilnNight.E3)), TablePainter.Paint(KilnNight.Table(KilnNight.E3)));

    [Theory]
    [InlineData("chamber", "F1")]
    [InlineData("chamber", "A5")]
    [InlineData("other", "A1")]
    public void Mark_on_no_space_is_refused(string board, string space) => Assert.Throws<ArgumentException>(() =>
        TablePainter.Paint(KilnNight.Table(E2) with { Marks = [new SpaceMark(new SpaceAt(board, space), MarkKind.Good)] }));

    [Fact]
    public void Arrow_to_a_missing_shelf_is_refused() => Assert.Throws<ArgumentException>(() => TablePainter.Paint(
        KilnNight.Table(KilnNight.E3) with { Arrows = [new SpaceArrow(KilnNight.E3.At("A1"), new SpaceAt("chamber", "A6"))] }));

    [Fact]
    public void Space_in_a_column_without_label_is_refused() => Assert.Throws<ArgumentException>(() =>
        TablePainter.Paint(KilnNight.Table(E2 with { Columns = ["A", "B"] })));

    [Fact]
    public void Row_of_another_length_is_refused() => Assert.Throws<ArgumentException>(() => BoardPicture.OfRows("b", null, ["A", "B"], [new BoardRow("1", [CellPicture.Empty])]));

    [Fact]
    public void Table_without_board_is_refused() => Assert.Throws<ArgumentException>(() => TablePainter.Paint(new TablePicture("", [])));

    [Theory]
    [InlineData(11)]
    [InlineData(401)]
    [InlineData(double.NaN)]
    public void Shelf_of_impossible_size_is_refused(double shelf) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TablePainter.Paint(KilnNight.Table(E2), shelf));

    [Fact]
    public void Label_that_is_not_on_the_board_is_refused() => Assert.Throws<ArgumentException>(() => E2.At("F1"));

    private static int FrameCorners(BoardPicture board) => TablePainter.Paint(KilnNight.Table(board)).Group("chamber").Children
        .OfType<SceneNode.Path>()
        .Single(path => path.Paint.Fill == Tones.Frame).Data.Steps
        .Count(step => step is not PathStep.Close);

    private static double Lowest(PathStep step) => step switch
    {
        PathStep.Start start => start.To.Y,
        PathStep.Straight line => line.To.Y,
        PathStep.Curve curve => curve.To.Y,
        _ => 0,
    };

    private static double Left(SceneNode.Text text) => text.Anchor switch
    {
        TextAnchor.Middle => text.At.X - (text.Width / 2),
        TextAnchor.End => text.At.X - text.Width,
        _ => text.At.X,
    };

    private static void AssertInside(Scene scene, double left, double right, double top, double bottom)
    {
        Assert.InRange(left, 0, right);
        Assert.InRange(right, left, scene.Width + 1e-6);
        Assert.InRange(top, -1e-6, bottom);
        Assert.InRange(bottom, top, scene.Height + 1e-6);
    }
}
