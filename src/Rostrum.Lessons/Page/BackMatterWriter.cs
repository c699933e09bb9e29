using System.Collections.Immutable;
using System.Globalization;

namespace Rostrum.Lessons.Page;

/// <summary>Writes what follows the lesson: open questions, sources, how it was checked, slips that no topic mentions.</summary>
internal static class BackMatterWriter
{
    /// <summary>The parts that this page has, with their headings, in the order of the page.</summary>
    public static IEnumerable<(string Part, string Title)> PartsOf(LessonPage lesson)
    {
        if (!lesson.Questions.IsEmpty)
        {
            yield return ("questions", "Open questions and conflicts");
        }

        if (!lesson.Sources.IsEmpty)
        {
            yield return ("sources", "Sources");
        }

        yield return ("checked", "How it was checked");
    }

    /// <summary>Writes each part that the page has.</summary>
    public static void Write(PageContext page, LessonPage lesson, ImmutableArray<PageSlip> unmentioned)
    {
        foreach ((string part, string title) in PartsOf(lesson))
        {
            string id = page.Names.Of("part", part);
            page.Out.Open("section", ("class", part == "questions" ? "topic wide" : "topic"), ("aria-labelledby", id)).Line()
                .Open("div", ("class", "text")).Line().Leaf("h2", title, ("id", id)).Line();
            WritePart(page, lesson, part);
            page.Out.Close().Line();
            SlipWriter.Write(page, part == "checked" ? unmentioned : [], "Also worked out", title);
            page.Out.Close().Line();
        }
    }

    /// <summary>Writes the foot of the page.</summary>
    public static void WriteFooter(PageContext page, LessonPage lesson)
    {
        page.Out.Open("footer").Open("div", ("class", "footer-in")).Line();
        if (lesson.UnofficialNote.Length > 0)
        {
            page.Out.Leaf("p", lesson.UnofficialNote).Line();
        }

        page.Out.Leaf("p", Colophon(lesson)).Line()
            .Open("p").Leaf("a", "Back to the top", ("href", "#top")).Close().Line()
            .Close().Close().Line();
    }

    private static string Colophon(LessonPage lesson)
    {
        string taught = lesson.Presenter.Length > 0 ? $" Taught by {lesson.Presenter}." : "";
        string day = lesson.CorrectAsOf.Length > 0 ? $" Correct as of {lesson.CorrectAsOf}." : "";
        return $"{lesson.Game}{(lesson.Printing.Length > 0 ? $", {lesson.Printing}" : "")}.{taught}{day}";
    }

    private static void WritePart(PageContext page, LessonPage lesson, string part)
    {
        switch (part)
        {
            case "questions":
                QuestionWriter.Write(page, lesson.Questions);
                break;
            case "sources":
                WriteSources(page, lesson.Sources);
                break;
            default:
                WriteChecked(page, lesson);
                break;
        }
    }

    // A rank is shown where it tells something: of one source, or of none that is weighed, it would not.
    private static void WriteSources(PageContext page, ImmutableArray<PageSource> sources)
    {
        bool isWeighed = sources.Count(source => source.Rank is not null) > 1;
        if (isWeighed)
        {
            page.Out.Leaf("p", sources.All(source => source.Rank is not null)
                ? "Where two sources disagree, the one that stands higher here is followed."
                : "Where two sources with a rank disagree, the one that stands higher here is followed.").Line();
        }

        page.Out.Open("table", ("class", "plain")).Leaf("caption", isWeighed ? "Sources, weightiest first" : "Sources", ("class", "unseen")).Open("thead").Open("tr");
        foreach (string head in (string[])[.. isWeighed ? ["Rank"] : Array.Empty<string>(), "Source", "Printing or date", "Pages"])
        {
            page.Out.Leaf("th", head, ("scope", "col"));
        }

        page.Out.Close().Close().Open("tbody").Line();
        foreach (PageSource source in sources)
        {
            WriteSource(page, source, isWeighed);
        }

        page.Out.Close().Close().Line();
    }

    private static void WriteSource(PageContext page, PageSource source, bool isWeighed)
    {
        page.Out.Open("tr");
        if (isWeighed)
        {
            page.Out.Leaf("td", source.Rank?.ToString(CultureInfo.InvariantCulture) ?? "");
        }

        page.Out.Leaf("th", source.Title, ("scope", "row")).Leaf("td", source.Printing).Leaf("td", source.Pages).Close().Line();
    }

    private static void WriteChecked(PageContext page, LessonPage lesson)
    {
        if (lesson.Claims is { } claims)
        {
            page.Out.Leaf("p", claims.Sentence).Line();
            WriteFindings(page, claims.Findings);
        }

        page.Out.Leaf("p", "Underlined words and numbers lead to a slip: the answer, the reason, the page, and lines that add up. Each slip says how its figure is known.")
            .Line().Open("dl", ("class", "legend")).Line();
        foreach (FigureKind kind in lesson.Slips.Select(slip => slip.Basis.Kind).Distinct().Order())
        {
            page.Out.Open("div").Leaf("dt", SlipWords.Of(kind)).Leaf("dd", SlipWords.Meaning(kind)).Close().Line();
        }

        page.Out.Close().Line();
    }

    private static void WriteFindings(PageContext page, ImmutableArray<string> findings)
    {
        if (findings.IsEmpty)
        {
            return;
        }

        page.Out.Open("ul", ("class", "findings")).Line();
        foreach (string finding in findings)
        {
            page.Out.Leaf("li", finding).Line();
        }

        page.Out.Close().Line();
    }
}
