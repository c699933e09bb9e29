using System.Collections.Immutable;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;

namespace Rostrum.Play.Counting;

/// <summary>Counts lines of play and positions ply by ply, exactly: positions that are alike are played on once, with the number of lines that lead to them.</summary>
internal sealed class LineCounter
{
    /// <summary>How many positions of one ply are kept at the most; about a gigabyte of memory.</summary>
    public const int MostPositions = 10_000_000;

    /// <summary>How many decisions and chance events of one ply are gone through at the most.</summary>
    public const long MostMoments = 1_000_000_000;

    private readonly CoursePlan _plan;
    private readonly Machine _machine;
    private readonly StateKey _keys;
    private readonly Stack<(TableState State, UInt128 Lines, bool IsFirst)> _waiting = [];
    private KeyTable _level = new();
    private bool _isBegun;

    /// <summary>A counter that begins with a game's first turn, or with a given state between two turns.</summary>
    public LineCounter(CoursePlan plan, TableState? from = null)
    {
        _plan = plan;
        _machine = new Machine(plan) { StopsAfterTurns = true };
        _keys = new StateKey(plan);
        _level.Add(_keys.Write(from ?? plan.Start()), 1);
        _isBegun = from is not null;
    }

    /// <summary>The counts of ply 0, 1, 2 … up to the last one asked for; ends early where no line goes on.</summary>
    /// <param name="plies">The last ply.</param>
    /// <param name="distinct">True to count the positions of the last ply too.</param>
    public IEnumerable<PlyCount> Count(int plies, bool distinct = true)
    {
        Sum start = Begin();
        yield return start.Told(0, true);
        for (int ply = 1; ply <= plies && _level.Count > 0; ply++)
        {
            bool keeps = distinct || ply < plies;
            yield return Next(keeps).Told(ply, keeps);
        }
    }

    // What stands before the first turn may itself hang on chance or on decisions.
    private Sum Begin() => _isBegun ? new Sum { Lines = 1, Positions = 1 } : Next(keeps: true);

    private Sum Next(bool keeps)
    {
        var next = new KeyTable();
        var sum = new Sum();
        for (int i = 0; i < _level.Count; i++)
        {
            _waiting.Push((_keys.Read(_level.Key(i)), _level.Sum(i), _isBegun));
            while (_waiting.TryPop(out (TableState State, UInt128 Lines, bool IsFirst) waiting))
            {
                Advance(waiting.State, waiting.Lines, waiting.IsFirst, next, sum, keeps);
                if (next.Count > MostPositions || ++sum.Moments > MostMoments)
                {
                    throw new NotPlayableException($"There are too many ways from here to count: more than {(next.Count > MostPositions ? $"{MostPositions:N0} positions" : $"{MostMoments:N0} decisions and chances")} {(_isBegun ? "of one turn" : "before the first turn")}.");
                }
            }
        }

        sum.Positions += next.Count;
        (_level, _isBegun) = (next, true);
        return sum;
    }

    // Without turns, a ply is a decision: the next one that is due stands between two plies.
    private void Advance(TableState state, UInt128 lines, bool isFirst, KeyTable next, Sum sum, bool keeps)
    {
        _machine.State = state;
        switch (_machine.Advance())
        {
            case Moment.Decision when !_plan.HasTurns && !isFirst:
            case Moment.TurnOver:
                sum.Lines = checked(sum.Lines + lines);
                if (keeps)
                {
                    next.Add(_keys.Write(state), lines);
                }

                break;
            case Moment.Decision decision:
                for (int i = decision.Options.Length - 1; i >= 0; i--)
                {
                    _machine.State = i == 0 ? state : state.Copy();
                    _machine.Choose(decision.Options[i]);
                    _waiting.Push((_machine.State, lines, false));
                }

                break;
            case Moment.Chance chance:
                for (int i = chance.Event.Weights.Length - 1; i >= 0; i--)
                {
                    _machine.State = i == 0 ? state : state.Copy();
                    _machine.Choose(chance.Event, i);
                    _waiting.Push((_machine.State, lines, false));
                }

                break;
            default:
                sum.Lines = checked(sum.Lines + lines);
                sum.End(Reckoning.Of(_machine).Winners, lines, keeps ? _keys.Write(state) : default);
                break;
        }
    }

    /// <summary>What is gathered at one ply.</summary>
    private sealed class Sum
    {
        private readonly SortedDictionary<string, (ImmutableArray<int> Winners, UInt128 Lines)> _results = [];
        private readonly Dictionary<string, KeyTable> _ends = [];

        public UInt128 Lines { get; set; }

        public long Positions { get; set; }

        public long Moments { get; set; }

        public void End(ImmutableArray<int> winners, UInt128 lines, ReadOnlySpan<byte> key)
        {
            string name = string.Join(' ', winners);
            _results[name] = (winners, checked(lines + (_results.TryGetValue(name, out (ImmutableArray<int>, UInt128 Lines) known) ? known.Lines : 0)));
            if (!_ends.TryGetValue(name, out KeyTable? ends))
            {
                _ends[name] = ends = new KeyTable();
            }

            if (key.Length > 0)
            {
                ends.Add(key, 1);
            }
        }

        public PlyCount Told(int ply, bool keeps)
        {
            UInt128 ended = _results.Values.Aggregate((UInt128)0, (sum, r) => sum + r.Lines);
            long? positions = keeps ? Positions + _ends.Values.Sum(e => (long)e.Count) : null;
            return new PlyCount(ply, Lines, positions, ended, [.. _results.Select(r => new EndedCount(r.Value.Winners, r.Value.Lines, keeps ? _ends[r.Key].Count : null))]);
        }
    }
}
