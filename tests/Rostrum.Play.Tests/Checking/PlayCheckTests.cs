using Rostrum.Play.Checking;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.Checking;

/// <summary>What a check finds about whole games: the examples of the pages, and silence on every game that is sound.</summary>
public sealed class PlayCheckTests
{
    public static TheoryData<string, bool, string> Examples => [.. DiagnosticPage.ExamplesIn("played").Select(e => (e.Id, e.IsRight, e.Content))];

    public static TheoryData<string, string> Shipped => [.. ShippedGames.Names.SelectMany(n => SheetReader.Read(ShippedGames.Folder($"games/{n}"), ShippedGames.Idioms, []).Sheet!.Variants.Select(v => v.Name).Prepend("").Select(v => (n, v)))];

    public static TheoryData<string> Sentences => [.. TestFiles.In("tests/Rostrum.Play.Tests/Sentences", "*.yaml")
        .Where(f => !f.EndsWith(".cases.yaml", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_gives_what_its_page_says(string id, bool isRight, string content)
    {
        Sheet sheet = SheetOf("rule sheet: 1\ngame: Played\n" + content);

        Assert.Equal(new PageExample(id, "played", isRight, content).Expected, PlayCheck.Of(sheet).Select(p => p.Id).Distinct());
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void A_shipped_game_gives_no_warning(string game, string variant) =>
        Assert.Empty(PlayCheck.Of(SheetReader.Read(ShippedGames.Folder($"games/{game}"), ShippedGames.Idioms, variant.Length == 0 ? [] : [variant]).Sheet!).Select(Told));

    // That a sheet does not say how many pieces there are is no false alarm. In sentence 1 nothing is said of a player who can lay nowhere.
    [Theory]
    [MemberData(nameof(Sentences))]
    public void A_sheet_of_one_rule_gives_no_false_alarm(string file) =>
        Assert.Equal(file.Contains("/01-", StringComparison.Ordinal) ? ["ROS0425"] : [], PlayCheck.Of(SheetOf(TestFiles.Read(file))).Select(p => p.Id).Where(i => i != "ROS0901"));

    [Fact]
    public void Findings_are_warnings_and_stand_at_a_line() =>
        Assert.All(
            DiagnosticPage.ExamplesIn("played").Where(e => !e.IsRight).SelectMany(e => PlayCheck.Of(SheetOf("rule sheet: 1\ngame: Played\n" + e.Content))),
            p => Assert.True(p is { Severity: Severity.Warning, At.Length: > 0 }, p.Message));

    [Fact]
    public void A_sheet_without_a_turn_is_left_alone() => Assert.Empty(PlayCheck.Of(SheetOf("rule sheet: 1\ngame: Played\npieces: {tile: {attributes: {colour: [red, blue]}}}")));

    [Fact]
    public void The_moment_of_a_missed_duty_is_told()
    {
        PageExample wrong = DiagnosticPage.ExamplesIn("played").First(e => e is { Id: "ROS0425", IsRight: false });

        Diagnostic problem = Assert.Single(PlayCheck.Of(SheetOf("rule sheet: 1\ngame: Played\n" + wrong.Content)));

        Assert.Equal("This must be done and may be impossible: in turn 4 of a game that played itself, seat 2 could do nothing of it, and the turn passed.", problem.Message);
    }

    // The turn before may be one's own, or hold what is asked, in each of these.
    [Theory]
    [InlineData("players: 1", "", "put")]
    [InlineData("players: 2", "after put: again", "put")]
    [InlineData("players: 2", "next to play: me if path is full otherwise opponent", "put")]
    [InlineData("players: 2", "next to play: opponent if put was done the turn before by me otherwise me", "put")]
    [InlineData("players: 2", "course: {take turns until path is full: [put]}", "put")]
    [InlineData("players: 3", "", "{each player: [put]}")]
    [InlineData("players: 3", "laws: {free: {binds: rest, forbids: left of me can put}}", "put")]
    public void What_I_did_the_turn_before_may_be_asked_where_it_may_hold(string players, string more, string turn) =>
        Assert.DoesNotContain("ROS0430", TurnBefore(players, more, turn));

    [Theory]
    [InlineData("players: 2", "", "put")]
    [InlineData("players: 2 to 4", "next to play: left of me", "put")]
    [InlineData("players: 2", "next to play: opponent", "put")]
    [InlineData("players: 2", "set-up: {each player: [move a stone from supply to A1]}", "put")]
    public void What_I_did_the_turn_before_never_holds_where_turns_go_round(string players, string more, string turn) =>
        Assert.Contains("ROS0430", TurnBefore(players, more, turn));

    [Fact]
    public void Each_question_of_my_turn_before_is_told_once_with_a_way_out()
    {
        Diagnostic problem = PlayCheck.Of(SheetOf(AskedTurnBefore("players: 2", "", "put"))).Single(p => p.Id == "ROS0430");

        Assert.Equal("put was done the turn before by me", problem.At.Text);
        Assert.Equal("Ask 'the round before by me' for what you did in your own last turn, or for what you chose then, as in 'spot of my last put'.", problem.Hint);
    }

    [Theory]
    [InlineData("move 2 stones from supply to spot", "count(stones in supply) is at least 2")]
    [InlineData("move a red stone from supply to spot", "any(red stones in supply)")]
    public void A_move_that_found_less_is_told_once_with_the_law_that_is_missing(string step, string law)
    {
        Diagnostic problem = Assert.Single(PlayCheck.Of(SheetOf(Laying(step))), p => p.Id == "ROS0431");

        Assert.Equal(step, problem.At.Text);
        Assert.Contains($"'needs: {law}'", problem.Hint, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("move all stones from supply to spot")]
    [InlineData("move the stone in A1 to spot")]
    [InlineData("deal 2 from bag to spot")]
    [InlineData("pay")]
    public void A_move_that_may_find_less_is_not_told(string step) => Assert.DoesNotContain("ROS0431", PlayCheck.Of(SheetOf(Laying(step))).Select(p => p.Id));

    private static IEnumerable<string> TurnBefore(string players, string more, string turn) => PlayCheck.Of(SheetOf(AskedTurnBefore(players, more, turn))).Select(p => p.Id);

    private static string AskedTurnBefore(string players, string more, string turn) => $$$"""
        rule sheet: 1
        game: Played
        {{{players}}}
        pieces: {stone: {count: 30}}
        boards: {path: {squares: 9 across 1 up}}
        {{{more}}}
        turn: {{{turn}}}
        actions:
          put:
            phrase: put at (spot)
            choose:
              spot: a space in path where not put was done the turn before by me
            do: move a stone from supply to spot
          rest: {do: nothing}
        end:
          path full:
            if: path is full
        """;

    private static string Laying(string step) => $$$"""
        rule sheet: 1
        game: Played
        players: 2
        pieces: {stone: {count of each colour: 2, attributes: {colour: [red, blue]}}, bead: {count: 3}}
        places: {bag: {bag of: bead}, heap: {heap of: stone}}
        boards: {path: {squares: 9 across 1 up}}
        turn: {first possible of: [lay, rest]}
        actions:
          lay:
            phrase: lay at (spot)
            choose: {spot: a space in path}
            do: {{{step}}}
          rest: {do: nothing}
          pay: {do: move 2 stones from supply to box}
        end: {late: {if: turn number is at least 20}}
        """;

    [Fact]
    public void No_message_uses_a_banned_word()
    {
        Diagnostic[] problems = [.. EveryMessage.Of(typeof(PlayCheck).Assembly, "Rostrum.Play.Checking")];

        Assert.Equal(11, problems.Select(p => p.Id).Distinct().Count());
        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In).Select(w => $"{p.Id}: {w}")));
    }

    private static Sheet SheetOf(string text)
    {
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("played", ("sheet.yaml", text)), ShippedGames.Idioms, []);
        Assert.True(reading.IsSound, string.Join('\n', reading.Problems.Where(p => p.Severity == Severity.Error).Select(p => DiagnosticText.Render(p, 120))));
        return reading.Sheet!;
    }

    private static string Told(Diagnostic problem) => DiagnosticText.Render(problem, 120);
}
