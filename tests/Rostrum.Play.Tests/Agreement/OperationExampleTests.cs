using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.Agreement;

/// <summary>The examples of the table of operations, and more formulas, as nodes.</summary>
public sealed class OperationExampleTests
{
    public static TheoryData<Op> All => [.. Operations.All.Select(o => o.Id).Except([Op.WasDone, Op.Can])];

    /// <summary>Formulas over the bench sheet beyond the examples, that no shipped game has.</summary>
    public static TheoryData<string> More =>
    [
        "face of the ice die in my tray",
        "count(d in fire dice in my tray where face of d is 3)",
        "sum(d in ice dice in my tray, face of d)",
        "count(d in fire dice in my tray where face of d is at least 3)",
        "different(d in things of my tray, face of d)",
        "count(together(s in my field, (neighbours of s except corners of s)))",
        "first of ranked(b in bays of my field, count(ware in b))",
        "count(groups(s in my field where s is not empty, joined by touching, alike in glaze of top of s))",
        "largest(g in groups(s in my field where s is not empty, joined by touching), count(g))",
        "longest way(s in my field where s is not empty, joined by touching, counted as walk)",
        "longest way(s in my field where s is not empty, joined by touching, counted as bare)",
        "longest way(s in my field where s is not empty, joined by touching, counted as group)",
        "distance(A1, C3, joined by touching)",
        "following(B2, 12, leaving out bay of A1)",
        "beyond(A1, run(x from A1 going right while x is not empty), right)",
        "count(l in straights(my field, 3) where all(s in l, s is not empty))",
        "largest(l in straights(my field, 3), count(s in l where s shows a jug))",
        "count(c in my orders where filled(c))",
        "sum(c in my orders, pay of c)",
        "any(f in fits(picture of Second order, my field, rotated, mirrored) where anchor of f is nothing)",
        "rim of my field",
        "below (above B2) is B2",
        "A1 is in (A1, B1)",
        "item(2, (3, 4, 5))",
        "run worth of 2 + ladder of 9",
        "run worth of 7 is nothing",
        "place of top of A1",
        "owner of my field",
        "market is full",
        "bay of A1 is full",
        "my field is empty",
        "most(b in bays of my field, count(ware in b))",
        "count(whole jugs in my field) times 3 - down(minus 7, by 2)",
        "my coins + their coins",
        "(A1, B1) is (B1, A1)",
        "(neighbours of A1) is (edge of (A1, A1))",
        "most pairs(ware in my field, ware in market, joined by clash)",
    ];

    [Theory]
    [MemberData(nameof(All))]
    public void Each_example_gives_the_same_in_play(Op id) => Agree(Operations.Of(id).Example.Formula, tables: 3);

    [Theory]
    [MemberData(nameof(More))]
    public void More_formulas_give_the_same_in_play(string formula) => Agree(formula, tables: 40);

    private static void Agree(string formula, uint tables)
    {
        var problems = new DiagnosticBag();
        (Term term, int size) = OutsideFormula.Bind(BenchGame.Sheet, FormulaText.Of(formula, "test"), Sort.Any, problems) ?? throw new InvalidOperationException(problems.InOrder()[0].Message);
        var agreement = new Agreement(BenchGame.Sheet, 2, [new Question(formula, term, size, [])]);

        Assert.Empty(Enumerable.Range(0, (int)tables).SelectMany(seed => agreement.On((uint)seed)));
        Assert.True(agreement.Compared > 0);
    }
}
