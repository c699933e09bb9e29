namespace Rostrum.Lessons.Page;

/// <summary>Writes the player aid: one sheet of paper when printed, a calm list on a screen.</summary>
public static class PlayerAidWriter
{
    /// <summary>The aid as one HTML file that needs nothing else.</summary>
    /// <param name="aid">What to show.</param>
    /// <param name="assets">The typeface to embed, if any.</param>
    /// <exception cref="ArgumentException">A font is none.</exception>
    public static string Write(PlayerAid aid, PageAssets assets)
    {
        ArgumentNullException.ThrowIfNull(aid);
        ArgumentNullException.ThrowIfNull(assets);
        var page = new Markup();
        string title = $"{aid.Game}: player aid";
        AidFit fit = AidFit.Of(aid, assets);
        PageShell.Begin(page, aid.Language, title, "", PageStyle.ForAid(assets) + fit.Css());
        page.Open("body").Line().Open("main", ("class", "aid")).Line()
            .Open("header").Leaf("h1", title).Leaf("p", string.Join(' ', Dated(aid))).Close().Line()
            .Open("div", ("class", "columns")).Line();
        foreach (AidSection section in aid.Sections)
        {
            WriteSection(page, section);
        }

        page.Close().Line().Leaf("p", aid.UnofficialNote, ("class", "unofficial")).Line()
            .Close().Line().Close().Line().Close().Line();
        return page.ToString();
    }

    /// <summary>True if the aid is expected to fit one side of A4 or Letter in type of at least 7 points.</summary>
    /// <param name="aid">What to show.</param>
    /// <param name="assets">The typeface; without one a wide one is reckoned with.</param>
    public static bool FitsOnePage(PlayerAid aid, PageAssets assets)
    {
        ArgumentNullException.ThrowIfNull(assets);
        ArgumentNullException.ThrowIfNull(aid);
        return AidFit.Of(aid, assets).Fits;
    }

    private static IEnumerable<string> Dated(PlayerAid aid)
    {
        if (aid.Printing.Length > 0)
        {
            yield return $"{aid.Printing}.";
        }

        if (aid.CorrectAsOf.Length > 0)
        {
            yield return $"Correct as of {aid.CorrectAsOf}.";
        }
    }

    private static void WriteSection(Markup page, AidSection section)
    {
        page.Open("section").Leaf("h2", section.Title).Open("ul").Line();
        foreach (AidClause clause in section.Clauses)
        {
            page.Open("li").Text(clause.Sentence);
            if (clause.Page.Length > 0)
            {
                page.Text("\u00a0").Leaf("span", clause.Page, ("class", "cite"));
            }

            if (clause.Note.Length > 0)
            {
                page.Text(" ").Leaf("span", clause.Note, ("class", "note"));
            }

            page.Close().Line();
        }

        page.Close().Close().Line();
    }
}
