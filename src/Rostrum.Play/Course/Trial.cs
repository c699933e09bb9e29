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
        List<LawPlan> asked = AskedAfter(call, run, broken);
        _sub ??= new Machine(machine.Plan, run) { StopsAtEveryDeal = true };
        _sub.State ??= state.Copy();
        _sub.State.CopyFrom(state);
        _sub.Choose(option with { Power = null }, isTrial: true);
        _sub.Moment = null;
        bool isDone = _sub.RunTo(call.Leave.At);
        run.State = _sub.State;
        run.Me = _sub.State.Numbers[Slots.Me];
        isImpossible = call.Action.MayOverfill && (IsOverfull(state, _sub.State) || IsOverfilling(_sub));
        if (isDone)
        {
            broken = AskLaws(asked, run, broken);
        }

        run.State = state;
        run.Me = state.Numbers[Slots.Me];
        run.Release(mark);
        return broken;
    }

    // Whether a law does not hold is asked before the steps, whatever it demands; one that is broken already is broken once.
    private static List<LawPlan> AskedAfter(CallAlternative call, Run run, List<LawPlan>? broken)
    {
        var asked = new List<LawPlan>();
        foreach (LawPlan law in call.Action.Laws)
        {
            if (law.IsAskedAfter && broken?.Contains(law) != true && !(law.Unless?.Holds(run) ?? false))
            {
                asked.Add(law);
            }
        }

        return asked;
    }

    private static List<LawPlan>? AskLaws(List<LawPlan> asked, Run run, List<LawPlan>? broken)
    {
        foreach (LawPlan law in asked)
        {
            foreach ((Node truth, bool wanted) in law.After)
            {
                if (truth.Holds(run) != wanted)
                {
                    (broken ??= []).Add(law);
                    break;
                }
            }
        }

        return broken;
    }

    // How many are dealt is certain, whatever they are.
    private static bool IsOverfilling(Machine sub) => sub.Moment is Moment.Chance { Event: DealEvent deal }
        && sub.State.Layout.SpotHolder[deal.To].Most is { } most && sub.State.Count(deal.To) + deal.Coming(sub.State) > most;

    /// <summary>True where a spot holds more than the sheet says that it may, and than it held before.</summary>
    public static bool IsOverfull(TableState before, TableState after)
    {
        foreach (Holder holder in after.Layout.Limited)
        {
            for (int spot = holder.First; spot < holder.First + holder.Length; spot++)
            {
                if (after.Count(spot) > holder.Most && after.Count(spot) > before.Count(spot))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
