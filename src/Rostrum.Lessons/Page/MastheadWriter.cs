namespace Rostrum.Lessons.Page;

/// <summary>Writes the head of the page: what, by whom, as of when, and how it was checked.</summary>
internal static class MastheadWriter
{
    /// <summary>Writes the header of the page.</summary>
    public static void Write(PageContext page, LessonPage lesson)
    {
        page.Out.Open("header", ("class", "masthead"), ("id", "top")).Line().Open("div", ("class", "masthead-in")).Line()
            .Open("div", ("class", "masthead-words")).Line()
            .Leaf("p", lesson.Game, ("class", "game")).Line()
            .Leaf("h1", lesson.Title).Line();
        if (lesson.Lead.Length > 0)
        {
            page.Out.Leaf("p", lesson.Lead, ("class", "lead")).Line();
        }

        WriteFacts(page, lesson);
        page.Out.Close().Line();
        WriteOpening(page, lesson);
        page.Out.Close().Line().Close().Line();
    }

    private static void WriteOpening(PageContext page, LessonPage lesson)
    {
        if (lesson.Opening is not { } opening)
        {
            return;
        }

        page.Out.Open("div", ("class", "opening")).Line();
        BlockWriter.WriteFigure(page, opening);
        foreach (PageSlip slip in lesson.Slips.Where(slip => slip.Id == lesson.OpeningSlipId))
        {
            SlipWriter.WriteSlip(page, slip);
        }

        page.Out.Close().Line();
    }

    private static void WriteFacts(PageContext page, LessonPage lesson)
    {
        page.Out.Open("dl", ("class", "about")).Line();
        Fact(page, "Taught by", lesson.Presenter);
        Fact(page, "Rules", lesson.Printing);
        Fact(page, "Correct as of", lesson.CorrectAsOf);
        if (lesson.Claims is { } claims)
        {
            page.Out.Open("div").Leaf("dt", "Checked").Open("dd").Text($"{claims.Sentence} ")
                .Leaf("a", "How it was checked", ("href", $"#{page.Names.Of("part", "checked")}")).Close().Close().Line();
        }

        Fact(page, "Please note", lesson.UnofficialNote);
        page.Out.Close().Line();
    }

    private static void Fact(PageContext page, string label, string words)
    {
        if (words.Length > 0)
        {
            page.Out.Open("div").Leaf("dt", label).Leaf("dd", words).Close().Line();
        }
    }
}
