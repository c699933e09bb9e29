using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Tests.Outside;

namespace Rostrum.Play.Tests.Course;

/// <summary>Pieces larger than a space: what the state and its key say of them, and which steps nobody can carry out.</summary>
public sealed class LargePieceTests
{
    private static GameTable Table(string verb) => TableOf.Written($$$"""
        rule sheet: 1
        game: Planks
        players: 1
        pieces: {plank: {count: 4, shape: ". ., rotated"}, nail: {count: 2}}
        boards: {floor: {squares: 2 across 2 up}}
        places: {pile: {heap of: plank}}
        set-up:
          - move a plank from supply to pile
          - move a nail from supply to A1
        turn: [lay, meddle]
        actions:
          lay:
            phrase: lay (what) on (spots)
            choose: {what: a plank in supply, spots: "one of fits(what, floor)"}
            do: move what to spots
          meddle: {do: "{{{verb}}}"}
        """);

    [Theory]
    [InlineData("move a plank from pile to A1", "A plank lies on several spaces, and the step names one.")]
    [InlineData("swap A2 and B2", "A plank lies on several spaces, and the step names one.")]
    [InlineData("swap top of A2 and top of A1", "A plank lies on several spaces, and the step names one.")]
    [InlineData("swap pile and A1", "A plank lies on several spaces, and the step names one.")]
    [InlineData("push (A2, B2) going east round", "A plank lies on several spaces, and the step names one.")]
    public void A_step_that_names_one_space_is_not_carried_out(string verb, string message)
    {
        var driver = new Driver(Table(verb));
        driver.Choose(driver.NextDecision(), "lay plank on A2 and B2");

        Assert.Equal(message, Assert.Throws<NotPlayableException>(driver.NextDecision).Message);
    }

    [Fact]
    public void Two_crossed_stacks_of_planks_are_two_positions()
    {
        CoursePlan plan = Table("nothing").Plan;
        var keys = new StateKey(plan);
        byte[] one = [.. keys.Write(Laid(plan, [0, 1], [0, 2]))];
        byte[] other = [.. keys.Write(Laid(plan, [0, 2], [0, 1]))];
        byte[] alike = [.. keys.Write(Laid(plan, [0, 1], [0, 2], isOtherPlanks: true))];

        Assert.Equal(one, alike);
        Assert.NotEqual(one, other);
        Assert.Equal(other, keys.Write(keys.Read(other)).ToArray());
    }

    [Fact]
    public void A_plank_leaves_all_its_spaces()
    {
        TableState state = Laid(Table("nothing").Plan, [0, 1], [1, 3]);
        int lower = state.Layout.ThingOfFoot[state.Bottom(1)];
        state.Move(lower, state.Layout.SupplyOf(-1).First);

        Assert.Equal("0 1 0 1", string.Join(' ', Enumerable.Range(0, 4).Select(state.Count)));
        Assert.Equal(state.Layout.SupplyOf(-1).First, Assert.Single(state.SpotsOf(lower)));
        Assert.Equal("1 3", string.Join(' ', state.SpotsOf(state.TopThing(1))));
    }

    private static TableState Laid(CoursePlan plan, int[] first, int[] second, bool isOtherPlanks = false)
    {
        TableState state = plan.Start();
        state.Lay(isOtherPlanks ? 3 : 1, first);
        state.Lay(isOtherPlanks ? 1 : 2, second);
        return state;
    }
}
