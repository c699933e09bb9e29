using System.Globalization;
using System.Numerics;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Solving;
using Rostrum.Play.Tests.Reference;

namespace Rostrum.Play.Tests.Outside;

/// <summary>Elementary chances of dice and draws, through the chance events of small sheets.</summary>
/// <remarks>Sources: <c>Reference/dice_sums.csv</c>, dice_4d6_keep_best_3.csv, hypergeometric.csv, coupon_collector.csv; all elementary.</remarks>
public sealed class OddsTests
{
    public static TheoryData<string, string> Rolls => [.. ReferenceTable.Rows("dice_sums.csv").Select(r => (r[0], r[1])).Distinct()];

    public static TheoryData<string> Draws => [.. ReferenceTable.Column("hypergeometric.csv", "case").Distinct()];

    public static TheoryData<string> Collections => [.. ReferenceTable.Column("coupon_collector.csv", "n")];

    [Theory]
    [MemberData(nameof(Rolls))]
    public void In_how_many_ways_dice_make_a_sum(string dice, string sides)
    {
        string[][] rows = [.. ReferenceTable.Rows("dice_sums.csv").Where(r => r[0] == dice && r[1] == sides)];

        var chances = Chances(Dice(dice, sides, "sum(d in tray, face of d)"));

        Assert.Equal(rows.Select(r => (r[2], new Fraction(BigInteger.Parse(r[3], CultureInfo.InvariantCulture), BigInteger.Parse(r[4], CultureInfo.InvariantCulture)))), chances.Select(c => ($"{c.Key}", c.Value)));
    }

    [Fact]
    public void Four_dice_of_which_the_best_three_count()
    {
        var chances = Chances(Dice("4", "6", "sum(d in tray, face of d) - smallest(d in tray, face of d)"));

        Assert.Equal(ReferenceTable.Rows("dice_4d6_keep_best_3.csv").Select(r => (r[0], new Fraction(ReferenceTable.Number(r[1]), 1296))), chances.Select(c => ($"{c.Key}", c.Value)));
        Assert.Equal("15869/1296", TurnOutcomes.Mean(chances).ToString());
    }

    [Theory]
    [MemberData(nameof(Draws))]
    public void How_many_marked_things_a_draw_brings(string name)
    {
        string[][] rows = [.. ReferenceTable.Rows("hypergeometric.csv").Where(r => r[0] == name)];

        var chances = Chances(Bag(ReferenceTable.Number(rows[0][1]), ReferenceTable.Number(rows[0][2]), rows[0][3]));

        Assert.Equal(rows.Select(r => (r[4], new Fraction(BigInteger.Parse(r[5], CultureInfo.InvariantCulture), BigInteger.Parse(r[6], CultureInfo.InvariantCulture)))), chances.Select(c => ($"{c.Key}", c.Value)));
    }

    // A wait for something of chance p lasts 1/p throws on the average, and waits add up.
    [Theory]
    [MemberData(nameof(Collections))]
    public void How_many_throws_show_every_face(string faces)
    {
        int all = (int)ReferenceTable.Number(faces);
        GameTable table = Album(all);
        var driver = new Driver(table);
        driver.Next();
        Fraction throws = Fraction.Zero;
        for (int seen = 0; seen < all; seen++)
        {
            throws += Fraction.One / Chances(table, driver.State)[seen + 1];
            Throw(driver, seen);
        }

        Assert.Equal(ReferenceTable.Rows("coupon_collector.csv").Single(r => r[0] == faces)[1], throws.ToString());
    }

    private static void Throw(Driver driver, int face)
    {
        driver.Choose(Assert.IsType<Moment.Chance>(driver.Next()).Event, face);
        driver.Next();
    }

    private static IReadOnlyDictionary<int, Fraction> Chances(GameTable table) => Chances(table, Beginning.FirstTurn(table.Plan));

    private static IReadOnlyDictionary<int, Fraction> Chances(GameTable table, TableState from) => TurnOutcomes.Of(table.Plan, from, Policies.AtRandom, Measures.Total(0));

    private static GameTable Dice(string dice, string sides, string points) => TableOf.Written($$"""
        rule sheet: 1
        game: Roll
        players: 1
        dice:
          die: {plural: dice, count: {{dice}}, faces: 1 to {{sides}}}
        places:
          tray: {heap of: die}
        set-up: move all dice from supply to tray
        turn: roll dice in tray
        score:
          roll: {points: "{{points}}"}
        """);

    private static GameTable Bag(long all, long marked, string drawn) => TableOf.Written($$"""
        rule sheet: 1
        game: Draw
        players: 1
        pieces:
          bead: {attributes: {look: [marked, plain]}, count of each look: {plain: {{all - marked}}, marked: {{marked}} } }
        places:
          sack: {bag of: bead}
          bowl: {heap of: bead}
        turn: deal {{drawn}} from sack to bowl
        score:
          marked ones: {points: count(marked beads in bowl)}
        """);

    private static GameTable Album(int all) => TableOf.Written($$"""
        rule sheet: 1
        game: Collect
        players: 1
        pieces:
          token: {attributes: {number: [{{string.Join(", ", Enumerable.Range(1, all))}}]}, count of each number: 1}
        dice:
          die: {plural: dice, count: 1, faces: 1 to {{all}}}
        places:
          pool: {heap of: token}
          album: {heap of: token}
          tray: {heap of: die}
        set-up:
          - move a die from supply to tray
          - move all tokens from supply to pool
        turn:
          - roll the die in tray
          - for each t in pool where number of t is face of the die in tray: move t to album
        score:
          found: {points: count(album)}
        """);
}
