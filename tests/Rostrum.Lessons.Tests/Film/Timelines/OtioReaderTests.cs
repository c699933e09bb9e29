using System.Globalization;
using System.Text;
using System.Text.Json;
using CsCheck;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Timelines;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film.Timelines;

/// <summary>Timelines of others, as they are published. Source: <c>Reference/otio</c>.</summary>
public sealed class OtioReaderTests
{
    private const string Folder = "tests/Rostrum.Lessons.Tests/Reference/otio";

    private static readonly Gen<OtioValue> Leaf = Gen.OneOf<OtioValue>(
        FilmGen.Title.Select(Whole).Select(w => (OtioValue)new OtioValue.Text(w)),
        Gen.OneOf("0", "-0", "24", "24.0", "2.4e1", "1E+400", "0.10000000000000000000001", "12345678901234567890").Select(d => (OtioValue)new OtioValue.Number(d)),
        Gen.Bool.Select(b => (OtioValue)new OtioValue.Flag(b)),
        Gen.Const((OtioValue)new OtioValue.Nothing()));

    private static readonly Gen<OtioValue> Any = Gen.Recursive<OtioValue>((depth, deeper) => depth > 4 ? Leaf : Gen.OneOf(
        Leaf,
        deeper.Array[0, 3].Select(items => (OtioValue)new OtioValue.List([.. items])),
        Gen.Select(Gen.OneOf("name", "OTIO_SCHEMA", "a", "a", "", "🎲"), deeper).Array[0, 4].Select(e => (OtioValue)new OtioValue.Record([.. e]))));

    public static TheoryData<string> Samples => [.. TestFiles.In(Folder, "*.otio")];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Published_timeline_is_written_as_it_was_read(string name)
    {
        string published = TestFiles.Read(name);

        OtioFile read = Read(published);

        Assert.Empty(read.Problems);
        string written = OtioWriter.Write(read.Root!);
        Assert.True(JsonElement.DeepEquals(JsonDocument.Parse(published).RootElement, JsonDocument.Parse(written).RootElement));
        Assert.Equal(Marks(published), Marks(written));
        Assert.Equal(read.Root, Read(written).Root);
    }

    [Fact]
    public void All_published_timelines_are_tried() => Assert.Equal(6, Samples.Count);

    // Frames as they stand in the files: value / rate.
    [Theory]
    [InlineData("simple_cut", "Figure 1 - Simple Cut List", "Track-001 Video: Clip-001 3/24+3/24, Clip-002 2/24+6/24, Clip-003 0/24+4/24, Clip-004 all")]
    [InlineData("clip_example", "transition_test", "Track-001 Video: Gap A 0/24+8/24, Clip-001 3/24+3/24, Transition, Gap B 0/24+8/24")]
    public void Published_timeline_is_understood(string name, string called, string tracks)
    {
        Timeline timeline = Read(TestFiles.Read($"{Folder}/{name}.otio")).Timeline!;

        Assert.Equal((called, tracks), (timeline.Name, string.Join("; ", timeline.Tracks.Select(Told))));
    }

    [Fact]
    public void Markers_of_a_newer_version_are_understood()
    {
        Timeline timeline = Read(TestFiles.Read($"{Folder}/screening_example.otio")).Timeline!;

        Marker[] markers = [.. timeline.Tracks[0].Items.OfType<TrackItem.Clip>().SelectMany(c => c.Markers)];
        Assert.Equal(["ANIM FIX NEEDED RED 86438", "ANIM FIX NEEDED PINK 86462"], markers.Take(2).Select(m => $"{m.Name} {m.Colour} {m.Range.Start.Value}"));
    }

    [Fact]
    public void Whatever_a_timeline_holds_is_written_and_read_again_the_same() => Any.Hold(value =>
    {
        OtioValue.Record root = OtioValue.Record.Empty.With("anything", value).With(OtioValue.Record.SchemaName, "Timeline.9");

        Assert.Equal(root, Read(OtioWriter.Write(root)).Root);
    });

    [Theory]
    [InlineData("", "ROS0685 1,1")]
    [InlineData("{\"OTIO_SCHEMA\": \"Timeline.1\"", "ROS0685 1,29")]
    [InlineData("{\"OTIO_SCHEMA\": \"Timeline.1\",\n \"a\": NaN}", "ROS0685 2,7")]
    [InlineData("{\"OTIO_SCHEMA\": \"Timeline.1\", \"é\": \"\\ud800\"}", "ROS0685 1,44")]
    [InlineData("{\"OTIO_SCHEMA\": \"Timeline.1\"} x", "ROS0685 1,31")]
    [InlineData("{\"OTIO_SCHEMA\": \"Clip.1\"}", "ROS0686 1,1")]
    [InlineData("[1, 2]", "ROS0686 1,1")]
    [InlineData("{}", "ROS0686 1,1")]
    public void What_is_no_timeline_is_refused_with_its_place(string content, string told)
    {
        Diagnostic problem = Assert.Single(Read(content).Problems);

        Assert.Equal(told, $"{problem.Id} {problem.At.StartPosition}");
        Assert.Null(Read(content).Timeline);
    }

    [Fact]
    public void Bytes_that_are_no_letters_are_refused() =>
        Assert.Equal("ROS0685", Assert.Single(OtioReader.Read("a.otio", (byte[])[.. "{\"a\": \""u8, 0xFF, .. "\"}"u8]).Problems).Id);

    [Fact]
    public void Things_too_deep_in_each_other_are_refused() =>
        Assert.Equal("ROS0685", Assert.Single(Read(new string('[', 100_000)).Problems).Id);

    [Fact]
    public void A_file_of_50_MB_is_refused_unread() =>
        Assert.Equal("ROS0681", Assert.Single(OtioReader.Read("a.otio", 50L * 1024 * 1024, () => throw new InvalidOperationException("It was read.")).Problems).Id);

    [Fact]
    public void A_file_that_grew_is_refused() =>
        Assert.Equal("ROS0681", Assert.Single(OtioReader.Read("a.otio", 1, () => new byte[FilmFile.LargestBytes + 1]).Problems).Id);

    // Halves of characters cannot stand in a file.
    private static string Whole(string words) => Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(words));

    // Order of names and digits of numbers, which equal values alone do not show.
    private static string[] Marks(string json)
    {
        var marks = new List<string>();
        var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(json));
        while (reader.Read())
        {
            marks.Add($"{reader.TokenType} {Encoding.UTF8.GetString(reader.ValueSpan)}");
        }

        return [.. marks];
    }

    private static string Told(Track track) => $"{track.Name} {track.Kind}: {string.Join(", ", track.Items.Select(Told))}";

    private static string Told(TrackItem item) => item switch
    {
        TrackItem.Clip clip => $"{clip.Name} {Told(clip.Range)}",
        TrackItem.Gap gap => $"{gap.Name} {Told(gap.Range)}",
        TrackItem.Other other => other.Whole.Schema,
        _ => "",
    };

    private static string Told(TimeRange? range) =>
        range is { } r ? string.Create(CultureInfo.InvariantCulture, $"{r.Start.Value}/{r.Start.Rate}+{r.Duration.Value}/{r.Duration.Rate}") : "all";

    private static OtioFile Read(string content) => OtioReader.Read("a.otio", Encoding.UTF8.GetBytes(content));
}
