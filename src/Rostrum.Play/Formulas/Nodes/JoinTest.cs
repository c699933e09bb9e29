namespace Rostrum.Play.Formulas.Nodes;

/// <summary>Whether two elements belong together: neighbours, a word said of both either way round, and perhaps alike in a value.</summary>
/// <param name="first">The letter of the one.</param>
/// <param name="second">The letter of the other.</param>
/// <param name="holds">What is asked of both; null where neighbours always belong together.</param>
/// <param name="near">By spot, its neighbours, where only these can belong together; null where any two can.</param>
internal sealed class JoinTest(int first, int second, Node? holds, int[][]? near)
{
    /// <summary>By spot, its neighbours, where only these can belong together; null where any two can.</summary>
    public int[][]? Near => near;

    /// <summary>True where the two belong together.</summary>
    public bool Joins(Run run, int one, int other) => (near is null || AreNear(one, other)) && (holds is null || Asks(run, one, other) || Asks(run, other, one));

    /// <summary>True where two that may belong together do.</summary>
    public bool JoinsNear(Run run, int one, int other) => holds is null || Asks(run, one, other) || Asks(run, other, one);

    /// <summary>True where the word holds of the two in this order.</summary>
    public bool Asks(Run run, int one, int other)
    {
        if (holds is null)
        {
            return true;
        }

        run.Letters[first] = one;
        run.Letters[second] = other;
        return holds.Holds(run);
    }

    /// <summary>True where the two may be joined as far as neighbours tell.</summary>
    public bool AreNear(int one, int other) => near is null || (one >= 0 && one < near.Length && near[one].AsSpan().Contains(other));
}
