using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Positions;

namespace Rostrum.Play.Positions;

/// <summary>The state in which a game begins that is played on from a position: what the position does not give is as after the set-up.</summary>
internal static class Beginning
{
    /// <summary>The state before the turn of <see cref="Position.Me"/>.</summary>
    /// <param name="plan">The game, for as many players as the position has.</param>
    /// <param name="position">What lies where.</param>
    /// <exception cref="NotPlayableException">The game does not go by turns, or the position has more things than there are.</exception>
    public static TableState Of(CoursePlan plan, Position position)
    {
        if (!plan.HasTurns)
        {
            throw new NotPlayableException("A game without turns cannot be played on from a position: nobody says how far its course has come.", plan.Sheet.Tree.Find("course")?.Key.Span);
        }

        TableState before = AfterSetUp(plan);
        var state = new TableState(plan.Layout, plan.Numbers, plan.Sets);
        plan.Blank.CopyTo(state.Numbers);
        Array.Copy(before.Numbers, state.Numbers, Slots.Count);
        StateReader.Read(plan.Layout, position, state, plan.MarkBase, before);
        RecordReader.Read(plan, position, state);
        state.Numbers[Slots.Turn] = state.Numbers[Slots.Me] = position.Me;
        return state;
    }

    // How chance comes out in the set-up does not matter where the position says what it leaves.
    private static TableState AfterSetUp(CoursePlan plan)
    {
        var machine = new Machine(plan) { State = plan.Start(), StopsAfterTurns = true };
        while (true)
        {
            switch (machine.Advance())
            {
                case Moment.Decision decision:
                    machine.Choose(decision.Options[0]);
                    break;
                case Moment.Chance chance:
                    machine.Choose(chance.Event, 0);
                    break;
                default:
                    return machine.State;
            }
        }
    }
}
