using System.Collections.Immutable;
using Rostrum.Play.Counting;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;

namespace Rostrum.Play.Solving;

/// <summary>What two players who never err make of a game without chance.</summary>
/// <param name="Value">For the seat that is first in the sheet: a difference of totals, or 1, 0, -1 for win, draw, loss.</param>
/// <param name="Positions">At how many different positions a player decided; a position that was looked at for two questions counts twice.</param>
/// <param name="Finals">How many lines came to an end; each line was followed once from each position.</param>
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
        if (Enter(start) is { } known)
        {
            return known;
        }

        while (true)
        {
            Frame frame = _stack.Peek();
            if (frame.IsSettled(_bound))
            {
                _stack.Pop();
                _values[frame.Index] = frame.Best;
                if (_stack.Count == 0)
                {
                    return frame.Best;
                }

                _stack.Peek().Take(frame.Best);
            }
            else if (Enter(frame.NextState(_machine)) is { } value)
            {
                frame.Take(value);
            }
        }
    }

    // The value where it is known; else null, and the position lies on the stack.
    private int? Enter(TableState state)
    {
        _machine.State = state;
        switch (_machine.Advance())
        {
            case Moment.GameOver:
                _finals++;
                int value = _final(_machine);
                return _bound is { } bound ? (value >= bound ? 1 : 0) : value;
            case Moment.Decision { IsSecret: false } decision:
                ReadOnlySpan<byte> key = _keys.Write(state);
                if (!_table.Add(key, 0))
                {
                    int known = _values[_table.IndexOf(key)];
                    return known != Open ? known : throw new NotPlayableException("A position comes again in this game, so it may go on for ever and has no value that can be worked out from its end.");
                }

                _values.Add(Open);
                _stack.Push(new Frame(state, decision, _values.Count - 1));
                return null;
            default:
                throw new NotPlayableException("Only games in which everything is seen and nothing happens by chance have a value for best play.");
        }
    }

    /// <summary>A position whose options are gone through.</summary>
    private sealed class Frame(TableState state, Moment.Decision decision, int index)
    {
        private readonly ImmutableArray<Option> _options = decision.Options;
        private int _next;

        public int Index => index;

        public int Best { get; private set; } = Open;

        public void Take(int value) => Best = Best == Open ? value : decision.Seat == 0 ? Math.Max(Best, value) : Math.Min(Best, value);

        public bool IsSettled(int? bound) => _next == _options.Length || (bound is not null && Best == (decision.Seat == 0 ? 1 : 0));

        public TableState NextState(Machine machine)
        {
            machine.State = _next == _options.Length - 1 ? state : state.Copy();
            machine.Choose(_options[_next++]);
            return machine.State;
        }
    }
}
