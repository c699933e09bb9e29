using CsCheck;
using Rostrum.Testing;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Evaluation;

/// <summary>What is answered on a position with blanks holds for every way to fill them, and what holds for all of them is answered.</summary>
public sealed class CompletionTests
{
    private static readonly Sheet Small = Game.Of("""
        rule sheet: 1
        game: Small
        players: 1
        pieces:
          pot: {attributes: {form: [cup, jar], glaze: [red, blue]}, count: 40}
        signs: {c: cup, j: jar, r: red, b: blue}
        boards:
          shelf rack: {of: each player, squares: 3 across 2 up, stands: upright, columns: bay A to C, rows: tier 1 to 2, spaces: shelf, holds: 1 pot}
        words:
          near (space s, space t): s is next to t
        """);

    private static readonly string[] Truths =
    [
        "A1 is empty or A1 shows a cup",
        "count(cups in my shelf rack) is at least 2",
        "any(s in my shelf rack where s shows a red pot and no(n in neighbours of s where n shows a red pot))",
        "all(b in bays of my shelf rack, b is full or any(jars in b))",
        "glaze of top of A1 is glaze of top of B1",
        "A1 is not empty and not (A1 shows a cup) and not (A1 shows a jar)",
        "largest(b in bays of my shelf rack, count(pots in b)) is more than 1",
        "different(s in my shelf rack, glaze of top of s) is 2",
        "count(pots in my shelf rack) is between 2 and 4",
        "any(most(b in bays of my shelf rack, count(pots in b)) where it is bay of A1)",
    ];

    private static readonly string[] Numbers =
    [
        "count(pots in my shelf rack)",
        "sum(b in bays of my shelf rack, count(cups in b) times count(jars in b))",
        "largest(g in groups(s in my shelf rack where s is not empty, alike in glaze of top of s), count(g))",
        "longest way(s in my shelf rack where s is not empty, joined by near, counted as walk)",
        "most pairs(s in my shelf rack where s shows a cup, (my shelf rack where it shows a jar), joined by near)",
        "count(red pots in my shelf rack) - down(count(blue pots in my shelf rack), by 2)",
        "smallest(s in my shelf rack where s shows a cup, count(neighbours of s where it is empty))",
    ];

    // 0 empty, 1 to 4 a pot, 5 content blank, 6 and 7 glaze blank, 8 form blank.
    private static readonly Gen<Position> Positions = Gen.Frequency((4, Gen.Int[0, 4]), (1, Gen.Int[5, 8])).Array[6].Where(c => c.Count(x => x == 5) <= 3).Select(Lay);

    [Fact]
    public void A_truth_is_decided_where_and_only_where_every_completion_agrees() =>
        Gen.Select(Positions, Gen.Int[0, Truths.Length - 1].Select(i => Truths[i])).Hold(
            (position, formula) =>
            {
                Kleene[] all = [.. Completions(position).Select(p => Evaluator.AsTruth(Bench.Ask(formula, p)).Is).Distinct()];
                Kleene decided = new Splitter().Decide(position, p => Evaluator.AsTruth(Bench.Ask(formula, p))).Is;
                return decided == (all.Length == 1 ? all[0] : Kleene.Unknown);
            },
            cases: 150);

    [Fact]
    public void What_is_certain_without_cases_holds_for_every_completion() =>
        Gen.Select(Positions, Gen.Int[0, Truths.Length - 1].Select(i => Truths[i])).Hold(
            (position, formula) =>
            {
                Kleene abstractly = Evaluator.AsTruth(Bench.Ask(formula, position)).Is;
                return abstractly == Kleene.Unknown || Completions(position).All(p => Evaluator.AsTruth(Bench.Ask(formula, p)).Is == abstractly);
            },
            cases: 150);

    [Fact]
    public void Bounds_are_the_least_and_the_greatest_of_all_completions() =>
        Gen.Select(Positions, Gen.Int[0, Numbers.Length - 1].Select(i => Numbers[i])).Hold(
            (position, formula) =>
            {
                long[] all = [.. Completions(position).Select(p => Evaluator.AsNumber(Bench.Ask(formula, p))!.Low!.Value)];
                Value.Number loose = Evaluator.AsNumber(Bench.Ask(formula, position))!;
                Value.Number bounds = new Splitter().Bound(position, p => Evaluator.AsNumber(Bench.Ask(formula, p))!);
                return bounds.Low == all.Min() && bounds.High == all.Max() && !(loose.Low > all.Min()) && !(loose.High < all.Max());
            },
            cases: 150);

    private static Position Lay(int[] cells)
    {
        Kind pot = Small.Kinds[0].Kind;
        Position position = Position.Blank(Small, "random", 1);
        for (int i = 0; i < cells.Length; i++)
        {
            position = position.With(0, 0, i, Content(pot, cells[i]));
        }

        return position;
    }

    private static Stack Content(Kind pot, int cell) => cell switch
    {
        0 => Stack.Empty,
        5 => Stack.NotGiven,
        6 or 7 => new Stack([new Thing(pot, [cell - 6, null], null, Thing.Nobody, true)]),
        8 => new Stack([new Thing(pot, [null, 1], null, Thing.Nobody, true)]),
        _ => new Stack([new Thing(pot, [(cell - 1) / 2, (cell - 1) % 2], null, Thing.Nobody, true)]),
    };

    // Every way to fill every blank, worked out apart from the splitter: pot by pot.
    private static IEnumerable<Position> Completions(Position position)
    {
        Kind pot = Small.Kinds[0].Kind;
        Stack[] all = [.. Enumerable.Range(0, 5).Select(c => Content(pot, c))];
        IEnumerable<Position> sum = [position];
        for (int i = 0; i < 6; i++)
        {
            int space = i;
            Stack given = position.At(0, 0, i);
            Stack[] fitting = [.. all.Where(s => !given.IsGiven || (s.Things.Length == given.Things.Length && s.Things.Zip(given.Things).All(p => Fits(p.First, p.Second))))];
            sum = sum.SelectMany(p => fitting.Select(s => p.With(0, 0, space, s)));
        }

        return sum;
    }

    private static bool Fits(Thing full, Thing given) => full.Values.Zip(given.Values).All(p => p.Second is null || p.First == p.Second);
}
