using System.Text.Json;
using Rostrum.Testing;

namespace Rostrum.Cli.Tests;

public class CheckTests
{
    public static TheoryData<string> Shipped => [.. ShippedGames.Names];

    private const string SixMistakes = """
        rule sheet: 1
        game: Pebbles
        pieces: {pebble: {count: many}}
        boards: {yard: {spaces: square, squares: 4 by 4}}
        places: {heap: {heep of: pebble}}
        laws:
          free:
            binds: place
            needs: spot is emty
        actions:
          place:
            phrase: place (what) on (spot)
            choose: {what: a pebbel, spot: a square}
            do: move what to spot
        score:
          pebbles: {points: count(my pile)}
        """;

    [Fact]
    public void Of_very_many_variants_a_hundred_are_checked_one_by_one_and_the_rest_is_told()
    {
        string variants = string.Concat(Enumerable.Range(1, 103).Select(i => $"  night {i}: {{facts: {{guests: {{is: {i}}}}}}}\n"));
        using var game = new TempGame(("sheet.yaml", $"{TempGame.ScoringOnly}\nvariants:\n{variants}"));

        Assert.Contains("3 variants were not checked", Told.By("check", game.Folder).Talk);
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Every_shipped_game_is_fine(string game) => Assert.Equal(ExitCode.Fine, Told.By("check", Path.Combine(TestFiles.Root, "games", game)).Code);

    [Fact]
    public void Folder_of_games_names_one_of_them() =>
        Assert.Contains("Did you mean", Told.By("check", Path.Combine(TestFiles.Root, "games", "traditional")).Talk);

    [Fact]
    public void Summary_of_the_demo_game_counts_what_was_looked_at()
    {
        Told told = Told.By("check", TempGame.KilnNight);

        Assert.Matches(@"^Kiln Night: \d+ positions, \d+ expectations hold; 0 errors, \d+ warnings?\n$", told.Talk);
    }

    [Fact]
    public void Six_mistakes_in_six_sections_are_all_told_in_one_run()
    {
        using var game = new TempGame(("sheet.yaml", SixMistakes));

        JsonElement[] problems = [.. Told.By("check", game.Folder, "--json").Json.GetProperty("problems").EnumerateArray()];

        int[] lines = [.. problems.Select(p => p.GetProperty("line").GetInt32()).Distinct().Order()];
        Assert.All([3, 4, 5, 9, 13, 16], line => Assert.Contains(line, lines));
    }

    [Fact]
    public void Problem_has_every_key_that_scripts_rely_on()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly.Replace("my heap", "my heep")));

        JsonElement report = Told.By("check", game.Folder, "--json").Json;

        JsonElement problem = report.GetProperty("problems")[0];
        Assert.Equal(1, report.GetProperty("format").GetInt32());
        Assert.Equal(
            ["id", "severity", "file", "line", "column", "endLine", "endColumn", "message", "hint", "fix", "related"],
            problem.EnumerateObject().Select(p => p.Name));
        Assert.Equal("error", problem.GetProperty("severity").GetString());
        Assert.Equal("sheet.yaml", problem.GetProperty("file").GetString());
        Assert.Equal(6, problem.GetProperty("line").GetInt32());
        Assert.Equal(["title", "grade", "edits"], problem.GetProperty("fix").EnumerateObject().Select(p => p.Name));
        Assert.Equal("heap", problem.GetProperty("fix").GetProperty("edits")[0].GetProperty("newText").GetString());
    }

    [Fact]
    public void Screen_shows_twenty_problems_and_json_all()
    {
        string rows = string.Concat(Enumerable.Range(1, 30).Select(i => $"\n  row {i}: {{points: count(my lost{i})}}"));
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly + rows));

        string screen = Told.By("check", game.Folder).Output;
        JsonElement problems = Told.By("check", game.Folder, "--json").Json.GetProperty("problems");

        Assert.Equal(20, screen.Split(": error ").Length - 1);
        Assert.EndsWith($"… and {problems.GetArrayLength() - 20} more (all with --json)\n", screen);
    }

    [Fact]
    public void Problem_that_only_a_variant_brings_says_so()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly + "\nvariants:\n  moonlight:\n    score:\n      glow: {points: count(my lamp)}\n"));

        string output = Told.By("check", game.Folder).Output;

        Assert.Contains("With moonlight: ", output);
        Assert.Contains("lamp", output);
    }

    [Fact]
    public void Problem_of_the_base_game_is_told_once_however_many_variants_share_it()
    {
        string sheet = TempGame.ScoringOnly.Replace("my heap", "my heep") + "\nvariants:\n  one: {says: First.}\n  two: {says: Second.}\n";
        using var game = new TempGame(("sheet.yaml", sheet));

        Assert.Equal(1, Told.By("check", game.Folder, "--json").Json.GetProperty("problems").GetArrayLength());
    }

    [Fact]
    public void Expectation_that_is_not_met_is_a_finding()
    {
        using var game = new TempGame(
            ("sheet.yaml", TempGame.ScoringOnly), ("positions/few.yaml", "seat 1:\n  heap: 3 pebbles\nexpect:\n  tally:\n    total: 4\n"));

        Told told = Told.By("check", game.Folder);

        Assert.Equal(1, told.Code);
        Assert.Contains("positions/few.yaml(5,12): error ROS0161", told.Output);
        Assert.Contains("1 position, 0 of 1 expectation holds; 1 error, 0 warnings", told.Talk);
    }

    [Fact]
    public void Variant_that_the_sheet_does_not_offer_is_shown_where_the_position_asks_for_it()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly), ("positions/few.yaml", "variants: [moonlight]\nseat 1:\n  heap: 3 pebbles\n"));

        JsonElement problem = Told.By("check", game.Folder, "--json").Json.GetProperty("problems")[0];

        Assert.Equal("positions/few.yaml", problem.GetProperty("file").GetString());
        Assert.Equal(1, problem.GetProperty("line").GetInt32());
    }

    [Fact]
    public void Position_that_is_no_text_is_told_among_the_others()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly), ("positions/few.yaml", ""));
        File.WriteAllBytes(game.PathOf("positions/few.yaml"), [0xFF, 0xFE, 0x80]);

        Assert.Contains("'positions/few.yaml' is not a text in UTF-8.", Told.By("check", game.Folder).Output);
    }

    [Fact]
    public void Wrong_number_in_the_lesson_is_a_finding()
    {
        using var game = TempGame.OfKilnNight();
        game.Change("lesson.md", "[35](tally:E1/total)", "[36](tally:E1/total)");

        Told told = Told.By("check", game.Folder);

        Assert.Equal(1, told.Code);
        Assert.Contains("lesson.md", told.Output);
        Assert.Contains("The lesson says '36'", told.Output);
    }

    [Fact]
    public void Colour_that_no_picture_has_is_a_warning()
    {
        using var game = TempGame.OfKilnNight();
        game.Change("sheet.yaml", "ash: ash, iron: iron, copper: copper", "ash: ash, iron: mauve, copper: copper");

        Told told = Told.By("check", game.Folder);

        Assert.Equal(0, told.Code);
        Assert.Contains("warning ROS0231", told.Output);
    }
}
