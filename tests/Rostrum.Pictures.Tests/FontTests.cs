using System.Text;
using SkiaSharp;

namespace Rostrum.Pictures.Tests;

public class FontTests
{
    // The drawing library reads the same file with its own code.
    [Theory]
    [InlineData(FontWeight.Regular, "Copper never stands beside ash: 10 + 4 = 14 (p8).")]
    [InlineData(FontWeight.Bold, "E2, Round Chamber ×3 −2 “½” ÄÖÜ Łódź")]
    [InlineData(FontWeight.Bold, "")]
    public void Width_is_the_one_that_is_drawn(FontWeight weight, string text)
    {
        using SKData data = SKData.CreateCopy(ShippedFonts.Bytes(weight).AsSpan());
        using SKTypeface face = SKTypeface.FromData(data);
        using SKFont font = new(face, 100) { Subpixel = true, Hinting = SKFontHinting.None, LinearMetrics = true };

        Assert.Equal(font.MeasureText(text), ShippedFonts.Metrics(weight).Width(text, 100), 0.05);
    }

    [Fact]
    public void Glyphs_are_those_that_the_drawing_library_finds()
    {
        using SKData data = SKData.CreateCopy(ShippedFonts.Bytes(FontWeight.Regular).AsSpan());
        using SKTypeface face = SKTypeface.FromData(data);
        using SKFont font = new(face);
        Rune[] plane = [.. Enumerable.Range(1, 0xD7FF).Select(code => new Rune(code))];

        Assert.Equal(
            plane.Where(rune => font.GetGlyph(rune.Value) != 0),
            plane.Where(ShippedFonts.Metrics(FontWeight.Regular).Has));
    }

    [Fact]
    public void Lines_keep_every_word_and_the_width()
    {
        const string Text = "Put the plate first;\nthe jug may then stand on it.";

        string[] lines = [.. TextFlow.Lines(Text, 100, 12)];

        Assert.Equal(Text.Replace('\n', ' '), string.Join(' ', lines));
        Assert.All(lines, line => Assert.InRange(ShippedFonts.Metrics(FontWeight.Regular).Width(line, 12), 1, 100));
        Assert.InRange(lines.Length, 3, 4);
    }

    [Fact]
    public void Word_wider_than_the_line_gets_a_line_to_itself() =>
        Assert.Equal(["a", "leather-hard", "b"], TextFlow.Lines("a leather-hard b", 20, 12));

    [Fact]
    public void Blank_text_has_no_lines() => Assert.Empty(TextFlow.Lines(" \n ", 20, 12));
}
