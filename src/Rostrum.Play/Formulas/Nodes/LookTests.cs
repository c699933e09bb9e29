using Rostrum.Play.Layout;

namespace Rostrum.Play.Formulas.Nodes;

/// <summary>Whether a subject that is there has a look.</summary>
internal abstract class LookTest
{
    /// <summary>Whether a thing, spot, holder, line … has it; never asked of nothing.</summary>
    public abstract bool Holds(Run run, int subject);
}

/// <summary>A look of things: their class, their changing values, whose they are, and more.</summary>
/// <param name="classes">By class: whether it fits as far as that never changes.</param>
/// <param name="states">Changing values that things of fitting classes must have.</param>
/// <param name="traits">What else must hold; may be empty.</param>
internal sealed class ThingLook(bool[] classes, (int State, int Value)[] states, LookTest[] traits) : LookTest
{
    /// <inheritdoc />
    public override bool Holds(Run run, int subject)
    {
        TableState state = run.State;
        if (!classes[state.Layout.ClassOf[subject]])
        {
            return false;
        }

        foreach ((int at, int value) in states)
        {
            if (state.StateOf(subject, at) != value)
            {
                return false;
            }
        }

        return AllLooks.Holds(run, subject, traits);
    }
}

/// <summary>Several tests at once.</summary>
internal sealed class AllLooks(LookTest[] tests) : LookTest
{
    /// <inheritdoc />
    public override bool Holds(Run run, int subject) => Holds(run, subject, tests);

    /// <summary>True where all hold.</summary>
    public static bool Holds(Run run, int subject, LookTest[] tests)
    {
        foreach (LookTest test in tests)
        {
            if (!test.Holds(run, subject))
            {
                return false;
            }
        }

        return true;
    }
}

/// <summary>The same answer for everything.</summary>
internal sealed class ConstantLook(bool holds) : LookTest
{
    /// <inheritdoc />
    public override bool Holds(Run run, int subject) => holds;
}

/// <summary>An answer by the number of the subject.</summary>
internal sealed class TabledLook(Func<bool[]> table) : LookTest
{
    private bool[]? _table;

    /// <inheritdoc />
    public override bool Holds(Run run, int subject) => (_table ??= table())[subject];
}

/// <summary>Whose it is, by the number of the subject.</summary>
/// <param name="owners">The seat; below 0 for nobody's.</param>
/// <param name="isMine">True where it must belong to <c>me</c>; false where it must belong to another player.</param>
internal sealed class OwnerLook(Func<int[]> owners, bool isMine) : LookTest
{
    private int[]? _owners;

    /// <inheritdoc />
    public override bool Holds(Run run, int subject) => (_owners ??= owners())[subject] is var owner && owner >= 0 && (owner == run.Me) == isMine;
}

/// <summary>Whose a thing is.</summary>
internal sealed class ThingOwnerLook(PropertyTable owners, bool isMine) : LookTest
{
    /// <inheritdoc />
    public override bool Holds(Run run, int subject) => owners.Of(run.State, subject) is var owner && owner >= 0 && (owner == run.Me) == isMine;
}

/// <summary>A word of the sheet said of the subject.</summary>
internal sealed class WordLook(int letter, Node word) : LookTest
{
    /// <inheritdoc />
    public override bool Holds(Run run, int subject)
    {
        run.Letters[letter] = subject;
        return word.Holds(run);
    }
}

/// <summary>Which side of a card is seen; pieces always show their face.</summary>
/// <param name="state">By class, the changing value that is the face; -1 where there is none.</param>
/// <param name="isUp">True for the face, false for the back.</param>
internal sealed class FaceLook(int[] state, bool isUp) : LookTest
{
    /// <inheritdoc />
    public override bool Holds(Run run, int subject)
    {
        int at = state[run.State.Layout.ClassOf[subject]];
        return (at < 0 || run.State.StateOf(subject, at) == ThingClass.FaceUp) == isUp;
    }
}

/// <summary>How many things lie in a spot.</summary>
/// <param name="least">By spot, how many there must be for the test to hold, or to fail.</param>
/// <param name="isAtLeast">True where so many must be there; false where fewer must be.</param>
internal sealed class HeightLook(int[] least, bool isAtLeast) : LookTest
{
    /// <inheritdoc />
    public override bool Holds(Run run, int subject) => run.State.Count(subject) >= least[subject] == isAtLeast;
}

/// <summary>A test of every spot that belongs to the subject.</summary>
internal sealed class EverySpotLook(Func<int[][]> spots, LookTest test) : LookTest
{
    private int[][]? _spots;

    /// <inheritdoc />
    public override bool Holds(Run run, int subject)
    {
        foreach (int spot in (_spots ??= spots())[subject])
        {
            if (!test.Holds(run, spot))
            {
                return false;
            }
        }

        return true;
    }
}

/// <summary>A test of every element of a set.</summary>
internal sealed class EveryElementLook(LookTest test, bool nothing) : LookTest
{
    /// <inheritdoc />
    public override bool Holds(Run run, int subject)
    {
        foreach (int element in run.List(subject).Span)
        {
            if (element == Node.Nothing ? !nothing : !test.Holds(run, element))
            {
                return false;
            }
        }

        return true;
    }
}

/// <summary>Yes where the subject has one of several looks.</summary>
internal sealed class MatchesNode(Node subject, LookTest[] looks) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int mark = run.Mark;
        int of = subject.Value(run);
        bool holds = false;
        for (int i = 0; i < looks.Length && of != Nothing && !holds; i++)
        {
            holds = looks[i].Holds(run, of);
        }

        run.Release(mark);
        return holds ? 1 : 0;
    }
}
