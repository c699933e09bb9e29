using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <summary>Carries out the simple steps of an action, so that it can be asked what they leave.</summary>
/// <remarks>Steps that hang on chance or on a further choice are not carried out: what follows is then not known.</remarks>
internal sealed partial class StepCarrier(Position before, int me, Setting setting, ISet<int> touched, Value[] frame)
{
    private readonly System.Collections.Generic.Stack<Func<Spot, int, (Spot Spot, int Index)>> _back = [];
    private readonly System.Collections.Generic.Stack<Value[]> _elements = [];
    private Position _position = before;
    private Blame _why = Blame.None;

    /// <summary>The position that the steps leave, or why nobody can say; the frame follows the things that were moved.</summary>
    public (Position? After, Blame Why) Carry(ImmutableArray<Step> steps) => All(steps) ? (_position, Blame.None) : (null, _why);

    /// <summary>The position that was reached, where the steps could not all be carried out; of what is dealt then, which things they are is not known.</summary>
    public Position Reached => _position;

    private bool All(ImmutableArray<Step> steps)
    {
        foreach (Step step in steps)
        {
            if (!Carry(step))
            {
                _why = _why.IsAny ? _why : Blame.Of(GapKind.NotYet, $"what '{Prose.Begun(step.Sentence)}' leaves");
                return false;
            }
        }

        return true;
    }

    /// <summary>A fact of the position that the steps left, as a fact of the one before them.</summary>
    public Blank Before(Blank after)
    {
        (Spot spot, int index) = (after.Spot, after.Index);
        foreach (Func<Spot, int, (Spot, int)> back in _back)
        {
            (spot, index) = back(spot, index);
        }

        return after with { Spot = spot, Index = index };
    }

    private Evaluator Evaluator => new(_position, me, setting, touched);

    private bool Carry(Step step) => step.Kind switch
    {
        StepKind.Move => Move(step),
        StepKind.Swap => Swap(step),
        StepKind.Change => Change(step),
        StepKind.Set or StepKind.Add or StepKind.Take => Mark(step),
        StepKind.Let => Let(step),
        StepKind.Do => DoCard(step),
        StepKind.If => If(step),
        StepKind.ForEach => ForEach(step),
        StepKind.Deal => Deal(step),
        _ => step.IsCarriedOut,
    };

    private bool Unknown(Blame why)
    {
        _why += why;
        return false;
    }

    private bool Let(Step step)
    {
        frame[step.Slot] = Evaluator.Evaluate(step.Terms[0], frame);
        return true;
    }

    private bool Swap(Step step)
    {
        Value a = Evaluator.Evaluate(step.Terms[0], frame);
        Value b = Evaluator.Evaluate(step.Terms[1], frame);
        if (a is Value.Unknown || b is Value.Unknown)
        {
            return Unknown(a.WhyUnknown + b.WhyUnknown);
        }

        switch (a, b)
        {
            case (Value.ThingAt thing, Value.ThingAt other):
                return SwapThings(thing, other);
            case (Value.PlayerAt player, Value.PlayerAt other):
                return SwapPlayers(player.Seat, other.Seat);
        }

        Spot one = Evaluator.SpotOf(a);
        Spot two = Evaluator.SpotOf(b);
        if (one.Kind is not (SpotKind.Space or SpotKind.Slot) || two.Kind is not (SpotKind.Space or SpotKind.Slot))
        {
            return false;
        }

        Stack first = one.In(_position);
        bool isOnBoard = one.Kind == SpotKind.Space || two.Kind == SpotKind.Space;
        if (isOnBoard && first.Things.Concat(two.In(_position).Things).FirstOrDefault(t => ShapeOf(t) is not null) is { } large)
        {
            return NamesOneSpace(large);
        }

        _position = two.Put(one.Put(_position, two.In(_position)), first);
        _back.Push((s, i) => (s == one ? two : s == two ? one : s, i));
        Follow(t => t.Spot == one ? t with { Spot = two } : t.Spot == two ? t with { Spot = one } : t);
        return true;
    }

    private bool SwapThings(Value.ThingAt one, Value.ThingAt two)
    {
        bool isOnBoard = one.Spot.Kind == SpotKind.Space || two.Spot.Kind == SpotKind.Space;
        if (isOnBoard && (ShapeOf(one.Thing) ?? ShapeOf(two.Thing)) is not null)
        {
            return NamesOneSpace(ShapeOf(one.Thing) is null ? two.Thing : one.Thing);
        }

        if (one.Spot.Kind is not (SpotKind.Space or SpotKind.Slot) || two.Spot.Kind is not (SpotKind.Space or SpotKind.Slot) || one.Index < 0 || two.Index < 0)
        {
            return false;
        }

        _back.Push((s, i) => s == one.Spot && i == one.Index ? (two.Spot, two.Index) : s == two.Spot && i == two.Index ? (one.Spot, one.Index) : (s, i));
        Replace(one, two.Thing);
        Replace(two, one.Thing);
        Follow(t => t.Spot == one.Spot && t.Index == one.Index ? two with { Thing = one.Thing } : t.Spot == two.Spot && t.Index == two.Index ? one with { Thing = two.Thing } : t);
        return true;
    }

    private bool Change(Step step)
    {
        Value subject = Evaluator.Evaluate(step.Terms[0], frame);
        subject = subject is Value.CardIs card ? Evaluator.CardOnTable(card.Card) : subject;
        Value becomes = Evaluator.Evaluate(step.Terms[1], frame);
        if (subject is Value.Many { IsCertain: true, Members: [var only] })
        {
            subject = only.Value;
        }

        if (subject is not Value.ThingAt { Index: >= 0 } at || at.Spot.Kind is not (SpotKind.Space or SpotKind.Slot))
        {
            return subject is Value.Nothing || (subject is Value.Unknown unknown && Unknown(unknown.Blame));
        }

        Thing? changed = becomes switch
        {
            Value.Truth truth => at.Thing with { IsFaceUp = truth.Is == Kleene.Yes },
            Value.Nothing when at.Thing.Kind is { } kind && _position.Sheet.KindOf(kind).FlipState is { } state =>
                at.Thing with { Values = at.Thing.Values.SetItem(state.Attribute.Index, 1 - at.Thing.Values[state.Attribute.Index]) },
            Value.Nothing => at.Thing with { IsFaceUp = !at.Thing.IsFaceUp },
            Value.PlayerAt player => ChangedSides(at.Thing, player.Seat),
            Value.AttributeIs value when at.Thing.Kind is { } kind && !ReferenceEquals(value.Which.Attribute.Kind, kind) => at.Thing, // It has no such state.
            Value.AttributeIs value when at.Thing.Kind is not null => at.Thing with { Values = at.Thing.Values.SetItem(value.Which.Attribute.Index, value.Which.Index) },
            _ => null,
        };
        if (changed is null)
        {
            return false;
        }

        Replace(at, changed);
        Follow(t => t.Spot == at.Spot && t.Index == at.Index ? t with { Thing = changed } : t);
        return true;
    }

    // Null where nothing about the thing names a player.
    private Thing? ChangedSides(Thing thing, int seat) =>
        thing.Kind is { } kind && _position.Sheet.KindOf(kind).Attributes.FirstOrDefault(a => a.HoldsPlayer) is { } side
            ? thing with { Owner = seat, Values = thing.Values.SetItem(side.Attribute.Index, seat) }
            : null;

    private bool Mark(Step step)
    {
        if (step.Terms[0] is Term.StartPlayer)
        {
            return true; // Positions do not hold who it is.
        }

        if (step.Terms[0] is not Term.MarkOf { Mark: var mark } of || PositionOf(of) is not { } seat)
        {
            return false;
        }

        Value value = Evaluator.Evaluate(step.Terms[1], frame);
        long? held = _position.Marks[mark.Index][seat];
        long? becomes = (step.Kind, value) switch
        {
            (StepKind.Set, Value.Number { IsKnown: true } number) => number.Low,
            (StepKind.Set, Value.Truth { Is: not Kleene.Unknown } truth) => truth.Is == Kleene.Yes ? 1 : 0,
            (StepKind.Set, Value.PlayerAt player) => player.Seat,
            (StepKind.Set, Value.SpaceAt space) => space.Index,
            (StepKind.Set, Value.AttributeIs attribute) => attribute.Which.Index,
            (StepKind.Set, Value.Nothing) => Position.NothingMarked,
            (StepKind.Add, Value.Number { IsKnown: true } number) => held + number.Low,
            (StepKind.Take, Value.Number { IsKnown: true } number) => held - number.Low,
            _ => null,
        };
        becomes = value is Value.Number && becomes is { } sum ? Math.Clamp(sum, mark.Lowest ?? long.MinValue, mark.Highest ?? long.MaxValue) : becomes;
        _position = _position with { Marks = _position.Marks.SetItem(mark.Index, _position.Marks[mark.Index].SetItem(seat, becomes)) };
        return becomes is not null || held is null || Unknown(value.WhyUnknown);
    }

    // Where the value stands in the position; null where nobody can say whose it is.
    private int? PositionOf(Term.MarkOf of) => of.Owner is null ? 0 : Evaluator.Evaluate(of.Owner, frame) switch
    {
        Value.PlayerAt player => of.Mark.EachPlayer ? player.Seat : 0,
        Value.SpaceAt space when of.Mark.EachSpaceOf is { } board && ReferenceEquals(_position.Sheet.Boards[space.Board].Place, board) =>
            MarkLayout.Of(_position.Sheet, of.Mark, space.Seat, space.Index),
        _ => null,
    };

    private void Replace(Value.ThingAt at, Thing thing)
    {
        Stack stack = at.Spot.In(_position);
        _position = at.Spot.Put(_position, stack with { Things = stack.Things.SetItem(at.Index, thing) });
    }

    private void Follow(Func<Value.ThingAt, Value.ThingAt> to)
    {
        foreach (Value[] held in _elements.Append(frame))
        {
            for (int i = 0; i < held.Length; i++)
            {
                held[i] = held[i] switch
                {
                    Value.ThingAt thing => to(thing),
                    Value.Many many => many with { Members = [.. many.Members.Select(m => m.Value is Value.ThingAt thing ? m with { Value = to(thing) } : m)] },
                    _ => held[i],
                };
            }
        }
    }
}
