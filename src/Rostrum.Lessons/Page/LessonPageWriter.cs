using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>Writes the web page of a lesson: one file that needs nothing else, no script and no network.</summary>
/// <remarks>The same page and assets always give the same text. The result is HTML that also parses as XML.</remarks>
public static class LessonPageWriter
{
    /// <summary>The page as HTML.</summary>
    /// <param name="lesson">What to show.</param>
    /// <param name="assets">The typeface to embed, if any.</param>
    /// <exception cref="ArgumentException">
    /// The page has a problem (<see cref="PageProblems.Of"/>), a drawing holds more than a drawing, or a font is none.
    /// </exception>
    public static string Write(LessonPage lesson, PageAssets assets)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(assets);
        Refuse(PageProblems.Of(lesson));

        var page = new PageContext(lesson);
        PageShell.Begin(page.Out, lesson.Language, $"{lesson.Title} \u00b7 {lesson.Presenter}", lesson.Lead, PageStyle.ForLesson(assets));
        page.Out.Open("body").Line().Leaf("a", "Skip to the lesson", ("class", "skip"), ("href", "#lesson")).Line();
        MastheadWriter.Write(page, lesson);
        page.Out.Open("div", ("class", "table")).Line();
        ContentsWriter.Write(page, lesson);
        WriteLesson(page, lesson);
        page.Out.Close().Line();
        BackMatterWriter.WriteFooter(page, lesson);
        page.Out.Close().Line().Close().Line();
        return page.Out.ToString();
    }

    private static void WriteLesson(PageContext page, LessonPage lesson)
    {
        page.Out.Open("main", ("id", "lesson"), ("tabindex", "-1")).Line();
        ImmutableArray<ImmutableArray<PageSlip>> slips = PageMentions.ByTopic(lesson);
        for (int at = 0; at < lesson.Topics.Length; at++)
        {
            WriteTopic(page, lesson.Topics[at], slips[at]);
        }

        BackMatterWriter.Write(page, lesson, unmentioned: slips[^1]);
        page.Out.Close().Line();
    }

    private static void WriteTopic(PageContext page, PageTopic topic, ImmutableArray<PageSlip> slips)
    {
        string id = page.TopicAnchor(topic.Slug);
        page.Out.Open("section", ("class", "topic"), ("aria-labelledby", id)).Line()
            .Open("div", ("class", "text")).Line()
            .Leaf("h2", topic.Title, ("id", id)).Line();
        foreach (PageBlock block in topic.Blocks)
        {
            BlockWriter.Write(page, block);
        }

        page.Out.Close().Line();
        SlipWriter.Write(page, slips, "Checked here", topic.Title);
        page.Out.Close().Line();
    }

    private static void Refuse(ImmutableArray<string> problems)
    {
        if (!problems.IsEmpty)
        {
            throw new ArgumentException(string.Join(" ", problems));
        }
    }
}
