using System.Text.RegularExpressions;
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

        Assert.Equal(id, string.Join(' ', report.Problems.Select(p => p.Id).Distinct()));
        Assert.NotEmpty(report.Lesson.Topics);
    }

    [Fact]
    public void Page_shows_every_message_about_what_stands_in_a_lesson() =>
        Assert.Equal(["ROS0601", "ROS0602", "ROS0603", "ROS0604", "ROS0605", "ROS0608", "ROS0609"], Fragments.Select(f => f.Data.Item1).Where(i => i.Length > 0).Order(StringComparer.Ordinal));

    [Fact]
    public void Page_is_in_plain_words() => Assert.Empty(BannedWords.In(Fence().Replace(Page, "")));

    [GeneratedRegex(@"^```markdown ?(?<id>\w*)\n(?<content>.*?)\n```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();
}
