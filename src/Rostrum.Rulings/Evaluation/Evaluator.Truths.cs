using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>Logic and tests.</content>
internal sealed partial class Evaluator
{
    private Value And(Term.Apply apply, Value[] frame)
    {
        Value.Truth all = Value.Yes;
        foreach (Term? operand in apply.Arguments)
        {
            all = And(all, Ask(operand!, frame));
            if (all.Is == Kleene.No)
            {
                return all;
            }
        }

        return all;
    }

    private Value Or(Term.Apply apply, Value[] frame)
    {
        Value.Truth any = Value.No;
        foreach (Term? operand in apply.Arguments)
        {
            any = Or(any, Ask(operand!, frame));
            if (any.Is == Kleene.Yes)
            {
                return any;
            }
        }

        return any;
    }

    /// <summary>Both.</summary>
    internal static Value.Truth And(Value.Truth a, Value.Truth b)
    {
        if (a.Is == Kleene.No || b.Is == Kleene.No)
        {
            return Value.No;
        }

        return a.Is == Kleene.Yes && b.Is == Kleene.Yes ? Value.Yes : Value.Maybe(a.Blame + b.Blame);
    }

    /// <summary>Either.</summary>
    internal static Value.Truth Or(Value.Truth a, Value.Truth b) => Not(And(Not(a), Not(b)));

    /// <summary>The other way round.</summary>
    internal static Value.Truth Not(Value.Truth a) => a.Is switch
    {
        Kleene.Yes => Value.No,
        Kleene.No => Value.Yes,
        _ => a,
    };

    private Value Test(Term.Apply apply, Value[] frame)
    {
        Op id = apply.Operation.Id;
        Value first = Evaluate(apply.Argument(0), frame);
        return id switch
        {
            Op.IsNothing => IsNothing(first),
            Op.Same => Same(first, Evaluate(apply.Argument(1), frame)),
            Op.In => IsIn(first, Evaluate(apply.Argument(1), frame)),
            Op.NextTo => AreNeighbours(first, Evaluate(apply.Argument(1), frame)),
            Op.AtLeast => NotBelow(first, Evaluate(apply.Argument(1), frame)),
            Op.AtMost => NotBelow(Evaluate(apply.Argument(1), frame), first),
            Op.MoreThan => Above(first, Evaluate(apply.Argument(1), frame)),
            Op.LessThan => Above(Evaluate(apply.Argument(1), frame), first),
            _ => And(NotBelow(first, Evaluate(apply.Argument(1), frame)), NotBelow(Evaluate(apply.Argument(2), frame), first)),
        };
    }

    private static Value.Truth IsNothing(Value value) => value switch
    {
        Value.Nothing => Value.Yes,
        Value.Unknown unknown => Value.Maybe(unknown.Blame),
        Value.Number { MayBeNothing: true } number => Value.Maybe(number.Blame),
        _ => Value.No,
    };

    private static Value.Truth NotBelow(Value a, Value b) => Compare(a, b, (x, y) => x.Low >= y.High, (x, y) => x.High < y.Low);

    private static Value.Truth Above(Value a, Value b) => Compare(a, b, (x, y) => x.Low > y.High, (x, y) => x.High <= y.Low);

    // A comparison with an open bound is false in C#, which is what is meant: nothing is certain.
    private static Value.Truth Compare(Value a, Value b, Func<Value.Number, Value.Number, bool> surely, Func<Value.Number, Value.Number, bool> never)
    {
        if (AsNumber(a) is not { } x || AsNumber(b) is not { } y || never(x, y))
        {
            return Value.No;
        }

        return surely(x, y) && !x.MayBeNothing && !y.MayBeNothing ? Value.Yes : Value.Maybe(x.Blame + y.Blame);
    }

    /// <summary>Whether two values are the same; a test of nothing is no.</summary>
    internal static Value.Truth Same(Value a, Value b)
    {
        if (a is Value.Nothing || b is Value.Nothing)
        {
            return Value.No;
        }

        if (a is Value.Number || b is Value.Number)
        {
            return Compare(a, b, (x, y) => x.IsKnown && x.Low == y.Low && y.IsKnown, (x, y) => x.High < y.Low || x.Low > y.High);
        }

        if (a is Value.Unknown || b is Value.Unknown)
        {
            return Value.Maybe(a.WhyUnknown + b.WhyUnknown);
        }

        return (a, b) switch
        {
            (Value.Truth x, Value.Truth y) => Or(And(x, y), And(Not(x), Not(y))),
            (Value.Many x, Value.Many y) => SameMany(x, y),
            (Value.CardIs card, Value.ThingAt thing) => IsCard(thing, card.Card),
            (Value.ThingAt thing, Value.CardIs card) => IsCard(thing, card.Card),
            _ => Value.Of(a.Equals(b)),
        };
    }

    private static Value.Truth SameMany(Value.Many x, Value.Many y)
    {
        if (x.IsCertain && y.IsCertain)
        {
            return x.IsSettled && y.IsSettled ? Value.Of(x.Equals(y)) : Value.Maybe(x.WhyUnknown + y.WhyUnknown);
        }

        return Value.Maybe(x.WhyUnknown + y.WhyUnknown);
    }

    private static Value.Truth IsCard(Value.ThingAt thing, Card card)
    {
        if (thing.Thing.Card is not null)
        {
            return Value.Of(ReferenceEquals(thing.Thing.Card, card));
        }

        bool never = thing.Thing.Kind is not null && !ReferenceEquals(thing.Thing.Kind, card.Kind);
        return never ? Value.No : Value.Maybe(Blame.Of(BlankOf(thing, Aspect.Card)));
    }

    private Value.Truth IsIn(Value element, Value container)
    {
        if (element is Value.Nothing || container is Value.Nothing)
        {
            return Value.No;
        }

        if (container is Value.Many many)
        {
            return Belongs(element, many);
        }

        if (element is Value.Unknown || container is Value.Unknown)
        {
            return Value.Maybe(element.WhyUnknown + container.WhyUnknown);
        }

        return Belongs(element, AsMany(element is Value.ThingAt or Value.CardIs ? ThingsOf(container) : SpacesOf(container)));
    }

    /// <summary>Whether an element is in a set.</summary>
    internal static Value.Truth Belongs(Value element, Value.Many many)
    {
        Value.Truth belongs = many.More == 0 ? Value.No : Value.Maybe(many.Blame);
        foreach (Member member in many.Members)
        {
            belongs = Or(belongs, And(new Value.Truth(member.Is, member.Blame), Same(element, member.Value)));
            if (belongs.Is == Kleene.Yes)
            {
                return belongs;
            }
        }

        return belongs;
    }

    private Value.Truth AreNeighbours(Value a, Value b)
    {
        if (a is Value.Nothing || b is Value.Nothing)
        {
            return Value.No;
        }

        if (a is not Value.SpaceAt s || b is not Value.SpaceAt t)
        {
            return Value.Maybe(a.WhyUnknown + b.WhyUnknown);
        }

        return Value.Of(s.Board == t.Board && s.Seat == t.Seat && _index.Geometry[s.Board].Neighbours(s.Index).Contains(t.Index));
    }
}
