using System.Text.Json;
using Rostrum.Testing;

namespace Rostrum.Cli.Tests;

/// <summary><c>rostrum threats</c>, and the tallies behind <c>rostrum play</c>.</summary>
public sealed class ThreatsTests
{
    private static readonly string PlankRoad = Path.Combine(TestFiles.Root, "games", "plank-road");

    [Fact]
    public void Json_has_the_keys_that_scripts_rely_on()
    {
        Told told = Told.By("threats", PlankRoad, "nine-planks", "--json");

        JsonElement heron = told.Json.GetProperty("seats")[0];
        Assert.Equal(ExitCode.Fine, told.Code);
        Assert.Equal((1, "yes", "ninth plank"), (heron.GetProperty("seat").GetInt32(), heron.GetProperty("canEnd").GetString(), heron.GetProperty("end").GetString()));
        Assert.Equal("lay a peat on c4", heron.GetProperty("line")[0].GetString());
        Assert.Equal([0, 1], heron.GetProperty("turnsLeft").EnumerateArray().Select(t => t.GetInt32()));
        Assert.Equal("no", told.Json.GetProperty("seats")[1].GetProperty("canEnd").GetString());
    }

    [Fact]
    public void One_seat_is_asked_alone()
    {
        Told told = Told.By("threats", PlankRoad, "nine-planks", "--seat", "2");

        Assert.Contains("Otter cannot end", told.Output);
        Assert.DoesNotContain("Heron can", told.Output);
    }

    [Fact]
    public void A_position_that_leaves_a_board_open_is_told_and_not_guessed()
    {
        Told told = Told.By("threats", TempGame.KilnNight, "blanks");

        Assert.Equal(ExitCode.Findings, told.Code);
        Assert.Contains("nobody says what lies on A4", told.Talk);
    }

    [Fact]
    public void Play_shows_the_tally_of_each_seat_where_it_is_asked_for()
    {
        Told told = Told.By("play", PlankRoad, "--seed", "7", "--tally");

        Assert.Contains("Plank Road, tally of Heron\n", told.Output);
        Assert.Contains("Plank Road, tally of Otter\n", told.Output);
        Assert.DoesNotContain("tally of", Told.By("play", PlankRoad, "--seed", "7").Output);
    }

    [Fact]
    public void Tallies_in_json_add_up_to_the_totals_of_the_game()
    {
        JsonElement game = Told.By("play", PlankRoad, "--seed", "7", "--tally", "--json").Json;

        Assert.Equal(
            game.GetProperty("result").GetProperty("seats").EnumerateArray().Select(s => s.GetProperty("total").GetInt32()),
            game.GetProperty("tallies").EnumerateArray().Select(t => t.GetProperty("total").GetInt32()));
    }
}
