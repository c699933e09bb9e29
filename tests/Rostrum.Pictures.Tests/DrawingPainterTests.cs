namespace Rostrum.Pictures.Tests;

public class DrawingPainterTests
{
    // Commissions 11 and 6 of the demo game.
    private static readonly DrawingPicture Eleven = new("Commission 11", "6", [[Plain, Form("plate"), Plain], [Form("bowl"), Plain, Form("bowl")]]);

    private static DrawingCell Plain => new DrawingCell.Plain();

    [Fact]
    public void Description_tells_each_row_from_the_lowest() => Assert.Equal(
        "Worth 6. From the lowest row, each from left to right. Lowest row: any shelf, any plate, any shelf. Top row: any bowl, any shelf, any bowl.",
        DrawingPainter.Paint(Eleven).Description);

    [Fact]
    public void Glaze_without_form_is_a_patch_of_its_colour_with_its_emblem()
    {
        DrawingCell glaze = new DrawingCell.Wanted(null, PieceColours.Find("iron"), Emblems.Find("bars"), "anything in iron");

        SceneNode.Path[] paths = [.. DrawingPainter.Paint(new DrawingPicture("3", null, [[glaze]])).Group("cell-0-0").Children.OfType<SceneNode.Path>()];

        Assert.Equal([PieceColours.Find("iron").Body, Tones.LightMark], paths.Select(path => path.Paint.Fill!.Value));
        Assert.True(paths[0].Paint.Dash > 0);
    }

    [Fact]
    public void Form_without_glaze_is_blank() => Assert.Equal(
        Tones.Blank,
        DrawingPainter.Paint(Eleven).Group("cell-0-1").Children.OfType<SceneNode.Path>().First().Paint.Fill);

    [Fact]
    public void Space_outside_the_drawing_stays_paper() => Assert.Empty(
        DrawingPainter.Paint(new DrawingPicture("x", null, [[new DrawingCell.Outside(), Plain]])).Group("cell-0-0").Children);

    [Fact]
    public void Space_that_must_be_free_does_not_look_plain() => Assert.NotEqual(
        Cell(Plain).Select(node => node.GetType()),
        Cell(new DrawingCell.MustBeFree()).Select(node => node.GetType()));

    [Fact]
    public void Title_value_and_sentence_are_on_the_card() => Assert.Equal(
        ["Commission 11", "6", "As drawn."],
        DrawingPainter.Paint(Eleven with { Sentence = "As drawn." }).Texts());

    [Fact]
    public void Rows_of_different_length_are_refused() =>
        Assert.Throws<ArgumentException>(() => DrawingPainter.Paint(new DrawingPicture("x", null, [[Plain], [Plain, Plain]])));

    [Fact]
    public void Hexes_of_a_drawing_are_set_off_by_half_a_step()
    {
        Scene scene = DrawingPainter.Paint(Reeds);
        double[] left = [Left(scene, "cell-0-0"), Left(scene, "cell-0-1"), Left(scene, "cell-1-1")];

        Assert.Equal((24, 48), (Math.Round(left[0] - left[1], 6), Math.Round(left[2] - left[1], 6)));
    }

    [Fact]
    public void Hexes_of_a_drawing_are_told_with_their_half_steps() => Assert.Equal(
        "Hexes, from the lowest row, each from left to right. Lowest row, set off by 1 half step: any disc. Top row: any shelf, a free hex.",
        DrawingPainter.Paint(Reeds).Description);

    [Fact]
    public void Rows_of_hexes_that_do_not_interlock_are_refused() => Assert.Throws<ArgumentException>(() => DrawingPainter.Paint(Reeds with { HalfSteps = [1, 1] }));

    private static DrawingPicture Reeds => new("Reeds", null, [[Form("disc")], [Plain, new DrawingCell.MustBeFree()]]) { HalfSteps = [1, 0], FreeSays = "a free hex" };

    private static double Left(Scene scene, string cell) =>
        scene.Group(cell).Children.OfType<SceneNode.Path>().First().Data.Steps.OfType<PathStep.Straight>().Min(step => step.To.X);

    private static DrawingCell.Wanted Form(string outline) => new(Outlines.Find(outline), null, null, "any " + outline);

    private static ValueList<SceneNode> Cell(DrawingCell cell) =>
        DrawingPainter.Paint(new DrawingPicture("x", null, [[cell]])).Group("cell-0-0").Children;
}
