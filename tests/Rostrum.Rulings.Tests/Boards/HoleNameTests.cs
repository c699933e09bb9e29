using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Boards;

/// <summary>Holes with names of their own, and labels that leave one out.</summary>
public sealed class HoleNameTests
{
    private const string Marsh = "boards:\n  marsh:\n    hexes: rows of 3 4 5 4 3\n    without: c3\n    holes: {pool: c3}\n";
    private const string Yard = "boards:\n  yard:\n    squares: 5 across 5 up\n    without: B2 C2 D4\n    holes: {pond: B2 C2, well: D4}\n";
    private const string Yards = "players: 2\nboards:\n  yard:\n    of: each player\n    squares: 3 across 3 up\n    without: B2\n    holes: {pool: B2}\n";

    [Theory]
    [InlineData(Marsh, "c2 is next to pool", "yes")]
    [InlineData(Marsh, "c1 is next to pool", "no")]
    [InlineData(Marsh, "c1 is not next to pool", "yes")]
    [InlineData(Marsh, "count(neighbours of pool) is 6", "yes")]
    [InlineData(Yard, "count(neighbours of pond) is 6", "yes")]
    [InlineData(Yard, "B3 is next to pond", "yes")]
    [InlineData(Yard, "B3 is next to well", "no")]
    [InlineData(Yard, "D3 is in neighbours of well", "yes")]
    [InlineData(Yard, "D3 is in neighbours of pond", "no")]
    public void What_lies_round_a_hole_can_be_asked(string boards, string question, string answer) =>
        Assert.Equal(answer, Ruling.On(Position.Blank(Game.Of(boards), "blank", 1), question).Ruling!.Verdict);

    [Theory]
    [InlineData("count(s in my yard where s is next to pool)", 4)]
    [InlineData("count(s in their yard where s is next to pool)", 4)]
    [InlineData("count(s in their yard where s is not next to pool)", 4)]
    [InlineData("count(neighbours of pool)", 4)]
    public void On_a_board_of_each_player_each_has_his_hole(string question, int count) =>
        Assert.Equal("yes", Ruling.On(Position.Blank(Game.Of(Yards), "blank", 2), $"{question} is {count}").Ruling!.Verdict);

    // On a board that comes round, B1 lies below A1's row in every sense: four squares touch a hole in the corner.
    [Fact]
    public void A_hole_in_the_corner_of_a_board_that_comes_round_has_four_neighbours()
    {
        Sheet sheet = Game.Of("boards:\n  ground:\n    squares: 4 across 3 up\n    wraps: yes\n    without: A1\n    holes: {shaft: A1}\n");

        Assert.Equal(["A3", "A2", "B1", "D1"], sheet.Boards[0].HoleNames[0].Round.Select(s => sheet.Boards[0].Spaces[s].Name.Name));
    }

    [Theory]
    [InlineData("A to H J", "A B C D E F G H J")]
    [InlineData("file A to C, E", "A B C E")]
    [InlineData("A to C E to G", "A B C E F G")]
    public void Labels_may_leave_one_out(string columns, string labels)
    {
        Sheet sheet = Game.Of($"boards:\n  board:\n    squares: {labels.Split(' ').Length} across 2 up\n    columns: {columns}\n");

        Assert.Equal(labels, string.Join(' ', sheet.Boards[0].Columns));
    }
}
