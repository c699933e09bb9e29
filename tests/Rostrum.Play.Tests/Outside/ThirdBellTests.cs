using Rostrum.Play.Course;
using Rostrum.Play.Solving;

namespace Rostrum.Play.Tests.Outside;

/// <summary>The demo game Third Bell Market against the check values that came with its rules.</summary>
/// <remarks>
/// Source of every number: our own enumeration in the game's description. The sheet is asked with a scoring clause of this test that counts who is cancelled, and
/// without its last step, which would clear the offers away.
/// </remarks>
public sealed class ThirdBellTests
{
    [Theory]
    [InlineData(3, "5/9", "1/36")]
    [InlineData(4, "5/18", "2/27")]
    [InlineData(5, "5/54", "17/432")]
    public void The_first_bell_with_bids_at_random(int players, string allDifferent, string nobodyUnique)
    {
        GameTable table = TableOf.Changed("third-bell-market", players, ("\n    - clear up\n", "\n"), ("\nscore:\n", "\nscore:\n  cancelled ones: {points: count(p in players where p is cancelled)}\n"));
        var driver = new Driver(table);
        driver.NextDecision();

        var chances = TurnOutcomes.Of(table.Plan, driver.State, Policies.AtRandom, Measures.Points(table.Plan, "cancelled ones", 0), moment => moment is Moment.Decision { IsSecret: false });

        Assert.Equal((allDifferent, nobodyUnique), ($"{chances[0]}", $"{chances[players]}"));
        Assert.Equal(Fraction.One, chances.Values.Aggregate((a, b) => a + b));
    }
}
