using Rostrum.Play.Formulas;
using Rostrum.Text;

namespace Rostrum.Play.Course;

/// <summary>Goes on elsewhere.</summary>
internal sealed class GoTo(Label target) : Instruction(null)
{
    public override int Do(Machine machine, int here) => target.At;
}

/// <summary>Goes on elsewhere unless a truth holds.</summary>
internal sealed class Unless(Node truth, Label target, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here) => machine.Holds(truth) ? here + 1 : target.At;
}

/// <summary>Gives a name to a value for the steps that follow.</summary>
internal sealed class SetLocal(Node value, int slot, bool isMany, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        if (isMany)
        {
            machine.State.Sets[slot] = machine.Elements(value);
        }
        else
        {
            machine.State.Numbers[slot] = machine.Number(value);
        }

        return here + 1;
    }
}

/// <summary>Forgets names whose steps are done, so that positions that look alike are alike.</summary>
internal sealed class Forget(int firstNumber, int numbers, int firstSet, int sets) : Instruction(null)
{
    public override int Do(Machine machine, int here)
    {
        machine.Plan.Blank.AsSpan(firstNumber, numbers).CopyTo(machine.State.Numbers.AsSpan(firstNumber));
        Array.Clear(machine.State.Sets, firstSet, sets);
        return here + 1;
    }
}

/// <summary>Takes the next element of a list that is kept with the state, or goes on behind the loop.</summary>
/// <param name="list">The set slot of the list.</param>
/// <param name="index">The number slot of the position.</param>
/// <param name="letter">The slot that gets the element; -1 for none.</param>
/// <param name="player">True where the element becomes the player who acts.</param>
/// <param name="done">Behind the loop.</param>
internal sealed class NextElement(int list, int index, int letter, bool player, Label done) : Instruction(null)
{
    public override int Do(Machine machine, int here)
    {
        int[] elements = machine.State.Sets[list]!;
        int at = machine.State.Numbers[index];
        if (at >= elements.Length)
        {
            return done.At;
        }

        machine.State.Numbers[index] = at + 1;
        if (player)
        {
            machine.State.Numbers[Slots.Me] = elements[at];
        }

        if (letter >= 0)
        {
            machine.State.Numbers[letter] = elements[at];
        }

        return here + 1;
    }
}

/// <summary>Works out the elements of a loop once, in their order, before its steps begin.</summary>
/// <param name="domain">What the loop goes through.</param>
/// <param name="where">Which elements count; null for all.</param>
/// <param name="order">The number that puts them in order, lowest first; null for the order of the domain.</param>
/// <param name="letter">The run's letter by which <paramref name="where"/> and <paramref name="order"/> name the element.</param>
/// <param name="list">The set slot of the list.</param>
/// <param name="index">The number slot of the position.</param>
/// <param name="at">Where the loop stands.</param>
internal sealed class BeginElements(Node domain, Node? where, Node? order, int letter, int list, int index, SourceSpan? at) : Instruction(at)
{
    /// <summary>True where the elements are players, each of whom is <c>me</c> when it is asked.</summary>
    public bool AsMe { get; init; }

    public override int Do(Machine machine, int here)
    {
        int[] elements = machine.Elements(domain);
        if (where is not null)
        {
            elements = [.. elements.Where(e => As(machine, e, () => machine.HoldsFor(where, letter, e)))];
        }

        if (order is not null)
        {
            elements = [.. elements.OrderBy(e => As(machine, e, () => machine.NumberFor(order, letter, e)))];
        }

        machine.State.Sets[list] = elements;
        machine.State.Numbers[index] = 0;
        return here + 1;
    }

    private T As<T>(Machine machine, int element, Func<T> asked)
    {
        ref int me = ref machine.State.Numbers[Slots.Me];
        int acting = me;
        me = AsMe ? element : acting;
        T answer = asked();
        me = acting;
        return answer;
    }
}

/// <summary>Counts a loop of so many rounds down; behind the loop where it is done.</summary>
internal sealed class CountDown(int counter, Label done) : Instruction(null)
{
    public override int Do(Machine machine, int here) => machine.State.Numbers[counter]-- > 0 ? here + 1 : done.At;
}

/// <summary>Another player acts, or again the one whose seat was kept.</summary>
internal sealed class SetActing(Node? player, int keptIn, int takenFrom, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        int[] numbers = machine.State.Numbers;
        int seat = player is null ? numbers[takenFrom] : machine.Number(player);
        if (keptIn >= 0)
        {
            numbers[keptIn] = numbers[Slots.Me];
        }

        numbers[Slots.Me] = seat == Node.Nothing ? throw new Layout.NotPlayableException("There is nobody here who could act.", At) : seat;
        return here + 1;
    }
}
