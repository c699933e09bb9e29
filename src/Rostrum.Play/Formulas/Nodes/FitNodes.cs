using Rostrum.Play.Layout;

namespace Rostrum.Play.Formulas.Nodes;

/// <summary>What a cell of a drawing asks of the space under it.</summary>
/// <param name="IsEmpty">True where the space must hold nothing.</param>
/// <param name="Least">The fewest things.</param>
/// <param name="Most">The most things.</param>
/// <param name="Top">What the topmost thing must be; null where nothing is asked of it.</param>
internal sealed record CellTest(bool IsEmpty, int Least, int Most, LookTest? Top)
{
    /// <summary>True where the space shows what is asked.</summary>
    public bool Holds(Run run, int spot)
    {
        int count = run.State.Count(spot);
        return IsEmpty ? count == 0 : count >= Least && count <= Most && (Top is null || (count > 0 && Top.Holds(run, run.State.TopThing(spot))));
    }
}

/// <summary>What a drawing asks: cell by cell, and which cells must show alike.</summary>
internal sealed class DrawingTest(CellTest[] cells, int[][] alike, AlikeThings things)
{
    /// <summary>True where the spaces of a way show the drawing.</summary>
    public bool Holds(Run run, int[] spaces)
    {
        for (int i = 0; i < cells.Length; i++)
        {
            if (!cells[i].Holds(run, spaces[i]))
            {
                return false;
            }
        }

        foreach (int[] group in alike)
        {
            for (int i = 1; i < group.Length; i++)
            {
                if (!things.AreAlike(run.State, run.State.TopThing(spaces[group[0]]), run.State.TopThing(spaces[group[i]])))
                {
                    return false;
                }
            }
        }

        return true;
    }
}

/// <summary>When two things are alike: of one kind and card, with the same attributes; their states may differ.</summary>
/// <param name="groups">By class: equal for classes that agree in everything that never changes; -1 for one that lacks an attribute.</param>
/// <param name="faces">By class: the changing values that are no states, such as the face of a die.</param>
internal sealed class AlikeThings(int[] groups, int[][] faces)
{
    /// <summary>True where both are there and alike.</summary>
    public bool AreAlike(TableState state, int one, int other)
    {
        if (one == TableState.None || other == TableState.None)
        {
            return false;
        }

        int of = state.Layout.ClassOf[one];
        if (groups[of] < 0 || groups[of] != groups[state.Layout.ClassOf[other]])
        {
            return false;
        }

        foreach (int face in faces[of])
        {
            if (state.StateOf(one, face) is var shown && (shown < 0 || shown != state.StateOf(other, face)))
            {
                return false;
            }
        }

        return true;
    }
}

/// <summary>All ways in which a drawing lies on a board and is shown there.</summary>
/// <param name="drawing">The number of the drawing.</param>
/// <param name="board">On which board.</param>
/// <param name="poses">Whether a drawing may be turned, and whether mirrored.</param>
/// <param name="fits">The ways of drawings.</param>
/// <param name="tests">What a drawing asks.</param>
internal sealed class FitsNode(Node drawing, Node board, Func<int, (bool Rotated, bool Mirrored)> poses, FitTable fits, Func<int, DrawingTest> tests) : ManyNode
{
    private readonly System.Collections.Concurrent.ConcurrentDictionary<int, DrawingTest> _tests = new();

    /// <inheritdoc />
    public override void Fill(Run run, Elements into) => Go(run, into, int.MaxValue);

    /// <inheritdoc />
    public override int Count(Run run) => Go(run, null, int.MaxValue);

    /// <inheritdoc />
    public override bool Any(Run run) => Go(run, null, 1) > 0;

    private int Go(Run run, Elements? into, int most)
    {
        (int of, int on) = (drawing.Value(run), board.Value(run));
        if (of < 0 || on < 0)
        {
            return 0;
        }

        (bool rotated, bool mirrored) = poses(of);
        FitTable.Placed placed = fits.Of(of, on, rotated, mirrored);
        DrawingTest test = _tests.TryGetValue(of, out DrawingTest? known) ? known : _tests.GetOrAdd(of, tests(of));
        int found = 0;
        for (int i = 0; i < placed.Spaces.Length && found < most; i++)
        {
            if (test.Holds(run, placed.Spaces[i]))
            {
                found++;
                into?.Add(placed.First + i);
            }
        }

        return found;
    }
}

/// <summary>The space in brackets of a fit.</summary>
internal sealed class AnchorNode(Node fit, FitTable fits) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => fits.Anchor(fit.Value(run));
}

/// <summary>The spaces of a fit.</summary>
internal sealed class FitSpaces(Node fit, FitTable fits) : TableMany
{
    /// <inheritdoc />
    public override ReadOnlySpan<int> Table(Run run) => fits.Spaces(fit.Value(run));
}

/// <summary>The spaces of several fits, in order.</summary>
internal sealed class FitsSpaces(ManyNode all, FitTable fits) : ManyNode
{
    /// <inheritdoc />
    public override void Fill(Run run, Elements into)
    {
        Elements? room = all.Room(run);
        foreach (int fit in all.Span(run, room))
        {
            into.AddRange(fits.Spaces(fit));
        }

        Leave(run, room);
    }
}

/// <summary>A test of every space of a fit.</summary>
internal sealed class FitLook(FitTable fits, LookTest test) : LookTest
{
    /// <inheritdoc />
    public override bool Holds(Run run, int subject)
    {
        foreach (int spot in fits.Spaces(subject))
        {
            if (!test.Holds(run, spot))
            {
                return false;
            }
        }

        return true;
    }
}
