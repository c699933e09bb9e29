using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Positions;

/// <summary>Marks for a player, a space or a value that have none: nothing is not the same as not given.</summary>
public sealed class NothingMarkedTests
{
    private static readonly Sheet Sheet = Game.Of("""
        players: 2
        pieces: {flag: {attributes: {colour: [red, blue]}}}
        boards: {path: {track: s1 to s6}}
        marks: {goal: {holds: space}, leader: {holds: player}, trump: {holds: colour}, round: {holds: 0 to 9}}
        """);

    [Theory]
    [InlineData("goal: nothing", "goal is nothing", "yes")]
    [InlineData("goal: nothing", "s1 is goal", "no")]
    [InlineData("goal: s1", "goal is nothing", "no")]
    [InlineData("goal: ?", "goal is nothing", "unsettled")]
    [InlineData("leader: nothing", "leader is me", "no")]
    [InlineData("leader: nothing", "leader is nothing", "yes")]
    [InlineData("leader: ?", "leader is nothing", "unsettled")]
    [InlineData("trump: nothing", "trump is red", "no")]
    [InlineData("trump: nothing", "trump is nothing", "yes")]
    public void A_mark_may_have_none(string mark, string question, string answer) =>
        Assert.Equal(answer, Ruling.On(Game.Position(Sheet, mark + "\nturn of: seat 1\n"), question).Ruling!.Verdict);

    [Theory]
    [InlineData("goal: nothing\n")]
    [InlineData("leader: nothing\n")]
    [InlineData("trump: nothing\n")]
    public void It_is_printed_as_it_was_read(string mark) => Assert.Contains(mark, PositionPrinter.Print(Game.Position(Sheet, mark)));

    [Fact]
    public void A_number_is_never_nothing() => Assert.Equal("ROS0145", Read.Problem("round: nothing\n", Sheet).Id);
}
