using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Text;

namespace Rostrum.Play.Course;

/// <summary>Moves things: as many of a set as are wanted, as far as they are there, from the top down in a stack.</summary>
/// <param name="things">Which things may be moved.</param>
/// <param name="amount">How many; null for all.</param>
/// <param name="to">Where they go.</param>
/// <param name="faceUp">The face that is said.</param>
/// <param name="at">Where the step stands.</param>
internal sealed class MoveThings(Node things, Node? amount, Target to, bool? faceUp, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        int[] elements = machine.Elements(things);
        int wanted = amount is null ? elements.Length : machine.Number(amount);
        if (wanted == Node.Nothing)
        {
            return here + 1;
        }

        // Lists run from the lowest thing up; what lies on top is taken first.
        bool isAll = wanted >= elements.Length;
        if (wanted > elements.Length)
        {
            machine.Short?.Invoke(this, elements.Length);
        }

        for (int i = 0; i < Math.Min(wanted, elements.Length); i++)
        {
            int spot = to.Spot(machine, At);
            if (spot == TableState.None)
            {
                break;
            }

            Moves.Move(machine.State, isAll ? elements[i] : elements[elements.Length - 1 - i], spot, faceUp, At);
        }

        return here + 1;
    }
}

/// <summary>Moves one thing; where there is none, nothing happens.</summary>
internal sealed class MoveThing(Node thing, Target to, bool? faceUp, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        int which = machine.Number(thing);
        if (which != Node.Nothing && to.Spot(machine, At) is var spot && spot != TableState.None)
        {
            Moves.Move(machine.State, which, spot, faceUp, At);
        }

        return here + 1;
    }
}

/// <summary>Lays a piece larger than a space; where there is none, nothing happens.</summary>
/// <param name="pieces">The piece; of several, the topmost.</param>
/// <param name="isMany">True where they are a set.</param>
/// <param name="fit">On which spaces.</param>
/// <param name="fits">The ways of drawings.</param>
/// <param name="at">Where the step stands.</param>
internal sealed class LayPiece(Node pieces, bool isMany, Node fit, FitTable fits, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        int piece = isMany ? machine.Elements(pieces) is [.., var top] ? top : Node.Nothing : machine.Number(pieces);
        if (piece == Node.Nothing)
        {
            return here + 1;
        }

        int on = machine.Number(fit);
        if (on == Node.Nothing)
        {
            throw new NotPlayableException("There is nothing here to which it could go.", At);
        }

        if (machine.Plan.Layout.Class(piece).Kind.Shape?.Drawing != fits.DrawingOf(on))
        {
            throw new NotPlayableException($"The spaces are not of the shape of {Prose.A(machine.Plan.Layout.Class(piece).Kind.Kind.Name)}.", At);
        }

        Moves.Lay(machine.State, piece, fits.Spaces(on));
        return here + 1;
    }
}

/// <summary>Where something goes: a space or slot, or a place.</summary>
/// <param name="node">The formula.</param>
/// <param name="isPlace">True where it gives a place, in which a spot is found.</param>
internal sealed class Target(Node node, bool isPlace)
{
    /// <summary>The spot; <see cref="TableState.None"/> where there is no room in a row, or no such space.</summary>
    public int Spot(Machine machine, SourceSpan? at)
    {
        int value = machine.Number(node);
        if (value == Node.Nothing)
        {
            throw new NotPlayableException("There is nothing here to which it could go.", at);
        }

        return isPlace ? Moves.Landing(machine.State, machine.Plan.Layout.Holders[value]) : value;
    }
}

/// <summary>A state of things changes, or the face of a die.</summary>
/// <param name="things">Which things.</param>
/// <param name="isMany">True where they are a set.</param>
/// <param name="change">Changes one thing.</param>
/// <param name="at">Where the step stands.</param>
internal sealed class ChangeThings(Node things, bool isMany, Action<Machine, int> change, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        if (isMany)
        {
            foreach (int thing in machine.Elements(things))
            {
                change(machine, thing);
            }
        }
        else if (machine.Number(things) is var only && only != Node.Nothing)
        {
            change(machine, only);
        }

        return here + 1;
    }
}

/// <summary>Two change places: two things, or all that lies in two spots.</summary>
internal sealed class Exchange(Node one, Node other, bool areThings, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        (int first, int second) = (machine.Number(one), machine.Number(other));
        if (first == Node.Nothing || second == Node.Nothing || first == second)
        {
            return here + 1;
        }

        TableState state = machine.State;
        if (areThings)
        {
            Moves.RefuseLarge(state, first, state.Spot(second), At);
            Moves.RefuseLarge(state, second, state.Spot(first), At);
            state.ExchangeThings(first, second);
        }
        else
        {
            Moves.Exchange(state, first, second, At);
        }

        return here + 1;
    }
}

/// <summary>Two players change sides: each goes on with all that the other had. Whose turn it is stays.</summary>
internal sealed class ExchangePlayers(Node one, Node other, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        (int first, int second) = (machine.Number(one), machine.Number(other));
        if (first != Node.Nothing && second != Node.Nothing && first != second)
        {
            new SideExchange(machine.Plan, first, second).Carry(machine.State);
        }

        return here + 1;
    }
}

/// <summary>A line is pushed by one space; what leaves it comes in at the other end or goes to a place.</summary>
/// <param name="line">The spaces, in any order.</param>
/// <param name="direction">The direction.</param>
/// <param name="step">The space one step away, by space and direction; -1 past the edge.</param>
/// <param name="off">Where what leaves goes; null where it comes in again.</param>
/// <param name="at">Where the step stands.</param>
internal sealed class PushLine(Node line, Node direction, Func<int, int, int> step, Target? off, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        int[] spaces = machine.Elements(line);
        int going = machine.Number(direction);
        if (spaces.Length == 0 || going == Node.Nothing)
        {
            return here + 1;
        }

        int[] order = InOrder(spaces, going);
        TableState state = machine.State;
        Moves.RefuseLargeOn(state, order, At);
        if (off is not null)
        {
            while (state.Top(order[^1]) is var thing && thing != TableState.None && off.Spot(machine, At) is var spot && spot != TableState.None)
            {
                Moves.Move(state, thing, spot, null);
            }
        }

        for (int i = order.Length - 1; i > 0; i--)
        {
            state.Exchange(order[i], order[i - 1]);
        }

        return here + 1;
    }

    // From the space that nothing is pushed into to the one that is pushed off.
    private int[] InOrder(int[] spaces, int going)
    {
        int first = spaces.FirstOrDefault(s => !spaces.Any(t => step(t, going) == s), spaces[0]);
        var order = new List<int> { first };
        while (order.Count < spaces.Length && step(order[^1], going) is var next && spaces.Contains(next) && next != first)
        {
            order.Add(next);
        }

        return order.Count == spaces.Length ? [.. order] : throw new NotPlayableException("These spaces do not lie in a line in that direction.", At);
    }
}

/// <summary>A deck is shuffled: nobody knows its order any more.</summary>
internal sealed class Shuffle(Node place, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        if (machine.Number(place) is var holder && holder != Node.Nothing)
        {
            int spot = machine.Plan.Layout.Holders[holder].First;
            machine.State.SetKnown(spot, 0);
            machine.Shuffled?.Invoke(spot);
        }

        return here + 1;
    }
}

/// <summary>A mark gets a number, or a number is added to it or taken from it; a mark with limits stays within them.</summary>
/// <param name="first">The position of the mark's first number in a state.</param>
/// <param name="owner">The seat or space whose mark it is, as an offset; null for the table's.</param>
/// <param name="value">The number.</param>
/// <param name="sign">0 to set, 1 to add, -1 to take.</param>
/// <param name="limits">The lowest and highest number; null for no limit.</param>
/// <param name="at">Where the step stands.</param>
internal sealed class ChangeMark(int first, Func<Machine, int>? owner, Node value, int sign, (int? Low, int? High) limits, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        int slot = first + (owner?.Invoke(machine) ?? 0);
        int number = machine.Number(value);
        ref int held = ref machine.State.Numbers[slot];
        if (sign == 0)
        {
            held = number;
        }
        else if (number != Node.Nothing)
        {
            held += sign * number;
        }

        if (held != Node.Nothing)
        {
            held = Math.Min(Math.Max(held, limits.Low ?? int.MinValue + 1), limits.High ?? int.MaxValue);
        }

        return here + 1;
    }
}

/// <summary>Something is shown to somebody: nothing moves, and what was decided before cannot be taken back.</summary>
internal sealed class ShowSomething(SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        machine.Shown?.Invoke();
        return here + 1;
    }
}
