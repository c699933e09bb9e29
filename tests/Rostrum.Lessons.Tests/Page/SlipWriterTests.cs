using System.Xml.Linq;
using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

/// <summary>Slips as a reader meets them: the words from top to bottom.</summary>
public sealed class SlipWriterTests
{
    private static readonly XElement Root = Parsed.Html(LessonPageWriter.Write(SamplePage.Whole, PageAssets.None));

    [Fact]
    public void Total_shows_lines_that_add_up_and_how_it_is_known() =>
        Assert.Equal(
            """
            E1, everything 35 points
            bowls book 8 | 5
            A2, A3: a run of two: 3
            C2: alone: 1
            E1: alone: 1
            jugs book 8 | 4
            plates book 8 | 9
            lamps book 8 | 4
            glaze book 8 | 4
            full tiers book 8 | 3
            commissions book 6 | 7
            Commission 12, shown: 9
            Commission 6, not shown: −2
            shards book 8 | −2
            sticks book 8 | 1
            Together | 35
            Worked out exactly. Back to the text: E1, everything
            """,
            Told("E1, everything"));

    [Fact]
    public void Ruling_shows_clause_reason_and_page() =>
        Assert.Equal(
            """
            place copper jug on B2 not allowed
            copper and ash. Copper never stands beside ash. Here: ash stands at A2, beside B2. book 5
            Worked out exactly. Back to the text: place copper jug on B2
            """,
            Told("place copper jug on B2", at: 1));

    [Fact]
    public void Open_question_shows_every_reading_and_what_is_missing() =>
        Assert.Equal(
            """
            a run of five bowls the sheet does not say
            as for four | 10
            the numbers grow on | 15
            split as you like | 11
            Not modelled: guild marks (book 9)
            Not given: which side of the chamber is used
            Worked out exactly. book 8 Back to the text: a run of five bowls
            """,
            Told("a run of five bowls"));

    [Fact]
    public void Simulated_figure_says_how_and_leads_nowhere_if_nothing_mentions_it() =>
        Assert.Equal(
            """
            half of all nights 42 points or less
            gauge. Games played by a program that takes the best gain of each turn. no page
            Simulated: 100 greedy nights, seed 7; 95 % interval 40 to 44.
            """,
            Told("half of all nights"));

    [Fact]
    public void Plain_facts_share_one_paper()
    {
        XElement paper = Parsed.WithClass(Root, "facts").First();

        Assert.Equal(
            ["book 1", "fewest players|1", "most players|4"],
            paper.Element("table")!.Element("tbody")!.Elements("tr").Select(row => string.Join("|", row.Elements().Select(cell => cell.Value))));
        Assert.Equal("As the source says", Parsed.WithClass(paper, "slip-title").Single().Value);
    }

    [Theory]
    [InlineData(1, false, "1 point")]
    [InlineData(-2, false, "−2 points")]
    [InlineData(0, false, "0 points")]
    [InlineData(12, true, "at least 12 points")]
    public void Points_are_told_in_words(long points, bool isAtLeast, string told) =>
        Assert.Equal(told, SlipWords.Of(new SlipAnswer.Total(points, isAtLeast)));

    private static string Told(string title, int at = 0)
    {
        XElement slip = Root.Descendants("details").Where(details => Parsed.WithClass(details, "slip-title").Any(head => head.Value == title)).ElementAt(at);
        IEnumerable<XElement> told = slip.Descendants().Where(element => element.Name.LocalName is "summary" or "p" or "tr");
        return string.Join("\n", told.Where(element => element.Parent!.Attribute("class")?.Value != "unseen").Select(Line));
    }

    private static string Line(XElement element) =>
        string.Join(" | ", (element.Name.LocalName == "tr" ? element.Elements() : [element]).Select(cell => cell.Value.Trim()).Where(text => text.Length > 0));
}
