using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>Writes slips: plain facts together on one paper, every other answer on a paper of its own.</summary>
internal static class SlipWriter
{
    /// <summary>Writes the slips of one topic; nothing if there are none.</summary>
    /// <param name="page">The page.</param>
    /// <param name="slips">In order of mention.</param>
    /// <param name="label">What these slips are, such as <c>Checked here</c>.</param>
    /// <param name="topic">The topic's heading, said to screen readers only.</param>
    public static void Write(PageContext page, ImmutableArray<PageSlip> slips, string label, string topic)
    {
        if (slips.IsEmpty)
        {
            return;
        }

        // Facts are short and stand beside the text even on a printed page, where all papers lie open and the others go below it.
        page.Out.Open("aside", ("class", slips.Any(slip => slip.IsPlain) ? "slips" : "slips papers"))
            .Open("h3", ("class", "slips-head")).Text(label).Leaf("span", $": {topic}", ("class", "unseen")).Close().Line();
        foreach (IGrouping<SlipBasis, PageSlip> facts in slips.Where(slip => slip.IsPlain).GroupBy(slip => slip.Basis))
        {
            WriteFacts(page, facts.Key, facts);
        }

        WritePapers(page, slips);
        page.Out.Close().Line();
    }

    private static void WritePapers(PageContext page, ImmutableArray<PageSlip> slips)
    {
        if (slips.Any(slip => slip.IsPlain) && slips.Any(slip => !slip.IsPlain))
        {
            page.Out.Close().Line().Open("div", ("class", "slips papers")).Line();
        }

        foreach (PageSlip slip in slips.Where(slip => !slip.IsPlain))
        {
            WriteSlip(page, slip);
        }
    }

    private static void WriteFacts(PageContext page, SlipBasis basis, IEnumerable<PageSlip> facts)
    {
        page.Out.Open("div", ("class", "slip facts")).Open("table").Leaf("caption", SlipWords.Of(basis).TrimEnd('.'), ("class", "slip-title"))
            .Open("thead", ("class", "unseen")).Open("tr").Leaf("th", "What", ("scope", "col")).Leaf("th", "Value", ("scope", "col")).Close().Close().Line();
        foreach (IGrouping<string, PageSlip> cited in facts.GroupBy(fact => fact.Cite))
        {
            WritePage(page, cited.Key, cited);
        }

        page.Out.Close().Close().Line();
    }

    // What stands on one page stands under its name.
    private static void WritePage(PageContext page, string cite, IEnumerable<PageSlip> facts)
    {
        page.Out.Open("tbody").Open("tr").Leaf("th", cite, ("scope", "rowgroup"), ("colspan", "2"), ("class", "cite")).Close().Line();
        foreach (PageSlip fact in facts)
        {
            page.Out.Open("tr", ("id", page.SlipAnchor(fact.Id))).Open("th", ("scope", "row"));
            WriteTitle(page, fact);
            page.Out.Close().Leaf("td", SlipWords.Of(fact.Answer), ("class", "value")).Close().Line();
        }

        page.Out.Close().Line();
    }

    private static void WriteTitle(PageContext page, PageSlip slip)
    {
        if (page.BackTarget(slip.Id) is { } target)
        {
            page.Out.Leaf("a", slip.Title, ("href", $"#{target}"));
        }
        else
        {
            page.Out.Text(slip.Title);
        }
    }

    /// <summary>Writes one slip with its reasons, also if it is plain.</summary>
    public static void WriteSlip(PageContext page, PageSlip slip)
    {
        page.Out.Open("details", ("class", "slip"), ("open", slip.IsOpenAtFirst ? "open" : null)).Open("summary")
            .Leaf("span", slip.Title, ("class", "slip-title")).Text(" ")
            .Leaf("span", SlipWords.Of(slip.Answer), ("class", $"slip-answer {SlipWords.ToneOf(slip.Answer)}")).Text(" ");
        if (slip.Where.Length > 0)
        {
            page.Out.Leaf("span", slip.Where, ("class", "slip-where")).Text(" ");
        }

        page.Out.Close().Line()
            .Open("div", ("class", "slip-body"), ("id", page.SlipAnchor(slip.Id))).Line();
        SlipBodyWriter.Write(page, slip);
        WriteFoot(page, slip);
        page.Out.Close().Close().Line();
    }

    private static void WriteFoot(PageContext page, PageSlip slip)
    {
        page.Out.Open("p", ("class", "slip-foot")).Text(SlipWords.Of(slip.Basis));
        if (slip.Cite.Length > 0)
        {
            page.Out.Text(" ").Leaf("span", slip.Cite, ("class", "cite"));
        }

        if (page.BackTarget(slip.Id) is { } target)
        {
            page.Out.Text(" ").Open("a", ("href", $"#{target}"), ("class", "back")).Text("Back to the text")
                .Leaf("span", $": {slip.FullTitle}", ("class", "unseen")).Close();
        }

        page.Out.Close().Line();
    }
}
