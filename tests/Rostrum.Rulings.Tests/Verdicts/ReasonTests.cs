using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Verdicts;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Verdicts;

/// <summary>A reason says what was found and what it was compared with, never that something is itself.</summary>
public sealed class ReasonTests
{
    private const string Sheet = """
        rule sheet: 1
        game: Ledge
        players: 2
        pieces: {ram: {each player: 3}}
        signs: {r: ram}
        boards: {ledge: {squares: 3 across 2 up, rows: course, holds: 1}}
        marks: {mud: {holds: 0 to 3, of: each player}, post: {holds: space}}
        numbers: {top course: 2}
        actions:
          drive: {phrase: drive from (start) to (middle), choose: {start: a space in ledge, middle: one of neighbours of start, goal: "across(start, middle)"}, do: nothing}
          hop: {phrase: hop to (goal), choose: {goal: a space in ledge}, do: nothing}
        """;

    private const string Table = """
        seat 1:
          mud: 1
        seat 2:
          mud: 2
        ledge: |
          2 r1 . .
          1 .  . .
          / A  B C
        post: B1
        turn of: seat 1
        """;

    [Theory]
    [InlineData("needs: goal is nothing", "drive from A1 to B1", "goal is C1")]
    [InlineData("needs: goal is not nothing", "drive from B1 to C1", "goal is nothing")]
    [InlineData("needs: goal is not nothing and goal is empty", "drive from B1 to C1", "goal is nothing")]
    [InlineData("needs: goal shows my ram", "drive from B1 to C1", "goal is nothing")]
    [InlineData("forbids: order of course of goal is my mud", "hop to A1", "the order of course 1 is 1, like your mud")]
    [InlineData("needs: order of course of goal is my mud", "hop to A2", "the order of course 2 is 2, and your mud is 1")]
    [InlineData("needs: order of course of goal is 1", "hop to A2", "the order of course 2 is 2, not 1")]
    [InlineData("forbids: order of course of goal is top course", "hop to A2", "the order of course 2 is 2, like top course")]
    [InlineData("needs: order of course of goal is at most my mud", "hop to A2", "the order of course 2 is 2, not at most 1, your mud")]
    [InlineData("needs: count(rams in ledge) is 2", "hop to A1", "there is 1 ram in the ledge, not 2")]
    [InlineData("forbids: goal is B1", "hop to B1", "goal is B1")]
    [InlineData("needs: goal is B1", "hop to A1", "A1 is not B1")]
    [InlineData("forbids: goal is post", "hop to B1", "B1 is the post")]
    public void Reason_says_what_was_found_and_what_it_was_compared_with(string law, string question, string reason)
    {
        string action = question[..question.IndexOf(' ', StringComparison.Ordinal)];
        var game = new Game(GameFolder.InMemory("ledge", ("sheet.yaml", $"{Sheet}\nlaws:\n  asked: {{binds: {action}, {law}}}\n")), ShippedGames.Idioms);
        Position position = game.Open(new SourceText("here.yaml", Table + "\n")).Position!;

        var illegal = Assert.IsType<Ruling.Illegal>(Ruling.On(position, question).Ruling);

        Assert.Equal(reason, Assert.Single(illegal.Breaches).Because);
    }
}
