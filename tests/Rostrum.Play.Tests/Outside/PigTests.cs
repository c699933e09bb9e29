using System.Globalization;
using Rostrum.Play.Solving;
using Rostrum.Play.Tests.Reference;

namespace Rostrum.Play.Tests.Outside;

/// <summary>Pig: what a turn brings by known rules of stopping, and the chance to win of two who never err.</summary>
/// <remarks>Source: <c>Reference/pig.json</c>; which of its numbers were published and which worked out again stands there.</remarks>
public sealed class PigTests
{
    private const string Name = "traditional/pig";
    private const string Reference = "pig.json";

    public static TheoryData<int> Outcomes => [0, 20, 21, 22, 23, 24, 25];

    [Theory]
    [MemberData(nameof(Outcomes))]
    public void A_turn_that_stops_at_20_brings_what_was_published(int points)
    {
        double chance = Turn(20)[points].ToDouble();

        string name = points.ToString(CultureInfo.InvariantCulture);
        Assert.Equal(ReferenceTable.Json(Reference, "published", "hold_at_20_turn_outcomes", name), chance, 6);
        Assert.Equal(ReferenceTable.Json(Reference, "recomputed", "hold_at_20_turn_outcomes", name), chance, 10);
    }

    [Fact]
    public void A_turn_that_stops_at_20_brings_nothing_else()
    {
        var chances = Turn(20);

        Assert.Equal(Outcomes.Select(o => o.Data), chances.Keys);
        Assert.Equal(Fraction.One, chances.Values.Aggregate((a, b) => a + b));
    }

    [Theory]
    [InlineData(19)]
    [InlineData(20)]
    [InlineData(21)]
    [InlineData(22)]
    [InlineData(25)]
    public void The_mean_gain_of_a_turn_by_where_it_stops(int stop) =>
        Assert.Equal(ReferenceTable.Json(Reference, "recomputed", $"hold_at_{stop}_mean_turn_gain"), TurnOutcomes.Mean(Turn(stop)).ToDouble(), 8);

    [Fact]
    public void Stopping_at_20_and_at_21_are_worth_exactly_the_same() => Assert.Equal(TurnOutcomes.Mean(Turn(20)), TurnOutcomes.Mean(Turn(21)));

    [Theory]
    [InlineData(6)]
    [InlineData(12)]
    public void The_chance_to_win_of_a_shorter_game_is_that_of_a_direct_reckoning(int target)
    {
        GameTable table = TableOf.Changed(Name, null, ("is at least 100", $"is at least {target}"));

        SolvedChances solved = table.BestChances();

        Assert.Equal(DirectPig.FirstWins(target), solved.Value, 10);
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void The_chance_to_win_of_a_game_to_20_is_that_of_a_direct_reckoning() => The_chance_to_win_of_a_shorter_game_is_that_of_a_direct_reckoning(20);

    [Fact]
    [Trait("Category", "Slow")]
    public void The_chance_to_win_of_the_whole_game()
    {
        SolvedChances solved = TableOf.Shipped(Name).BestChances();

        TestContext.Current.TestOutputHelper?.WriteLine($"{solved.Value:R}, {solved.Nodes} nodes, {solved.Sweeps} sweeps");
        Assert.Equal(ReferenceTable.Json(Reference, "recomputed", "optimal_play_first_player"), solved.Value, 10);
        Assert.Equal(ReferenceTable.Json(Reference, "published", "optimal_play_first_player_win_probability_percent"), 100 * solved.Value, 2);
    }

    private static IReadOnlyDictionary<int, Fraction> Turn(int stop)
    {
        GameTable table = TableOf.Shipped(Name);
        Measure pot = Measures.Mark(table.Plan, "pot", 0);
        Policy policy = Policies.Picking((machine, decision) => Deciding.Find(decision, pot(machine) >= stop ? "done" : "throw"));
        return TurnOutcomes.Of(table.Plan, Beginning.FirstTurn(table.Plan), policy, Measures.Mark(table.Plan, "bank", 0));
    }
}
