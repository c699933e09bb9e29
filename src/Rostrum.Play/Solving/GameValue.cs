using Rostrum.Play.Counting;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;

namespace Rostrum.Play.Solving;

/// <summary>What two players who never err make of a game without chance.</summary>
/// <param name="Value">For the seat that is first in the sheet: a difference of totals, or 1, 0, -1 for win, draw, loss.</param>
/// <param name="Positions">At how many different positions a player decided; a position that was looked at for two questions counts twice.</param>
/// <param name="Finals">How often the game came to an end that was looked at.</param>
public sealed record SolvedGame(int Value, long Positions, long Finals);

/// <summary>Solves a game of two without chance: from the end backwards, every position once.</summary>
/// <remarks>
/// Minimax with a table of positions. The stack stands on the heap, so a game may be long. Positions are told apart by <see cref="StateKey"/>; what was played
/// before does not matter but as far as the sheet asks for it. A position that comes again in one line has no value by this way, and is refused.
/// </remarks>
internal sealed class GameValue
{
    private const int Open = int.MinValue;

    private readonly Machine _machine;
    private readonly StateKey _keys;
    private readonly Measure _final;
    private readonly KeyTable _table = new();
    private readonly List<int> _values = [];
    private readonly Stack<Frame> _stack = [];
    private readonly Dictionary<(Alternative, int), long> _settled = [];
    private int? _bound;
    private long _finals;

    private GameValue(CoursePlan plan, Measure final)
    {
        if (plan.Layout.Seats != 2)
        {
            throw new NotPlayableException("Only games of two players are solved.");
        }

        _machine = new Machine(plan);
        _keys = new StateKey(plan);
        _final = final;
    }

    /// <summary>The difference of totals to which best play leads.</summary>
    /// <param name="plan">The game.</param>
    /// <param name="from">Where it goes on; null for its begin.</param>
    /// <exception cref="NotPlayableException">Chance or a secret decides somewhere, or a position comes again.</exception>
    public static SolvedGame Difference(CoursePlan plan, TableState? from = null)
    {
        var game = new GameValue(plan, Measures.Difference);
        int value = game.ValueOf(from ?? plan.Start());
        return new SolvedGame(value, game._table.Count, game._finals);
    }

    /// <summary>Win, draw or loss under best play: two questions, whether the first seat can win and, if not, whether it can draw.</summary>
    /// <remarks>A question ends at a position with the first answer that settles it, which leaves out most positions.</remarks>
    /// <param name="plan">The game.</param>
    /// <param name="from">Where it goes on; null for its begin.</param>
    /// <exception cref="NotPlayableException">Chance or a secret decides somewhere, or a position comes again.</exception>
    public static SolvedGame Outcome(CoursePlan plan, TableState? from = null)
    {
        var win = new GameValue(plan, Measures.Outcome) { _bound = 1 };
        if (win.ValueOf((from ?? plan.Start()).Copy()) == 1)
        {
            return new SolvedGame(1, win._table.Count, win._finals);
        }

        var draw = new GameValue(plan, Measures.Outcome) { _bound = 0 };
        int value = draw.ValueOf(from ?? plan.Start()) - 1;
        return new SolvedGame(value, win._table.Count + draw._table.Count, win._finals + draw._finals);
    }

    private int ValueOf(TableState start)
    {
        _machine.State = start;
        Moment moment = _machine.Advance();
        if (Look(start, moment) is { } known)
        {
            return known;
        }

        Push(start, (Moment.Decision)moment);
        while (true)
        {
            Frame frame = _stack.Peek();
            if (frame.Next is { } child)
            {
                if (Look(child.State, child.Due) is { } value)
                {
                    frame.Take(value, _bound);
                }
                else
                {
                    Push(child.State, child.Due);
                }
            }
            else if (Pop() is { } value)
            {
                return value;
            }
        }
    }

    // The value where the game is over or the position known; null where it must be gone into.
    private int? Look(TableState state, Moment moment)
    {
        switch (moment)
        {
            case Moment.GameOver:
                _finals++;
                int value = _final(_machine);
                return _bound is { } bound ? (value >= bound ? 1 : 0) : value;
            case Moment.Decision { IsSecret: false }:
                int at = _table.IndexOf(_keys.Write(state));
                return at < 0 ? null : _values[at] != Open ? _values[at]
                    : throw new NotPlayableException("A position comes again in this game, so it may go on for ever and has no value that can be worked out from its end.");
            default:
                throw new NotPlayableException("Only games in which everything is seen and nothing happens by chance have a value for best play.");
        }
    }

    // All options are tried by one step first: one that settles the question at once spares the others.
    private void Push(TableState state, Moment.Decision decision)
    {
        _table.Add(_keys.Write(state), 0);
        _values.Add(Open);
        var frame = new Frame(decision.Seat, _values.Count - 1);
        _stack.Push(frame);
        foreach (Option option in decision.Options)
        {
            _machine.State = state.Copy();
            _machine.Choose(option);
            TableState child = _machine.State;
            Moment moment = _machine.Advance();
            if (Look(child, moment) is { } value)
            {
                frame.Take(value, _bound);
                if (frame.IsSettled)
                {
                    return;
                }
            }
            else
            {
                frame.Add(child, (Moment.Decision)moment, option);
            }
        }

        if (_bound is not null)
        {
            frame.Sort(_settled);
        }
    }

    // The topmost position has its value: the one below takes it. Gives the value where none is below.
    private int? Pop()
    {
        Frame frame = _stack.Pop();
        _values[frame.Index] = frame.Best;
        if (_stack.Count == 0)
        {
            return frame.Best;
        }

        Frame below = _stack.Peek();
        below.Take(frame.Best, _bound);
        if (below.IsSettled)
        {
            _settled[below.Current] = _settled.GetValueOrDefault(below.Current) + 1;
        }

        return null;
    }

    /// <summary>A position that may be gone into.</summary>
    /// <param name="State">The state.</param>
    /// <param name="Due">The decision that is due in it.</param>
    /// <param name="By">What led to it: an alternative, and its choices as one number.</param>
    private readonly record struct Child(TableState State, Moment.Decision Due, (Alternative, int) By);

    /// <summary>A position whose options are gone through.</summary>
    private sealed class Frame(int seat, int index)
    {
        private readonly List<Child> _children = [];
        private int _next;

        public int Index => index;

        public int Best { get; private set; } = Open;

        /// <summary>True where no other option can change the answer to a question.</summary>
        public bool IsSettled { get; private set; }

        /// <summary>The next position to go into; null where nothing is left.</summary>
        public Child? Next => IsSettled || _next == _children.Count ? null : _children[_next++];

        /// <summary>What led to the position that was gone into last.</summary>
        public (Alternative, int) Current => _children[_next - 1].By;

        public void Add(TableState state, Moment.Decision due, Option option)
        {
            int choices = 0;
            foreach (int chosen in option.Chosen)
            {
                choices = unchecked((choices * 31) + chosen);
            }

            _children.Add(new Child(state, due, (option.Alternative, choices)));
        }

        public void Take(int value, int? bound)
        {
            Best = Best == Open ? value : seat == 0 ? Math.Max(Best, value) : Math.Min(Best, value);
            IsSettled = bound is not null && Best == (seat == 0 ? 1 : 0);
        }

        // What settled most questions elsewhere is tried first (J. Schaeffer's history heuristic, ICCA Journal 6(3), 1983; from memory).
        public void Sort(Dictionary<(Alternative, int), long> settled)
        {
            Child[] ordered = [.. _children.OrderByDescending(c => settled.GetValueOrDefault(c.By))];
            _children.Clear();
            _children.AddRange(ordered);
        }
    }
}
