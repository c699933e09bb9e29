using SkiaSharp;

namespace Rostrum.Pictures.Tests;

public class PngWriterTests
{
    private static readonly Scene Chamber = TablePainter.Paint(KilnNight.Table(KilnNight.E2));

    private static IEnumerable<Tone> Glazes => new[] { "ash", "iron", "copper" }.Select(name => PieceColours.Find(name).Body);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(0.5)]
    public void Size_in_pixels_is_the_size_of_the_scene_times_the_scale(double scale)
    {
        using SKBitmap bitmap = SKBitmap.Decode(PngWriter.Write(Chamber, scale));

        Assert.Equal(((int)Math.Ceiling(Chamber.Width * scale), (int)Math.Ceiling(Chamber.Height * scale)), (bitmap.Width, bitmap.Height));
    }

    [Fact]
    public void File_holds_the_colours_of_board_and_pieces()
    {
        using SKBitmap bitmap = SKBitmap.Decode(PngWriter.Write(Chamber, 1, Palette.Dark));

        Rgb[] drawn = [.. bitmap.Pixels.Select(pixel => new Rgb(pixel.Red, pixel.Green, pixel.Blue)).Distinct()];

        Assert.All([Tones.Surround, Tones.Back, Tones.Flaw, .. Glazes], tone => Assert.Contains(Palette.Dark[tone], drawn));
    }

    [Fact]
    public void Same_scene_gives_the_same_bytes() =>
        Assert.Equal(PngWriter.Write(Chamber, 1.5), PngWriter.Write(TablePainter.Paint(KilnNight.Table(KilnNight.E2)), 1.5));

    [Fact]
    public void Every_kind_of_node_leaves_a_trace()
    {
        SceneNode[] nodes =
        [
            new SceneNode.Rectangle(new Box(2, 2, 6, 6), new Paint(Tones.Ink)),
            new SceneNode.Rectangle(new Box(2, 2, 6, 6), Paint.Line(Tones.Ink, 1, 1), 2),
            new SceneNode.Circle(new Point(5, 5), 3, new Paint(Tones.Ink)),
            new SceneNode.Path(PathData.Ellipse(new Point(5, 5), 3, 2), new Paint(Tones.Ink)),
            new SceneNode.Line(new Point(1, 5), new Point(9, 5), Paint.Line(Tones.Ink, 1)),
            new SceneNode.Arrow(new Point(1, 5), new Point(9, 5), Tones.Ink, 1),
            new SceneNode.Text(new Point(1, 9), "W", 9, Tones.Ink),
            new SceneNode.Group("g", [new SceneNode.Circle(new Point(5, 5), 3, new Paint(Tones.Ink))]),
        ];

        Assert.All(nodes, node => Assert.True(1 < PngWriter.Pixels(new Scene(10, 10, "", "", [node])).Pixels.Distinct().Count()));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(1000)]
    public void Scale_that_makes_no_picture_is_refused(double scale) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PngWriter.Write(Chamber, scale));
}
