namespace Rostrum.Lessons.Tests.Script;

/// <summary>Lessons that are right are found right.</summary>
public sealed class RightLessonsTests
{
    public static TheoryData<string> Games => [.. RightLessons.Games];

    [Theory]
    [MemberData(nameof(Games))]
    public void Nothing_is_found_in_a_lesson_that_is_right(string game)
    {
        LessonReport report = RightLessons.Check(game);

        Assert.Empty(report.Problems.Select(p => p.Message));
        Assert.Empty(report.Script.Findings.Select(f => f.Problem.Message));
        Assert.True(report.Lesson.Topics.Sum(t => t.Words) >= 300);
    }

    /// <summary>Short lessons that were spoken when the limits were settled: no rule that they say is told as never said.</summary>
    [Theory]
    [InlineData("pig")]
    [InlineData("four-in-a-row")]
    [InlineData("sowing")]
    public void No_rule_of_a_fresh_lesson_is_told_as_never_said(string game)
    {
        LessonReport report = RightLessons.Check($"traditional/{game}", Rostrum.Testing.TestFiles.Read($"tests/Rostrum.Lessons.Tests/Script/Fresh/{game}.md"));

        Assert.Empty(report.Script.Findings.Select(f => f.Problem.Message));
        Assert.NotEmpty(report.Script.Clauses);
    }
}
