using System.Text.RegularExpressions;
using System.Xml.Linq;
using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

public sealed class LessonPageWriterTests
{
    private static readonly string Html = LessonPageWriter.Write(SamplePage.Whole, PageAssets.None);
    private static readonly XElement Root = Parsed.Html(Html);

    [Fact]
    public void Page_is_well_formed_and_says_its_language() => Assert.Equal("en", Root.Attribute("lang")?.Value);

    [Fact]
    public void Same_page_gives_the_same_bytes() => Assert.Equal(Html, LessonPageWriter.Write(SamplePage.Whole, PageAssets.None));

    [Fact]
    public void Page_holds_no_script() => Assert.DoesNotContain("<script", Html, StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void Page_names_no_address_on_the_network() => Assert.DoesNotMatch("https?:|//[a-z]|@import|<link|src=", Html);

    [Fact]
    public void Page_forbids_itself_to_fetch_anything() =>
        Assert.Contains("default-src 'none'", Root.Descendants("meta").Select(meta => meta.Attribute("content")?.Value ?? "").First(content => content.Contains("src", StringComparison.Ordinal)), StringComparison.Ordinal);

    [Fact]
    public void Every_link_inside_the_page_arrives()
    {
        var ids = Root.Descendants().Select(element => element.Attribute("id")?.Value).OfType<string>().ToHashSet();
        string[] targets = [.. Root.Descendants("a").Select(link => link.Attribute("href")?.Value).OfType<string>().Where(href => href.StartsWith('#'))];

        Assert.True(targets.Length > 60, $"only {targets.Length} links");
        Assert.All(targets, target => Assert.Contains(target[1..], ids));
    }

    [Fact]
    public void No_id_is_given_twice()
    {
        string[] ids = [.. Root.Descendants().Select(element => element.Attribute("id")?.Value).OfType<string>()];

        Assert.Distinct(ids);
    }

    [Fact]
    public void Every_value_leads_to_a_slip()
    {
        string[] targets = [.. Parsed.WithClass(Root, "said").Select(value => value.Attribute("href")!.Value)];

        Assert.Equal(SamplePage.Whole.Topics.SelectMany(PageMentions.ValuesIn).Count(), targets.Length);
        Assert.All(targets, target => Assert.StartsWith("#slip-", target, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_slip_stands_on_the_page_once() =>
        Assert.Equal(SamplePage.Whole.Slips.Length, Root.Descendants().Count(element => element.Attribute("id")?.Value.StartsWith("slip-", StringComparison.Ordinal) == true));

    [Fact]
    public void Headings_begin_with_one_title_and_skip_no_level()
    {
        int[] levels = [.. Root.Descendants().Where(element => Regex.IsMatch(element.Name.LocalName, "^h[1-6]$")).Select(heading => heading.Name.LocalName[1] - '0')];

        Assert.Equal(1, levels[0]);
        Assert.Single(levels, 1);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1, $"h{pair.Second} follows h{pair.First}"));
    }

    [Fact]
    public void First_link_skips_to_the_lesson()
    {
        XElement first = Root.Descendants("a").First();

        Assert.Equal("#lesson", first.Attribute("href")?.Value);
        Assert.Equal("main", Root.Descendants().Single(element => element.Attribute("id")?.Value == "lesson").Name.LocalName);
    }

    [Fact]
    public void Contents_name_every_topic_in_order()
    {
        string[] entries = [.. Root.Descendants("nav").Single().Descendants("a").Select(link => link.Value)];

        Assert.Equal(SamplePage.Whole.Topics.Select(topic => topic.Title), entries.Take(SamplePage.Whole.Topics.Length));
        Assert.Equal(["Open questions and conflicts", "Sources", "How it was checked"], entries.Skip(SamplePage.Whole.Topics.Length));
    }

    [Fact]
    public void Drawings_have_a_name_and_never_share_an_id()
    {
        XElement[] drawings = [.. Parsed.WithClass(Root, "drawing")];

        Assert.Equal(3, drawings.Length);
        Assert.All(drawings, drawing => Assert.Equal("img", drawing.Attribute("role")?.Value));
        Assert.Equal(["figure-1-clay", "figure-2-clay", "figure-3-clay"], Root.Descendants("linearGradient").Select(gradient => gradient.Attribute("id")!.Value));
    }

    [Fact]
    public void Value_that_cannot_be_settled_says_so_in_words() =>
        Assert.Equal("(the rules do not say)", Parsed.WithClass(Root, "note").Single().Value);

    [Fact]
    public void Slips_never_mentioned_come_at_the_end() =>
        Assert.Contains("Also worked out", Root.Descendants("aside").Last().Value, StringComparison.Ordinal);

    [Fact]
    public void Text_never_runs_wider_than_75_letters() =>
        // A zero is wider than the average letter: in Chromium with Atkinson Hyperlegible the longest line of 46ch held 73 letters.
        Assert.InRange(int.Parse(Regex.Match(Html, @"\.text \{ max-width: min\((\d+)ch, 100%\)").Groups[1].Value), 30, 46);
}
