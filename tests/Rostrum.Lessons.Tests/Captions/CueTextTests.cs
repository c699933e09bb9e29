using System.Collections.Immutable;
using System.Text.Json;
using Rostrum.Lessons.Captions;

namespace Rostrum.Lessons.Tests.Captions;

/// <summary>Tags and character references in the text of a cue.</summary>
public sealed class CueTextTests
{
    public static TheoryData<string, string> Trees =>
        [.. CaptionCases.WebVtt.GetProperty("cue_text_trees").GetProperty("cases").EnumerateArray().Select(c => (c.Text("in"), Published(c.GetProperty("tree"))))];

    public static TheoryData<string, string> References =>
    [
        .. Entities("same_in_old_and_current_spec").Select(c => (c.Text("in"), c.Text("text"))),
        .. Entities("changed_by_spec").Select(c => (c.Text("in"), c.Text("current_all_html_character_references"))),
    ];

    // HTML, "named character references" and "numeric character reference end state"; the cases are ours.
    public static TheoryData<string, string> Html => new()
    {
        { "a &notit; b", "a ¬it; b" },
        { "&notin;", "∉" },
        { "&NotEqualTilde;", "≂̸" },
        { "&CounterClockwiseContourIntegral;", "∳" },
        { "&#x80; &#150;", "€ –" },
        { "&#0; &#xD800; &#x110000; &#99999999999999;", "\uFFFD \uFFFD \uFFFD \uFFFD" },
        { "&#x1F3B2", "🎲" },
        { "&#; &#x; &#xg", "&#; &#x; &#xg" },
        { "Q&A &c. &unknown;", "Q&A &c. &unknown;" },
        { "&amp;lt;", "&lt;" },
    };

    public static TheoryData<string, string> Tags => new()
    {
        { "<v.loud Anna  Lee &amp; Co>Yes.</v> <i>no</i>", "[Voice .loud (Anna Lee & Co) Yes.] [Italic no]" },
        { "<c.yellow..bg_blue>x</c>", "[Class .yellow .bg_blue x]" },
        { "<lang de>Topf <b>rot</b></lang> x", "[Language (de) Topf [Bold rot]] x" },
        { "<00:00:01.200><c> word</c><00:01.5>", "@1.2[Class  word]" },
        { "<u>a</b>b", "[Underline ab]" },
        { "<rt>x</rt><blink>y</blink><>z", "xyz" },
        { "a<", "a" },
        { "<i", "[Italic ]" },
        { "<i\nx>y", "[Italic y]" },
    };

    public static TheoryData<string, string> SubRipTags => new()
    {
        { "<i>one</i>", "[Italic one]" },
        { "{\\an8}<font color=\"#ff0000\">red</font> {x}", "[Font (color=\"#ff0000\") red] {x}" },
        { "<B>a</I>b</B>c", "[Bold ab]c" },
        { "1 < 2 & <3 <c>x &amp; y", "1 < 2 & <3 <c>x &amp; y" },
    };

    [Theory]
    [MemberData(nameof(Trees))]
    public void Tree_is_the_published_one(string written, string tree) => Assert.Equal(tree, TreeOf(CueText.Read(written, CaptionFormat.WebVtt).Parts));

    [Theory]
    [MemberData(nameof(References))]
    [MemberData(nameof(Html))]
    public void Character_reference_means_what_html_says(string written, string text) => Assert.Equal(text, CueText.Read(written, CaptionFormat.WebVtt).Plain);

    [Theory]
    [MemberData(nameof(Tags))]
    public void Tags_of_webvtt_are_understood(string written, string told) => Assert.Equal(told, Told(CueText.Read(written, CaptionFormat.WebVtt).Parts));

    [Theory]
    [MemberData(nameof(SubRipTags))]
    public void Tags_of_subrip_are_understood(string written, string told) => Assert.Equal(told, Told(CueText.Read(written, CaptionFormat.SubRip).Parts));

    [Fact]
    public void Language_holds_for_the_tags_inside()
    {
        var outer = (CuePart.Span)Assert.Single(CueText.Read("<lang de><b>rot</b></lang>", CaptionFormat.WebVtt).Parts);

        Assert.Equal(("de", "de"), (outer.Language, ((CuePart.Span)Assert.Single(outer.Parts)).Language));
    }

    [Fact]
    public void Small_words_above_others_are_not_spoken() =>
        Assert.Equal("窯 burns", CueText.Read("<ruby>窯<rt>kama</rt></ruby> burns", CaptionFormat.WebVtt).Plain);

    // Each of these would exhaust the stack or the day.
    [Theory]
    [InlineData("<b>", "x")]
    [InlineData("<ruby><rt>", "x")]
    [InlineData("&", "x")]
    [InlineData("<", "x")]
    [InlineData("&#", "x")]
    [InlineData("</b>", "x")]
    public void Text_of_a_stranger_is_read_in_seconds(string written, string last) =>
        Assert.NotNull(CueText.Read(string.Concat(Enumerable.Repeat(written, 300_000)) + last, CaptionFormat.WebVtt).Plain);

    [Theory]
    [InlineData("<i>")]
    [InlineData("<font ")]
    [InlineData("{\\")]
    [InlineData("<")]
    public void Subrip_text_of_a_stranger_is_read_in_seconds(string written) =>
        Assert.NotNull(CueText.Read(string.Concat(Enumerable.Repeat(written, 300_000)), CaptionFormat.SubRip).Plain);

    private static IEnumerable<JsonElement> Entities(string column) => CaptionCases.WebVtt.GetProperty("cue_text_entities").GetProperty(column).EnumerateArray();

    private static string Published(JsonElement tree) => string.Join(", ", tree.EnumerateArray().Select(
        n => n.ValueKind == JsonValueKind.String ? n.GetString() : $"{n[0].GetString()}({Published(n[1])})"));

    private static string TreeOf(ImmutableArray<CuePart> parts) => string.Join(", ", parts.Select(p => p switch
    {
        CuePart.Words words => words.Text,
        CuePart.Span span => $"{(span.Tag == CueTag.RubyText ? "rt" : span.Tag == CueTag.Bold ? "b" : "ruby")}({TreeOf(span.Parts)})",
        _ => "?",
    }));

    private static string Told(ImmutableArray<CuePart> parts) => string.Concat(parts.Select(p => p switch
    {
        CuePart.Words words => words.Text,
        CuePart.Timestamp mark => FormattableString.Invariant($"@{mark.Time.TotalSeconds}"),
        CuePart.Span s => $"[{s.Tag}{string.Concat(s.Classes.Select(c => $" .{c}"))}{(s.Note.Length > 0 ? $" ({s.Note})" : "")} {Told(s.Parts)}]",
        _ => "",
    }));
}
