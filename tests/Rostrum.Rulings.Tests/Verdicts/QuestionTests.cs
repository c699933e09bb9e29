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
          fell: {phrase: fell (what), choose: {what: one of trees in field}, do: move what to my cart}
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
    public void An_action_whose_steps_hang_on_chance_is_legal_where_its_laws_are_kept() => Assert.IsType<Ruling.Legal>(On("", "shake").Ruling);

    [Theory]
    [InlineData("plant aple tree on A1", "aple", "'apple'")]
    [InlineData("plant palm tree on A1", "palm", "A tree is apple or pear.")]
    [InlineData("plant apple tree on A9", "A9", "are A1 to C2.")]
    [InlineData("fell B2", "B2", "where such a thing lies")]
    [InlineData("my cart is 2", "my cart", "count(…)")]
    [InlineData("file A is full", "file A", "file A of field")]
    [InlineData("plant apple tree on the gate", "the gate", "are A1 to C2.")]
    [InlineData("plant apple tree", "plant apple tree", "plant (what) on (spot)")]
    public void A_wrong_word_is_underlined_and_has_a_way_out(string words, string at, string hint)
    {
        Diagnostic problem = Assert.Single(On("", words).Problems);

        Assert.Equal(at, problem.At.Text);
        Assert.Contains(hint, problem.Hint, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("seat 1: {cart: [apple tree, pear tree]}", "plant tree on A1", "'tree' can mean an apple tree or a pear tree.")]
    [InlineData("field: {A1: apple tree, B1: apple tree}", "fell apple tree", "'apple tree' can mean the apple tree on A1 or the apple tree on B1.")]
    public void Words_that_fit_several_things_are_not_guessed(string position, string words, string message) =>
        Assert.Equal(message, Assert.Single(On(position, words).Problems).Message);

    [Theory]
    [InlineData("seat 1: {cart: [apple tree, apple tree]}\nfield: {B1: basket}", "plant tree on A1")]
    [InlineData("field: {A1: apple tree, B1: apple tree}", "fell apple tree on B1")]
    [InlineData("field: {A1: apple tree}", "fell the tree on A1.")]
    [InlineData("field: {A1: [pear tree, apple tree]}", "fell A1")]
    public void A_thing_is_told_by_its_look_or_its_space(string position, string words) => Assert.Equal("legal", On(position, words).Ruling!.Verdict);

    [Fact]
    public void A_card_that_lies_elsewhere_is_not_assumed()
    {
        Ruling.Illegal illegal = Assert.IsType<Ruling.Illegal>(Ruling.On(Game.Kiln("E1"), "accept Commission 12").Ruling);

        Assert.Equal("Commission 12 lies in your accepted", illegal.Breaches[0].Because);
        Assert.Empty(illegal.Assumed);
    }

    [Fact]
    public void Whose_turn_is_guessed_is_told() =>
        Assert.Equal(["it is the turn of seat 1"], Ruling.On(Game.Position(Sheet, "seat 1: {cart: []}\nseat 2: {cart: []}\n"), "count(my cart) is 0").Ruling!.Assumed);

    [Fact]
    public void A_legal_action_names_the_laws_that_it_keeps()
    {
        Ruling.Legal legal = Assert.IsType<Ruling.Legal>(Ruling.On(Game.Kiln("copper-ash"), "place copper jug on B2").Ruling);

        Assert.Equal(["lowest free shelf, Rulebook, page 5", "nothing on a lamp, Rulebook, page 5", "jugs, Rulebook, page 5", "copper and ash, Rulebook, page 5"], legal.Kept.Select(l => $"{l.Clause}, {l.CiteInWords}"));
    }

    [Fact]
    public void A_space_named_twice_is_told() =>
        Assert.Equal("C1 is named twice", Assert.IsType<Ruling.Illegal>(Ruling.On(Game.Kiln("E1"), "burn to swap C1 and C1").Ruling).Breaches[0].Because);

    [Fact]
    public void A_question_is_turned_into_a_statement() => Assert.Contains("Write 'C1 is empty'", Assert.Single(On("", "Is C1 empty?").Problems).Hint, StringComparison.Ordinal);

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
