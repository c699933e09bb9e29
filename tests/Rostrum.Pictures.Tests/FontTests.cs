using System.Text;
using SkiaSharp;

namespace Rostrum.Pictures.Tests;

public class FontTests
{
    public static TheoryData<string> Faces =>
        [.. ShippedFonts.Faces(FontWeight.Regular).Concat(ShippedFonts.Faces(FontWeight.Bold)).Select(face => face.Name).Distinct()];

    // The drawing library reads the same files with its own code.
    [Theory]
    [MemberData(nameof(Faces))]
    public void Glyphs_and_widths_are_those_that_the_drawing_library_finds(string name)
    {
        ShippedFace face = Face(name);
        using SKData data = SKData.CreateCopy(face.Bytes.AsSpan());
        using SKTypeface typeface = SKTypeface.FromData(data);
        using SKFont font = new(typeface, 1000) { Subpixel = true, Hinting = SKFontHinting.None, LinearMetrics = true };
        Rune[] plane = [.. Enumerable.Range(0x20, 0xD7FF - 0x20).Select(code => new Rune(code))];
        Rune[] drawn = [.. plane.Where(rune => font.GetGlyph(rune.Value) != 0)];

        Assert.Equal(drawn, plane.Where(face.Metrics.Has));
        Assert.All(drawn, rune => Assert.Equal(font.MeasureText(rune.ToString()), face.Metrics.Width(rune.ToString(), 1000), 0.5));
    }

    [Theory]
    [InlineData("Copper: 10 + 4 = 14", "RostrumLetters-Bold")]
    [InlineData("Łódź", "RostrumLetters-Bold")]
    [InlineData("Кувшин", "NotoSans-Bold")]
    [InlineData("\u2192", "NotoSansSymbols-Regular")]
    [InlineData("\u2660\u2685\u2713", "NotoSansSymbols2-Regular")]
    [InlineData("\uE000", "RostrumLetters-Bold")]
    public void Text_is_drawn_with_the_first_font_that_can(string text, string face) =>
        Assert.Equal([(face, text)], ShippedFonts.Runs(text, FontWeight.Bold).Select(run => (run.Face.Name, run.Text)));

    [Theory]
    [InlineData(FontWeight.Regular)]
    [InlineData(FontWeight.Bold)]
    public void A_zero_has_no_stroke(FontWeight weight)
    {
        double middle = ShippedFonts.Width("0", 100, weight) / 2;
        Scene scene = new(100, 100, "", "", [new SceneNode.Text(new Point(0, 90), "0", 100, Tones.Ink, TextAnchor.Start, weight)]);

        using SKBitmap bitmap = SKBitmap.Decode(PngWriter.Write(scene));

        // Half way up a digit, which is 0.67 em high.
        Assert.Equal(bitmap.GetPixel(99, 99), bitmap.GetPixel((int)middle, 90 - 33));
    }

    [Fact]
    public void Mixed_line_is_cut_where_the_font_changes()
    {
        TextRun[] runs = [.. ShippedFonts.Runs("A1\u2192B2", FontWeight.Regular)];

        Assert.Equal(["A1", "\u2192", "B2"], runs.Select(run => run.Text));
        Assert.Equal(ShippedFonts.Width("A1\u2192B2", 10, FontWeight.Regular), runs.Sum(run => run.Face.Metrics.Width(run.Text, 10)), 1e-9);
    }

    [Fact]
    public void Lines_keep_every_word_and_the_width()
    {
        const string Text = "Put the plate first;\nthe jug may then stand on it.";

        string[] lines = [.. TextFlow.Lines(Text, 100, 12)];

        Assert.Equal(Text.Replace('\n', ' '), string.Join(' ', lines));
        Assert.All(lines, line => Assert.InRange(ShippedFonts.Width(line, 12, FontWeight.Regular), 1, 100));
        Assert.InRange(lines.Length, 3, 4);
    }

    [Fact]
    public void Word_wider_than_the_line_gets_a_line_to_itself() =>
        Assert.Equal(["a", "leather-hard", "b"], TextFlow.Lines("a leather-hard b", 20, 12));

    [Fact]
    public void Blank_text_has_no_lines() => Assert.Empty(TextFlow.Lines(" \n ", 20, 12));

    private static ShippedFace Face(string name) =>
        ShippedFonts.Faces(FontWeight.Regular).Concat(ShippedFonts.Faces(FontWeight.Bold)).First(face => face.Name == name);
}
