using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Evaluation;

/// <summary>Nothing, not given and not modelled are three different answers.</summary>
public sealed class AbsenceTests
{
    private static readonly Position NoSticks = Game.Position(Bench.Sheet, """
        seat 1:
          field: |
            3 . . .
            2 ? . .
            1 pa j .
            / A B C
        turn of: seat 1
        """);

    [Fact]
    public void A_heap_that_is_not_named_is_not_given_and_holds_no_more_than_there_is()
    {
        Value.Number count = Assert.IsType<Value.Number>(Bench.Ask("count(my sticks)", NoSticks));

        Assert.Equal((0L, 30L), (count.Low, count.High));
        Assert.Equal(Aspect.Content, Assert.Single(count.Blame.Blanks).Aspect);
    }

    [Theory]
    [InlineData("glaze of top of B1 is ash", "the glaze")]
    [InlineData("top of B1 is an ash jug", "the glaze")]
    public void A_value_that_is_not_given_is_unknown_and_named(string formula, string expected)
    {
        Value.Truth truth = Assert.IsType<Value.Truth>(Bench.Ask(formula, NoSticks));

        Assert.Equal(Kleene.Unknown, truth.Is);
        Assert.StartsWith(expected, new Rostrum.Rulings.Telling.Naming(Bench.Sheet, 0).Facts([Assert.Single(truth.Blame.Blanks)])[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("B1 shows an ash plate", "no")]
    [InlineData("B1 shows an ash plate and A2 shows a lamp", "no")]
    [InlineData("A1 shows a plate or A2 shows a lamp", "yes")]
    [InlineData("A2 is empty", "not given")]
    [InlineData("A2 is empty or not (A2 is empty)", "not given")]
    [InlineData("A3 is nothing", "no")]
    [InlineData("left of A1 is nothing", "yes")]
    public void An_answer_needs_only_what_decides_it(string formula, string expected) => Assert.Equal(expected, Bench.Say(Bench.Ask(formula, NoSticks)));

    [Fact]
    public void What_the_sheet_does_not_model_keeps_its_bounds_and_its_name()
    {
        Origin at = Bench.Bind("1").Term.Origin;
        var gap = new Term.NotModelled("the wind", 0, null, Sort.Number, at);
        var evaluator = new Evaluator(Bench.Position, 0, Setting.First, new SortedSet<int>());

        Value.Number sum = Assert.IsType<Value.Number>(evaluator.Evaluate(new Term.Apply(Operations.Of(Op.Plus), null, [gap, new Term.Number(3, at)], Sort.Number, at), Evaluator.Frame(0)));

        Assert.Equal((3L, (long?)null), (sum.Low!.Value, sum.High));
        Assert.Equal("the wind", Assert.Single(sum.Blame.Gaps).What);
    }
}
