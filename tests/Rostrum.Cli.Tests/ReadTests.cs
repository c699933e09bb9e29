using System.Text.Json;
using Rostrum.Testing;

namespace Rostrum.Cli.Tests;

public class ReadTests
{
    [Fact]
    public void Scoring_of_the_demo_game_reads_well() => Snapshots.Match(Told.By("read", TempGame.KilnNight, "--section", "scoring").Output, "scoring");

    [Fact]
    public void Every_line_fits_on_a_screen() =>
        Assert.All(Told.By("read", TempGame.KilnNight).Output.Split('\n'), line => Assert.True(line.Length <= 80, line));

    [Fact]
    public void Variants_are_told_as_differences_and_nothing_else()
    {
        string output = Told.By("read", TempGame.KilnNight).Output;

        Assert.Contains("With Climbing Chamber\n---------------------\n", output);
        Assert.Contains("changed: Scoring, full", output);
        Assert.Matches(@"Nothing else changes: \d+ other entries of the sheet are the same,\s+word\s+for\s+word\.", output);
    }

    [Fact]
    public void Sources_are_told_once()
    {
        string output = Told.By("read", TempGame.KilnNight).Output;

        Assert.Single(output.Split('\n'), line => line == "Sources");
        Assert.Contains("\nnote\n    Publisher's note, 3 March 2026, rank 1.\n", output);
    }

    [Fact]
    public void Json_has_every_key_that_scripts_rely_on()
    {
        JsonElement report = Told.By("read", TempGame.KilnNight, "--json").Json;

        Assert.Equal(["format", "game", "variants", "clauses", "differences", "unchanged", "sources"], Keys(report));
        Assert.Equal(["section", "name", "says", "meaning", "cite", "status", "cause", "readings", "decided", "why"], Keys(report.GetProperty("clauses")[0]));
        Assert.Equal(["variant", "section", "name", "before", "after"], Keys(report.GetProperty("differences")[0]));
        Assert.Equal(["name", "title", "printing", "date", "pages", "rank"], Keys(report.GetProperty("sources")[0]));
        Assert.All(report.GetProperty("clauses").EnumerateArray(), c => Assert.NotEqual("", c.GetProperty("cite").GetString()));
    }

    [Theory]
    [InlineData("beside", "decided", "left and right")]
    [InlineData("three bays full", "decided", "book 7")]
    [InlineData("glaze", "open", null)]
    [InlineData("copper and ash", "settled", null)]
    public void Status_tells_what_is_open_and_what_was_decided(string name, string status, string? decided)
    {
        JsonElement report = Told.By("read", TempGame.KilnNight, "--json").Json;

        JsonElement clause = report.GetProperty("clauses").EnumerateArray().First(c => c.GetProperty("name").GetString()!.Split(" (")[0] == name);
        Assert.Equal(status, clause.GetProperty("status").GetString());
        Assert.Equal(decided, clause.GetProperty("decided").GetString());
    }

    [Fact]
    public void What_is_not_modelled_is_listed()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly + "\nnot modelled: [who begins]\n"));

        Assert.Contains("Not modelled\n------------\nwho begins\n", Told.By("read", game.Folder).Output);
    }

    [Fact]
    public void Variant_that_is_on_is_part_of_what_is_read()
    {
        JsonElement report = Told.By("read", TempGame.KilnNight, "--variant", "Climbing Chamber", "--json").Json;

        Assert.Equal("Climbing Chamber", report.GetProperty("variants")[0].GetString());
        Assert.DoesNotContain("Climbing Chamber", report.GetProperty("differences").EnumerateArray().Select(d => d.GetProperty("variant").GetString()));
    }

    private static IEnumerable<string> Keys(JsonElement element) => element.EnumerateObject().Select(p => p.Name);
}
