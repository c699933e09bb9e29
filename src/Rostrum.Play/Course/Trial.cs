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
        Machine sub = Begun(option with { Powers = [] });
        bool isDone = sub.RunTo(call.Leave.At);
        run.State = sub.State;
        run.Me = sub.State.Numbers[Slots.Me];
        isImpossible = call.Action.MayOverfill && IsOverfull(sub.State);
        if (isDone)
        {
            broken = AskLaws(call, run, broken);
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
        _sub ??= new Machine(machine.Plan, machine.Run);
        _sub.State ??= machine.State.Copy();
        _sub.State.CopyFrom(machine.State);
        _sub.Choose(option, isTrial: true);
        return _sub;
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
