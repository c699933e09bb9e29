using CsCheck;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Scripts;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film;

/// <summary>When each thing of a lesson comes, by its words.</summary>
public sealed class LessonClockTests
{
    // 60 words a minute: a word is a second.
    private const string Script = """
        ---
        pace: 60
        ---
        ## The aim

        one two three four

        ![A](position:a)

        five [six seven](fact:x) eight.

        ![B](position:b)

        ![C](position:c)

        ## Your turn

        - nine [ten](fact:y)

        ![D](position:d)
        """;

    private static readonly Gen<string> Block = Gen.OneOf("## Topic", "one two three", "![A](position:a)", "### Part", "- four\n- [five](fact:x) six", "> seven", "[8](tally:E1/total)");

    [Fact]
    public void Topics_follow_each_other_and_silent_shots_are_held() =>
        Assert.Equal(["The aim 0 14", "Your turn 14 19"], LessonClock.Of(Read(Script)).Topics.Select(t => Told(t.Of.Title, t.Start, t.End)));

    [Fact]
    public void A_shot_lasts_from_where_it_stands_to_the_next_or_the_end_of_its_topic() =>
        Assert.Equal(["A 4 8", "B 8 11", "C 11 14", "D 16 19"], LessonClock.Of(Read(Script.Replace("## Your turn", "## Your turn\n\nx y", StringComparison.Ordinal).Replace("- nine [ten](fact:y)", "", StringComparison.Ordinal))).Shots.Select(s => Told(s.Of.Caption, s.Start, s.End)));

    [Fact]
    public void A_statement_is_said_at_its_own_words() =>
        Assert.Equal(["six seven 5 7", "ten 15 16"], LessonClock.Of(Read(Script)).Claims.Select(c => Told(c.Of.Words, c.Start, c.End)));

    [Fact]
    public void A_lesson_without_shots_lasts_its_words_by_its_pace() => Gen.Select(Gen.Int[60, 300], Gen.Int[0, 5000]).Hold((pace, words) =>
    {
        Lesson lesson = Read($"---\npace: {pace}\n---\n## A\n\n{string.Join(' ', Enumerable.Repeat("word", words))}\n\n### End\n");

        Assert.Equal(words * 60_000L / pace, LessonClock.Of(lesson).Length.TotalMilliseconds);
    });

    [Fact]
    public void Whatever_is_shown_lies_in_the_film_in_the_order_of_the_lesson() => Block.Array[0, 20].Select(b => string.Join("\n\n", b)).Hold(script =>
    {
        Lesson lesson = Read(script);

        LessonClock clock = LessonClock.Of(lesson);

        Assert.Equal(lesson.Shots, clock.Shots.Select(s => s.Of));
        Assert.Equal(lesson.Claims, clock.Claims.Select(c => c.Of));
        Assert.All(clock.Topics.Zip(clock.Topics.Skip(1)), pair => Assert.Equal(pair.First.End, pair.Second.Start));
        Assert.All(clock.Shots, s => Assert.InRange(s.End, s.Start + TimeSpan.FromMilliseconds(1), clock.Length));
        Assert.All(clock.Shots.Zip(clock.Shots.Skip(1)), pair => Assert.True(pair.First.End <= pair.Second.Start));
        Assert.All(clock.Claims, c => Assert.InRange(c.Start, TimeSpan.Zero, c.End));
    });

    [Fact]
    public void The_demo_lesson_lasts_as_long_as_its_words_and_its_silent_shots()
    {
        Lesson lesson = Read(TestFiles.Read("games/kiln-night/lesson.md"));

        long silent = (long)LessonClock.Of(lesson).Length.TotalMilliseconds - (lesson.Topics.Sum(t => t.Words) * 60_000L / Pace.Usual);

        Assert.Equal(0, silent % (LessonClock.HoldSeconds * 1000));
    }

    private static string Told(string name, TimeSpan start, TimeSpan end) => $"{name} {start.TotalSeconds} {end.TotalSeconds}";

    private static Lesson Read(string script) => LessonReader.Read(new SourceText("lesson.md", script), new DiagnosticBag());
}
