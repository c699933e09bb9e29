using System.Text.Json;
using Rostrum.Testing;

namespace Rostrum.Cli.Tests;

public class TallyTests
{
    [Fact]
    public void Slip_of_the_worked_example_reads_well() => Snapshots.Match(Told.By("tally", TempGame.KilnNight, "E1").Output, "E1");

    [Fact]
    public void Slip_with_open_readings_and_missing_facts_reads_well() =>
        Snapshots.Match(Told.By("tally", TempGame.KilnNight, "glaze-not-given").Output + Told.By("tally", TempGame.KilnNight, "run-of-five").Output, "open");

    [Fact]
    public void Lines_and_parts_add_up_in_json()
    {
        JsonElement report = Told.By("tally", TempGame.KilnNight, "E1", "--json").Json;

        JsonElement seat = Assert.Single(report.GetProperty("seats").EnumerateArray());
        JsonElement[] lines = [.. seat.GetProperty("lines").EnumerateArray()];
        Assert.Equal(35, seat.GetProperty("total").GetInt64());
        Assert.False(seat.GetProperty("atLeast").GetBoolean());
        Assert.Equal(35, lines.Sum(l => l.GetProperty("points").GetInt64()));
        Assert.All(lines, l => Assert.Equal(l.GetProperty("points").GetInt64(), l.GetProperty("because").EnumerateArray().Sum(p => p.GetProperty("points").GetInt64())));
        Assert.All(lines, l => Assert.NotEqual("", l.GetProperty("cite").GetString()));
    }

    [Fact]
    public void Json_has_every_key_that_scripts_rely_on()
    {
        JsonElement report = Told.By("tally", TempGame.KilnNight, "run-of-five", "--json").Json;

        JsonElement seat = report.GetProperty("seats")[0];
        Assert.Equal(["format", "game", "position", "variants", "seats"], Keys(report));
        Assert.Equal(["seat", "total", "atLeast", "totalAtMost", "inWords", "without", "rating", "lines", "readings", "notModelled", "notGiven"], Keys(seat));
        Assert.Equal(["clause", "says", "points", "atMost", "cite", "because"], Keys(seat.GetProperty("lines")[0]));
        Assert.Equal(["text", "spaces", "points", "atMost"], Keys(seat.GetProperty("lines")[0].GetProperty("because")[0]));
        Assert.Equal(["clause", "name", "points", "total"], Keys(seat.GetProperty("readings")[0]));
    }

    [Fact]
    public void Missing_facts_are_named_and_the_total_still_adds_up()
    {
        JsonElement seat = Told.By("tally", TempGame.KilnNight, "heaps-not-given", "--json").Json.GetProperty("seats")[0];

        Assert.NotEmpty(seat.GetProperty("notGiven").EnumerateArray());
        Assert.Equal(
            seat.GetProperty("total").GetInt64(),
            seat.GetProperty("lines").EnumerateArray().Select(l => l.GetProperty("points")).Where(p => p.ValueKind == JsonValueKind.Number).Sum(p => p.GetInt64()));
    }

    [Fact]
    public void Sheet_of_six_lines_counts()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly), ("positions/few.yaml", "seat 1:\n  heap: 3 pebbles\n"));

        Told told = Told.By("tally", game.Folder, "few", "--json");

        JsonElement seat = told.Json.GetProperty("seats")[0];
        Assert.Equal(0, told.Code);
        Assert.Equal(3, seat.GetProperty("total").GetInt64());
        Assert.Equal("no page", seat.GetProperty("lines")[0].GetProperty("cite").GetString());
    }

    [Fact]
    public void Every_seat_that_the_position_gives_is_counted_unless_one_is_asked_for()
    {
        using var game = new TempGame(
            ("sheet.yaml", TempGame.ScoringOnly.Replace("game: Pebbles", "game: Pebbles\nplayers: 3 to 4")),
            ("positions/two.yaml", "seat 1:\n  heap: 3 pebbles\nseat 2:\n  heap: 5 pebbles\n"));

        int[] both = Seats(Told.By("tally", game.Folder, "two", "--json"));
        int[] one = Seats(Told.By("tally", game.Folder, "two", "--seat", "2", "--json"));

        Assert.Equal([1, 2], both);
        Assert.Equal([2], one);
    }

    [Fact]
    public void Position_comes_from_standard_input()
    {
        string words = File.ReadAllText(Path.Combine(TempGame.KilnNight, "positions", "E1.yaml"));

        Told told = Told.From(words, "tally", TempGame.KilnNight, "-", "--json");

        Assert.Equal(35, told.Json.GetProperty("seats")[0].GetProperty("total").GetInt64());
    }

    [Fact]
    public void Position_may_lie_anywhere()
    {
        using var game = new TempGame(("elsewhere.yaml", File.ReadAllText(Path.Combine(TempGame.KilnNight, "positions", "E1.yaml"))));

        Assert.Equal(0, Told.By("tally", TempGame.KilnNight, game.PathOf("elsewhere.yaml")).Code);
    }

    [Fact]
    public void Variant_changes_what_counts()
    {
        using var game = new TempGame(
            ("sheet.yaml", TempGame.ScoringOnly + "\nvariants:\n  double night:\n    score:\n      pebbles: {points: 2 times count(my heap)}\n"),
            ("positions/few.yaml", "seat 1:\n  heap: 3 pebbles\n"));

        Told told = Told.By("tally", game.Folder, "few", "--variant", "double night", "--json");

        Assert.Equal(6, told.Json.GetProperty("seats")[0].GetProperty("total").GetInt64());
        Assert.Equal("double night", told.Json.GetProperty("variants")[0].GetString());
    }

    [Fact]
    public void Sheet_with_an_error_gives_no_tally()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly.Replace("my heap", "my heep")), ("positions/few.yaml", "seat 1:\n  heap: 3 pebbles\n"));

        Told screen = Told.By("tally", game.Folder, "few");
        Told json = Told.By("tally", game.Folder, "few", "--json");

        Assert.Equal((1, ""), (screen.Code, screen.Output));
        Assert.Contains("'heap'", screen.Talk);
        Assert.Equal(1, json.Code);
        Assert.Equal(["format", "problems"], Keys(json.Json));
    }

    private static int[] Seats(Told told) => [.. told.Json.GetProperty("seats").EnumerateArray().Select(s => s.GetProperty("seat").GetInt32())];

    private static IEnumerable<string> Keys(JsonElement element) => element.EnumerateObject().Select(p => p.Name);
}
