using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Scripts;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film.Chapters;

/// <summary>One chapter for each topic of a lesson.</summary>
public sealed class LessonChaptersTests
{
    private static readonly string TwelveWords = string.Join(' ', Enumerable.Repeat("word", 12));

    private static readonly string Script = $"---\npace: 60\n---\n## The aim\n\n{TwelveWords}\n\n## Your turn\n\n{TwelveWords}\n\n## Scoring\n\nnine words.\n";

    [Fact]
    public void Chapters_begin_where_the_words_before_them_end()
    {
        PlacedChapters chapters = LessonChapters.Estimate(Read(Script));

        Assert.Equal("0:00 The aim\n0:12 Your turn\n0:24 Scoring\n", ChapterLines.Write(chapters.List));
        Assert.Equal(TimeSpan.FromSeconds(26), chapters.List.Length);
    }

    [Fact]
    public void A_short_topic_is_told_at_its_heading_as_a_warning_because_times_are_estimates()
    {
        Diagnostic problem = Assert.Single(LessonChapters.Estimate(Read(Script)).Check());

        Assert.Equal(("ROS0673", Severity.Warning, "'Scoring' lasts about 2 seconds, and a platform shows no chapters where one is shorter than 10."), (problem.Id, problem.Severity, problem.Message));
        Assert.Equal("## Scoring", problem.At.Text);
    }

    [Theory]
    [InlineData(28, "ROS0673")]
    [InlineData(40, "ROS0677")]
    [InlineData(20, "ROS0676")]
    public void An_estimate_may_be_a_tenth_off_before_it_is_told(int videoSeconds, string told) =>
        Assert.Contains(told, LessonChapters.Estimate(Read(Script)).Check(TimeSpan.FromSeconds(videoSeconds)).Select(p => p.Id).Take(1));

    [Fact]
    public void Given_times_are_taken_as_they_are()
    {
        PlacedChapters chapters = LessonChapters.At(Read(Script), [TimeSpan.Zero, TimeSpan.FromSeconds(40), TimeSpan.FromSeconds(30)], null);

        Assert.Equal(["The aim", "Your turn", "Scoring"], chapters.List.Chapters.Select(c => c.Title));
        Assert.Equal("ROS0672", Assert.Single(chapters.Check()).Id);
        Assert.Throws<ArgumentException>(() => LessonChapters.At(Read(Script), [], null));
    }

    [Fact]
    public void A_lesson_without_topics_is_told_to_have_no_chapters() =>
        Assert.Equal("There are no chapters, and a platform shows none where there are fewer than three.", Assert.Single(LessonChapters.Estimate(Read("")).Check()).Message);

    [Fact]
    public void The_demo_lesson_can_be_published()
    {
        PlacedChapters chapters = LessonChapters.Estimate(Read(TestFiles.Read("games/kiln-night/lesson.md")));

        Assert.Equal(12, chapters.List.Chapters.Length);
        Assert.Empty(chapters.Check());
    }

    private static Lesson Read(string script) => LessonReader.Read(new SourceText("lesson.md", script), new DiagnosticBag());
}
