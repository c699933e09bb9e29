using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Solving;

namespace Rostrum.Play.Tests.Outside;

/// <summary>The demo game Saltern Steps against the check values that came with its rules.</summary>
/// <remarks>Source of every number: our own enumeration in the game's description.</remarks>
public sealed class SalternTests
{
    private static readonly GameTable Table = TableOf.Shipped("saltern-steps");

    [Theory]
    [InlineData(1, "1/1296")]
    [InlineData(2, "1/27")]
    [InlineData(3, "1/4")]
    [InlineData(4, "2/3")]
    public void The_chance_of_a_storm_by_values_held(int held, string chance)
    {
        var chances = TurnOutcomes.Of(Table.Plan, Held(held), Policies.AtRandom, IsStorm, moment => moment is Moment.Decision);

        Assert.Equal(chance, chances[1].ToString());
        Assert.Equal(Fraction.One, chances[0] + chances[1]);
    }

    [Fact]
    public void Best_play_of_a_turn_without_the_limit_of_storms()
    {
        ExpectedValue best = BestPlay.Of(Table.Plan, Beginning.FirstTurn(Table.Plan), GraphReach.Turn, Measures.Mark(Table.Plan, "salt", 0));

        Assert.Equal("84175/11664", best.Value.ToString());
    }

    [Fact]
    public void Best_play_of_a_turn_stops_at_four_values()
    {
        Fraction[] means = [.. Enumerable.Range(1, 5).Select(v => TurnOutcomes.Mean(Stopping(v)))];

        Assert.Equal("84175/11664", means[3].ToString());
        Assert.All(new[] { 0, 1, 2, 4 }, v => Assert.True(means[v] < means[3]));
    }

    private static IReadOnlyDictionary<int, Fraction> Stopping(int values)
    {
        Policy policy = Policies.Picking((machine, decision) =>
            Deciding.Find(decision, "stop") is var stop && stop >= 0
                ? (Pans(machine.State) >= values ? stop : Deciding.Find(decision, "no"))
                : 0);
        return TurnOutcomes.Of(Table.Plan, Beginning.FirstTurn(Table.Plan), policy, Measures.Mark(Table.Plan, "salt", 0));
    }

    private static int IsStorm(Machine machine) => Deciding.Find((Moment.Decision)machine.Moment!, "storm") >= 0 ? 1 : 0;

    private static int Pans(TableState state) => state.Count(state.Layout.Holders.Single(h => h.Place.Name == "pans").First);

    // A turn in which so many values are held and the next roll is due.
    private static TableState Held(int values)
    {
        var driver = new Driver(Table);
        for (Moment moment = driver.Next(); Pans(driver.State) < values || moment is not Moment.Chance; moment = driver.Next())
        {
            switch (moment)
            {
                case Moment.Chance chance:
                    driver.Choose(chance.Event, HighestDifferent((RollEvent)chance.Event));
                    break;
                case Moment.Decision decision:
                    driver.Choose(decision, driver.Words(decision).FirstOrDefault(w => w.StartsWith("keep", StringComparison.Ordinal)) ?? "no");
                    break;
            }
        }

        return driver.State;
    }

    // Options begin with the lowest face, so that all that is left above it stays new.
    private static int HighestDifferent(RollEvent roll) =>
        Enumerable.Range(0, roll.Weights.Length).Last(o => roll.Faces(o).Select(f => f.Face).Distinct().Count() == roll.Dice.Length);
}
