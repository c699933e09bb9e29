using System.Text.Json;
using Rostrum.Testing;

namespace Rostrum.Cli.Tests;

public class RuleTests
{
    private const string CopperJug = "place copper jug on B2";

    [Fact]
    public void Slips_of_the_copper_law_read_well() => Snapshots.Match(
        string.Join('\n', Told.By("rule", TempGame.KilnNight, "copper-ash", CopperJug).Output, Told.By("rule", TempGame.KilnNight, "copper-ash-near", CopperJug).Output),
        "copper-ash");

    [Fact]
    public void Slip_of_an_unsettled_ruling_reads_well() => Snapshots.Match(
        string.Join('\n', Told.By("rule", TempGame.KilnNight, "glaze-not-given", "place copper bowl on B2").Output, Told.By("rule", TempGame.KilnNight, "E1", "Commission 12 is met").Output),
        "unsettled");

    [Fact]
    public void Moved_piece_changes_the_answer_and_the_reason_names_the_page()
    {
        using var game = TempGame.OfKilnNight();
        Told before = Told.By("rule", game.Folder, "copper-ash", CopperJug);
        game.Change("positions/copper-ash.yaml", "2 bi .", "2 ba .");

        Told after = Told.By("rule", game.Folder, "copper-ash", CopperJug);

        Assert.Equal(0, before.Code);
        Assert.StartsWith("legal: ", before.Output);
        Assert.Equal(1, after.Code);
        Assert.StartsWith("illegal: ", after.Output);
        Assert.Matches("copper and ash +Rulebook, page 5\n", after.Output);
        Assert.Contains("A2", after.Output);
    }

    [Fact]
    public void Json_has_every_key_that_scripts_rely_on()
    {
        JsonElement report = Told.By("rule", TempGame.KilnNight, "copper-ash-near", CopperJug, "--json").Json;

        JsonElement breach = Assert.Single(report.GetProperty("breaches").EnumerateArray());
        Assert.Equal(
            ["format", "game", "position", "words", "verdict", "because", "spaces", "price", "kept", "breaches", "readings", "notModelled", "notGiven", "assumed"],
            report.EnumerateObject().Select(p => p.Name));
        Assert.Equal(["clause", "says", "cite", "because", "spaces"], breach.EnumerateObject().Select(p => p.Name));
        Assert.Equal("illegal", report.GetProperty("verdict").GetString());
        Assert.Equal("Rulebook, page 5", breach.GetProperty("cite").GetString());
    }

    [Fact]
    public void Question_that_is_not_understood_is_answered_in_json_with_its_problems()
    {
        Told told = Told.By("rule", TempGame.KilnNight, "E1", "place coper jug on B2", "--json");

        Assert.Equal(2, told.Code);
        Assert.Equal(["format", "problems"], told.Json.EnumerateObject().Select(p => p.Name));
        Assert.Contains(told.Json.GetProperty("problems").EnumerateArray(), p => p.GetProperty("file").GetString() == "question" && p.GetProperty("line").GetInt32() == 1);
        Assert.Equal("", told.Talk);
    }

    [Theory]
    [InlineData("E1", "Commission 12 is met", "yes")]
    [InlineData("E1", "Commission 6 is met", "no")]
    public void Truth_is_yes_or_no_with_its_reason(string position, string words, string verdict)
    {
        JsonElement report = Told.By("rule", TempGame.KilnNight, position, words, "--json").Json;

        Assert.Equal(verdict, report.GetProperty("verdict").GetString());
        Assert.NotEqual("", report.GetProperty("because").GetString());
    }

    [Fact]
    public void Every_law_that_is_broken_is_listed()
    {
        JsonElement report = Told.By("rule", TempGame.KilnNight, "E1", "place copper jug on C4", "--json").Json;

        string?[] clauses = [.. report.GetProperty("breaches").EnumerateArray().Select(b => b.GetProperty("clause").GetString())];
        Assert.Contains("nothing on a lamp", clauses);
        Assert.Contains("jugs", clauses);
    }

    [Fact]
    public void Missing_fact_makes_it_unsettled_and_is_named()
    {
        JsonElement report = Told.By("rule", TempGame.KilnNight, "glaze-not-given", "place copper bowl on B2", "--json").Json;

        Assert.Equal("unsettled", report.GetProperty("verdict").GetString());
        Assert.NotEmpty(report.GetProperty("notGiven").EnumerateArray());
    }
}
