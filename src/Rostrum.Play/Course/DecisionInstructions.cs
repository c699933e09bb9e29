using System.Collections.Immutable;
using Rostrum.Play.Layout;
using Rostrum.Text;

namespace Rostrum.Play.Course;

/// <summary>A decision: the player who acts takes one of the legal options; where there is none, play goes on behind it.</summary>
/// <param name="among">What may be done.</param>
/// <param name="declining">Doing nothing instead; null where something must be done.</param>
/// <param name="isSecret">True where the others do not see it.</param>
/// <param name="none">Where play goes on if nothing is possible.</param>
/// <param name="at">Where the step stands.</param>
internal sealed class Decide(Alternative among, EndingAlternative? declining, bool isSecret, Label none, SourceSpan? at) : Instruction(at)
{
    public override IEnumerable<Alternative> Alternatives => [among];

    public override int Do(Machine machine, int here)
    {
        var options = new List<Option>();
        if (!among.Collect(machine.Finder, options))
        {
            if (declining is null)
            {
                machine.Impossible?.Invoke(this);
            }

            return none.At;
        }

        declining?.Collect(machine.Finder, options);
        machine.Moment = new Moment.Decision(machine.State.Numbers[Slots.Me], [.. options], isSecret);
        return Wait;
    }
}

/// <summary>A free order: each time one of several, until the player ends it or nothing is possible any more.</summary>
/// <param name="among">What may be done, each so often.</param>
/// <param name="ending">Ending the order; at hand once no duty is left that is possible.</param>
/// <param name="done">Behind the order.</param>
/// <param name="at">Where the step stands.</param>
internal sealed class DecideOrder(ImmutableArray<CountedAlternative> among, EndingAlternative ending, Label done, SourceSpan? at) : Instruction(at)
{
    public override IEnumerable<Alternative> Alternatives => among;

    public override int Do(Machine machine, int here)
    {
        var options = new List<Option>();
        bool isDutyLeft = false;
        bool isAnyLeft = false;
        foreach (CountedAlternative alternative in among)
        {
            bool isPossible = alternative.Collect(machine.Finder, options);
            isAnyLeft |= isPossible;
            isDutyLeft |= isPossible && alternative.IsDuty;
        }

        if (!isAnyLeft)
        {
            return done.At;
        }

        if (!isDutyLeft)
        {
            ending.Collect(machine.Finder, options);
        }

        machine.Moment = new Moment.Decision(machine.State.Numbers[Slots.Me], [.. options], false);
        return Wait;
    }
}

/// <summary>Counts that an alternative of a free order was taken.</summary>
internal sealed class CountTaken(int counter) : Instruction(null)
{
    public override int Do(Machine machine, int here)
    {
        machine.State.Numbers[counter]++;
        return here + 1;
    }
}

/// <summary>Which of the elements that are left comes next, where the player chooses; without a question where only one is left or all look alike.</summary>
/// <param name="next">The elements.</param>
/// <param name="left">A set slot that is empty once none is left.</param>
/// <param name="done">Behind the loop.</param>
/// <param name="at">Where the loop stands.</param>
internal sealed class DecideNext(Alternative next, int left, Label done, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        if (machine.State.Sets[left]!.Length == 0)
        {
            return done.At;
        }

        var options = new List<Option>();
        next.Collect(machine.Finder, options);
        if (options.Count == 1)
        {
            machine.Choose(options[0]);
            return machine.State.Numbers[Slots.Step];
        }

        machine.Moment = new Moment.Decision(machine.State.Numbers[Slots.Me], [.. options], false);
        return Wait;
    }
}

/// <summary>Keeps a choice that follows from a call, where nobody decides.</summary>
internal sealed class TakeOnly(CallAlternative call, Label none, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        var options = new List<Option>();
        if (!call.Collect(machine.Finder, options))
        {
            return none.At;
        }

        machine.Choose(options[0]);
        return machine.State.Numbers[Slots.Step];
    }
}

/// <summary>Remembers that an action was done, and with which choices, as far as anybody asks.</summary>
internal sealed class Remember(CallAlternative call) : Instruction(null)
{
    public override int Do(Machine machine, int here)
    {
        machine.Finished?.Invoke(call.Action.Facts);
        ActionMemory memory = call.Action.Memory;
        if (!memory.IsAsked)
        {
            return here + 1;
        }

        int me = machine.State.Numbers[Slots.Me];
        memory.Note(machine.State.Numbers, me);
        for (int i = 0; i < call.Slots.Length; i++)
        {
            foreach (int to in memory.Keeping(i, me))
            {
                Keep(machine.State, call.Slots[i], to);
            }
        }

        return here + 1;
    }

    private static void Keep(TableState state, Formulas.FrameMap.Spot from, int to)
    {
        if (from.IsMany)
        {
            state.Sets[to] = state.Sets[from.At];
        }
        else
        {
            state.Numbers[to] = state.Numbers[from.At];
        }
    }
}

/// <summary>Counts a use of a power.</summary>
internal sealed class UsePower(PowerPlan power) : Instruction(null)
{
    public override int Do(Machine machine, int here)
    {
        if (power.Used >= 0)
        {
            machine.State.Numbers[power.Used + machine.State.Numbers[Slots.Me]]++;
        }

        return here + 1;
    }
}

/// <summary>Goes to the price of the next power that is still to be paid for; to the steps where all are paid.</summary>
internal sealed class PayNext(CallAlternative call) : Instruction(null)
{
    public override int Do(Machine machine, int here)
    {
        ref int unpaid = ref machine.State.Numbers[call.Unpaid];
        if (unpaid == 0)
        {
            return call.Entry.At;
        }

        int next = System.Numerics.BitOperations.TrailingZeroCount(unpaid);
        unpaid &= unpaid - 1;
        return call.Prices[next].At;
    }
}
