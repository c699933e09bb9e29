using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace Rostrum.Pictures.Tests;

/// <summary>The objects of a PDF are those of ISO 32000-1: page tree 7.7.3, fonts 9.6 to 9.10, text operators 9.4.3.</summary>
public class PdfWriterTests
{
    private static readonly Scene Chamber = TablePainter.Paint(KilnNight.Table(KilnNight.E2));
    private static readonly byte[] Bytes = PdfWriter.Write(Chamber);
    private static readonly string Pdf = Encoding.Latin1.GetString(Bytes);

    [Fact]
    public void File_has_one_page()
    {
        Assert.StartsWith("%PDF-1.", Pdf);
        Assert.Single(Regex.Matches(Pdf, @"/Type\s*/Page\b"));
    }

    [Fact]
    public void Page_is_as_large_as_the_picture_at_96_pixels_an_inch()
    {
        double[] box = [.. Regex.Match(Pdf, @"/MediaBox\s*\[([^\]]+)\]").Groups[1].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture))];

        Assert.Equal([0, 0, Math.Ceiling(Chamber.Width * 72 / 96), Math.Ceiling(Chamber.Height * 72 / 96)], box);
    }

    [Fact]
    public void Text_is_text_in_a_font_that_the_file_holds()
    {
        string content = string.Concat(Streams());

        Assert.Contains("/FontFile2", Pdf);
        Assert.Contains("/ToUnicode", Pdf);
        Assert.Matches(@"BT[\s\S]+Tj[\s\S]*ET", content);
        Assert.DoesNotContain("/Subtype /Image", Pdf);
    }

    [Fact]
    public void Document_bears_the_title_of_the_picture_and_no_date()
    {
        Assert.Contains("/Title (A chamber)", Pdf);
        Assert.DoesNotContain("Date", Pdf);
    }

    [Fact]
    public void Same_scene_gives_the_same_bytes() => Assert.Equal(Bytes, PdfWriter.Write(TablePainter.Paint(KilnNight.Table(KilnNight.E2))));

    [Fact]
    public void Dark_picture_differs() => Assert.NotEqual(Bytes, PdfWriter.Write(Chamber, Palette.Dark));

    private static IEnumerable<string> Streams()
    {
        foreach (Match stream in Regex.Matches(Pdf, @"/Filter /FlateDecode[^>]*>>\s*stream\r?\n(?<content>[\s\S]*?)\r?\nendstream"))
        {
            using var packed = new ZLibStream(new MemoryStream(Encoding.Latin1.GetBytes(stream.Groups["content"].Value)), CompressionMode.Decompress);
            using var reader = new StreamReader(packed, Encoding.Latin1);
            yield return reader.ReadToEnd();
        }
    }
}
