using System.Collections.Immutable;
using Rostrum.Play.Counting;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;

namespace Rostrum.Play.Solving;

/// <summary>How a decision is made: the weight of each option, at least 0, one of them above 0; the chance of an option is its weight over their sum.</summary>
internal delegate IReadOnlyList<int> Policy(Machine machine, Moment.Decision decision);

/// <summary>Ready-made ways to decide.</summary>
internal static class Policies
{
    /// <summary>Each option is equally likely.</summary>
    public static IReadOnlyList<int> AtRandom(Machine machine, Moment.Decision decision) => [.. decision.Options.Select(_ => 1)];

    /// <summary>Always the option that a rule picks.</summary>
    /// <param name="rule">The position of the option.</param>
    public static Policy Picking(Func<Machine, Moment.Decision, int> rule) => (machine, decision) =>
    {
        int[] weights = new int[decision.Options.Length];
        weights[rule(machine, decision)] = 1;
        return weights;
    };
}

/// <summary>The exact chances of what a turn leads to where everybody decides by a known rule: every way in which chance may come out is followed.</summary>
/// <remarks>Positions that are alike after equally many decisions and chance events are followed once. A turn that may go on without end is refused.</remarks>
internal sealed class TurnOutcomes
{
    /// <summary>A turn has no more decisions and chance events than this.</summary>
    public const int MostMoments = 10_000;

    private readonly Machine _machine;
    private readonly StateKey _keys;
    private readonly Policy _policy;
    private readonly Measure _measure;
    private readonly Func<Moment, bool> _stops;
    private readonly SortedDictionary<int, Fraction> _chances = [];
    private Layer _next = new();

    private TurnOutcomes(CoursePlan plan, Policy policy, Measure measure, Func<Moment, bool>? stops)
    {
        _machine = new Machine(plan) { StopsAfterTurns = true };
        _keys = new StateKey(plan);
        (_policy, _measure, _stops) = (policy, measure, stops ?? (_ => false));
    }

    /// <summary>The chance of each number that is measured where play stops; the chances sum to 1.</summary>
    /// <param name="plan">The game.</param>
    /// <param name="from">Where a turn begins, or where it goes on; it is not changed.</param>
    /// <param name="policy">How everybody decides.</param>
    /// <param name="measure">What is measured.</param>
    /// <param name="stops">Where play stops within the turn, before the decision or chance event; null to play the turn out. The end of the turn always stops it.</param>
    /// <exception cref="NotPlayableException">The turn goes on and on.</exception>
    public static ImmutableSortedDictionary<int, Fraction> Of(CoursePlan plan, TableState from, Policy policy, Measure measure, Func<Moment, bool>? stops = null)
    {
        var turn = new TurnOutcomes(plan, policy, measure, stops);
        turn.Follow(from.Copy(), Fraction.One);
        for (int moments = 0; turn._next.Count > 0; moments++)
        {
            if (moments == MostMoments)
            {
                throw new NotPlayableException($"The turn has not ended after {MostMoments:N0} decisions and chance events.");
            }

            turn.FollowAll();
        }

        return turn._chances.ToImmutableSortedDictionary();
    }

    /// <summary>The mean of a measure, by its chances.</summary>
    public static Fraction Mean(IEnumerable<KeyValuePair<int, Fraction>> chances) => chances.Aggregate(Fraction.Zero, (sum, c) => sum + (c.Value * Fraction.Of(c.Key)));

    private void FollowAll()
    {
        Layer layer = _next;
        _next = new Layer();
        for (int i = 0; i < layer.Count; i++)
        {
            Branch(_keys.Read(layer.Key(i)), layer.Chance(i));
        }
    }

    // The state waits at a decision or chance event: each way out of it.
    private void Branch(TableState state, Fraction chance)
    {
        _machine.State = state;
        switch (_machine.Advance())
        {
            case Moment.Decision decision:
                Split(state, chance, [.. _policy(_machine, decision).Select(w => (long)w)], i => _machine.Choose(decision.Options[i]));
                break;
            case Moment.Chance happening:
                Split(state, chance, happening.Event.Weights, i => _machine.Choose(happening.Event, i));
                break;
        }
    }

    private void Split(TableState state, Fraction chance, ImmutableArray<long> weights, Action<int> choose)
    {
        Fraction each = chance / Fraction.Of(weights.Sum());
        for (int i = 0; i < weights.Length; i++)
        {
            if (weights[i] > 0)
            {
                _machine.State = state.Copy();
                choose(i);
                Follow(_machine.State, each * Fraction.Of(weights[i]));
            }
        }
    }

    private void Follow(TableState state, Fraction chance)
    {
        _machine.State = state;
        Moment moment = _machine.Advance();
        if (moment is Moment.TurnOver or Moment.GameOver || _stops(moment))
        {
            int measured = _measure(_machine);
            _chances[measured] = _chances.GetValueOrDefault(measured) + chance;
            return;
        }

        _next.Add(_keys.Write(state), chance);
    }

    /// <summary>Positions that are equally many moments away, each with its chance.</summary>
    private sealed class Layer
    {
        private readonly KeyTable _table = new();
        private readonly List<Fraction> _chances = [];

        public int Count => _table.Count;

        public ReadOnlySpan<byte> Key(int at) => _table.Key(at);

        public Fraction Chance(int at) => _chances[at];

        public void Add(ReadOnlySpan<byte> key, Fraction chance)
        {
            if (_table.Add(key, 0))
            {
                _chances.Add(chance);
                return;
            }

            int at = _table.IndexOf(key);
            _chances[at] += chance;
        }
    }
}
