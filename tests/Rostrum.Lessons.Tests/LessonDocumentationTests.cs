using System.Text.RegularExpressions;
using Rostrum.Lessons.Findings;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests;

/// <summary>The fragments of <c>docs/lesson.md</c> are lessons of Kiln Night: each gives the id behind its fence, or no problem at all.</summary>
public sealed partial class LessonDocumentationTests
{
    private static readonly string Page = TestFiles.Read("docs/lesson.md");

    public static TheoryData<string, string> Fragments => [.. Fence().Matches(Page).Select(f => (f.Groups["id"].Value, f.Groups["content"].Value))];

    [Theory]
    [MemberData(nameof(Fragments))]
    public void Fragment_gives_what_the_page_says(string id, string content)
    {
        LessonReport report = LessonCheck.Of(ShippedGames.Open("kiln-night"), new SourceText("lesson.md", content));

        // A fragment leaves nearly every rule unsaid; the whole of what it leaves unsaid is told of one fragment only.
        string[] found = [.. report.Problems.Select(p => p.Id).Concat(report.Script.Findings.Select(f => f.Problem.Id)).Distinct().Where(i => i != "ROS0611" || id == i).Order(StringComparer.Ordinal)];
        Assert.Equal(id, string.Join(' ', found));
        Assert.NotEmpty(report.Lesson.Topics);
    }

    [Fact]
    public void Page_shows_every_message_about_what_stands_in_a_lesson() =>
        Assert.Equal(
            [
                "ROS0601", "ROS0602", "ROS0603", "ROS0604", "ROS0605", "ROS0608", "ROS0609", "ROS0611", "ROS0612 ROS0613", "ROS0614", "ROS0615", "ROS0617", "ROS0618", "ROS0619",
                "ROS0620", "ROS0687",
            ],
            Fragments.Select(f => f.Data.Item1).Where(i => i.Length > 0).Order(StringComparer.Ordinal));

    [Fact]
    public void Page_shows_a_file_of_dismissals_that_is_read()
    {
        var problems = new DiagnosticBag();

        Dismissal shown = Assert.Single(Dismissals.Read(new SourceText(Dismissals.FileName, DismissalFence().Match(Page).Groups["content"].Value + "\n"), problems));

        Assert.Equal(("ROS0611", "solo", "I teach it in a lesson of its own."), (shown.Id, shown.Concerns, shown.Because));
        Assert.Empty(problems.InOrder());
    }

    [Fact]
    public void Page_is_in_plain_words() => Assert.Empty(BannedWords.In(Fence().Replace(Page, "")));

    [GeneratedRegex(@"^```text\n(?<content>.*?)\n```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex DismissalFence();

    [GeneratedRegex(@"^```markdown ?(?<id>[\w ]*)\n(?<content>.*?)\n```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();
}
