using Rostrum.Lessons.Scripts;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Scripts;

public class LessonReaderTests
{
    private const string Sample = """
        ---
        title: How to play Bench
        presenter: Ada
        correct as of: 2026-11-25
        printing: first
        ---
        <!-- a note for myself -->

        ## First words

        You have [four](fact:sticks) sticks, *really*, and **never** more. ![The field](<position:bench show jugs>)
        Then `say` it.

        1. One [point](https://example.org/a).
        2. Two.

        > Nobody stands on a lamp.

        ## Second words

        Total [7](<tally:bench/total if as for four>).
        """;

    [Fact]
    public void Front_matter_gives_title_presenter_day_and_printing()
    {
        Lesson lesson = Read(Sample);

        Assert.Equal(("How to play Bench", "Ada", "2026-11-25", "first"), (lesson.Title, lesson.Presenter, lesson.CorrectAsOf, lesson.Printing));
    }

    [Fact]
    public void Level_two_headings_are_topics()
    {
        Lesson lesson = Read(Sample);

        Assert.Equal(["First words", "Second words"], lesson.Topics.Select(t => t.Title));
    }

    [Fact]
    public void Claims_keep_the_place_of_their_words_and_targets()
    {
        LessonRun.Claim[] claims = [.. Read(Sample).Claims];

        Assert.Equal(["four", "7"], claims.Select(c => c.At.Text));
        Assert.Equal((11, 11), (claims[0].At.StartPosition.Line, claims[0].At.StartPosition.Column));
        Assert.Equal("fact:sticks", claims[0].TargetAt.Text);
    }

    [Fact]
    public void A_shot_among_words_stands_for_itself()
    {
        LessonBlock[] blocks = [.. Read(Sample).Topics[0].Blocks];

        LessonBlock.Shot shot = Assert.IsType<LessonBlock.Shot>(blocks[1]);
        Assert.Equal(("The field", "position:bench"), (shot.Caption, shot.Target.Split(' ')[0]));
        Assert.IsType<LessonBlock.Paragraph>(blocks[2]);
    }

    [Fact]
    public void Other_links_lists_and_quotes_are_kept()
    {
        LessonTopic topic = Read(Sample).Topics[0];

        Assert.Contains(topic.Blocks, b => b is LessonBlock.List { IsNumbered: true, Items.Length: 2 });
        Assert.Contains(topic.Blocks, b => b is LessonBlock.Quote);
        Assert.Contains(topic.Blocks.SelectMany(b => b.Runs), r => r is LessonRun.Link { Target: "https://example.org/a" });
    }

    [Fact]
    public void Tags_and_comments_are_not_spoken()
    {
        Lesson lesson = Read("## A\n\nSay <b>this</b>. <!-- not this -->\n\n<script>alert(1)</script>\n");

        Assert.DoesNotContain("script", string.Concat(lesson.Topics.SelectMany(t => t.Blocks).SelectMany(b => b.Runs).Select(r => r.Words)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_target_with_a_blank_is_told_with_a_safe_fix_that_makes_it_a_claim()
    {
        const string Text = "## A\n\nTake [two](fact:sticks to start) sticks.\n";

        Diagnostic problem = Assert.Single(LessonCheck.Of(BenchGame.Game, new SourceText("lesson.md", Text)).Problems);
        Assert.Equal(("ROS0608", "fact:sticks to start"), (problem.Id, problem.At.Text));
        Assert.Single(Read(TextEdit.Apply(Text, problem.Fix!.Edits)).Claims);
    }

    [Fact]
    public void Blanks_behind_other_words_stay_plain_words() =>
        Assert.Equal("See [this](note: it is long).", string.Concat(Read("## A\n\nSee [this](note: it is long).\n").Topics[0].Blocks[0].Runs.Select(r => r.Words)));

    [Fact]
    public void A_target_that_never_ends_is_read_in_one_go() =>
        Assert.Single(Read($"## A\n\n[x](fact:{string.Concat(Enumerable.Repeat("a ", 1_900_000))}").Topics);

    [Fact]
    public void Quotes_too_deep_in_each_other_are_told()
    {
        Diagnostic problem = Assert.Single(LessonCheck.Of(BenchGame.Game, new SourceText("lesson.md", $"## A\n\n{new string('>', 3000)} x\n")).Problems);

        Assert.Equal(("ROS0610", Severity.Error), (problem.Id, problem.Severity));
    }

    [Fact]
    public void A_front_matter_line_without_a_colon_is_told()
    {
        var problems = new DiagnosticBag();
        LessonReader.Read(new SourceText("lesson.md", "---\ntitle How to play\n---\n\n## A\n\nHello.\n"), problems);

        Assert.Equal("ROS0606", Assert.Single(problems.InOrder()).Id);
    }

    private static Lesson Read(string text) => LessonReader.Read(new SourceText("lesson.md", text), new DiagnosticBag());
}
