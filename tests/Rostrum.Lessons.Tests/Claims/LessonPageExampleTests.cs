using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Claims;

/// <summary>The pages of <c>docs/diagnostics</c> whose examples are lessons of the bench game.</summary>
public sealed class LessonPageExampleTests
{
    public static TheoryData<string, bool, string> Examples => [.. DiagnosticPage.ExamplesIn("lesson").Select(e => (e.Id, e.IsRight, e.Content))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Lesson_gives_what_its_page_says(string id, bool isRight, string content)
    {
        var example = new PageExample(id, "lesson", isRight, content);

        Diagnostic[] problems = [.. LessonCheck.Of(BenchGame.Game, new SourceText("lesson.md", content)).Problems];

        Assert.Equal(example.Expected, problems.Select(p => p.Id).Distinct());
        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In).Select(w => $"{p.Id}: {w}")));
    }
}
