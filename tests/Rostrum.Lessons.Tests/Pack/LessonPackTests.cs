using System.Collections.Immutable;
using System.Text;
using System.Xml.Linq;
using Rostrum.Lessons.Pack;
using Rostrum.Lessons.Shots;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Pack;

public class LessonPackTests
{
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");
    private static readonly ImmutableArray<PackFile> Files = LessonPack.Of(Kiln, LessonCheck.Of(Kiln)!);

    [Fact]
    public void The_pack_holds_page_aid_notes_and_each_shot_as_drawing_and_as_light_and_dark_pixels()
    {
        string[] names = [.. Files.Select(f => f.Name)];

        Assert.Contains("lesson.html", names);
        Assert.Contains("player-aid.html", names);
        Assert.Contains("notes.md", names);
        Assert.Equal(2 * names.Count(n => n.EndsWith(".svg", StringComparison.Ordinal)), names.Count(n => n.EndsWith(".png", StringComparison.Ordinal)));
        Assert.Contains("pictures/dark/E1.png", names);
        Assert.Contains("pictures/E1-bowls-A2.svg", names);
    }

    [Fact]
    public void The_page_needs_no_network_and_no_script()
    {
        string page = Text("lesson.html");

        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("src=\"http", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("url(http", page, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void The_page_shows_total_reasons_pages_and_open_questions()
    {
        string words = string.Join(' ', XDocument.Parse(Text("lesson.html").Replace("<!DOCTYPE html>", "", StringComparison.OrdinalIgnoreCase)).DescendantNodes().OfType<XText>().Select(t => t.Value));

        Assert.Contains("35 points", words, StringComparison.Ordinal);
        Assert.Contains("Rulebook, page 8", words, StringComparison.Ordinal);
        Assert.Contains("Copper never stands beside ash.", words, StringComparison.Ordinal);
        Assert.Contains("What does a run of five or six score", words, StringComparison.Ordinal);
        Assert.Contains("25 November 2026", words, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_for_the_presenter_stands_in_the_notes_and_not_in_the_page()
    {
        Assert.Contains("paid for", Text("notes.md"), StringComparison.Ordinal);
        Assert.Contains("What does a run of five or six score", Text("notes.md"), StringComparison.Ordinal);
        Assert.DoesNotContain("paid for? ", Text("lesson.html"), StringComparison.Ordinal);
        Assert.DoesNotContain("your law", Text("lesson.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_position_is_told_by_its_title_and_one_that_no_shot_shows_is_drawn_on_its_slip()
    {
        XElement[] slips = [.. XDocument.Parse(Text("lesson.html").Replace("<!DOCTYPE html>", "", StringComparison.OrdinalIgnoreCase)).Descendants().Where(e => e.Name.LocalName == "details" && e.Attribute("class")?.Value == "slip")];
        string[] drawn = [.. slips.Where(s => s.Descendants().Any(e => e.Name.LocalName == "svg")).Select(Where)];

        Assert.DoesNotContain(slips, s => Where(s).Contains("-near", StringComparison.Ordinal));
        Assert.Contains("A jug may stand on a plate, on another jug and on the floor", drawn);
        Assert.DoesNotContain("Copper beside ash", drawn);
    }

    [Fact]
    public void Statements_that_differ_by_their_reading_lead_to_one_slip()
    {
        string page = Text("lesson.html");

        Assert.Contains("10, 11 or 15 points", page, StringComparison.Ordinal);
        Assert.Contains("href=\"#slip-tally-run-of-five-bowls\">15</a>", page, StringComparison.Ordinal);
        Assert.Contains("href=\"#slip-tally-run-of-five-bowls\">11</a>", page, StringComparison.Ordinal);
        Assert.Single(page.Split("10, 11 or 15 points").Skip(1));
    }

    [Fact]
    public void A_number_that_hangs_on_a_reading_is_shown_with_all_of_them_and_hints_stay_with_the_presenter()
    {
        ImmutableArray<PackFile> files = LessonPack.Of(Kiln, LessonCheck.Of(Kiln, new SourceText("lesson.md", "---\ntitle: Runs\n---\n\n## Bowls\n\nThis run scores [10](tally:run-of-five/bowls).\n")));
        string page = Encoding.UTF8.GetString(files.Single(f => f.Name == "lesson.html").Bytes.AsSpan());
        string notes = Encoding.UTF8.GetString(files.Single(f => f.Name == "notes.md").Bytes.AsSpan());

        Assert.Contains("10, 11 or 15 points", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Say which reading you follow", page, StringComparison.Ordinal);
        Assert.Contains("Say which reading you follow", notes, StringComparison.Ordinal);
        Assert.Contains("<p>Kiln Night.</p>", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("position:E1 show bowls", "A2 A3 C2 E1")]
    [InlineData("position:E1 show bowls at A3", "A2 A3")]
    [InlineData("position:E1 show bowls at C2", "C2")]
    public void A_shot_points_out_a_clause_or_one_part_of_it(string target, string spaces)
    {
        LessonReport report = LessonCheck.Of(Kiln, new SourceText("lesson.md", $"## Bowls\n\n![Bowls](<{target}>)\n"));
        string words = ShotPicture.Of(report.Shots[0]).Description;

        Assert.Empty(report.Problems);
        Assert.Equal(spaces, string.Join(' ', words.Split(". ").Where(s => s.EndsWith("is marked with a tick", StringComparison.Ordinal)).Select(s => s[..2])));
    }

    [Fact]
    public void A_space_that_a_shots_clause_does_not_count_is_a_finding()
    {
        LessonReport report = LessonCheck.Of(Kiln, new SourceText("lesson.md", "## Bowls\n\n![Bowls](<position:E1 show bowls at D4>)\n"));

        Assert.Equal(("ROS0604", "There are 'A2', 'A3', 'C2' and 'E1'."), (report.Problems.Single().Id, report.Problems.Single().Hint));
    }

    [Fact]
    public void The_player_aid_has_each_scoring_clause_with_its_page()
    {
        string aid = Text("player-aid.html");

        Assert.All(Kiln.Sheet().Sheet!.Score, s => Assert.Contains(s.Says!, aid, StringComparison.Ordinal));
        Assert.Contains("p. 8", aid, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_game_gives_the_same_bytes()
    {
        Game again = ShippedGames.Open("kiln-night");
        ImmutableArray<PackFile> second = LessonPack.Of(again, LessonCheck.Of(again)!);

        Assert.Equal(Files.Select(f => (f.Name, Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(f.Bytes.AsSpan())))),
            second.Select(f => (f.Name, Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(f.Bytes.AsSpan())))));
    }

    [Fact]
    public void What_a_stranger_writes_stays_text()
    {
        LessonReport hostile = LessonCheck.Of(Kiln, new SourceText("lesson.md",
            "---\ntitle: <img src=x onerror=alert(1)>\npresenter: \"&\n---\n\n## <b>A</b> & \"B\"\n\nSee [here](javascript:alert(1)) [35](tally:E1/total).\n"));
        string page = Encoding.UTF8.GetString(LessonPack.Of(Kiln, hostile).First(f => f.Name == "lesson.html").Bytes.AsSpan());

        Assert.DoesNotContain("<img", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("javascript:", page, StringComparison.OrdinalIgnoreCase);
    }

    private static string Where(XElement slip) => slip.Descendants().FirstOrDefault(e => e.Attribute("class")?.Value == "slip-where")?.Value ?? "";

    private static string Text(string name) => Encoding.UTF8.GetString(Files.First(f => f.Name == name).Bytes.AsSpan());
}
