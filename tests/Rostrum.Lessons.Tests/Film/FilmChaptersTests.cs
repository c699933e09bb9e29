using System.Text;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Scripts;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film;

/// <summary>Which chapters a pack gets, and what it refuses. The examples of <c>heard</c> on the pages of the diagnostics: a lesson, then captions from <c>WEBVTT</c> on.</summary>
public sealed class FilmChaptersTests
{
    private static readonly Lesson Short = Read("## A\n\nOne two three.\n\n## B\n\nFour five.\n\n## C\n\nSix.\n");

    public static TheoryData<string, bool, string> Examples => [.. DiagnosticPage.ExamplesIn("heard").Select(e => (e.Id, e.IsRight, e.Content))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Lesson_and_captions_give_what_their_page_says(string id, bool isRight, string content)
    {
        var example = new PageExample(id, "heard", isRight, content);
        int captions = content.IndexOf("WEBVTT", StringComparison.Ordinal);
        FinishedFilm film = captions < 0 ? FinishedFilm.None : new FinishedFilm { Captions = CaptionReader.Read(new SourceText("film.vtt", content[captions..])), CaptionsName = "film.vtt" };

        Diagnostic[] problems = [.. FilmChapters.Of(Read(captions < 0 ? content : content[..captions]), film).Problems];

        // Examples are too short for a platform, which is told elsewhere.
        Assert.Equal(example.Expected, problems.Select(p => p.Id).Where(i => i is "ROS0664" or "ROS0665" or "ROS0666").Distinct());
        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In).Select(w => $"{p.Id}: {w}")));
    }

    [Fact]
    public void Given_chapters_stand_as_they_are_given_with_the_length_of_the_captions()
    {
        FinishedFilm film = Given("0:00 In short\n1:00 At length\n2:30 The end\n") with { Captions = CaptionReader.Read(new SourceText("film.srt", "1\n00:00:01,000 --> 00:03:20,000\nHello\n")) };

        FilmChapters found = FilmChapters.Of(Short, film);

        Assert.Equal((ChapterTimes.Given, TimeSpan.FromSeconds(200)), (found.Times, found.List.Length));
        Assert.Equal(["In short", "At length", "The end"], found.List.Chapters.Select(c => c.Title));
        Assert.Empty(found.Problems);
    }

    [Theory]
    [InlineData("0:00 A\n0:05 B\n0:30 C\n", "ROS0673")]
    [InlineData("0:00 A\n0:30 B\n", "ROS0671")]
    [InlineData("0:02 A\n0:30 B\n1:00 C\n", "ROS0670")]
    [InlineData("0:00 A\n0:50 B\n0:30 C\n", "ROS0672")]
    [InlineData("0:00 A\n0:30 B\n9:00 C\n", "ROS0676")]
    [InlineData("nothing of the sort\n", "ROS0671")]
    [InlineData("<Chapters><EditionEntry>", "ROS0682")]
    public void Given_chapters_that_no_platform_shows_are_refused(string times, string id)
    {
        FinishedFilm film = Given(times) with { Captions = CaptionReader.Read(new SourceText("film.srt", "1\n00:00:01,000 --> 00:03:20,000\nHello\n")) };

        FilmChapters found = FilmChapters.Of(Short, film);

        Assert.True(found.IsRefused);
        Assert.Contains(id, found.Problems.Select(p => p.Id));
    }

    [Theory]
    [InlineData("WEBVTT\n", "ROS0653")]
    [InlineData("not captions at all", "ROS0652")]
    public void Captions_that_cannot_be_read_are_refused(string captions, string id)
    {
        FilmChapters found = FilmChapters.Of(Short, new FinishedFilm { Captions = CaptionReader.Read(new SourceText("film.vtt", captions)) });

        Assert.Equal((true, id), (found.IsRefused, Assert.Single(found.Problems).Id));
    }

    [Fact]
    public void Corrections_stand_below_the_chapters_of_the_same_file()
    {
        GivenTimes given = GivenTimes.Read("description.txt", 1, () => Encoding.UTF8.GetBytes("Hello\n\nChapters\n0:00 A\n0:30 B\n1:00 C\n\nCorrections:\n0:40 Three, not four.\n\nSources\nRulebook\n"));

        Assert.Equal(3, given.Chapters.List.Chapters.Length);
        Assert.Equal("Three, not four.", Assert.Single(given.Corrections.Corrections).Words);
    }

    [Fact]
    public void A_file_that_is_too_long_is_refused_unread()
    {
        GivenTimes given = GivenTimes.Read("film.mp4", FilmFile.LargestBytes + 1L, () => throw new InvalidOperationException("It was read."));

        Assert.Equal("ROS0681", Assert.Single(given.Chapters.Problems).Id);
    }

    private static FinishedFilm Given(string times)
    {
        GivenTimes given = GivenTimes.Read("times.txt", 1, () => Encoding.UTF8.GetBytes(times));
        return new FinishedFilm { Chapters = given.Chapters, Corrections = given.Corrections };
    }

    private static Lesson Read(string words) => LessonReader.Read(new SourceText("lesson.md", words), new DiagnosticBag());
}
