using System.Collections.Immutable;
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
        Machine sub = Begun(option with { Powers = [] });
        bool isDone = sub.RunTo(call.Leave.At);
        run.State = sub.State;
        run.Me = sub.State.Numbers[Slots.Me];
        isImpossible = call.Action.MayOverfill && (IsOverfull(state, sub.State) || IsOverfilling(sub));
        if (isDone)
        {
            broken = AskLaws(asked, run, broken);
        }

        run.State = state;
        run.Me = state.Numbers[Slots.Me];
        run.Release(mark);
        return broken;
    }

    /// <summary>True where each power is still at hand once the prices of those before it are paid.</summary>
    /// <remarks>Behind a price in which something is decided or chance comes in nothing is asked: those who use both must see to it.</remarks>
    public bool CanPay(CallAlternative call, Option option, ImmutableArray<PowerPlan> powers)
    {
        (TableState state, int mark) = (machine.State, machine.Run.Mark);
        Machine sub = Begun(option with { Powers = powers });
        bool canPay = true;
        for (int i = 0; i < powers.Length - 1 && canPay; i++)
        {
            sub.State.Numbers[Slots.Step] = call.Prices[call.Action.Powers.IndexOf(powers[i])].At;
            if (!sub.RunTo(call.Pay.At))
            {
                break;
            }

            canPay = sub.IsAtHand(powers[i + 1]);
        }

        machine.Run.State = state;
        machine.Run.Me = state.Numbers[Slots.Me];
        machine.Run.Release(mark);
        return canPay;
    }

    private Machine Begun(Option option)
    {
        _sub ??= new Machine(machine.Plan, machine.Run) { StopsAtEveryDeal = true };
        _sub.State ??= machine.State.Copy();
        _sub.State.CopyFrom(machine.State);
        _sub.Choose(option, isTrial: true);
        _sub.Moment = null;
        return _sub;
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
