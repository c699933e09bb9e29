using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Text;

namespace Rostrum.Play.Course;

/// <summary>Deals one thing from a bag, a deck or a hand, by chance as far as nobody knows which it is.</summary>
/// <param name="left">The number slot that counts what is still to be dealt.</param>
/// <param name="from">The number slot of the spot from which it is dealt.</param>
/// <param name="to">Where it goes.</param>
/// <param name="faceUp">The face that is said.</param>
/// <param name="isShort">What is done where nothing is left; null where dealing ends then.</param>
/// <param name="done">Behind the dealing.</param>
/// <param name="at">Where the step stands.</param>
internal sealed class DealOne(int left, int from, Target to, bool? faceUp, Label? isShort, Label done, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        TableState state = machine.State;
        int spot = state.Numbers[from];
        if (state.Numbers[left] <= 0)
        {
            return done.At;
        }

        if (state.Count(spot) == 0)
        {
            return isShort?.At ?? done.At;
        }

        int landing = to.Spot(machine, At);
        if (landing == TableState.None)
        {
            return done.At;
        }

        var deal = new DealEvent(state, spot, landing, faceUp, left);
        if (deal.Weights.Length > 1 || machine.StopsAtEveryDeal)
        {
            machine.Moment = new Moment.Chance(deal);
            return Wait;
        }

        deal.Carry(state, 0);
        return here + 1;
    }
}

/// <summary>Which thing is dealt: those that look alike are one outcome.</summary>
internal sealed class DealEvent : ChanceEvent
{
    private readonly int _to;
    private readonly bool? _faceUp;
    private readonly int _left;
    private readonly ImmutableArray<int> _things;

    public DealEvent(TableState state, int from, int to, bool? faceUp, int left)
    {
        (From, _to, _faceUp, _left) = (from, to, faceUp, left);
        if (state.Known(from) > 0)
        {
            (_things, Weights) = ([state.Top(from)], [1]);
            return;
        }

        var things = new List<int>();
        var weights = new List<long>();
        var codes = new Dictionary<int, int>();
        for (int thing = state.Bottom(from); thing != TableState.None; thing = state.Above(thing))
        {
            int code = state.LookCode(thing);
            if (codes.TryGetValue(code, out int at))
            {
                weights[at]++;
            }
            else
            {
                codes[code] = things.Count;
                things.Add(thing);
                weights.Add(1);
            }
        }

        (_things, Weights) = ([.. things], [.. weights]);
    }

    public override ImmutableArray<long> Weights { get; }

    /// <summary>The spot from which it is dealt.</summary>
    public int From { get; }

    /// <summary>The spot to which it is dealt.</summary>
    public int To => _to;

    /// <summary>The thing of each outcome.</summary>
    public ImmutableArray<int> Things => _things;

    /// <summary>How many things the step deals from here on at least, this one included; which ones nobody knows.</summary>
    public int Coming(TableState state) => Math.Min(state.Numbers[_left], state.Count(From));

    public override void Carry(TableState state, int outcome)
    {
        Moves.Move(state, _things[outcome], _to, _faceUp);
        state.Numbers[_left]--;
    }
}

/// <summary>Rolls dice.</summary>
internal sealed class RollDice(Node dice, bool isMany, SourceSpan? at) : Instruction(at)
{
    public override int Do(Machine machine, int here)
    {
        int[] rolled = isMany ? machine.Elements(dice) : machine.Number(dice) is var die && die == Node.Nothing ? [] : [die];
        if (rolled.Length == 0)
        {
            return here + 1;
        }

        machine.Moment = new Moment.Chance(new RollEvent(machine.State, rolled));
        return Wait;
    }
}

/// <summary>How dice fall: dice of one class in one spot are told apart by nobody, so only how often each face comes is told.</summary>
internal sealed class RollEvent : ChanceEvent
{
    private readonly ImmutableArray<ImmutableArray<int>> _groups;
    private readonly ImmutableArray<ImmutableArray<int>> _outcomes;

    public RollEvent(TableState state, int[] dice)
    {
        Dice = [.. dice.Order()];
        _groups = [.. Dice.GroupBy(d => (state.Layout.ClassOf[d], state.Layout.SpotHolder[state.Spot(d)].IsOrdered ? -1 - d : state.Spot(d))).Select(g => g.ToImmutableArray())];
        List<(ImmutableArray<int> Faces, long Weight)> all = [([], 1)];
        foreach (ImmutableArray<int> group in _groups)
        {
            int faces = state.Layout.Class(group[0]).Kind.Attributes[0].Values.Length;
            (ImmutableArray<int> Faces, long Weight)[] ways = [.. Multisets(faces, group.Length)];
            all = [.. all.SelectMany(a => ways.Select(w => (a.Faces.AddRange(w.Faces), checked(a.Weight * w.Weight))))];
        }

        _outcomes = [.. all.Select(a => a.Faces)];
        Weights = [.. all.Select(a => a.Weight)];
    }

    public override ImmutableArray<long> Weights { get; }

    /// <summary>The dice that are rolled, by their numbers.</summary>
    public ImmutableArray<int> Dice { get; }

    /// <summary>Each die with the 0-based face that it shows.</summary>
    public IEnumerable<(int Die, int Face)> Faces(int outcome) => _groups.SelectMany(g => g).Zip(_outcomes[outcome]);

    /// <summary>The outcome in which the dice, in their order, show these faces; -1 where they cannot.</summary>
    /// <param name="faces">By die: the 0-based face.</param>
    public int Showing(int[] faces)
    {
        int[] wanted = [.. _groups.SelectMany(g => g.Select(d => faces[Dice.IndexOf(d)]).Order())];
        return _outcomes.ToList().FindIndex(o => o.AsSpan().SequenceEqual(wanted));
    }

    public override void Carry(TableState state, int outcome)
    {
        foreach ((int die, int face) in Faces(outcome))
        {
            state.SetState(die, 0, face);
        }
    }

    // Every way in which equal dice may fall, faces lowest first, with the number of rolls that give it: a multinomial coefficient.
    private static IEnumerable<(ImmutableArray<int> Faces, long Weight)> Multisets(int faces, int dice)
    {
        int[] at = new int[dice];
        while (true)
        {
            yield return ([.. at], Orders(at));
            int last = dice - 1;
            while (last >= 0 && at[last] == faces - 1)
            {
                last--;
            }

            if (last < 0)
            {
                yield break;
            }

            int next = at[last] + 1;
            Array.Fill(at, next, last, dice - last);
        }
    }

    private static long Orders(int[] sorted)
    {
        long orders = 1;
        int run = 0;
        for (int i = 0; i < sorted.Length; i++)
        {
            run = i > 0 && sorted[i] == sorted[i - 1] ? run + 1 : 1;
            orders = checked(orders * (i + 1)) / run;
        }

        return orders;
    }
}
