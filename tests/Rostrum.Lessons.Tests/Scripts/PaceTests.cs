using Rostrum.Lessons.Scripts;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Scripts;

/// <summary>The pace at the head of a lesson.</summary>
public sealed class PaceTests
{
    [Theory]
    [InlineData("## A\n\nx", 150, "")]
    [InlineData("---\npace: 140\n---\n## A", 140, "")]
    [InlineData("---\ntitle: x\npace: fast\n---\n## A", 150, "ROS0687 3,1 'fast' is no pace, so 150 words a minute are taken.")]
    [InlineData("---\npace: 59\n---\n## A", 150, "ROS0687 2,1 '59' is no pace, so 150 words a minute are taken.")]
    [InlineData("---\npace: 60\npace: 301\n---\n## A", 150, "ROS0687 3,1 '301' is no pace, so 150 words a minute are taken.")]
    [InlineData("---\npace: 99999999999\n---\n## A", 150, "ROS0687 2,1 '99999999999' is no pace, so 150 words a minute are taken.")]
    public void Pace_is_read_from_the_head(string script, int wordsAMinute, string told)
    {
        var problems = new DiagnosticBag();

        Lesson lesson = LessonReader.Read(new SourceText("lesson.md", script), problems);

        Assert.Equal(wordsAMinute, lesson.WordsAMinute);
        Assert.Equal(told, string.Join("; ", problems.InOrder().Select(p => $"{p.Id} {p.At.StartPosition} {p.Message}")));
    }
}
