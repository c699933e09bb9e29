using System.Text;
using System.Text.Json;
using Rostrum.Lessons.Captions;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Captions;

/// <summary>SubRip files as players read them.</summary>
public sealed class SubRipReaderTests
{
    // Source: Reference/srt_conventions.json.
    public static TheoryData<string, string> Published =>
        [.. CaptionCases.SubRip.GetProperty("cases").EnumerateArray().Select(c => (c.Text("srt"), string.Join("; ", c.GetProperty("cues").EnumerateArray().Select(Wanted))))];

    public static TheoryData<string, string> Lenient => new()
    {
        { "1\n00:00:01.500 --> 00:00:02.000\na\n", "1.5-2 a" },
        { "1\n0:00:01,5 --> 0:00:02\na\n", "1.5-2 a" },
        { "01:02,250 --> 01:03,000\na\n", "62.25-63 a" },
        { "00:00:01,000-->00:00:02,000\na\n\n00:00:03,000 -> 00:00:04,000\nb", "1-2 a; 3-4 b" },
        { "1\r00:00:01,000 --> 00:00:02,000\ra\r\r2\r00:00:03,000 --> 00:00:04,000\rb\r", "1-2 a; 3-4 b" },
        { "1\n00:00:01,000 --> 00:00:02,000\na\n2\n00:00:03,000 --> 00:00:04,000\nb\n", "1-2 a; 3-4 b" },
        { "1\n00:00:01,000 --> 00:00:02,000\n\na\n\nb\n \n\n2\n00:00:03,000 --> 00:00:04,000\n42\n", "1-2 a\nb; 3-4 42" },
        { "\uFEFF7\n00:00:01,000 --> 00:00:02,000 align:start position:0%\na\n", "1-2 a" },
    };

    [Fact]
    public void Times_that_nobody_can_read_are_told_and_their_words_are_not_the_captions_before()
    {
        CaptionFile file = CaptionReader.Read("a.srt", Encoding.UTF8.GetBytes("1\n00:00:01,000 --> 00:00:02,000\none\n\n2\n00:99:03,000 --> 00:00:04,000\ntwo\n\n3\n00:00:05,000 --> 00:00:06,000\nthree\n"));

        Assert.Equal(["one", "three"], file.Cues.Select(c => c.Text));
        Assert.Equal(("ROS0655", 6), (Assert.Single(file.Problems).Id, file.Problems[0].At.Source.LineIndexOf(file.Problems[0].At.Start) + 1));
    }

    [Theory]
    [MemberData(nameof(Published))]
    [MemberData(nameof(Lenient))]
    public void File_gives_its_captions(string content, string told)
    {
        CaptionFile file = Read(content);

        Assert.Equal(told, string.Join("; ", file.Cues.Select(c => FormattableString.Invariant($"{c.Start.TotalSeconds}-{c.End.TotalSeconds} {c.Text}"))));
        Assert.Equal(CaptionFormat.SubRip, file.Format);
        Assert.Empty(file.Problems);
    }

    [Fact]
    public void Rectangle_number_and_line_are_kept() => Assert.Equal(
        new Cue("3", TimeSpan.FromSeconds(20), TimeSpan.FromSeconds(22), CueSettings.None with { Rectangle = new CueRectangle(40, 600, 20, 50) }, "placed") { Line = 2 },
        Assert.Single(Read("3\n00:00:20,000 --> 00:00:22,000 X1:40 X2:600 Y1:20 Y2:50\nplaced\n").Cues));

    [Fact]
    public void Lines_before_the_first_caption_are_told_and_kept()
    {
        CaptionFile file = Read("\nmade by hand\n\n1\n00:00:01,000 --> 00:00:02,000\na\n");

        Assert.Equal(new UnreadBlock("made by hand") { Line = 2 }, file.Blocks[0]);
        Assert.Equal(("ROS0655", "made by hand"), (Assert.Single(file.Problems).Id, file.Problems[0].At.Text));
    }

    private static string Wanted(JsonElement cue) => FormattableString.Invariant($"{cue[0].GetDouble()}-{cue[1].GetDouble()} {cue[2].GetString()}");

    private static CaptionFile Read(string content) => CaptionReader.Read(new SourceText("lesson.srt", content));
}
