using System.Collections.Immutable;
using System.Text;
using System.Xml.Linq;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Captions.Words;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Film.Timelines;
using Rostrum.Lessons.Pack;
using Rostrum.Lessons.Tests.Page;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Pack;

public sealed class MadePackTests
{
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");
    private static readonly LessonReport Report = LessonCheck.Of(Kiln)!;

    private static readonly CaptionFile Captions = CaptionReader.Read(new SourceText("film.vtt", Spoken()));

    private static readonly MadePack Pack = LessonPack.Make(Kiln, Report, new FinishedFilm { Captions = Captions, CaptionsName = "film.vtt" });

    [Fact]
    public void A_pack_holds_what_goes_to_the_lens_the_editor_the_platform_and_the_viewers()
    {
        string[] names = [.. Pack.Files.Select(f => f.Name).Where(n => !n.StartsWith("pictures/", StringComparison.Ordinal))];

        Assert.Equal(
            [
                "index.html", "lesson.html", "player-aid.html", "hand-out-a4.pdf", "hand-out-letter.pdf", "teleprompter.html", "notes.md", "description.txt", "chapters.txt",
                "chapters.ffmeta", "chapters.xml", "shots.otio", "captions.vtt", "captions.srt",
            ],
            names);
    }

    [Fact]
    public void The_first_page_leads_to_every_file()
    {
        string[] names = [.. Pack.Files.Select(f => f.Name)];
        string[] led = [.. Parsed.Html(Text("index.html")).Descendants("a").Select(a => a.Attribute("href")!.Value)];

        Assert.All(names.Where(n => n != "index.html"), n => Assert.Contains(led, l => l == n || (l.EndsWith('/') && n.StartsWith(l, StringComparison.Ordinal))));
        Assert.All(led, l => Assert.Contains(names, n => n.StartsWith(l, StringComparison.Ordinal)));
    }

    [Fact]
    public void The_first_page_of_a_film_that_is_not_shot_tells_of_no_captions() =>
        Assert.DoesNotContain("captions.vtt", Encoding.UTF8.GetString(LessonPack.Of(Kiln, Report)[0].Bytes.AsSpan()), StringComparison.Ordinal);

    [Theory]
    [InlineData("captions.vtt")]
    [InlineData("captions.srt")]
    public void Captions_keep_the_speech_word_for_word(string name) =>
        Assert.Equal(SpokenWords.Of(Captions).Select(w => w.Text), SpokenWords.Of(CaptionReader.Read(new SourceText(name, Text(name)))).Select(w => w.Text));

    [Fact]
    public void Captions_keep_the_figures_of_the_guide()
    {
        CaptionFile written = CaptionReader.Read(new SourceText("captions.vtt", Text("captions.vtt")));
        string[][] lines = [.. written.Cues.Select(c => CueText.Read(c.Text, CaptionFormat.WebVtt).Plain.Split('\n'))];

        Assert.All(lines, l => Assert.InRange(l.Length, 1, 2));
        Assert.All(lines.SelectMany(l => l), l => Assert.InRange(l.Length, 1, 42));
        Assert.All(written.Cues, c => Assert.InRange(c.Duration.TotalMilliseconds, 1, 7000));
        Assert.All(written.Cues.Skip(1).Zip(written.Cues), p => Assert.InRange((p.First.Start - p.Second.End).TotalMilliseconds, 80, double.MaxValue));
        Assert.Empty(written.Problems);
    }

    [Fact]
    public void All_forms_hold_the_same_chapters()
    {
        ChapterList list = Pack.Chapters.List;

        Assert.Equal(list.Chapters.Select(c => c.Title), ChapterReader.Read(new SourceText("a", Text("chapters.txt"))).List.Chapters.Select(c => c.Title));
        Assert.Equal(list.Chapters, ChapterReader.Read(new SourceText("a", Text("chapters.ffmeta"))).List.Chapters);
        Assert.Equal(list.Chapters, ChapterReader.Read(new SourceText("a", Text("chapters.xml"))).List.Chapters);
    }

    [Fact]
    public void The_shot_list_names_pictures_that_lie_in_the_pack()
    {
        Timeline timeline = OtioReader.Read("shots.otio", Bytes("shots.otio")).Timeline!;
        string[] media = [.. timeline.Tracks.SelectMany(t => t.Items).OfType<TrackItem.Clip>().Select(c => Uri.UnescapeDataString(c.Media!))];

        Assert.Equal(12, media.Length);
        Assert.All(media, m => Assert.Contains(Pack.Files, f => f.Name == m));
        Assert.NotEmpty(timeline.Tracks[0].Markers);
    }

    [Fact]
    public void A_refused_pack_has_no_files()
    {
        MadePack refused = LessonPack.Make(Kiln, LessonCheck.Of(Kiln, new SourceText("lesson.md", "")), FinishedFilm.None);

        Assert.Equal((true, "ROS0666"), (refused.Chapters.IsRefused, Assert.Single(refused.Chapters.Problems).Id));
        Assert.Empty(refused.Files);
    }

    [Fact]
    public void A_lesson_of_one_topic_has_a_pack_and_is_told_that_no_platform_shows_its_chapter()
    {
        MadePack pack = LessonPack.Make(Kiln, LessonCheck.Of(Kiln, new SourceText("lesson.md", "## A\n\nHello.\n")), FinishedFilm.None);

        Assert.Contains("ROS0671", pack.Chapters.Problems.Select(p => p.Id));
        Assert.Contains("lesson.html", pack.Files.Select(f => f.Name));
    }

    [Fact]
    public void Pages_of_the_pack_run_no_script_but_that_of_the_teleprompter()
    {
        string[] pages = [.. Pack.Files.Select(f => f.Name).Where(n => n.EndsWith(".html", StringComparison.Ordinal))];

        Assert.Equal(["teleprompter.html"], pages.Where(n => Parsed.Html(Text(n)).Descendants("script").Any()));
        Assert.All(pages, n => Assert.Contains(Parsed.Html(Text(n)).Descendants("meta"), m => m.Attribute("content")?.Value.StartsWith("default-src 'none'", StringComparison.Ordinal) == true));
    }

    // The lesson as a machine would caption it: 150 words a minute, eleven words a caption, without regard to sentences.
    private static string Spoken()
    {
        string[] words = [.. Report.Lesson.Topics.SelectMany(t => t.Blocks).SelectMany(b => b.Passages).SelectMany(p => Prose.WordsOf(string.Concat(p.Select(r => r.Words))))];
        var text = new StringBuilder("WEBVTT\n");
        int said = 0;
        foreach (string[] few in words.Chunk(11))
        {
            text.Append('\n').Append(Time(said)).Append(" --> ").Append(Time(said += few.Length)).Append('\n').AppendJoin(' ', few).Append('\n');
        }

        return text.ToString();
    }

    private static string Time(int words) => TimeSpan.FromMilliseconds(words * 400).ToString(@"hh\:mm\:ss\.fff", System.Globalization.CultureInfo.InvariantCulture);

    private static byte[] Bytes(string name) => [.. Pack.Files.Single(f => f.Name == name).Bytes];

    private static string Text(string name) => Encoding.UTF8.GetString(Bytes(name));
}
