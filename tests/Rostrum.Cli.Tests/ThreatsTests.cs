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
    public void A_position_with_more_than_there_is_is_told_at_its_own_place()
    {
        using var game = new TempGame(("sheet.yaml", Steps), ("positions/many.yaml", "path: |\n  1 s s .\n  / A B C\n"), ("positions/open.yaml", "says: Nothing lies there.\npath: |\n  1 s ? .\n  / A B C\n"));

        Told many = Told.By("threats", game.Folder, "many");
        Told open = Told.By("threats", game.Folder, "open");

        Assert.Equal((ExitCode.Findings, ExitCode.Findings), (many.Code, open.Code));
        Assert.Contains("many.yaml(2,7): error ROS0901", many.Talk);
        Assert.Contains("open.yaml(3,7): error ROS0901", open.Talk);
    }

    [Fact]
    public void An_end_that_a_step_brings_is_no_move_of_a_player()
    {
        using var game = new TempGame(("sheet.yaml", Steps));

        string told = Told.By("play", game.Folder).Output;
        JsonElement last = Told.By("play", game.Folder, "--json").Json.GetProperty("moves").EnumerateArray().Last();

        Assert.Contains("\n  the end comes: stuck                                          Rulebook, page 2\n    Whoever cannot lay loses.\n", told);
        Assert.DoesNotContain(": end the game", told);
        Assert.Equal(("stuck", "Rulebook, page 2"), (last.GetProperty("end").GetString(), last.GetProperty("cite").GetString()));
        Assert.Equal(JsonValueKind.Null, Told.By("play", game.Folder, "--json").Json.GetProperty("moves")[0].GetProperty("end").ValueKind);
    }

    private const string Steps = """
        rule sheet: 1
        game: Stones
        players: 2
        sources: {book: {title: Rulebook}}
        pieces: {stone: {count: 1}}
        signs: {s: stone}
        boards: {path: {squares: 3 across 1 up, holds: 1}}
        turn:
          first possible of:
            - lay
            - end the game by stuck
        actions:
          lay: {cite: book 1, phrase: lay (what) on (spot), choose: {what: a stone in supply, spot: a space in path}, do: move what to spot}
        end:
          stuck: {says: Whoever cannot lay loses., cite: book 2, winner: opponent}
        """;

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
