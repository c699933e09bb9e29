namespace Rostrum.Lessons.Page;

/// <summary>Writes the blocks of a topic.</summary>
internal static class BlockWriter
{
    /// <summary>Writes one block.</summary>
    public static void Write(PageContext page, PageBlock block)
    {
        switch (block)
        {
            case PageBlock.Paragraph paragraph:
                page.Out.Open("p");
                RunWriter.Write(page, paragraph.Runs);
                page.Out.Close().Line();
                break;
            case PageBlock.Subheading heading:
                page.Out.Leaf("h3", heading.Words).Line();
                break;
            case PageBlock.List list:
                WriteList(page, list);
                break;
            case PageBlock.Quote quote:
                WriteQuote(page, quote);
                break;
            case PageBlock.Figure figure:
                WriteFigure(page, figure);
                break;
        }
    }

    /// <summary>Writes a drawing with its caption, and in words for whoever does not see it.</summary>
    public static void WriteFigure(PageContext page, PageBlock.Figure figure)
    {
        string id = page.NextFigure();
        page.Out.Open("figure")
            .Open("div", ("class", "drawing"), ("role", "img"), ("aria-labelledby", $"{id}-caption"))
            .Trusted(DrawingGuard.Clean(figure.Svg, id)).Close().Line()
            .Open("figcaption")
            .Leaf("span", figure.Caption, ("id", $"{id}-caption"), ("class", "caption"));
        if (figure.File is { } file && LinkFilter.Allows(file))
        {
            page.Out.Text(" ").Open("a", ("href", file), ("class", "file"))
                .Text("Drawing as a file").Leaf("span", $": {figure.Caption}", ("class", "unseen")).Close();
        }

        page.Out.Close().Line();
        if (figure.TextAlternative.Length > 0)
        {
            page.Out.Open("details", ("class", "words"))
                .Open("summary").Text("In words").Leaf("span", $": {figure.Caption}", ("class", "unseen")).Close()
                .Leaf("p", figure.TextAlternative).Close().Line();
        }

        page.Out.Close().Line();
    }

    private static void WriteList(PageContext page, PageBlock.List list)
    {
        page.Out.Open(list.IsNumbered ? "ol" : "ul").Line();
        foreach (var item in list.Items)
        {
            page.Out.Open("li");
            RunWriter.Write(page, item);
            page.Out.Close().Line();
        }

        page.Out.Close().Line();
    }

    private static void WriteQuote(PageContext page, PageBlock.Quote quote)
    {
        page.Out.Open("blockquote").Open("p");
        RunWriter.Write(page, quote.Runs);
        page.Out.Close();
        if (quote.Cite.Length > 0)
        {
            page.Out.Leaf("p", quote.Cite, ("class", "cite"));
        }

        page.Out.Close().Line();
    }
}
