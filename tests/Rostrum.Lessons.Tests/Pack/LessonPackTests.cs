using System.Collections.Immutable;
using System.Text;
using System.Xml.Linq;
using Rostrum.Lessons.Pack;
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

    private static string Text(string name) => Encoding.UTF8.GetString(Files.First(f => f.Name == name).Bytes.AsSpan());
}
