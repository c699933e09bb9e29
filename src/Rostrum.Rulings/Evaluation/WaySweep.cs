using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Rostrum.Rulings.Evaluation;

/// <summary>Finds a longest way by a sweep: it comes to one element after the other and keeps, of all pieces of ways that look alike at the open elements,
/// one that has left out fewest. Quick where few elements are open at any time, as on boards.</summary>
/// <remarks>The method of the moving front: D. E. Knuth, The Art of Computer Programming 4A (2011), section 7.1.4, "Simpath", after
/// W. T. Tutte's transfer matrices; here for the longest way instead of the number of ways.</remarks>
/// <param name="part">A connected part of two elements or more.</param>
/// <param name="isBare">True where no two elements may be joined but those in a row.</param>
/// <param name="found">A way that is known already; only longer ones are looked for.</param>
internal sealed class WaySweep(Graph part, bool isBare, int[] found)
{
    /// <summary>How many states a sweep makes at the most.</summary>
    public const int MostSteps = 3_000_000;

    private readonly List<List<int>> _before = [];
    private readonly Dictionary<SweepState, int> _index = [];
    private List<SweepState> _states = [default];
    private List<byte> _lost = [0];
    private int _bestLength;
    private (int Question, int Before) _bestAt = (-1, 0);

    /// <summary>How many states were made.</summary>
    public int Steps { get; private set; }

    /// <summary>The longest way found.</summary>
    public int[] Best { get; private set; } = [];

    /// <summary>Sweeps; false where it was given up.</summary>
    public bool Run()
    {
        Best = found;
        _bestLength = found.Length;
        if (SweepPlan.Of(part, isBare) is not { } plan)
        {
            return false;
        }

        for (int at = 0; at < plan.Length && Steps <= MostSteps; at++)
        {
            Ask(plan[at], at);
        }

        Best = _bestAt.Question < 0 ? found : Followed(plan);
        return Steps <= MostSteps;
    }

    // States of the question before, each with the answers no and yes; of two that come to the same, the one that lost less is kept.
    private void Ask(SweepQuestion question, int at)
    {
        List<SweepState> states = _states;
        List<byte> lost = _lost;
        (_states, _lost) = (new List<SweepState>(states.Count), new List<byte>(states.Count));
        _before.Add(new List<int>(states.Count));
        _index.Clear();
        for (int i = 0; i < states.Count && Steps <= MostSteps; i++)
        {
            Answer(question, at, states[i], lost[i], i, isYes: false);
            Answer(question, at, states[i], lost[i], i, isYes: true);
        }
    }

    private void Answer(SweepQuestion question, int at, SweepState state, int lost, int from, bool isYes)
    {
        Steps++;
        bool isOn = !isBare || isYes;
        SweepState next = question.Enters && isOn ? state.With(question.Place, SweepState.Loose) : state;
        int before = (2 * from) + (isYes ? 1 : 0);
        bool isClosed = false;
        if (isYes && !Join(question, ref next, ref isClosed))
        {
            return;
        }

        if (isClosed)
        {
            Close(next, question, at, lost, before);
            return;
        }

        Leave(question, at, next, isOn ? lost : lost + 1, before);
    }

    // Of a bare way an element is joined with each before it that is on the way; of a walk with the one that is asked about.
    private bool Join(SweepQuestion question, ref SweepState state, ref bool isClosed)
    {
        foreach (int other in question.Others)
        {
            if (isBare && state[other] == SweepState.Off)
            {
                continue;
            }

            if (state.Join(question.Place, other, out bool closes) is not { } joined)
            {
                return false;
            }

            state = joined;
            isClosed |= closes;
        }

        return true;
    }

    private void Leave(SweepQuestion question, int at, SweepState state, int lost, int before)
    {
        foreach (int place in question.Leaving)
        {
            int what = state[place];
            if (isBare && what == SweepState.Loose)
            {
                return;
            }

            if (state.Leave(place, out bool isClosed) is not { } left)
            {
                return;
            }

            lost += what == SweepState.Loose ? 1 : 0;
            state = left;
            if (isClosed)
            {
                Close(state, question, at, lost, before);
                return;
            }
        }

        Keep(state, lost, before);
    }

    private void Keep(SweepState state, int lost, int before)
    {
        if (part.Count - lost <= _bestLength)
        {
            return;
        }

        ref int index = ref CollectionsMarshal.GetValueRefOrAddDefault(_index, state, out bool isKnown);
        if (!isKnown)
        {
            index = _states.Count;
            _states.Add(state);
            _lost.Add((byte)lost);
            _before[^1].Add(before);
        }
        else if (lost < _lost[index])
        {
            _lost[index] = (byte)lost;
            _before[^1][index] = before;
        }
    }

    // A piece without an end that could be joined is a way, where there is no other piece.
    private void Close(SweepState state, SweepQuestion question, int at, int lost, int before)
    {
        int loose = state.Count(SweepState.Loose);
        int length = question.Come - lost - loose;
        if (length > _bestLength && state.HasNoPiece && (!isBare || loose == 0))
        {
            _bestLength = length;
            _bestAt = (at, before);
        }
    }

    // From the last answer back to the first; then along the way from its first end.
    private int[] Followed(ImmutableArray<SweepQuestion> plan)
    {
        var on = new HashSet<int>();
        var joins = new HashSet<(int, int)>();
        (int at, int before) = _bestAt;
        for (; at >= 0; at--)
        {
            if (before % 2 == 1)
            {
                on.Add(plan[at].Element);
                joins.Add((plan[at].Element, plan[at].Other));
            }

            before = at == 0 ? 0 : _before[at - 1][before / 2];
        }

        return isBare
            ? WayOrder.Along(part.Count, (i, j) => on.Contains(i) && on.Contains(j) && part.Near(i).Contains(j))
            : WayOrder.Along(part.Count, (i, j) => joins.Contains((i, j)) || joins.Contains((j, i)));
    }
}
