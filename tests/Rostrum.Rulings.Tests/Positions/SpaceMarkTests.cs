using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Positions;

/// <summary>Marks of each space: read as a list of spaces, asked, printed back.</summary>
public sealed class SpaceMarkTests
{
    private static readonly Sheet Sheet = Game.Of("""
        players: 2
        boards: {field: {squares: 2 across 2 up, spaces: cell}, yard: {of: each player, squares: 2 across 1 up, columns: C to D, spaces: patch}}
        marks:
          coins: {holds: 0 to 9, of: each cell}
          burning: {holds: yes or no, of: each patch}
          weight: {holds: 0 to 9, of: each cell, starts: 2}
        """);

    private const string Given = "coins: {A1: 3, B2: ?}\nseat 1:\n  burning: {C1: yes}\nseat 2:\n  burning: {D1: yes}\nturn of: seat 1\n";

    [Theory]
    [InlineData("coins of A1 is 3", "yes")]
    [InlineData("coins of A2 is 0", "yes")]
    [InlineData("coins of B2 is 0", "unsettled")]
    [InlineData("any(s in field where coins of s is more than 2)", "yes")]
    [InlineData("C1 is burning", "yes")]
    [InlineData("count(s in yard of opponent where s is burning) is 1", "yes")]
    [InlineData("weight of A1 is 2", "unsettled")]
    public void A_space_has_what_is_listed_or_what_it_had_at_the_start(string question, string answer) =>
        Assert.Equal(answer, Ruling.On(Game.Position(Sheet, Given), question).Ruling!.Verdict);

    [Fact]
    public void What_is_not_given_is_named_with_its_space() =>
        Assert.Contains("the coins of B2", string.Join(' ', Assert.IsType<Ruling.Unsettled>(Ruling.On(Game.Position(Sheet, Given), "coins of B2 is 0").Ruling).NotGiven), StringComparison.Ordinal);

    [Fact]
    public void Printed_it_reads_the_same()
    {
        Position position = Game.Position(Sheet, Given);

        string printed = PositionPrinter.Print(position);

        Assert.Contains("coins: {B2: not given, A1: 3}\n", printed, StringComparison.Ordinal);
        Assert.Equal(position.Marks.SelectMany(m => m), Game.Position(Sheet, printed).Marks.SelectMany(m => m));
    }

    [Theory]
    [InlineData("coins: {A9: 3}\n", "ROS0221")]
    [InlineData("coins: {A1: 30}\n", "ROS0145")]
    [InlineData("coins: 3\n", "ROS0131")]
    [InlineData("burning: {C1: yes}\n", "ROS0228")]
    public void Mistakes_are_told(string text, string id) => Assert.Equal(id, Read.Problem(text, Sheet).Id);
}
