using System.Globalization;
using System.Xml.Linq;
using CsCheck;
using Rostrum.Testing;

namespace Rostrum.Pictures.Tests;

public class SvgWriterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly Scene Chamber = TablePainter.Paint(KilnNight.Table(KilnNight.E2) with { Caption = "Two cracked." });

    [Fact]
    public void Picture_says_what_it_is()
    {
        XElement root = XDocument.Parse(SvgWriter.Write(Chamber, new SvgOptions { IdPrefix = "e2" })).Root!;

        Assert.Equal("img", root.Attribute("role")!.Value);
        Assert.Equal("e2-title e2-desc", root.Attribute("aria-labelledby")!.Value);
        Assert.Equal(("e2-title", "A chamber"), (root.Element(Svg + "title")!.Attribute("id")!.Value, root.Element(Svg + "title")!.Value));
        Assert.Equal(("e2-desc", Chamber.Description), (root.Element(Svg + "desc")!.Attribute("id")!.Value, root.Element(Svg + "desc")!.Value));
    }

    [Fact]
    public void Any_text_stays_text() => Gen.String.Hold(text =>
    {
        Scene scene = new(10, 10, text, text, [new SceneNode.Text(new Point(0, 9), text, 8, Tones.Ink)]);

        XElement root = XDocument.Parse(SvgWriter.Write(scene)).Root!;

        Assert.Equal(["title", "desc", "text"], root.Elements().Select(element => element.Name.LocalName));
        Assert.Equal(text.Count(char.IsAsciiLetter), root.Element(Svg + "text")!.Value.Count(char.IsAsciiLetter));
    });

    [Fact]
    public void Markup_in_a_label_is_shown_as_it_was_typed()
    {
        const string Label = "<script>alert('1')</script> & \"more\"";
        Scene scene = new(10, 10, Label, Label, [new SceneNode.Text(default, Label, 8, Tones.Ink)]);

        string svg = SvgWriter.Write(scene);

        Assert.DoesNotContain("<script", svg, StringComparison.Ordinal);
        Assert.Equal(Label, XDocument.Parse(svg).Root!.Element(Svg + "text")!.Value);
    }

    [Fact]
    public void Same_scene_gives_the_same_characters_in_any_culture()
    {
        CultureInfo commas = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        commas.NumberFormat.NumberDecimalSeparator = ",";
        commas.NumberFormat.NegativeSign = "~";
        string plain = SvgWriter.Write(Chamber);

        string elsewhere = In(commas, () => SvgWriter.Write(TablePainter.Paint(KilnNight.Table(KilnNight.E2) with { Caption = "Two cracked." })));

        Assert.Equal(plain, elsewhere);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Nothing_outside_is_referred_to(bool embedded)
    {
        string svg = SvgWriter.Write(Chamber, embedded ? SvgOptions.StandAlone(Palette.Dark) : SvgOptions.InPage("p"));

        Assert.DoesNotContain("href", svg, StringComparison.Ordinal);
        Assert.All(svg.Split("url(").Skip(1), after => Assert.StartsWith("data:font/ttf;base64,", after, StringComparison.Ordinal));
        Assert.Equal(2, svg.Split("http").Length);
    }

    [Fact]
    public void Embedded_font_is_the_shipped_file_once_for_each_weight_in_use()
    {
        string svg = SvgWriter.Write(Chamber, SvgOptions.StandAlone(Palette.Light));

        Assert.Equal(3, svg.Split("@font-face").Length);
        Assert.Contains(Convert.ToBase64String(ShippedFonts.Faces(FontWeight.Bold)[0].Bytes.AsSpan()), svg, StringComparison.Ordinal);
        Assert.Contains(Convert.ToBase64String(ShippedFonts.Faces(FontWeight.Regular)[0].Bytes.AsSpan()), svg, StringComparison.Ordinal);
    }

    [Fact]
    public void In_a_page_every_colour_is_a_property_of_the_page()
    {
        XElement root = XDocument.Parse(SvgWriter.Write(Chamber, SvgOptions.InPage("p"))).Root!;

        IEnumerable<string> colours = root.Descendants()
            .SelectMany(element => element.Attributes())
            .Where(attribute => attribute.Name.LocalName is "fill" or "stroke" && attribute.Value != "none")
            .Select(attribute => attribute.Value);

        Assert.All(colours, colour => Assert.Matches("^var\\(--rostrum-[a-z-]+,#[0-9a-f]{6}\\)$", colour));
        Assert.DoesNotContain("style", root.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Ids_are_unique_and_begin_with_the_prefix()
    {
        XElement root = XDocument.Parse(SvgWriter.Write(Chamber, SvgOptions.InPage("lesson-3"))).Root!;
        string[] ids = [.. root.Descendants().Select(element => element.Attribute("id")?.Value).OfType<string>()];

        Assert.Equal(ids.Distinct(), ids);
        Assert.All(ids, id => Assert.StartsWith("lesson-3-", id, StringComparison.Ordinal));
        Assert.Contains("lesson-3-chamber-C3", ids);
    }

    [Fact]
    public void Small_chamber_looks_as_approved() => Snapshots.Match(
        SvgWriter.Write(TablePainter.Paint(SmallChamber), new SvgOptions { Palette = Palette.Dark }), "small-chamber");

    // XML 1.0, production [2] Char.
    [Theory]
    [InlineData("a\u0001b", "a\uFFFDb")]
    [InlineData("a\uFFFEb", "a\uFFFDb")]
    [InlineData("a\tb\nc", "a b c")]
    [InlineData("Ł \uD83D\uDE00", "Ł \uD83D\uDE00")]
    public void Characters_that_xml_forbids_are_replaced(string written, string read) => Assert.Equal(
        read,
        XDocument.Parse(SvgWriter.Write(new Scene(1, 1, written, "", []))).Root!.Element(Svg + "title")!.Value);

    private static TablePicture SmallChamber
    {
        get
        {
            BoardPicture board = KilnNight.Chamber("- .", "pa jc!");
            return KilnNight.Table(board) with { Marks = [new SpaceMark(board.At("B2"), MarkKind.Good, "2")], Names = SpaceNames.None };
        }
    }

    private static string In(CultureInfo culture, Func<string> write)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = culture;
        try
        {
            return write();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
