using CsCheck;
using Rostrum.Testing;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Captions.Words;
using Rostrum.Lessons.Captions.Writing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Captions;

/// <summary>What is written is read back as it was.</summary>
public sealed class CaptionWriterTests
{
    [Fact]
    public void Webvtt_is_written_as_the_standard_asks() => Assert.Equal(
        "WEBVTT - Kiln Night\n\nNOTE x\n\n1\n00:00:01.000 --> 123:00:02.005 vertical:rl line:-1,end position:2.5%,line-left size:40% align:left\n<i>Glaze it.</i>\n",
        CaptionWriter.Write(new CaptionFile(CaptionFormat.WebVtt, " - Kiln Night",
        [
            new CaptionNote("NOTE x"),
            new Cue("1", TimeSpan.FromSeconds(1), new TimeSpan(0, 123, 0, 2, 5), CueSettings.None with
            {
                Vertical = CueVertical.GrowingLeft,
                Line = -1,
                LineAlign = CueLineAlign.End,
                Position = 2.5,
                PositionAlign = CuePositionAlign.LineLeft,
                SizePercent = 40,
                Align = CueAlign.Left,
            }, "<i>Glaze it.</i>"),
        ])));

    [Fact]
    public void Subrip_is_written_with_numbers_commas_and_blank_lines() => Assert.Equal(
        "1\n00:00:01,000 --> 00:00:02,005 X1:1 X2:2 Y1:3 Y2:4\na\nb\n\n2\n00:00:03,000 --> 00:00:04,000\n",
        CaptionWriter.Write(CaptionFile.Of(CaptionFormat.SubRip,
        [
            new Cue("x", TimeSpan.FromSeconds(1), TimeSpan.FromMilliseconds(2005), CueSettings.None with { Rectangle = new CueRectangle(1, 2, 3, 4) }, "a\r\n\r\nb"),
            new Cue("", TimeSpan.FromSeconds(3), TimeSpan.FromSeconds(4), CueSettings.None, ""),
        ])));

    [Fact]
    public void Webvtt_written_is_read_back_with_everything() => CaptionGen.WebVtt.Hold(AssertReadBack);

    [Fact]
    public void Subrip_written_is_read_back_with_everything() => CaptionGen.SubRip.Hold(AssertReadBack);

    // Anything goes: what was read from it, however odd, is what is read from its copy.
    [Fact]
    public void Whatever_was_read_is_read_back() => CaptionGen.Soup.Where(s => !Read(s).IsRefused).Hold(content =>
    {
        CaptionFile file = Read(content);

        CaptionFile again = Read(CaptionWriter.Write(file));

        Assert.Equal(Kept(file), Kept(again));
        Assert.Equal(CaptionWriter.Write(file), CaptionWriter.Write(again));
    });

    [Fact]
    public void Lines_that_could_not_be_read_become_a_note() => Assert.Equal(
        "WEBVTT\n\nNOTE\n0:01.000 --&gt; 0:02.000\nlost\n\n00:00:01.000 --> 00:00:02.000\na\n",
        CaptionWriter.Write(Read("WEBVTT\n\n0:01.000 --> 0:02.000\nlost\n\n00:01.000 --> 00:02.000\na\n")));

    [Fact]
    public void Style_behind_a_cue_is_written_before_all_cues() => Assert.Equal(
        "WEBVTT\n\nSTYLE\n::cue {}\n\n00:00:01.000 --> 00:00:02.000\na\n",
        CaptionWriter.Write(new CaptionFile(CaptionFormat.WebVtt, "",
            [new Cue("", TimeSpan.FromSeconds(1), TimeSpan.FromSeconds(2), CueSettings.None, "a"), new CaptionStyle("::cue {}")])));

    [Fact]
    public void An_arrow_in_the_words_begins_no_caption()
    {
        CaptionFile file = CaptionFile.Of(CaptionFormat.WebVtt, [new Cue("a\nb", TimeSpan.Zero, TimeSpan.FromSeconds(2), CueSettings.None, "left --> right\n\n00:01.000 --&gt; 00:02.000")]);

        Cue read = Assert.Single(Read(CaptionWriter.Write(file)).Cues);
        Cue inSubRip = Assert.Single(Read(CaptionWriter.Write(file.As(CaptionFormat.SubRip))).Cues);

        Assert.Equal(("a b", "left --&gt; right\n00:01.000 --&gt; 00:02.000"), (read.Id, read.Text));
        Assert.Equal("left --> right\n00:01.000 → 00:02.000", inSubRip.Text);
    }

    [Theory]
    [InlineData("<v Anna><c.loud>Glaze <i>it</i></c> &amp; fire<00:01.000> it", "Glaze <i>it</i> & fire it", "Glaze <i>it</i> &amp; fire it")]
    [InlineData("<ruby>窯<rt>kama</rt></ruby>", "窯", "窯")]
    public void Tags_that_the_other_format_does_not_know_are_left_out(string webVtt, string subRip, string back)
    {
        CaptionFile file = CaptionFile.Of(CaptionFormat.WebVtt, [new Cue("", TimeSpan.Zero, TimeSpan.FromSeconds(2), CueSettings.None, webVtt)]);

        Assert.Equal((subRip, back), (file.As(CaptionFormat.SubRip).Cues[0].Text, file.As(CaptionFormat.SubRip).As(CaptionFormat.WebVtt).Cues[0].Text));
    }

    [Fact]
    public void Words_and_tags_of_subrip_stay_the_same_in_webvtt() => CaptionGen.SubRip.Hold(file =>
        Assert.Equal(SpokenWords.Of(file), SpokenWords.Of(file.As(CaptionFormat.WebVtt))));

    private static void AssertReadBack(CaptionFile file)
    {
        CaptionFile read = Read(CaptionWriter.Write(file));

        Assert.Equal(file.Format, read.Format);
        Assert.Equal(file.Header, read.Header);
        Assert.Equal(file.Blocks, read.Blocks.Select(b => b with { Line = 0 }));
    }

    private static IEnumerable<CaptionBlock> Kept(CaptionFile file) => file.Format == CaptionFormat.WebVtt
        ? file.Blocks.Select(b => b is UnreadBlock unread ? new CaptionNote($"NOTE\n{unread.Text.Replace("-->", "--&gt;", StringComparison.Ordinal)}") : b with { Line = 0 })
        : file.Cues.Select(c => c with { Id = "", Line = 0 });

    private static CaptionFile Read(string content) => CaptionReader.Read(new SourceText("lesson", content));
}
