using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

public sealed class StyleSheetTests
{
    private static readonly string Css = PageStyle.ForLesson(PageAssets.None);

    [Fact]
    public void Dark_colours_are_for_screens_only() => Assert.Contains("@media screen and (prefers-color-scheme: dark)", Css, StringComparison.Ordinal);

    [Fact]
    public void Printed_slips_lie_open_and_are_never_cut()
    {
        string print = StyleSheets.Read("slips")[StyleSheets.Read("slips").IndexOf("@media print", StringComparison.Ordinal)..];

        Assert.Contains("break-inside: avoid", print, StringComparison.Ordinal);
        Assert.Contains(".slip::details-content { content-visibility: visible; block-size: auto; }", print, StringComparison.Ordinal);
    }

    [Fact]
    public void Slips_keep_an_edge_where_the_reader_chooses_the_colours() => Assert.Contains("(forced-colors: active)", Css, StringComparison.Ordinal);

    [Fact]
    public void Style_sheet_can_stand_in_a_page_that_is_read_as_xml() => Assert.DoesNotMatch("[<&]", Css);

    [Fact]
    public void Font_is_embedded_with_the_format_that_its_first_bytes_tell() =>
        Assert.Contains(
            "font-weight: 700; font-style: italic; font-display: block; src: url(data:font/woff2;base64,d09GMg==) format(\"woff2\");",
            PageStyle.ForLesson(new([new PageFont(700, true, [.. "wOF2"u8])])),
            StringComparison.Ordinal);

    [Fact]
    public void File_that_is_no_font_is_refused() =>
        Assert.Throws<ArgumentException>(() => PageStyle.ForLesson(new([new PageFont(400, false, [.. "<svg"u8])])));
}
