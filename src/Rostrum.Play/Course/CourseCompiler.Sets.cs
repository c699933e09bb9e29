using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <content>Loops whose elements are sets themselves: <c>for each g in groups(…)</c>.</content>
internal sealed partial class CourseCompiler
{
    // Terms: domain, where, order, whether the player chooses the order.
    private void EmitForEachSet(Step step, Sort element, FrameMap frame)
    {
        if (element.Element?.IsMany ?? false)
        {
            throw new NotPlayableException("A loop goes through things, spaces or sets of them; this one goes through sets of sets.", step.At);
        }

        bool areThings = element.Element?.Kind == SortKind.Thing;
        var kept = new KeptSets(Set(areThings), Set(), Set(areThings));
        FrameMap own = frame.Inner();
        int runLetter = own.Letter(step.Slot, element);
        Node domain = _formulas.Many(step.Terms[0], frame.Inner());
        Add(new BeginSets(domain, Optional(step.Terms[1], own), Optional(step.Terms[2], own), runLetter, kept, At(step)));
        FrameMap inner = frame.Inner();
        inner.Keep(step.Slot, kept.Letter, true);
        (Label loop, Label done) = (new(), new());
        Mark(loop);
        if (step.Terms[3] is Term.Truth { IsYes: true })
        {
            var next = new NextSetAlternative(kept, element.Element?.Kind ?? SortKind.Any);
            Add(new DecideNext(next, kept.Lengths, done, At(step)));
            Mark(next.Entry);
        }
        else
        {
            Add(new NextSet(kept, done));
        }

        Emit(step.Inner, inner);
        Add(new GoTo(loop));
        Mark(done);
        ForgetAll([], [kept.Elements, kept.Lengths, kept.Letter]);
    }
}

/// <summary>Where a loop through sets keeps what is left of them: set slots of a state.</summary>
/// <param name="Elements">The elements of all sets that are left, one set after the other.</param>
/// <param name="Lengths">How many elements each of these sets has.</param>
/// <param name="Letter">The set that the steps are about.</param>
internal sealed record KeptSets(int Elements, int Lengths, int Letter)
{
    /// <summary>The sets that are left.</summary>
    public int[][] Left(TableState state)
    {
        int[] elements = state.Sets[Elements]!;
        int[] lengths = state.Sets[Lengths]!;
        int[][] sets = new int[lengths.Length][];
        int at = 0;
        for (int i = 0; i < lengths.Length; i++)
        {
            sets[i] = elements[at..(at + lengths[i])];
            at += lengths[i];
        }

        return sets;
    }

    /// <summary>Keeps sets as those that are left.</summary>
    public void Keep(TableState state, int[][] sets)
    {
        state.Sets[Elements] = [.. sets.SelectMany(s => s)];
        state.Sets[Lengths] = [.. sets.Select(s => s.Length)];
    }

    /// <summary>Takes one of the sets that are left out, for the steps that follow.</summary>
    public void Take(TableState state, int which)
    {
        int[][] left = Left(state);
        state.Sets[Letter] = left[which];
        Keep(state, [.. left.Where((_, i) => i != which)]);
    }
}

/// <summary>Works out the sets of a loop once, in their order, before its steps begin.</summary>
/// <param name="domain">What the loop goes through.</param>
/// <param name="where">Which sets count; null for all.</param>
/// <param name="order">The number that puts them in order, lowest first; null for the order of the domain.</param>
/// <param name="letter">The run's letter by which <paramref name="where"/> and <paramref name="order"/> name the set.</param>
/// <param name="kept">Where they are kept.</param>
/// <param name="at">Where the loop stands.</param>
internal sealed class BeginSets(Node domain, Node? where, Node? order, int letter, KeptSets kept, Rostrum.Text.SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        int[][] sets = machine.Sets(domain);
        if (where is not null)
        {
            sets = [.. sets.Where(s => machine.NumberFor(where, letter, s) is not (0 or Node.Nothing))];
        }

        if (order is not null)
        {
            sets = [.. sets.OrderBy(s => machine.NumberFor(order, letter, s))];
        }

        kept.Keep(machine.State, sets);
        return here + 1;
    }
}

/// <summary>Takes the next set of a loop, or goes on behind it.</summary>
internal sealed class NextSet(KeptSets kept, Label done) : Instruction(null)
{
    public override int Do(Machine machine, int here)
    {
        if (machine.State.Sets[kept.Lengths]!.Length == 0)
        {
            return done.At;
        }

        kept.Take(machine.State, 0);
        return here + 1;
    }
}
