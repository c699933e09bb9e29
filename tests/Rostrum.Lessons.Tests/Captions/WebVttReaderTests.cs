using System.Globalization;
using System.Text.Json;
using Rostrum.Lessons.Captions;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Captions;

/// <summary>WebVTT files as the test suite of the web platform reads them. Source: <c>Reference/webvtt_cases.json</c>.</summary>
public sealed class WebVttReaderTests
{
    public static TheoryData<string> Cases => [.. CaptionCases.WebVtt.GetProperty("cases").EnumerateArray().Select(c => c.Text("name"))];

    public static TheoryData<string, bool> Signatures =>
        [.. CaptionCases.WebVtt.GetProperty("signatures").GetProperty("cases").EnumerateArray().Select(c => (c.Text("file"), c.GetProperty("accepted").GetBoolean()))];

    [Theory]
    [MemberData(nameof(Cases))]
    public void File_gives_the_published_cues(string name)
    {
        JsonElement published = CaptionCases.WebVtt.GetProperty("cases").EnumerateArray().Single(c => c.Text("name") == name);
        JsonElement expected = published.GetProperty("expect");

        CaptionFile file = Read(published.Text("vtt") ?? CaptionCases.SixtyHours);

        Assert.Equal(expected.GetProperty("cue_count").GetInt32(), file.Cues.Length);
        Assert.Equal(CaptionFormat.WebVtt, file.Format);
        string[] wanted = expected.TryGetProperty("cues", out JsonElement cues) ? [.. cues.EnumerateArray().Select(Wanted)] : [];
        Assert.Equal(wanted, wanted.Zip(file.Cues, (w, cue) => Told(cue, w)));
    }

    [Theory]
    [MemberData(nameof(Signatures))]
    public void Signature_decides_whether_a_file_is_read(string content, bool accepted)
    {
        CaptionFile file = Read(content);

        // None of these holds a cue; an accepted one is told just that.
        Assert.Equal(accepted ? "ROS0653" : "ROS0652", Assert.Single(file.Problems).Id);
    }

    [Fact]
    public void Header_notes_styles_and_regions_are_kept_in_their_order()
    {
        CaptionFile file = Read("WEBVTT - Kiln Night\nKind: captions\nLanguage: en\n\nNOTE made at\nthe bench\n\nSTYLE \n::cue { color: lime }\n\nREGION\nid:low width:40% lines:2\nregionanchor:0%,100% viewportanchor:10%,90% scroll:up\n\nfirst\n00:01.000 --> 00:02.000 region:low\nGlaze it.\n\nSTYLE\nlate\n");

        Assert.Equal(" - Kiln Night\nKind: captions\nLanguage: en", file.Header);
        Assert.Equal(
            [
                new CaptionNote("NOTE made at\nthe bench") { Line = 5 },
                new CaptionStyle("::cue { color: lime }") { Line = 8 },
                new CaptionRegion("id:low width:40% lines:2\nregionanchor:0%,100% viewportanchor:10%,90% scroll:up") { Line = 11, Id = "low", WidthPercent = 40, Lines = 2, PinnedTo = new PercentPoint(10, 90), ScrollsUp = true },
                new Cue("first", TimeSpan.FromSeconds(1), TimeSpan.FromSeconds(2), CueSettings.None with { Region = "low" }, "Glaze it.") { Line = 16 },
                new UnreadBlock("STYLE\nlate") { Line = 19 },
            ],
            file.Blocks);
    }

    // "WebVTT cue timings and settings parsing": what moves a cue by itself takes it out of its region.
    [Theory]
    [InlineData("region:low", "low")]
    [InlineData("region:low line:1", null)]
    [InlineData("line:1 region:low", "low")]
    [InlineData("region:low size:50%", null)]
    [InlineData("region:low size:100%", "low")]
    [InlineData("region:low vertical:rl", null)]
    [InlineData("region:other", null)]
    public void Region_of_a_cue_follows_the_standard(string settings, string? region) =>
        Assert.Equal(region, Assert.Single(Read($"WEBVTT\n\nREGION\nid:low\n\n00:01.000 --> 00:02.000 {settings}\nx").Cues).Settings.Region);

    [Fact]
    public void A_number_without_end_and_a_time_beyond_all_videos_are_read_in_seconds()
    {
        string digits = new('9', 200_000);

        CaptionFile file = Read($"WEBVTT\n\n{digits}:00:00.000 --> 00:00:01.000\nx\n\n00:00.000 --> 00:01.000 line:{digits} size:{digits}%\nx\n");

        Assert.Equal(CueSettings.None, Assert.Single(file.Cues).Settings);
        Assert.Equal("ROS0655", Assert.Single(file.Problems).Id);
    }

    private static CaptionFile Read(string content) => CaptionReader.Read(new SourceText("lesson.vtt", content));

    private static string Wanted(JsonElement cue) => string.Join("; ", cue.EnumerateObject().Select(p => $"{p.Name}={Value(p.Value)}"));

    private static string Value(JsonElement value) => value.ValueKind == JsonValueKind.Number ? Number(value.GetDouble()) : value.ToString();

    private static string Number(double? number) => number?.ToString("R", CultureInfo.InvariantCulture) ?? "auto";

    // What the cue says about the things that the case speaks of.
    private static string Told(Cue cue, string wanted) => string.Join("; ", wanted.Split("; ").Select(p => p.Split('=')[0]).Select(n => $"{n}={Told(cue, cue.Settings, n)}"));

    private static string Told(Cue cue, CueSettings settings, string name) => name switch
    {
        "text" => cue.Text,
        "id" => cue.Id,
        "start" => Number(cue.Start.TotalSeconds),
        "end" => Number(cue.End.TotalSeconds),
        "position" => Number(settings.Position),
        "position_align" => settings.PositionAlign switch { CuePositionAlign.LineLeft => "line-left", CuePositionAlign.LineRight => "line-right", var other => other.ToString().ToLowerInvariant() },
        "line" => Number(settings.Line),
        "snap_to_lines" => settings.SnapsToLines.ToString(),
        "line_align" => settings.LineAlign.ToString().ToLowerInvariant(),
        "align" => settings.Align.ToString().ToLowerInvariant(),
        "size" => Number(settings.SizePercent),
        "vertical" => settings.Vertical switch { CueVertical.GrowingLeft => "rl", CueVertical.GrowingRight => "lr", _ => "" },
        _ => throw new NotSupportedException(name),
    };
}
