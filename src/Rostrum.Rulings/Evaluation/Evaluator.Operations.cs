using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>Which method gives the meaning of which operation of the table.</content>
internal sealed partial class Evaluator
{
    private Value Operate(Term.Apply apply, Value[] frame) => apply.Operation.Id switch
    {
        Op.And => And(apply, frame),
        Op.Or => Or(apply, frame),
        Op.Not => Not(Ask(apply.Argument(0), frame)),
        >= Op.Same and <= Op.Can => Test(apply, frame),
        >= Op.Plus and <= Op.Opponent => Sign(apply, frame),
        >= Op.Count and <= Op.Together => GoThrough(apply, frame),
        >= Op.First and <= Op.OrderOf => Element(apply, frame),
        >= Op.TopOf and <= Op.FaceOf => Property(apply, frame),
        >= Op.NeighboursOf and <= Op.Following => Geometry(apply, frame),
        Op.Groups => Groups(apply, frame),
        Op.LongestWay => LongestWay(apply, frame),
        Op.MostPairs => MostPairs(apply, frame),
        Op.BestSplit => BestSplit(apply, frame),
        Op.Fits => Fits(apply, frame),
        Op.AnchorOf => AnchorOf(Evaluate(apply.Argument(0), frame)),
        >= Op.Difference and <= Op.Nearest => Rounded(apply, frame),
        Op.SpacesOf => SpacesOf(Evaluate(apply.Argument(0), frame)),
        Op.ThingsIn => ThingsOf(Evaluate(apply.Argument(0), frame)),
        Op.SlotsOf => SlotsOf(Evaluate(apply.Argument(0), frame)),
        Op.SeatBeside => Beside(Evaluate(apply.Argument(0), frame), apply.Argument(1)),
        _ => throw new InvalidOperationException($"No meaning is known for '{apply.Operation.Name}'."),
    };

    private Value Sign(Term.Apply apply, Value[] frame) => apply.Operation.Id switch
    {
        Op.Plus => Arithmetic(apply, frame, Bounds.Plus),
        Op.Minus => Arithmetic(apply, frame, (a, b) => Bounds.Plus(a, Bounds.Negative(b))),
        Op.Times => Arithmetic(apply, frame, Bounds.Times),
        Op.Negative => AsNumber(Evaluate(apply.Argument(0), frame)) is { } number ? Bounds.Negative(number) : Value.None,
        Op.Except => Except(Many(apply.Argument(0), frame), Many(apply.Argument(1), frame)),
        Op.TogetherWith => Union([Many(apply.Argument(0), frame), Many(apply.Argument(1), frame)]),
        Op.Range => Range(apply, frame),
        Op.Players => Value.Certain(Enumerable.Range(0, position.Seats).Select(s => new Value.PlayerAt(s)), isList: true),
        _ => position.Seats == 2 ? new Value.PlayerAt(1 - me) : Value.None,
    };

    // Seats are counted clockwise, so who sits to the left comes next.
    private Value Beside(Value player, Term side) => player switch
    {
        Value.PlayerAt at when position.Seats > 0 => new Value.PlayerAt((at.Seat + (side is Term.DirectionNamed { Direction.Name: "left" } ? 1 : position.Seats - 1)) % position.Seats),
        Value.Unknown => player,
        _ => Value.None,
    };

    private Value Arithmetic(Term.Apply apply, Value[] frame, Func<Value.Number, Value.Number, Value.Number> combine) =>
        AsNumber(Evaluate(apply.Argument(0), frame)) is { } a && AsNumber(Evaluate(apply.Argument(1), frame)) is { } b ? combine(a, b) : Value.None;

    private Value Rounded(Term.Apply apply, Value[] frame)
    {
        if (AsNumber(Evaluate(apply.Argument(0), frame)) is not { } m || AsNumber(Evaluate(apply.Argument(1), frame)) is not { } n)
        {
            return Value.None;
        }

        if (apply.Operation.Id == Op.Difference)
        {
            return Bounds.Difference(m, n);
        }

        if (!n.IsKnown)
        {
            return new Value.Number(null, null, m.MayBeNothing || n.MayBeNothing, m.Blame + n.Blame);
        }

        return n.Low <= 0
            ? new Value.Unknown(Blame.Of(GapKind.Limit, "a division by 0 or less has no result"))
            : Bounds.Divide(m, n.Low!.Value, Rounding(apply.Operation.Id));
    }

    private static Func<long, long, long> Rounding(Op id) => id switch
    {
        Op.Down => Bounds.Down,
        Op.Up => Bounds.Up,
        _ => Bounds.Nearest,
    };

    private Value Range(Term.Apply apply, Value[] frame)
    {
        const long mostElements = 10_000;
        if (AsNumber(Evaluate(apply.Argument(0), frame)) is not { } low || AsNumber(Evaluate(apply.Argument(1), frame)) is not { } high)
        {
            return Value.Certain([], isList: true);
        }

        if (!low.IsKnown || !high.IsKnown)
        {
            return Value.Open(low.Blame + high.Blame, isList: true);
        }

        long count = Math.Max(0, high.Low!.Value - low.Low!.Value + 1);
        return count > mostElements
            ? Value.Open(Blame.Of(GapKind.Limit, "a list of more than 10,000 numbers is not gone through"), isList: true)
            : Value.Certain(Enumerable.Range(0, (int)count).Select(i => Value.Of(low.Low.Value + i)), isList: true);
    }
}
