using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Telling;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Evaluation;

/// <summary>Every operation of the table means what the table says, and can be told.</summary>
public sealed class OperationTests
{
    public static TheoryData<Op> All => [.. Operations.All.Select(o => o.Id)];

    // What needs the record of a game cannot be bound to more than its gap.
    public static TheoryData<Op> Answered => [.. Operations.All.Where(o => !o.Example.Result.StartsWith("not ", StringComparison.Ordinal)).Select(o => o.Id)];

    [Theory]
    [MemberData(nameof(Answered))]
    public void The_example_of_the_table_gives_what_the_table_says(Op id)
    {
        OperationExample example = Operations.Of(id).Example;

        Assert.Equal(example.Result, Bench.Say(Bench.Ask(example.Formula)));
    }

    [Theory]
    [MemberData(nameof(Answered))]
    public void Each_operation_stands_in_a_derivation_that_adds_up(Op id)
    {
        (Term term, int size) = Bench.Bind(Operations.Of(id).Example.Formula);
        Term points = term.Sort.Kind == SortKind.Truth ? new Term.If(term, new Term.Number(1, term.Origin), new Term.Number(2, term.Origin), Sort.Number, term.Origin) : term;
        var clause = new ScoreClause("tried", null, null, null, [new ScoreBody(null, points, null, null, null, "")], term.Origin.At, size);
        var evaluator = new Evaluator(Bench.Position, 0, Setting.First, new SortedSet<int>());
        Value.Number number = ClausePoints.Of(evaluator, clause);

        TallyPart[] parts = [.. new Explainer(evaluator, new Naming(Bench.Sheet, 0)).Explain(clause, number)];

        Assert.Equal(number.Low, parts.Sum(p => p.Points.Certain));
        Assert.All(parts, p => Assert.True(p.Text.Length > 0 && !p.Text.Contains("  ", StringComparison.Ordinal), p.Text));
    }

    [Theory]
    [InlineData("down(7, by 0)", GapKind.Limit)]
    [InlineData("(1 to 1000000)", GapKind.Limit)]
    public void What_is_not_answered_names_its_gap(string formula, object kind) =>
        Assert.Contains(Bench.Ask(formula).WhyUnknown.Gaps, g => g.Kind.Equals(kind));

    [Theory]
    [InlineData("largest(s in my field where s shows a stick, height of s)", "2")]
    [InlineData("largest(s in my field where s shows an ash jug, height of s)", "0")]
    [InlineData("smallest(s in my field where s is not empty, height of s)", "1")]
    [InlineData("count(my sticks)", "4")]
    [InlineData("prize of 1", "2")]
    [InlineData("prize of 7", "5")]
    [InlineData("prize of 0", "nothing")]
    [InlineData("longest way(s in my field where s is not empty, joined by touching, counted as walk)", "5")]
    [InlineData("longest way(s in my field where s is not empty, joined by touching, counted as bare)", "5")]
    [InlineData("longest way(s in my field where s is not empty, joined by touching, counted as group)", "6")]
    [InlineData("most pairs((A1, A3), (A2, C3), joined by touching)", "1")]
    [InlineData("nearest(minus 5, by 2)", "minus 2")]
    [InlineData("down(minus 5, by 2)", "minus 3")]
    [InlineData("up(minus 5, by 2)", "minus 2")]
    [InlineData("glaze of top of B3 is ash", "no")]
    [InlineData("glaze of top of B3 is not ash", "no")]
    [InlineData("not (glaze of top of B3 is ash)", "yes")]
    [InlineData("height of left of A1 + 1", "nothing")]
    [InlineData("sum(s in my field, height of above s)", "3")]
    [InlineData("first of run(x from A1 going right while x is not empty) is B1", "yes")]
    [InlineData("bay A of my field is full", "yes")]
    [InlineData("bay B of my field is full", "no")]
    [InlineData("item(9, bays of my field) is nothing", "yes")]
    [InlineData("count(fits(picture of First order, my field, rotated, mirrored))", "1")]
    public void Values_worked_out_by_hand_on_the_bench(string formula, string expected) => Assert.Equal(expected, Bench.Say(Bench.Ask(formula)));

    [Fact]
    public void Every_operation_is_known_to_the_evaluator() => Assert.Equal(Enum.GetValues<Op>().Order(), Operations.All.Select(o => o.Id).Order());
}
