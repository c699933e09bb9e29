using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Rostrum.Lessons.Page;
using Rostrum.Lessons.Prompter;
using Rostrum.Lessons.Tests.Page;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Prompter;

public sealed class PrompterTests
{
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");
    private static readonly LessonReport Report = LessonCheck.Of(Kiln)!;
    private static readonly string Html = PrompterWriter.Write(PrompterMaker.Make(Report), PageAssets.None);
    private static readonly XElement Root = Parsed.Html(Html);

    [Fact]
    public void The_words_that_are_spoken_are_those_of_the_lesson_in_their_order() =>
        Assert.Equal(
            Prose.Fold(string.Concat(Report.Lesson.Topics.SelectMany(t => t.Blocks).SelectMany(b => b.Passages).Select(p => string.Concat(p.Select(r => r.Words)) + " "))),
            Prose.Fold(string.Concat(Spoken(Root).Select(p => string.Concat(p.DescendantNodes().OfType<XText>().Where(t => !IsDirection(t.Parent!)).Select(t => t.Value)) + " "))));

    [Fact]
    public void Every_passage_says_how_many_words_it_has() =>
        Assert.Equal(Report.Lesson.Topics.Sum(t => t.Words), Spoken(Root).Sum(p => int.Parse(p.Attribute("data-words")!.Value, CultureInfo.InvariantCulture)));

    [Fact]
    public void Every_topic_is_a_part_with_its_heading_and_every_shot_a_direction()
    {
        Assert.Equal(Report.Lesson.Topics.Select(t => t.Title), Root.Descendants("h2").Select(h => h.Nodes().OfType<XText>().First().Value.Trim()));
        Assert.Equal(Report.Shots.Select(s => $"Shot {s.Shot.Caption}"), Root.Descendants("p").Where(p => p.Attribute("class")?.Value == "quiet shot").Select(p => p.Value));
        Assert.All(Root.Descendants("section"), s => Assert.Contains(Root.Descendants("h2"), h => h.Attribute("id")!.Value == s.Attribute("aria-labelledby")!.Value));
    }

    [Fact]
    public void What_is_marked_in_the_script_is_a_quiet_direction_before_its_words() =>
        Assert.Contains("later: One night, counted Later in this lesson", Spoken(Root).Select(p => Prose.Fold(p.Value)).Single(p => p.StartsWith("This chamber is worth", StringComparison.Ordinal)), StringComparison.Ordinal);

    [Fact]
    public void Only_our_own_script_may_run_and_nothing_is_fetched()
    {
        string policy = Root.Descendants("meta").Single(m => m.Attribute("http-equiv") is not null).Attribute("content")!.Value;
        XElement script = Assert.Single(Root.Descendants("script"));

        Assert.StartsWith("default-src 'none';", policy, StringComparison.Ordinal);
        Assert.EndsWith($"script-src '{PrompterWriter.HashOf(script.Value)}'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("http://", Html, StringComparison.Ordinal);
        Assert.DoesNotContain("https://", Html, StringComparison.Ordinal);
    }

    // RFC 6234 gives SHA-256 of "abc" as ba7816bf…15ad; in base 64 as below (worked out by 'openssl dgst -sha256 -binary | base64').
    [Fact]
    public void A_script_is_named_by_its_hash_in_base_64() => Assert.Equal("sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0=", PrompterWriter.HashOf("abc"));

    [Fact]
    public void What_a_stranger_writes_stays_text()
    {
        const string Evil = "</script><script>alert(1)</script><img src=x onerror=alert(1)>";
        LessonReport hostile = LessonCheck.Of(Kiln, new SourceText("lesson.md", $"---\ntitle: {Evil}\npresenter: {Evil}\n---\n\n## {Evil.Replace("<", "\\<", StringComparison.Ordinal)}\n\n`{Evil}` [said](<later:{Evil.Replace("<", "\\<", StringComparison.Ordinal).Replace(">", "\\>", StringComparison.Ordinal)}>)\n\n![{Evil}](position:E1)\n"));
        XElement page = Parsed.Html(PrompterWriter.Write(PrompterMaker.Make(hostile), PageAssets.None));

        Assert.Single(page.Descendants("script"));
        Assert.DoesNotContain(page.Descendants(), e => e.Name.LocalName == "img");
        Assert.DoesNotContain(page.Descendants().Attributes(), a => a.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        Assert.Contains(Evil, page.Descendants("h1").Single().Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_that_the_rules_do_not_bear_out_is_not_read_aloud_unawares()
    {
        LessonReport wrong = LessonCheck.Of(Kiln, new SourceText("lesson.md", "## A\n\nThere are [four](fact:glazes) glazes.\n"));
        XElement page = Parsed.Html(PrompterWriter.Write(PrompterMaker.Make(wrong), PageAssets.None));

        XElement said = page.Descendants("span").Single(s => s.Attribute("class")?.Value == "wrong");
        Assert.Equal("four", said.Value);
        Assert.StartsWith("check first: ", said.ElementsBeforeSelf("span").Last().Value, StringComparison.Ordinal);
    }

    [Fact]
    public void The_pace_of_the_lesson_is_the_pace_at_the_start()
    {
        LessonReport slow = LessonCheck.Of(Kiln, new SourceText("lesson.md", "---\npace: 120\n---\n\n## A\n\nSlowly.\n"));

        Assert.Equal("120", Parsed.Html(PrompterWriter.Write(PrompterMaker.Make(slow), PageAssets.None)).Descendants("main").Single().Attribute("data-pace")!.Value);
    }

    [Fact]
    public void A_shot_to_which_nothing_is_said_is_held_as_the_clock_reckons()
    {
        LessonReport silent = LessonCheck.Of(Kiln, new SourceText("lesson.md", "## A\n\n![one](position:E1)\n\n![two](position:E1)\n\nWords.\n\n![three](position:E1)\n"));
        XElement page = Parsed.Html(PrompterWriter.Write(PrompterMaker.Make(silent), PageAssets.None));

        Assert.Equal(["3", "0", "3"], page.Descendants("p").Select(p => p.Attribute("data-hold")?.Value).OfType<string>());
    }

    [Fact]
    public void Every_button_says_what_it_does_and_nothing_is_shown_that_needs_the_script()
    {
        Assert.Equal(["Start", "Slower", "Faster", "Smaller", "Larger", "Mirror", "Light", "In steps", "Letter keys"], Root.Descendants("button").Select(b => b.Value));
        Assert.All(Root.Descendants("div").Where(d => d.Attribute("class")?.Value is "status" or "mark" or "bar"), d => Assert.NotNull(d.Attribute("hidden")));
        Assert.Single(Root.Descendants("noscript"));
    }

    [Theory]
    [InlineData(":root {", 7)]
    [InlineData(":root.light {", 4.5)]
    public void Words_and_directions_stand_out_from_their_ground(string block, double least)
    {
        string css = StyleSheets.Read("prompter");
        string light = Regex.Match(css, $@"{Regex.Escape(block)}([^}}]*)}}").Groups[1].Value;

        Assert.All(
            ["ink", "faint", "quiet", "wrong"],
            name => Assert.InRange(ContrastTests.Ratio(Colour(light, name), Colour(light, "ground")), least, 21));
        Assert.InRange(ContrastTests.Ratio(Colour(light, "focus"), Colour(light, "ground")), 3, 21);
    }

    [Fact]
    public void Who_wants_less_motion_gets_steps() => Assert.Contains("prefers-reduced-motion: reduce", Root.Descendants("script").Single().Value, StringComparison.Ordinal);

    [Fact]
    public void On_paper_there_are_words_only() =>
        Assert.Matches(@"@media print[\s\S]*\.status, \.mark, \.bar, \.keys, noscript \{ display: none; \}", StyleSheets.Read("prompter"));

    private static string Colour(string css, string name) => Regex.Match(css, $"--{name}: (#[0-9a-f]{{6}});").Groups[1].Value;

    private static IEnumerable<XElement> Spoken(XElement page) => page.Descendants().Where(e => e.Attribute("data-words") is not null && e.Attribute("data-hold") is null);

    private static bool IsDirection(XElement element) => element.AncestorsAndSelf().Any(e => e.Attribute("class")?.Value.StartsWith("quiet", StringComparison.Ordinal) == true);
}
