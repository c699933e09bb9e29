using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Verdicts;

/// <summary>Rulings list every breach, never guess, and name what they assume.</summary>
public sealed class RulingTests
{
    private const string Grid = """
        rule sheet: 1
        game: Grid
        players: 2
        pieces:
          stone: {attributes: {colour: [black, white]}, count: 20}
        signs: {b: black, w: white}
        boards:
          grid: {squares: 3 across 2 up, columns: file A to C, rows: rank 1 to 2, holds: 1 stone}
        places:
          bowl: {heap of: stone, of: each player}
        words:
          near (space s):
            readings:
              sides: {means: sides of s}
              corners: {means: corners of s}
        actions:
          put: {phrase: put (what) on (spot), choose: {what: a stone in my bowl, spot: a space in grid}, do: move what to spot}
        laws:
          free: {says: A stone goes on a free space., binds: put, needs: spot is empty}
          no black near: {binds: put, forbids: "any(n in near of spot where n shows a black stone)"}
          never full: {binds: put, must not leave: grid is full}
        powers:
          Bravery: {lifts: no black near, for: put, if: count(my bowl) is at least 3, price: move 1 stone from my bowl to box}
        """;

    private static readonly Sheet Sheet = Game.Of(Grid);

    [Fact]
    public void All_broken_laws_are_listed_in_the_order_of_the_sheet()
    {
        Ruling.Illegal illegal = Assert.IsType<Ruling.Illegal>(Ruling.On(Game.Kiln("three-laws"), "place copper jug on B2").Ruling);

        Assert.Equal(["nothing on a lamp", "jugs", "copper and ash"], illegal.Breaches.Select(b => b.Clause));
        Assert.All(illegal.Breaches, b => Assert.Equal("Rulebook, page 5", b.CiteInWords));
        Assert.Equal("A2 shows an ash bowl", illegal.Breaches[2].Because);
        Assert.Equal(["A2"], illegal.Breaches[2].Spaces);
    }

    [Fact]
    public void A_reason_after_the_action_says_so()
    {
        Ruling.Illegal illegal = Assert.IsType<Ruling.Illegal>(Ruling.On(Game.Kiln("E1"), "burn to swap C2 and C3").Ruling);

        Assert.Equal("afterwards C3 is not standing lawfully: C2 shows an iron lamp", Assert.Single(illegal.Breaches).Because);
    }

    [Fact]
    public void A_piece_that_is_not_at_hand_is_assumed() =>
        Assert.Equal(["a copper jug in your carried"], Ruling.On(Game.Kiln("copper-ash"), "place copper jug on B2").Ruling!.Assumed);

    [Fact]
    public void A_card_that_does_not_lie_open_is_assumed_where_the_open_ones_are_not_given() =>
        Assert.Equal(["Commission 5 in the display"], Ruling.On(Game.Kiln("at-most-three"), "accept Commission 5").Ruling!.Assumed);

    [Fact]
    public void What_may_not_be_chosen_is_a_breach_of_the_action()
    {
        Ruling.Illegal illegal = Assert.IsType<Ruling.Illegal>(Ruling.On(Game.Kiln("E1"), "burn to swap C1 and A4").Ruling);

        Assert.Equal("burn", illegal.Breaches[0].Clause);
    }

    [Theory]
    [InlineData("b . . / . . .", "put white stone on B1", "unsettled", "near sides legal, near corners illegal")]
    [InlineData("b . . / b . .", "put white stone on B1", "illegal", "")]
    [InlineData(". . . / . . .", "put white stone on B1", "legal", "")]
    [InlineData("? . . / b . .", "put white stone on C1", "legal", "")]
    public void An_open_reading_unsettles_only_where_it_matters(string rows, string words, string verdict, string readings)
    {
        Ruling ruling = Ruling.On(Position(rows, "2"), words).Ruling!;

        Assert.Equal(verdict, ruling.Verdict);
        Assert.Equal(readings, ruling is Ruling.Unsettled unsettled ? string.Join(", ", unsettled.Readings.Select(r => $"{r.Clause} {r.Name} {r.Verdict}")) : "");
    }

    [Theory]
    [InlineData("4", "legal")]
    [InlineData("2", "illegal")]
    public void A_power_lifts_its_law_at_its_price(string bowl, string verdict)
    {
        Ruling ruling = Ruling.On(Position("b . . / b . .", bowl), "put white stone on B1").Ruling!;

        Assert.Equal(verdict, ruling.Verdict);
        Assert.Equal(verdict == "legal", ruling is Ruling.Legal { Price: not null } legal && legal.Because.StartsWith("because of Bravery", StringComparison.Ordinal));
    }

    [Fact]
    public void A_power_lifts_only_its_own_law() =>
        Assert.Equal("illegal", Ruling.On(Position("b . . / b w .", "4"), "put white stone on B1").Ruling!.Verdict);

    [Fact]
    public void A_power_of_which_nobody_knows_unsettles()
    {
        Position position = Game.Position(Sheet, "grid: |\n  2 b . .\n  1 b . .\n  / A B C\nturn of: seat 1\n");

        Ruling.Unsettled unsettled = Assert.IsType<Ruling.Unsettled>(Ruling.On(position, "put white stone on B1").Ruling);

        Assert.Equal(["your bowl"], unsettled.NotGiven);
    }

    [Fact]
    public void What_an_action_must_not_leave_is_asked_afterwards()
    {
        Ruling.Illegal illegal = Assert.IsType<Ruling.Illegal>(Ruling.On(Position("w w w / w . w", "2"), "put white stone on B1").Ruling);

        Assert.Equal(["never full"], illegal.Breaches.Select(b => b.Clause));
        Assert.Equal("never full", illegal.Breaches[0].Clause);
        Assert.StartsWith("afterwards ", illegal.Breaches[0].Because, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Commission 12 is met", "yes", "C1, C2 and C3")]
    [InlineData("Commission 17 is met", "no", "3 whole plates are not more than 4 whole bowls")]
    [InlineData("count(my sticks) is at least 5", "no", "there are 4 sticks, not at least 5")]
    public void A_truth_is_told_by_its_witness_or_by_what_is_missing(string words, string verdict, string reason)
    {
        Ruling ruling = Ruling.On(Game.Kiln("E1"), words).Ruling!;

        Assert.Equal(verdict, ruling.Verdict);
        Assert.Contains(reason, ruling is Ruling.Yes yes ? yes.Because : ((Ruling.No)ruling).Because, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plcae copper jug on B2", "ROS0241", "place (what) on (spot)")]
    [InlineData("place copper jgu on B2", "ROS0242", "")]
    [InlineData("place copper jug on Z9", "ROS0242", "")]
    [InlineData("burn to swap A1", "ROS0243", "2")]
    [InlineData("A1 is empyt", "ROS0201", "empty")]
    [InlineData("   ", "ROS0240", "")]
    [InlineData("3 + 4", "ROS0301", "")]
    public void Words_that_cannot_be_understood_get_a_sentence(string words, string id, string hint)
    {
        RulingAnswer answer = Ruling.On(Game.Kiln("E1"), words);

        Assert.Null(answer.Ruling);
        Assert.Equal(id, answer.Problems[0].Id);
        Assert.Contains(hint, answer.Problems[0].Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_ware_of_which_the_form_is_not_said_is_not_guessed()
    {
        Ruling.Unsettled unsettled = Assert.IsType<Ruling.Unsettled>(Ruling.On(Game.Kiln("jug-below-near"), "place iron ware on A2").Ruling);

        Assert.Equal(["the form of the ware in your carried"], unsettled.NotGiven);
    }

    private static Position Position(string rows, string bowl)
    {
        string[] lines = rows.Split(" / ");
        return Game.Position(Sheet, $"grid: |\n  2 {lines[0]}\n  1 {lines[1]}\n  / A B C\nseat 1:\n  bowl: {bowl} stone\nturn of: seat 1\n");
    }
}
