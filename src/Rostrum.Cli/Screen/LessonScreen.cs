using Rostrum.Cli.Reports;
using Rostrum.Text;

namespace Rostrum.Cli.Screen;

/// <summary>Shows the topics of a lesson with their length.</summary>
internal static class LessonScreen
{
    private const int NumberWidth = 6;
    private const int LengthWidth = 13;

    /// <summary>The table.</summary>
    public static string Of(LessonItem lesson)
    {
        var paper = new Paper();
        int nameWidth = Paper.Width - NumberWidth - LengthWidth;
        paper.Line(Paper.Padded("topic", nameWidth) + "words".PadLeft(NumberWidth) + "read aloud".PadLeft(LengthWidth));
        foreach (TopicItem topic in lesson.Topics)
        {
            paper.Line(Paper.Padded(Prose.Clip(topic.Topic, nameWidth - 2), nameWidth) + $"{topic.Words}".PadLeft(NumberWidth) + TopicItem.Duration(topic.Seconds).PadLeft(LengthWidth));
        }

        return paper.ToString();
    }
}
