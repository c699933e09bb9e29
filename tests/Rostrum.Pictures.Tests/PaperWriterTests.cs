using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Rostrum.Pictures.Tests;

/// <summary>The parts of a PDF are those of ISO 32000-1: page tree 7.7.3, cross-reference table 7.5.4, incremental updates 7.5.6, catalogue 7.7.2.</summary>
public class PaperWriterTests
{
    private static readonly Scene Chamber = TablePainter.Paint(KilnNight.Table(KilnNight.E2));

    private static readonly PaperDocument Two = new("Aid (two)", "What a player needs", "en-GB", [Page(595, 842), Page(612, 792)]);

    private static readonly byte[] Bytes = PaperWriter.Write(Two);

    private static readonly string Pdf = Encoding.Latin1.GetString(Bytes);

    [Fact]
    public void Every_page_has_the_size_of_its_paper() =>
        Assert.Equal(["595 842", "612 792"], Regex.Matches(Pdf, @"/MediaBox\s*\[0 0 (\d+ \d+)\]").Select(m => m.Groups[1].Value));

    [Fact]
    public void The_last_catalogue_says_the_language_and_leads_to_the_same_pages()
    {
        string last = Pdf[Pdf.LastIndexOf("/Type /Catalog", StringComparison.Ordinal)..];

        Assert.Contains("/Lang (en-GB)", last);
        Assert.Contains("/DisplayDocTitle true", last);
        Assert.Equal(["/Type /Catalog", "/Pages", "/ViewerPreferences", "/Lang"], Regex.Matches(last[..last.IndexOf("endobj", StringComparison.Ordinal)], @"^(?:<<)?(/Type /Catalog|/Pages|/ViewerPreferences|/Lang)\b", RegexOptions.Multiline).Select(m => m.Groups[1].Value));
        Assert.Equal(PagesOf(Pdf), PagesOf(last));
    }

    [Fact]
    public void The_last_table_points_at_the_catalogue_and_at_the_table_before()
    {
        Match end = Regex.Match(Pdf, @"/Prev (\d+)>>\nstartxref\n(\d+)\n%%EOF\n$");
        string table = Pdf[Number(end.Groups[2].Value)..];
        int catalogue = Number(Regex.Match(table, @"^xref\n\d+ 1\n(\d{10}) 00000 n \n").Groups[1].Value);

        Assert.StartsWith("xref", Pdf[Number(end.Groups[1].Value)..], StringComparison.Ordinal);
        Assert.Matches(@"^\d+ 0 obj\n<</Type /Catalog", Pdf[catalogue..]);
    }

    [Fact]
    public void Document_bears_its_title_and_no_date()
    {
        Assert.Contains(@"/Title (Aid \(two\))", Pdf);
        Assert.DoesNotContain("Date", Pdf);
    }

    [Fact]
    public void Same_document_gives_the_same_bytes() => Assert.Equal(Bytes, PaperWriter.Write(Two with { }));

    [Fact]
    public void Document_without_a_page_is_refused() => Assert.Throws<ArgumentException>(() => PaperWriter.Write(Two with { Pages = [] }));

    [Theory]
    [InlineData("")]
    [InlineData("en) /Evil (")]
    [InlineData("english language")]
    public void Language_that_is_none_is_refused(string language) => Assert.Throws<ArgumentException>(() => PaperWriter.Write(Two with { Language = language }));

    private static PaperPage Page(double width, double height) =>
        new(width, height, [new SceneNode.Text(new Point(40, 60), "Copper never stands beside ash.", 9, Tones.Ink)], [new PlacedScene(Chamber, new Point(40, 100), 0.5)]);

    private static string PagesOf(string text) => Regex.Match(text, @"/Pages (\d+ 0 R)").Groups[1].Value;

    private static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);
}
