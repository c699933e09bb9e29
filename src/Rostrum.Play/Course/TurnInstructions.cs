using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Course;

/// <summary>A turn begins: whoever's turn it is acts.</summary>
internal sealed class BeginTurn : Instruction
{
    public BeginTurn()
        : base(null)
    {
    }

    public override int Do(Machine machine, int here)
    {
        int[] numbers = machine.State.Numbers;
        numbers[Slots.Me] = numbers[Slots.Turn];
        numbers[Slots.Extra] = 0;
        numbers[Slots.TurnNumber] += machine.Plan.Counts.Turn ? 1 : 0;
        return here + 1;
    }
}

/// <summary>The same player has another turn after this one.</summary>
internal sealed class TurnAgain(SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        machine.State.Numbers[Slots.Extra] = 1;
        return here + 1;
    }
}

/// <summary>A turn is over: memory moves on, ends are asked, the next player follows.</summary>
/// <param name="over">Where the game ends.</param>
internal sealed class EndTurn(Label over) : Instruction(null)
{
    public override int Do(Machine machine, int here)
    {
        TableState state = machine.State;
        int[] numbers = state.Numbers;
        Forgetting.Locals(machine);
        numbers[Slots.Me] = numbers[Slots.Turn];
        if (numbers[Slots.TurnsLeft] > 0 && numbers[Slots.Extra] == 0)
        {
            numbers[Slots.TurnsLeft]--;
        }

        Ends.Ask(machine, e => e.Rule.Moment == EndMoment.AfterEachTurn);
        if (numbers[Slots.TurnsLeft] == 0)
        {
            return over.At;
        }

        Forgetting.AfterTurn(machine);
        bool isExtra = numbers[Slots.Extra] == 1 && (numbers[Slots.Out] >> numbers[Slots.Turn] & 1) == 0;
        numbers[Slots.Extra] = 0;
        if (!isExtra && !Next(machine))
        {
            return over.At;
        }

        return numbers[Slots.TurnsLeft] == 0 ? over.At : here + 1;
    }

    // False where everybody is out.
    private static bool Next(Machine machine)
    {
        int[] numbers = machine.State.Numbers;
        int seats = machine.Plan.Layout.Seats;
        int before = numbers[Slots.Turn];
        if (machine.Plan.NextToPlay is { } next)
        {
            int seat = machine.Number(next);
            numbers[Slots.Turn] = seat == Node.Nothing ? throw new NotPlayableException("'next to play' names nobody here.", machine.Plan.Sheet.Tree.Find("next to play")?.Key.Span) : seat;
        }
        else
        {
            do
            {
                numbers[Slots.Turn] = (numbers[Slots.Turn] + 1) % seats;
            }
            while ((numbers[Slots.Out] >> numbers[Slots.Turn] & 1) == 1 && numbers[Slots.Turn] != before);
        }

        if ((numbers[Slots.Out] >> numbers[Slots.Turn] & 1) == 1)
        {
            return false;
        }

        if (machine.Plan.NextToPlay is null && Order(machine, numbers[Slots.Turn]) <= Order(machine, before))
        {
            EndRound(machine);
        }

        return true;
    }

    private static int Order(Machine machine, int seat)
    {
        int seats = machine.Plan.Layout.Seats;
        return (seat - machine.State.Numbers[Slots.Start] + seats) % seats;
    }

    private static void EndRound(Machine machine)
    {
        int[] numbers = machine.State.Numbers;
        int next = numbers[Slots.Turn];
        Ends.Ask(machine, e => e.Rule.Moment == EndMoment.AfterEachRound);
        numbers[Slots.Round] += machine.Plan.Counts.Round ? 1 : 0;
        Forgetting.AfterRound(machine);
        numbers[Slots.Turn] = next;
    }
}

/// <summary>What is forgotten at the end of a turn and of a round.</summary>
internal static class Forgetting
{
    /// <summary>Choices and names of steps.</summary>
    public static void Locals(Machine machine)
    {
        (Range numbers, Range sets) = machine.Plan.Locals;
        machine.Plan.Blank.AsSpan()[numbers].CopyTo(machine.State.Numbers.AsSpan(numbers));
        machine.State.Sets.AsSpan(sets).Clear();
    }

    /// <summary>What was done while the game was set up belongs to no turn and to no round.</summary>
    public static void SetUp(Machine machine)
    {
        foreach (ActionPlan action in machine.Plan.Actions)
        {
            action.Memory.Begin(machine.State.Numbers);
        }
    }

    public static void AfterTurn(Machine machine)
    {
        Pass(machine, DoneWhen.TurnBefore, DoneWhen.ThisTurn);
        Reset(machine, machine.Plan.Resets.Turn);
    }

    public static void AfterRound(Machine machine)
    {
        Pass(machine, DoneWhen.RoundBefore, DoneWhen.ThisRound);
        Reset(machine, machine.Plan.Resets.Round);
    }

    private static void Pass(Machine machine, DoneWhen over, DoneWhen atHand)
    {
        foreach (ActionPlan action in machine.Plan.Actions)
        {
            action.Memory.Pass(machine.State.Numbers, over, atHand);
        }
    }

    public static void Reset(Machine machine, IEnumerable<MarkReset> resets)
    {
        foreach (MarkReset reset in resets)
        {
            Array.Fill(machine.State.Numbers, reset.To, reset.At, reset.Count);
        }
    }
}

/// <summary>Asks the ends that are due at a moment of the course.</summary>
internal sealed class AskEnds(Func<EndPlan, bool> due, Label over) : Instruction(null)
{
    public override int Do(Machine machine, int here)
    {
        Ends.Ask(machine, due);
        return machine.State.Numbers[Slots.TurnsLeft] == 0 ? over.At : here + 1;
    }
}

/// <summary>A step ends the game.</summary>
internal sealed class EndGame(int end, Label over, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        Ends.Come(machine, end);
        return machine.State.Numbers[Slots.TurnsLeft] == 0 ? over.At : here + 1;
    }
}

/// <summary>Goes to the last steps of the end that came, if it has any.</summary>
internal sealed class EndSteps(Label closing) : Instruction(null)
{
    public override int Do(Machine machine, int here)
    {
        int end = machine.State.Numbers[Slots.End];
        return end >= 0 && machine.Plan.Ends[end].Steps is { } steps ? steps.At : closing.At;
    }
}

/// <summary>The game is over.</summary>
internal sealed class Finish : Instruction
{
    public Finish()
        : base(null)
    {
    }

    public override int Do(Machine machine, int here)
    {
        TableState state = machine.State;
        Forgetting.Locals(machine);
        state.Numbers[Slots.Over] = 1;
        machine.Moment = new Moment.GameOver();
        return Wait;
    }
}

/// <summary>Between two turns: whoever's turn comes acts; waits where the machine is asked to.</summary>
internal sealed class BetweenTurns : Instruction
{
    public BetweenTurns()
        : base(null)
    {
    }

    public override int Do(Machine machine, int here)
    {
        // Who acted last is over: two ways to one position must leave one state.
        machine.State.Numbers[Slots.Me] = machine.State.Numbers[Slots.Turn];
        if (!machine.StopsAfterTurns)
        {
            return here + 1;
        }

        machine.State.Numbers[Slots.Step] = here + 1;
        machine.Moment = new Moment.TurnOver();
        return Wait;
    }
}
