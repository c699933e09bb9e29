using Rostrum.Rulings.Games;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Games;

/// <summary>What follows from another problem is left out, and a mistake of its own never is.</summary>
public sealed class SheetCheckTests
{
    public static TheoryData<string, bool, string> Examples => [.. DiagnosticPage.ExamplesIn("checked").Select(e => (e.Id, e.IsRight, e.Content))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_gives_what_its_page_says(string id, bool isRight, string content)
    {
        Diagnostic[] problems = [.. Told(content)];

        Assert.Equal(new PageExample(id, "checked", isRight, content).Expected, problems.Select(p => p.Id).Distinct());
        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In)));
    }

    [Fact]
    public void Two_mistakes_are_two_messages_though_one_hides_much()
    {
        string[] told = [.. Told("pieces: {coin: {count: 40}}\nplaces:\n  purse: {heap of coin, of: each player}\nscore:\n  coins: count(my purse)\n  more: cuont(my purse)\n").Select(p => $"{p.Id} {p.At.StartPosition}")];

        Assert.Equal(["ROS0122 3,11", "ROS0201 6,9"], told);
    }

    [Fact]
    public void A_name_that_nothing_bears_is_told_once_with_the_other_lines()
    {
        Diagnostic problem = Told("score:\n  one: count(my purse)\n  two: 2 times count(my purse)\n  three: 3 times count(my purse)\n").Single();

        Assert.Equal("ROS0201 2,17", $"{problem.Id} {problem.At.StartPosition}");
        Assert.EndsWith("The same stands in lines 3 and 4.", problem.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fix_that_leads_to_another_error_is_not_called_safe() =>
        Assert.All(Told("pieces: {coin: {count: 40}}\nplayces: {purse: {heap of: coin}}\nplaces: {heap: {heap of: coin}}\n"), p => Assert.NotEqual(FixGrade.Safe, p.Fix?.Grade ?? FixGrade.Choice));

    // Where positions say 'green' too, it may be the declared 'groen' that is misspelt.
    [Theory]
    [InlineData("seat 1:\n  jar: [2 green]\n", FixGrade.Choice)]
    [InlineData("seat 1:\n  jar: [2 red]\n", FixGrade.Safe)]
    public void A_word_of_positions_is_not_replaced_as_a_matter_of_course(string position, FixGrade grade)
    {
        const string sheet = """
            pieces: {button: {count: 30, attributes: {colour: [red, blue, groen]}}}
            places:
              jar: {heap of: button, of: each player}
            score:
              sets:
                points: 5 times smallest((count(red buttons in my jar), count(blue buttons in my jar), count(green buttons in my jar)), it)
            """;

        Diagnostic problem = Told(sheet, ("positions/end.yaml", position)).First(p => p.Severity == Severity.Error);

        Assert.Equal(("green", grade), (problem.At.Text, problem.Fix!.Grade));
    }

    private static IEnumerable<Diagnostic> Told(string sheet, params (string Name, string Text)[] positions)
    {
        var game = new Rostrum.Rulings.Games.Game(GameFolder.InMemory("told", [(SheetReader.FileName, sheet), .. positions]), ShippedGames.Idioms);
        return new SheetCheck(game, _ => []).Of([]).Select(p => p.Problem);
    }
}
