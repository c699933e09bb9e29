namespace Rostrum.Lessons.Page;

/// <summary>Writes the table of contents.</summary>
internal static class ContentsWriter
{
    /// <summary>Writes the navigation of the page.</summary>
    public static void Write(PageContext page, LessonPage lesson)
    {
        page.Out.Open("div", ("class", "beside")).Line();
        page.Out.Open("nav", ("aria-labelledby", "contents")).Leaf("h2", "Contents", ("id", "contents")).Open("ol").Line();
        foreach (PageTopic topic in lesson.Topics)
        {
            Entry(page, page.TopicAnchor(topic.Slug), topic.Title);
        }

        foreach ((string part, string title) in BackMatterWriter.PartsOf(lesson))
        {
            Entry(page, page.Names.Of("part", part), title);
        }

        page.Out.Close().Close().Close().Line();
    }

    private static void Entry(PageContext page, string target, string title) =>
        page.Out.Open("li").Leaf("a", title, ("href", $"#{target}")).Close().Line();
}
