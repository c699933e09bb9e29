using System.Text;
using CsCheck;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Timelines;
using Rostrum.Lessons.Pack;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film.Timelines;

/// <summary>The shots of a lesson as a timeline.</summary>
public sealed class ShotListTests
{
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");

    private static readonly LessonReport Report = LessonCheck.Of(Kiln)!;

    // 60 words a minute: a word is a second.
    private const string Script = """
        ---
        title: Kiln
        pace: 60
        ---
        ## The aim

        one two three four

        ![A chamber](<position:E1 show bowls>)

        Bowls make [five](tally:E1/bowls) points and [four](fact:glazes) glazes

        ## Your turn

        On B2: [not allowed](<rule:copper-ash-near/place copper jug on B2>)

        ![Nothing](position:nowhere)
        """;

    private static readonly Timeline Small = ShotList.Of(LessonCheck.Of(Kiln, new SourceText("lesson.md", Script)));

    [Fact]
    public void Clips_and_gaps_follow_each_other_in_frames() => Assert.Equal(
        ["The aim 100", "A chamber 175", "Your turn 100", "Nothing 75"],
        Small.Tracks.Single().Items.Select(i => i switch
        {
            TrackItem.Clip clip => $"{clip.Name} {clip.Range!.Value.Duration.Value}",
            TrackItem.Gap gap => $"{gap.Name} {gap.Range!.Value.Duration.Value}",
            _ => "",
        }));

    [Fact]
    public void A_clip_names_position_clause_line_and_picture()
    {
        TrackItem.Clip[] clips = [.. Small.Tracks.Single().Items.OfType<TrackItem.Clip>()];

        Assert.Equal(("E1", "bowls", 9.0), (About(clips[0].Metadata).WordsOf("position"), About(clips[0].Metadata).WordsOf("clause"), About(clips[0].Metadata).NumberOf("line")));
        Assert.Equal(["pictures/E1-bowls.png", null], clips.Select(c => c.Media));
    }

    [Fact]
    public void Call_outs_stand_at_their_words_with_page_and_arrows_and_what_is_wrong_is_a_pick_up()
    {
        Marker[] markers = [.. Small.Tracks.Single().Markers];

        Assert.Equal(["five GREEN 150+25", "pick-up: four RED 225+25", "not allowed GREEN 325+50", "pick-up: Nothing RED 375+75"], markers.Select(m => $"{m.Name} {m.Colour} {m.Range.Start.Value}+{m.Range.Duration.Value}"));
        Assert.StartsWith("Rulebook, page 8; arrows to ", markers[0].Comment, StringComparison.Ordinal);
        Assert.StartsWith("The lesson says 'four', and the sheet says 3.", markers[1].Comment, StringComparison.Ordinal);
        Assert.Equal("Rulebook, page 5; arrow to A2", markers[2].Comment);
        Assert.Equal("call-out", About(markers[0].Metadata).WordsOf("kind"));
    }

    [Fact]
    public void The_demo_lesson_gives_a_clip_for_each_shot_and_a_marker_for_each_statement()
    {
        Track track = ShotList.Of(Report).Tracks.Single();

        Assert.Equal(Report.Shots.Select(s => s.Shot.Caption), track.Items.OfType<TrackItem.Clip>().Select(c => c.Name));
        Assert.Equal(Report.Claims.Select(c => c.Claim.Words.ReplaceLineEndings(" ")), track.Markers.Select(m => About(m.Metadata).WordsOf("said")));
        Assert.Empty(track.Items.OfType<TrackItem.Clip>().Select(c => c.Media).Except(PictureNames.Of(Report).Select(p => $"{p.Name}.png")));
    }

    [Theory]
    [InlineData(24)]
    [InlineData(25)]
    [InlineData(30000 / 1001.0)]
    [InlineData(60)]
    public void At_every_rate_the_track_is_as_long_as_the_film(double rate)
    {
        Track track = ShotList.Of(Report, rate).Tracks.Single();

        double frames = track.Items.Sum(i => (i as TrackItem.Clip)?.Range?.Duration.Value ?? ((TrackItem.Gap)i).Range!.Value.Duration.Value);

        Assert.Equal(RationalTime.Of(LessonClock.Of(Report.Lesson).Length, rate).Value, frames);
    }

    [Fact]
    public void A_shot_list_is_read_back_field_by_field()
    {
        Timeline timeline = ShotList.Of(Report, 30000 / 1001.0);

        OtioFile read = OtioReader.Read("shots.otio", Encoding.UTF8.GetBytes(timeline.Write()));

        Assert.Empty(read.Problems);
        Assert.Equivalent(timeline, read.Timeline, strict: true);
        Assert.Equal(timeline.ToOtio(), read.Timeline!.ToOtio());
    }

    // Markers aside: the published files hold the newest version of them only.
    [Fact]
    public void Things_have_the_names_that_published_timelines_give_them()
    {
        const string Folder = "tests/Rostrum.Lessons.Tests/Reference/otio";
        HashSet<string> published = [.. TestFiles.In(Folder, "*.otio").SelectMany(f => Things(OtioReader.Read(f, Encoding.UTF8.GetBytes(TestFiles.Read(f))).Root!)).Select(Names)];

        string[] ours = [.. Things(Small.ToOtio()).Select(Names).Where(n => !n.Contains("Marker", StringComparison.Ordinal)).Distinct()];

        Assert.Equal(9, ours.Length);
        Assert.Empty(ours.Except(published));
    }

    [Fact]
    public void Strange_words_and_numbers_are_read_back() => Gen.Select(FilmGen.Title, Gen.Double[0, 1e9], Gen.Double[0.1, 1000]).Hold((words, value, rate) =>
    {
        string name = OneLine.Of(words);
        var range = new TimeRange(new RationalTime(value, rate), new RationalTime(1, rate));
        var marker = new Marker(name, range, "RED", name, OtioValue.Record.Empty.With(name, name));
        var timeline = new Timeline(name, [new Track(name, "Video", [new TrackItem.Clip(name, range, name, [marker], OtioValue.Record.Empty), new TrackItem.Clip(name, null, null, [], OtioValue.Record.Empty), new TrackItem.Gap(name, range)], [marker], OtioValue.Record.Empty)], OtioValue.Record.Empty);

        Timeline read = OtioReader.Read("a.otio", Encoding.UTF8.GetBytes(timeline.Write())).Timeline!;

        Assert.Equal(timeline.ToOtio(), read.ToOtio());
        Assert.Equal([.. timeline.Tracks[0].Markers], read.Tracks[0].Markers);
    });

    [Theory]
    [InlineData(0)]
    [InlineData(-25)]
    [InlineData(1001)]
    public void A_rate_that_no_film_has_is_refused(double rate) => Assert.Throws<ArgumentOutOfRangeException>(() => ShotList.Of(Report, rate));

    private static IEnumerable<OtioValue.Record> Things(OtioValue value) => value switch
    {
        OtioValue.Record record => (record.Schema.Length > 0 ? [record] : Array.Empty<OtioValue.Record>()).Concat(record.Entries.SelectMany(e => Things(e.Value))),
        OtioValue.List list => list.Items.SelectMany(Things),
        _ => [],
    };

    private static string Names(OtioValue.Record thing) =>
        $"{thing.WordsOf(OtioValue.Record.SchemaName)}: {string.Join(' ', thing.Entries.Select(e => e.Name).Order(StringComparer.Ordinal))}";

    private static OtioValue.Record About(OtioValue.Record metadata) => metadata.RecordOf(ShotList.MetadataName)!;
}
