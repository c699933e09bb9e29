using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Play.Formulas.Nodes;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <content>Choices that everybody makes at once, unseen.</content>
internal sealed partial class CourseCompiler
{
    private bool _isSecret;

    // Everybody chooses on one position, unseen; then the choices are carried out seat by seat.
    private void EmitAllAtOnce(Step step, FrameMap frame)
    {
        (Node? where, int letter, ImmutableArray<Step> inner) = step.Inner is [{ Kind: StepKind.EachPlayer } each] ? Asked(each, frame) : (null, -1, step.Inner);
        int kept = Number();
        Add(new SetActing(null, kept, Slots.Me, At(step)));
        var carried = new List<(int Branch, List<Leaf> Leaves)>();
        _isSecret = true;
        for (int seat = 0; seat < _layout.Seats; seat++)
        {
            carried.Add(EmitSecret(step, inner, seat, where, letter, frame));
        }

        _isSecret = false;
        for (int seat = 0; seat < _layout.Seats; seat++)
        {
            EmitRevealed(seat, carried[seat]);
        }

        Add(new SetActing(null, -1, kept, At(step)));
        ForgetAll([kept, .. carried.Select(c => c.Branch)], []);
    }

    private (Node? Where, int Letter, ImmutableArray<Step> Inner) Asked(Step each, FrameMap frame)
    {
        FrameMap own = frame.Inner();
        int letter = own.Letter(each.Slot, Sort.Player);
        return (Optional(each.Terms[1], own), letter, each.Inner);
    }

    private (int Branch, List<Leaf> Leaves) EmitSecret(Step step, ImmutableArray<Step> inner, int seat, Node? where, int letter, FrameMap frame)
    {
        int branch = Number();
        var leaves = new List<Leaf>();
        var done = new Label();
        Add(new ActsSecretly(seat, where, letter, done));
        Alternative among = Any(inner, frame, leaves);
        Add(new Decide(among, null, true, done, At(step)));
        for (int i = 0; i < leaves.Count; i++)
        {
            // The same alternative leads here first, and to its steps once all have chosen.
            Mark(leaves[i].Alternative.Entry);
            Add(new SetLocal(new Constant(i + 1), branch, false, At(step)));
            Add(new GoTo(done));
            leaves[i].Alternative.Chosen.At = leaves[i].Alternative.Entry.At;
        }

        Mark(done);
        return (branch, leaves);
    }

    private void EmitRevealed(int seat, (int Branch, List<Leaf> Leaves) secret)
    {
        var done = new Label();
        for (int i = 0; i < secret.Leaves.Count; i++)
        {
            var next = new Label();
            Add(new IfNumber(secret.Branch, i + 1, next));
            Add(new SetActing(new Constant(seat), -1, 0, null));
            secret.Leaves[i].Emit();
            Add(new GoTo(done));
            Mark(next);
        }

        Mark(done);
    }
}

/// <summary>A player acts in secret, unless a condition leaves them out or they are out.</summary>
internal sealed class ActsSecretly(int seat, Node? where, int letter, Label skipped) : Instruction(null)
{
    public override int Do(Machine machine, int here)
    {
        machine.State.Numbers[Slots.Me] = seat;
        bool isOut = (machine.State.Numbers[Slots.Out] >> seat & 1) == 1;
        return isOut || (where is not null && !machine.HoldsFor(where, letter, seat)) ? skipped.At : here + 1;
    }
}

/// <summary>Goes on here where a number of the state is this one, else elsewhere.</summary>
internal sealed class IfNumber(int slot, int wanted, Label other) : Instruction(null)
{
    public override int Do(Machine machine, int here) => machine.State.Numbers[slot] == wanted ? here + 1 : other.At;
}
