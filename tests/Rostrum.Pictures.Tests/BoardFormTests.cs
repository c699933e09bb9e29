namespace Rostrum.Pictures.Tests;

/// <summary>Boards of hexes, maps, rings and tracks, as scenes.</summary>
public class BoardFormTests
{
    private static readonly PieceLook Peat = PieceLook.Of("square", "iron", null, null, "peat");
    private static readonly PieceLook Plank = PieceLook.Of("disc", "rust", "ring", null, "Ben's plank");

    // Rows of 3, 4 and 3 round a pool.
    private static BoardPicture Marsh => new("marsh", null, BoardForm.Hexes,
        [
            Hex("a1", 1, 2), Hex("a2", 3, 2, Peat, Plank), Hex("a3", 5, 2),
            Hex("b1", 0, 1, Peat), Hex("b3", 4, 1, Plank), Hex("b4", 6, 1),
            Hex("c1", 1, 0), Hex("c2", 3, 0), Hex("c3", 5, 0, Peat, Peat, Plank),
        ])
    {
        Rows = ["c", "b", "a"],
        Holes = [new HolePicture("b2", 2, 1)],
        NumberNames = ["depth"],
        Areas = [new AreaPicture("far", "shore far", [0, 1, 2]), new AreaPicture("near", "shore near", [6, 7, 8])],
    };

    public static TheoryData<string, string> Joined => new()
    {
        { "a1", "a2" }, { "a1", "b1" }, { "a3", "b3" }, { "b3", "b4" }, { "b1", "c1" }, { "c1", "c2" }, { "b3", "c3" },
    };

    // Tiles lie apart by the wood between them; grown by half of it, neighbours have one edge in common.
    [Theory]
    [MemberData(nameof(Joined))]
    public void Hexes_beside_each_other_share_an_edge(string one, string other)
    {
        Scene scene = Paint(Marsh with { Areas = [] });
        Point[] shared = [.. Corners(scene, one).Where(corner => Corners(scene, other).Any(each => Near(corner, each)))];

        Assert.Equal(2, shared.Length);
    }

    [Fact]
    public void Hexes_apart_share_no_edge() =>
        Assert.DoesNotContain(Corners(Paint(Marsh), "a1"), corner => Corners(Paint(Marsh), "c2").Any(each => Near(corner, each)));

    [Fact]
    public void Frame_goes_round_the_hexes_and_round_the_pool()
    {
        PathData frame = Frame(Paint(Marsh));

        Assert.Equal(2, frame.Steps.OfType<PathStep.Start>().Count());
        Assert.Equal(6, frame.Steps.Skip(1).SkipWhile(step => step is not PathStep.Start).Count(step => step is not PathStep.Close));
    }

    [Fact]
    public void Free_hexes_the_pool_and_the_rows_have_their_names() => Assert.Equal(
        ["2", "3", "a", "a1", "a3", "b", "b2", "b4", "c", "c1", "c2", "far", "near"],
        Paint(Marsh).Texts().Where(text => text.Length <= 4).Order(StringComparer.Ordinal));

    [Fact]
    public void A_stack_shows_its_layers_and_their_number()
    {
        SceneNode[] two = [.. Paint(Marsh).Group("marsh-a2").Children];
        SceneNode[] three = [.. Paint(Marsh).Group("marsh-c3").Children];

        Assert.Equal((1, 2), (Bodies(two, Peat), Bodies(three, Peat)));
        Assert.Equal(("2", "3"), (two.OfType<SceneNode.Text>().Single().Content, three.OfType<SceneNode.Text>().Single().Content));
    }

    [Fact]
    public void Hexes_are_told_from_the_far_row() => Assert.Equal(
        "The board, hexes, from the far row. Row a: a1 free, a2 peat under Ben's plank, a3 free. Row b: b1 peat, b3 Ben's plank, b4 free. "
        + "Row c: c1 free, c2 free, c3 peat under peat under Ben's plank. b2 is a hole. Shore far: a1, a2, a3. Shore near: c1, c2, c3. Depth: 3 on a1; 1 on c2.",
        Paint(Numbered(Marsh, ("a1", 3), ("c2", 1))).Description);

    [Fact]
    public void Printed_numbers_stand_on_their_spaces_and_the_slip_says_what_they_are()
    {
        Scene scene = Paint(Numbered(Marsh, ("a1", 37)));

        Assert.Contains(scene.Group("marsh-a1").Children.OfType<SceneNode.Text>(), text => text.Content == "37");
        Assert.Contains("Printed numbers: depth.", scene.Texts());
    }

    [Fact]
    public void Areas_beside_each_other_have_different_grounds()
    {
        Scene scene = Paint(Marsh with { Areas = [new AreaPicture("far", "shore far", [0, 1, 2]), new AreaPicture("mid", "shore mid", [3, 4, 5])] });

        Assert.NotEqual(Ground(scene, "a1"), Ground(scene, "b1"));
        Assert.Equal(Tones.Back, Ground(scene, "c1"));
    }

    [Fact]
    public void Area_whose_name_is_too_long_for_it_is_on_the_slip()
    {
        Scene scene = Paint(Marsh with { Areas = [new AreaPicture("a name that is far too long", "shore long", [0])] });

        Assert.Contains("Shore long: a1.", scene.Texts());
        Assert.DoesNotContain("a name that is far too long", scene.Texts());
    }

    [Fact]
    public void Marked_hex_has_a_ring_of_its_shape() => Assert.Single(
        TablePainter.Paint(Table(Marsh) with { Marks = [new SpaceMark(Marsh.At("c2"), MarkKind.Bad)] }).Nodes.OfType<SceneNode.Path>(),
        path => path.Paint.Stroke == Tones.Bad && path.Data.Steps.Count == 7);

    [Fact]
    public void Arrow_leads_through_spaces()
    {
        Scene scene = TablePainter.Paint(Table(Marsh) with { Arrows = [new SpaceArrow(Marsh.At("a1"), Marsh.At("c1")) { Through = [Marsh.At("b1")] }] });
        SceneNode.Path line = Assert.Single(scene.Nodes.OfType<SceneNode.Path>(), path => path.Paint.Stroke == Tones.Arrow);

        Assert.Equal(2, line.Data.Steps.Count);
        Assert.EndsWith("An arrow leads from a1 through b1 to c1.", scene.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Ring_runs_clockwise_from_the_upper_left()
    {
        Point[] middles = [.. Discs(Paint(Ring(14)))];
        double centre = middles.Average(middle => middle.Y);

        Assert.All(middles[..6], middle => Assert.True(middle.Y < centre));
        Assert.All(middles[7..13], middle => Assert.True(middle.Y > centre));
        Assert.Equal(middles[..6].Select(middle => middle.X), middles[..6].Select(middle => middle.X).Order());
        Assert.Equal(middles[..6].Select(middle => Math.Round(middle.X, 3)), middles[7..13].Reverse().Select(middle => Math.Round(middle.X, 3)));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(7)]
    [InlineData(8)]
    [InlineData(24)]
    [InlineData(61)]
    public void Discs_of_a_ring_do_not_overlap(int count)
    {
        Point[] middles = [.. Discs(Paint(Ring(count)))];

        Assert.Equal(count, middles.Length);
        Assert.All(Pairs(middles), pair => Assert.True(Distance(pair.One, pair.Other) >= 0.88 * 48));
    }

    [Fact]
    public void Long_track_is_folded_like_a_ribbon()
    {
        Scene scene = Paint(new BoardPicture("t", null, BoardForm.Track, [.. Enumerable.Range(1, 25).Select(number => Free($"{number}"))]));
        Box[] tiles = [.. Enumerable.Range(1, 25).Select(number => scene.Group($"t-{number}").Children.OfType<SceneNode.Rectangle>().Last().Box)];

        Assert.Equal(3, tiles.Select(tile => tile.Y).Distinct().Count());
        Assert.Equal(tiles[8].X, tiles[9].X);
        Assert.Equal(tiles[17].X, tiles[18].X);
    }

    [Fact]
    public void Names_too_long_for_a_track_are_numbered_on_it_and_told_on_the_slip()
    {
        string[] texts = [.. Paint(new BoardPicture("t", null, BoardForm.Track, [Free("Start"), Free("The long bridge")])).Texts()];

        Assert.Contains("2", texts);
        Assert.Contains("1 Start; 2 The long bridge.", texts);
    }

    private static SpacePicture Hex(string name, int column, int row, params PieceLook[] pieces) =>
        new(name, column, row, pieces is [] ? CellPicture.Empty : CellPicture.Holding(pieces)) { Numbers = [null] };

    private static SpacePicture Free(string name) => new(name, 0, 0, CellPicture.Empty);

    private static BoardPicture Numbered(BoardPicture board, params (string Space, long Number)[] numbers) => board with
    {
        Spaces = [.. board.Spaces.Select(space => space with { Numbers = [numbers.Where(n => n.Space == space.Name).Select(n => (long?)n.Number).FirstOrDefault()] })],
    };

    private static BoardPicture Ring(int count) => new("r", null, BoardForm.Ring, [.. Enumerable.Range(1, count).Select(number => Free($"{number}"))]);

    private static TablePicture Table(BoardPicture board) => new("A board", [board]) { View = TableView.Above };

    private static Scene Paint(BoardPicture board) => TablePainter.Paint(Table(board));

    private static PathData Frame(Scene scene) => scene.Group("marsh").Children.OfType<SceneNode.Path>().Single(path => path.Paint.Fill == Tones.Frame).Data;

    private static IEnumerable<Point> Corners(Scene scene, string space) => scene.Group($"marsh-{space}").Children.OfType<SceneNode.Path>()
        .First(path => path.Paint.Fill == Tones.Back || path.Paint.Fill == Tones.FirstArea || path.Paint.Fill == Tones.SecondArea).Data.Steps
        .Select(step => step is PathStep.Start start ? start.To : step is PathStep.Straight line ? line.To : (Point?)null).OfType<Point>();

    // The wood between two tiles is 0.08 of a space wide.
    private static bool Near(Point one, Point other) => Distance(one, other) < 0.1 * 48;

    private static Tone? Ground(Scene scene, string space) => scene.Group($"marsh-{space}").Children.OfType<SceneNode.Path>().ElementAt(1).Paint.Fill;

    private static int Bodies(SceneNode[] nodes, PieceLook look) => nodes.OfType<SceneNode.Path>().Count(path => path.Paint.Fill == look.Colour.Body);

    private static IEnumerable<Point> Discs(Scene scene) => scene.Group("r").Children.OfType<SceneNode.Group>().Select(space => space.Children.OfType<SceneNode.Circle>().Last().Centre);

    private static IEnumerable<(Point One, Point Other)> Pairs(Point[] points) => points.SelectMany((one, at) => points.Skip(at + 1).Select(other => (one, other)));

    private static double Distance(Point one, Point other) => double.Hypot(one.X - other.X, one.Y - other.Y);
}
