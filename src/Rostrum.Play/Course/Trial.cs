using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;

namespace Rostrum.Play.Course;

/// <summary>Tries an option on a copy of the state, to ask what its steps leave.</summary>
/// <remarks>Steps are followed to the end of the action, or to the first decision or chance event in it: what comes behind cannot be asked beforehand.</remarks>
internal sealed class Trial(Machine machine)
{
    private Machine? _sub;

    /// <summary>The laws that the option breaks by what it leaves, added to those that were broken before; null where none is.</summary>
    /// <param name="call">The call.</param>
    /// <param name="option">The option.</param>
    /// <param name="broken">The laws that are broken already; null for none.</param>
    /// <param name="isImpossible">True where it lays more on a spot than it may hold.</param>
    public List<LawPlan>? Breaks(CallAlternative call, Option option, List<LawPlan>? broken, out bool isImpossible)
    {
        TableState state = machine.State;
        Run run = machine.Run;
        int mark = run.Mark;
        _sub ??= new Machine(machine.Plan, run);
        _sub.State ??= state.Copy();
        _sub.State.CopyFrom(state);
        _sub.Choose(option with { Power = null }, isTrial: true);
        bool isDone = _sub.RunTo(call.Leave.At);
        run.State = _sub.State;
        run.Me = _sub.State.Numbers[Slots.Me];
        isImpossible = call.Action.MayOverfill && IsOverfull(_sub.State);
        if (isDone)
        {
            broken = AskLaws(call, run, broken);
        }

        run.State = state;
        run.Me = state.Numbers[Slots.Me];
        run.Release(mark);
        return broken;
    }

    private static List<LawPlan>? AskLaws(CallAlternative call, Run run, List<LawPlan>? broken)
    {
        foreach (LawPlan law in call.Action.Laws)
        {
            foreach ((Node truth, bool wanted) in law.After)
            {
                if (truth.Holds(run) != wanted && !(law.Unless?.Holds(run) ?? false))
                {
                    (broken ??= []).Add(law);
                    break;
                }
            }
        }

        return broken;
    }

    /// <summary>True where a spot holds more than the sheet says that it may.</summary>
    public static bool IsOverfull(TableState state)
    {
        foreach (Holder holder in state.Layout.Limited)
        {
            for (int spot = holder.First; spot < holder.First + holder.Length; spot++)
            {
                if (state.Count(spot) > holder.Most)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
