using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>Writes the places where the sources are silent or disagree.</summary>
internal static class QuestionWriter
{
    /// <summary>Writes every question with its readings and what the lesson does about it.</summary>
    public static void Write(PageContext page, ImmutableArray<PageQuestion> questions)
    {
        foreach (PageQuestion question in questions)
        {
            page.Out.Open("section", ("class", "question")).Line()
                .Leaf("h3", question.Question).Line()
                .Open("p", ("class", "kind")).Text(question.IsConflict ? "The sources disagree." : "The sources do not say.").Text(" ")
                .Leaf("span", question.Pages, ("class", "cite")).Close().Line();
            WriteReadings(page, question.Readings);
            page.Out.Open("p", ("class", "follows")).Leaf("b", question.Follows.Length > 0 ? "This lesson follows: " : "Left open. ")
                .Text(question.Follows);
            page.Out.Text(question.Follows.Length > 0 && question.Why.Length > 0 ? " " : "").Text(question.Why).Close().Line()
                .Close().Line();
        }
    }

    private static void WriteReadings(PageContext page, ImmutableArray<SlipReading> readings)
    {
        if (readings.IsEmpty)
        {
            return;
        }

        page.Out.Open("ul", ("class", "choices")).Line();
        foreach (SlipReading reading in readings)
        {
            page.Out.Open("li").Text(reading.Name);
            page.Out.Text(reading.Gives.Length > 0 ? $": {reading.Gives}" : "");
            page.Out.Text(reading.IsFollowed ? " (followed here)" : "").Close().Line();
        }

        page.Out.Close().Line();
    }
}
