using System.Text.Json;
using CsCheck;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film.Chapters;

/// <summary>Metadata files of FFmpeg. Source: <c>Reference/ffmetadata_example.txt</c> and <c>ffmetadata_rules.json</c>.</summary>
public sealed class FfMetadataTests
{
    private const string Folder = "tests/Rostrum.Lessons.Tests/Reference";

    [Fact]
    public void Published_example_gives_what_is_published_with_it()
    {
        JsonElement expected = JsonDocument.Parse(TestFiles.Read($"{Folder}/ffmetadata_rules.json")).RootElement.GetProperty("expected_parse_of_example");
        JsonElement chapter = expected.GetProperty("chapters")[0];

        FfMetadata read = Read(TestFiles.Read($"{Folder}/ffmetadata_example.txt"));

        Assert.Equal(Tags(expected.GetProperty("global")), read.Tags);
        Assert.Equal(
            ([.. chapter.GetProperty("timebase").EnumerateArray().Select(n => n.GetInt32())], chapter.GetProperty("start").GetInt64(), chapter.GetProperty("end").GetInt64(), chapter.GetProperty("title").GetString()),
            ((int[])[read.Sections[0].Numerator, read.Sections[0].Denominator], read.Sections[0].Start, read.Sections[0].End!.Value, read.Sections[0].Title),
            (a, b) => a.Item1.SequenceEqual(b.Item1) && (a.Item2, a.Item3, a.Item4) == (b.Item2, b.Item3, b.Item4));
        Assert.Equal(Tags(expected.GetProperty("streams")[0]), Assert.Single(read.Streams));
        Assert.Empty(read.Chapters.Problems);
    }

    [Fact]
    public void Chapters_are_written_with_base_end_and_escapes() => Assert.Equal(
        ";FFMETADATA1\ntitle=Kiln \\=\\; Night\n[CHAPTER]\nTIMEBASE=1/1000\nSTART=0\nEND=1500\ntitle=a \\#1\n[CHAPTER]\nTIMEBASE=1/1000\nSTART=1500\nEND=9000\ntitle=b\\\\ \n",
        FfMetadataWriter.Write(new ChapterList([Of(0, "a #1"), Of(1500, "b\\")], TimeSpan.FromSeconds(9)), [new FfTag("title", "Kiln =; Night")]));

    [Fact]
    public void Written_files_are_read_back() => FilmGen.Ordered.Hold(list => Assert.Equal(list, Read(FfMetadataWriter.Write(list, [])).Chapters.List));

    [Fact]
    public void Times_running_backwards_are_put_in_order() => FilmGen.Any.Hold(list =>
        Assert.Equal(list with { Chapters = [.. list.Ordered] }, Read(FfMetadataWriter.Write(list, [])).Chapters.List));

    // Defaults and forms: what FFmpeg's own reader takes; times without a base are nanoseconds there.
    [Theory]
    [InlineData("START=1500000000\ntitle=a", 1500)]
    [InlineData("TIMEBASE=1/90000\nSTART=90000\nEND=90001\ntitle=a", 1000)]
    [InlineData("TIMEBASE=1001/30000\nSTART=30\ntitle=a", 1001)]
    [InlineData("title=a\nEND=3\nSTART=2\nTIMEBASE=1/1", 2000)]
    [InlineData("TIMEBASE = 1/1000\nTIMEBASE=1/1000\nSTART=7\r\n\r\n;note\n#note\ntitle=a", 7)]
    public void Chapter_times_are_read_in_any_base(string lines, long milliseconds) =>
        Assert.Equal([Of(milliseconds, "a")], Read($";FFMETADATA1\n[CHAPTER]\n{lines}\n").Chapters.List.Chapters);

    [Theory]
    [InlineData("[CHAPTER]\nTIMEBASE=1/0\nSTART=0\n", "ROS0680 This chapter is left out: its times cannot be read.")]
    [InlineData("[CHAPTER]\nTIMEBASE=1/1000\nSTART=-5\n", "ROS0680 This chapter is left out: its times cannot be read.")]
    [InlineData("[CHAPTER]\nTIMEBASE=1/1000\n", "ROS0680 This chapter is left out: its times cannot be read.")]
    [InlineData("[CHAPTER]\nTIMEBASE=2147483647/1\nSTART=9223372036854775807\n", "ROS0680 This chapter is left out: its times cannot be read.")]
    [InlineData("no tag\\=here\n", "ROS0680 'no tag\\=here' is left out: it is no name with '=' and a value.")]
    public void What_cannot_be_read_is_told_and_left_out(string lines, string told)
    {
        FfMetadata read = Read($";FFMETADATA1\n{lines}");

        Assert.Equal(told, string.Join("; ", read.Chapters.Problems.Select(p => $"{p.Id} {p.Message}")));
        Assert.Empty(read.Sections);
    }

    [Fact]
    public void A_file_without_its_signature_is_refused() =>
        Assert.Equal(("ROS0679", true), (Assert.Single(Read("title=x\n").Chapters.Problems).Id, Read("title=x\n").Chapters.IsRefused));

    [Fact]
    public void Any_text_behind_the_signature_is_read_to_its_end() => FilmGen.Title.Array[0, 12].Select(lines => string.Join('\n', lines)).Hold(text =>
        Assert.All(Read($";FFMETADATA1\n[CHAPTER]\nSTART=0\n{text}").Chapters.Problems, p => Assert.Equal("ROS0680", p.Id)));

    private static FfTag[] Tags(JsonElement expected) => [.. expected.EnumerateObject().Select(p => new FfTag(p.Name, p.Value.GetString()!))];

    private static Chapter Of(long milliseconds, string title) => new(TimeSpan.FromMilliseconds(milliseconds), title);

    private static FfMetadata Read(string content) => FfMetadataReader.Read(new SourceText("chapters.ffmeta", content));
}
