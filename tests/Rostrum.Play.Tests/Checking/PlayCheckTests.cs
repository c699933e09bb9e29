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

    [Fact]
    public void No_message_uses_a_banned_word()
    {
        Diagnostic[] problems = [.. EveryMessage.Of(typeof(PlayCheck).Assembly, "Rostrum.Play.Checking")];

        Assert.Equal(9, problems.Select(p => p.Id).Distinct().Count());
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
