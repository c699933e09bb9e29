using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Verdicts;

/// <summary>Words of a question: what is assumed is said, what cannot be is a breach, a wrong word is underlined alone.</summary>
public sealed class QuestionTests
{
    private const string Orchard = """
        rule sheet: 1
        game: Orchard
        players: 2
        pieces:
          tree: {attributes: {fruit: [apple, pear]}, count of each fruit: {apple: 2, pear: 2}}
          basket: {count: 5}
        boards:
          field: {squares: 3 across 2 up, columns: file A to C, rows: rank 1 to 2}
        places:
          cart: {heap of: tree, of: each player}
          shed: {heap of: basket, of: each player}
        actions:
          plant: {phrase: plant (what) on (spot), choose: {what: a tree in my cart, spot: a space in field}, do: move what to spot}
          fence: {phrase: fence (v) by (w) by (k) by (y) by (z) now, choose: {v: a space in field, w: a space in field, k: a space in field, y: a space in field, z: a space in field}, do: nothing}
          store: {phrase: store (what), choose: {what: a basket in my shed}, do: move what to supply}
          shake: {do: [shuffle my cart]}
          sow: {phrase: sow (what) on (spot), choose: {what: an apple tree in supply, spot: a space in field}, do: move what to spot}
          give: {phrase: give (gift), choose: {gift: 2 trees in supply}, do: move gift to my cart}
        laws:
          free: {binds: plant, needs: spot is empty}
        """;

    private static readonly Sheet Sheet = Game.Of(Orchard);

    [Theory]
    [InlineData("field: {A1: basket}", "an apple tree in your cart")]
    [InlineData("field: {A1: basket}\nseat 1: {cart: []}", "an apple tree in your cart, where the position has nothing")]
    [InlineData("field: {A1: basket}\nseat 1: {cart: [2 pear tree]}", "an apple tree in your cart, where the position has 2 pear trees")]
    [InlineData("field: {A1: apple tree, B1: apple tree}", "an apple tree in your cart, although the game has no more of them")]
    public void A_piece_that_is_taken_for_granted_against_the_position_is_told_as_such(string position, string assumed)
    {
        Ruling ruling = On(position, "plant apple tree on C2").Ruling!;

        Assert.Equal("legal", ruling.Verdict);
        Assert.Equal([assumed], ruling.Assumed);
    }

    [Theory]
    [InlineData("plant basket on C2", "plant")]
    [InlineData("store pear tree", "store")]
    public void A_thing_that_can_never_lie_there_is_not_taken_for_granted(string words, string breach)
    {
        Ruling.Illegal illegal = Assert.IsType<Ruling.Illegal>(On("", words).Ruling);

        Assert.Equal([breach], illegal.Breaches.Select(b => b.Clause));
        Assert.Empty(illegal.Assumed);
    }

    [Theory]
    [InlineData("field: {A1: apple tree}\nseat 1: {cart: []}\nseat 2: {cart: []}", "sow apple tree on C2", "legal", "")]
    [InlineData("field: {A1: apple tree}", "sow apple tree on C2", "legal", "an apple tree in the supply")]
    [InlineData("field: {A1: 2 apple tree}", "sow apple tree on C2", "legal", "an apple tree in the supply, although the game has no more of them")]
    [InlineData("field: {A1: apple tree}", "sow pear tree on C2", "illegal", "a pear tree in the supply")]
    [InlineData("field: {A1: apple tree}\nseat 1: {cart: []}\nseat 2: {cart: []}", "give apple tree and pear tree", "legal", "")]
    public void A_piece_of_the_supply_is_there_where_all_else_is_given_and_assumed_elsewhere(string position, string words, string verdict, string assumed)
    {
        Ruling ruling = On(position, words).Ruling!;

        Assert.Equal(verdict, ruling.Verdict);
        Assert.Equal(assumed, string.Join(" and ", ruling.Assumed));
    }

    [Fact]
    public void An_action_with_a_step_that_is_not_carried_out_yet_is_not_called_legal()
    {
        Ruling.Unsettled unsettled = Assert.IsType<Ruling.Unsettled>(On("", "shake").Ruling);

        Assert.Equal(["what 'shuffle my cart' does (not worked out yet)"], unsettled.NotModelled);
    }

    [Theory]
    [InlineData("plant aple tree on A1", "aple", "'apple'")]
    [InlineData("plant palm tree on A1", "palm", "A tree is apple or pear.")]
    [InlineData("plant apple tree on A9", "A9", "'A1'")]
    [InlineData("plant apple tree on the gate", "the gate", "are A1 to C2.")]
    [InlineData("plant apple tree", "plant apple tree", "plant (what) on (spot)")]
    public void A_wrong_word_is_underlined_and_has_a_way_out(string words, string at, string hint)
    {
        Diagnostic problem = Assert.Single(On("", words).Problems);

        Assert.Equal(at, problem.At.Text);
        Assert.Contains(hint, problem.Hint, StringComparison.Ordinal);
    }

    // In how many ways a question could be read grows with a power of its length.
    [Theory]
    [InlineData("fence A1{0} now")]
    [InlineData("fence A1{0} soon")]
    public void A_long_question_is_answered_at_once(string words) =>
        Assert.NotEmpty(On("", string.Format(null, words, string.Concat(Enumerable.Repeat(" by", 2000)))).Problems);

    [Fact]
    public void A_line_without_its_board_is_told_the_board()
    {
        Diagnostic problem = Assert.Single(On("", "rank 2 is full").Problems);

        Assert.Equal("rank 2", problem.At.Text);
        Assert.Equal("Write 'rank 2 of field'.", problem.Hint);
        Assert.Equal("unsettled", On("", "rank 2 of field is full").Ruling!.Verdict);
    }

    private static RulingAnswer On(string position, string words) => Ruling.On(Game.Position(Sheet, $"{position}\nturn of: seat 1\n"), words);
}
