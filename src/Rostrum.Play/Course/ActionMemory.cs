using Rostrum.Sheets.Model;

namespace Rostrum.Play.Course;

/// <summary>A position among the numbers or the sets of a state that formulas ask for before it is laid out; -1 until then.</summary>
internal sealed class MemorySlot
{
    /// <summary>The position.</summary>
    public int At { get; set; } = -1;
}

/// <summary>What a state remembers of an action: exactly what the formulas of the sheet ask for, so that positions differ by nothing that nobody asks.</summary>
/// <param name="facts">The action.</param>
internal sealed class ActionMemory(ActionFacts facts)
{
    private readonly SortedDictionary<DoneWhen, MemorySlot> _byAnybody = [];
    private readonly SortedDictionary<DoneWhen, MemorySlot> _bySeats = [];
    private readonly SortedDictionary<int, MemorySlot> _last = [];
    private readonly SortedDictionary<int, MemorySlot> _lastOfSeats = [];

    // What is asked of a time that is over is kept from when it is not.
    private static readonly (DoneWhen Over, DoneWhen AtHand)[] Follows = [(DoneWhen.TurnBefore, DoneWhen.ThisTurn), (DoneWhen.RoundBefore, DoneWhen.ThisRound)];

    /// <summary>The action.</summary>
    public ActionFacts Facts => facts;

    /// <summary>True where anybody asks anything of it.</summary>
    public bool IsAsked => _byAnybody.Count + _bySeats.Count + _last.Count + _lastOfSeats.Count > 0;

    /// <summary>1 where anybody did it, by the times that are asked.</summary>
    public IReadOnlyDictionary<DoneWhen, MemorySlot> ByAnybody => _byAnybody;

    /// <summary>Who did it, one bit a seat, by the times that are asked.</summary>
    public IReadOnlyDictionary<DoneWhen, MemorySlot> BySeats => _bySeats;

    /// <summary>What anybody chose last, by the choices that are asked.</summary>
    public IReadOnlyDictionary<int, MemorySlot> Last => _last;

    /// <summary>The first of what each seat chose last, by the choices that are asked.</summary>
    public IReadOnlyDictionary<int, MemorySlot> LastOfSeats => _lastOfSeats;

    /// <summary>Whether the action was done is asked.</summary>
    /// <param name="when">Of which time.</param>
    /// <param name="ofSeats">True where it is asked who did it.</param>
    public MemorySlot Done(DoneWhen when, bool ofSeats)
    {
        SortedDictionary<DoneWhen, MemorySlot> all = ofSeats ? _bySeats : _byAnybody;
        foreach ((DoneWhen over, DoneWhen atHand) in Follows)
        {
            if (over == when)
            {
                all.TryAdd(atHand, new MemorySlot());
            }
        }

        all.TryAdd(when, new MemorySlot());
        return all[when];
    }

    /// <summary>What was chosen last is asked.</summary>
    /// <param name="choice">Which choice.</param>
    /// <param name="ofSeats">True where each seat's own last choice is asked.</param>
    public MemorySlot Chosen(int choice, bool ofSeats)
    {
        SortedDictionary<int, MemorySlot> all = ofSeats ? _lastOfSeats : _last;
        all.TryAdd(choice, new MemorySlot());
        return all[choice];
    }

    /// <summary>Notes in a state that a seat has done it.</summary>
    public void Note(int[] numbers, int seat)
    {
        foreach (DoneWhen when in (ReadOnlySpan<DoneWhen>)[DoneWhen.ThisTurn, DoneWhen.ThisRound, DoneWhen.Before])
        {
            Note(numbers, seat, when);
        }
    }

    /// <summary>Notes in a state that a seat did it at a time.</summary>
    public void Note(int[] numbers, int seat, DoneWhen when)
    {
        if (_byAnybody.TryGetValue(when, out MemorySlot? any))
        {
            numbers[any.At] = 1;
        }

        if (_bySeats.TryGetValue(when, out MemorySlot? seats))
        {
            numbers[seats.At] |= 1 << seat;
        }
    }

    /// <summary>A turn or a round is over: what was done in it was done in the one before.</summary>
    /// <param name="numbers">The numbers of the state.</param>
    /// <param name="over">The time that is over now: <see cref="DoneWhen.TurnBefore"/> or <see cref="DoneWhen.RoundBefore"/>.</param>
    /// <param name="atHand">The time that begins anew.</param>
    public void Pass(int[] numbers, DoneWhen over, DoneWhen atHand)
    {
        foreach (SortedDictionary<DoneWhen, MemorySlot> all in (ReadOnlySpan<SortedDictionary<DoneWhen, MemorySlot>>)[_byAnybody, _bySeats])
        {
            if (all.TryGetValue(atHand, out MemorySlot? now))
            {
                if (all.TryGetValue(over, out MemorySlot? before))
                {
                    numbers[before.At] = numbers[now.At];
                }

                numbers[now.At] = 0;
            }
        }
    }

    /// <summary>The first turn and the first round begin: nothing was done in them.</summary>
    public void Begin(int[] numbers)
    {
        foreach ((DoneWhen when, MemorySlot done) in _byAnybody.Concat(_bySeats))
        {
            if (when is DoneWhen.ThisTurn or DoneWhen.ThisRound)
            {
                numbers[done.At] = 0;
            }
        }
    }

    /// <summary>The positions in which the choice of a seat is kept, each once.</summary>
    public IEnumerable<int> Keeping(int choice, int seat)
    {
        if (_last.TryGetValue(choice, out MemorySlot? last))
        {
            yield return last.At;
        }

        if (_lastOfSeats.TryGetValue(choice, out MemorySlot? own))
        {
            yield return own.At + seat;
        }
    }
}
