using System.Runtime.InteropServices;
using Rostrum.Play.Counting;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;

namespace Rostrum.Play.Solving;

/// <summary>Plays every way on from a position, each position once, and writes down what follows what.</summary>
internal sealed class GraphBuilder(CoursePlan plan, PositionGraph graph, GraphReach reach, Measure measure)
{
    /// <summary>More positions than this are not kept: about 2 GiB.</summary>
    public const int MostPositions = 10_000_000;

    private readonly Machine _machine = new(plan) { StopsAfterTurns = reach == GraphReach.Turn };
    private readonly StateKey _keys = new(plan);
    private readonly KeyTable _positions = new();
    private readonly List<int> _nodes = [];
    private readonly KeyTable _decisions = new();
    private readonly List<int> _decisionNodes = [];
    private readonly Dictionary<int, int> _ends = [];

    /// <summary>Builds the graph.</summary>
    /// <returns>The node of the position.</returns>
    public int Build(TableState from)
    {
        int root = Follow(from, isAfterChance: false);
        for (int i = 0; i < _positions.Count; i++)
        {
            Expand(i);
        }

        return root;
    }

    private void Expand(int position)
    {
        TableState state = _keys.Read(_positions.Key(position));
        _machine.State = state;
        switch (_machine.Advance())
        {
            case Moment.Chance chance:
                var outcomes = new (int, long)[chance.Event.Weights.Length];
                for (int i = 0; i < outcomes.Length; i++)
                {
                    _machine.State = state.Copy();
                    _machine.Choose(chance.Event, i);
                    outcomes[i] = (Follow(_machine.State, isAfterChance: true), chance.Event.Weights[i]);
                }

                graph.Link(_nodes[position], Merged(outcomes));
                break;
            case Moment.Decision decision:
                graph.Link(_nodes[position], Options(state, decision));
                break;
        }
    }

    private (int Node, long Weight)[] Options(TableState state, Moment.Decision decision)
    {
        var options = new (int, long)[decision.Options.Length];
        for (int i = 0; i < options.Length; i++)
        {
            _machine.State = state.Copy();
            _machine.Choose(decision.Options[i]);
            options[i] = (Follow(_machine.State, isAfterChance: false), 1);
        }

        return Merged(options);
    }

    // Goes on to where somebody or chance decides, or play stops.
    private int Follow(TableState state, bool isAfterChance)
    {
        _machine.State = state;
        switch (_machine.Advance())
        {
            case Moment.Chance chance:
                Forget(state, chance.Event);
                return Position(state, PositionGraph.Chance);
            case Moment.Decision { IsSecret: true }:
                throw new NotPlayableException("Somebody decides in secret here; best play is worked out only where everything is seen.");
            case Moment.Decision decision:
                return isAfterChance ? Decision(decision.Seat, Options(state, decision)) : Position(state, decision.Seat);
            default:
                return End(measure(_machine));
        }
    }

    // How dice lay that are about to be rolled tells nothing, unless it says which dice are rolled.
    private void Forget(TableState state, ChanceEvent chance)
    {
        if (chance is not RollEvent roll)
        {
            return;
        }

        int[] faces = [.. roll.Dice.Select(d => state.StateOf(d, 0))];
        foreach (int die in roll.Dice)
        {
            state.SetState(die, 0, TableState.None);
        }

        if (_machine.Advance() is Moment.Chance { Event: RollEvent again } && again.Dice.SequenceEqual(roll.Dice))
        {
            return;
        }

        for (int i = 0; i < faces.Length; i++)
        {
            state.SetState(roll.Dice[i], 0, faces[i]);
        }
    }

    private int Position(TableState state, int kind)
    {
        ReadOnlySpan<byte> key = _keys.Write(state);
        if (!_positions.Add(key, 0))
        {
            return _nodes[_positions.IndexOf(key)];
        }

        if (_positions.Count > MostPositions)
        {
            throw new NotPlayableException($"There are more than {MostPositions:N0} positions; that is more than can be kept at once.");
        }

        _nodes.Add(graph.Add(kind));
        return _nodes[^1];
    }

    private int Decision(int seat, (int Node, long Weight)[] options)
    {
        int[] words = [seat, .. options.Select(o => o.Node)];
        ReadOnlySpan<byte> key = MemoryMarshal.AsBytes(words.AsSpan());
        if (!_decisions.Add(key, 0))
        {
            return _decisionNodes[_decisions.IndexOf(key)];
        }

        _decisionNodes.Add(graph.Add(seat));
        graph.Link(_decisionNodes[^1], options);
        return _decisionNodes[^1];
    }

    private int End(int measured)
    {
        if (!_ends.TryGetValue(measured, out int node))
        {
            _ends[measured] = node = graph.Add(PositionGraph.End, measured);
        }

        return node;
    }

    // Each follower once, with the sum of its weights.
    private static (int Node, long Weight)[] Merged((int Node, long Weight)[] followers)
    {
        Array.Sort(followers);
        int last = 0;
        for (int i = 1; i < followers.Length; i++)
        {
            if (followers[i].Node == followers[last].Node)
            {
                followers[last].Weight = checked(followers[last].Weight + followers[i].Weight);
            }
            else
            {
                followers[++last] = followers[i];
            }
        }

        return followers[..(last + 1)];
    }
}
