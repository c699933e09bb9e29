using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Telling;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Graphs;

/// <summary>What was found is told: the spaces of the way, the pairs, the sets.</summary>
public sealed class TellingTests
{
    private const string Laid = "s in my field where s is not empty, joined by touching";

    [Theory]
    [InlineData($"longest way({Laid}, counted as walk)", "the longest walk is A3, A2, B2, B1, A1: 5 shelves", "A3 A2 B2 B1 A1")]
    [InlineData($"longest way({Laid}, counted as group)", "the largest group is A3, A2, B2, A1, B1 and C1: 6 shelves", "A3 A2 B2 A1 B1 C1")]
    [InlineData($"longest way({Laid}, counted as span)", "the longest of the shortest ways is A3, A2, B2, B1, C1: 5 shelves", "A3 A2 B2 B1 C1")]
    [InlineData($"prize of longest way({Laid}, counted as span)", "the longest of the shortest ways is A3, A2, B2, B1, C1: 5 shelves, which gives 5", "A3 A2 B2 B1 C1")]
    [InlineData($"2 times down(longest way({Laid}, counted as bare), by 2)", "the longest way without a short cut is A3, A2, B2, B1, C1: 5 shelves, two for every 2, rounded down", "A3 A2 B2 B1 C1")]
    [InlineData("most pairs((A1, B1), (A2, B2), joined by touching)", "2 pairs: A1 with A2 and B1 with B2", "A1 A2 B1 B2")]
    [InlineData("most pairs((A1, B1), (C3, C2), joined by touching)", "no pair", "")]
    [InlineData("1 if most pairs((A1, A3), (A2, C3), joined by touching) is at least 1 otherwise 0", "1 pair: A1 with A2, at least 1", "A1 A2")]
    [InlineData("1 if best split(ware in my field, worth set worth) is 10 otherwise 0",
        "2 sets: the iron jug on A3 and the copper jug on B1 (5); the iron bowl on B2 and the copper bowl on C1 (5)", "A3 B1 B2 C1")]
    [InlineData("best split(ware in my field where it is a jug, worth set worth)", "the set the iron jug on A3 and the copper jug on B1", "A3 B1")]
    public void A_derivation_names_what_was_found(string formula, string text, string spaces)
    {
        (Term term, int size) = Bench.Bind(formula);
        var clause = new ScoreClause("tried", null, null, null, [new ScoreBody(null, term, null, null, null, "")], term.Origin.At, size);
        var evaluator = new Evaluator(Bench.Position, 0, Setting.First, new SortedSet<int>());

        TallyPart part = Assert.Single(new Explainer(evaluator, new Naming(Bench.Sheet, 0)).Explain(clause, ClausePoints.Of(evaluator, clause)));

        Assert.Equal((text, spaces), (part.Text, string.Join(' ', part.Spaces)));
    }
}
