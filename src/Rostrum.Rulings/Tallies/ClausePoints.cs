using Rostrum.Rulings.Evaluation;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tallies;

/// <summary>What a scoring clause gives on a position: its elements added up, then held between its limits.</summary>
internal static class ClausePoints
{
    /// <summary>The meaning of a clause under the evaluator's setting.</summary>
    public static ScoreBody Body(Evaluator evaluator, ScoreClause clause) =>
        clause.Bodies[clause.Choice is null ? 0 : evaluator.Pick(clause.Choice)];

    /// <summary>The points, limits included.</summary>
    public static Value.Number Of(Evaluator evaluator, ScoreClause clause)
    {
        ScoreBody body = Body(evaluator, clause);
        Value[] frame = Evaluator.Frame(clause.FrameSize);
        Value.Number points = Raw(evaluator, body, frame);
        if (body.AtLeast is not null)
        {
            points = Bounds.Higher(points, Number(evaluator.Evaluate(body.AtLeast, frame)));
        }

        return body.AtMost is null ? points : Bounds.Negative(Bounds.Higher(Bounds.Negative(points), Bounds.Negative(Number(evaluator.Evaluate(body.AtMost, frame)))));
    }

    /// <summary>The points before any limit.</summary>
    public static Value.Number Raw(Evaluator evaluator, ScoreBody body, Value[] frame)
    {
        if (body.Each is null)
        {
            return Number(evaluator.Evaluate(body.Points, frame));
        }

        Value.Many elements = evaluator.Through(body.Each, frame);
        Value.Number sum = elements.More == 0 ? Value.Of(0) : new Value.Number(null, null, false, elements.Blame);
        foreach (Member element in elements.Members)
        {
            Value.Number points = Number(Evaluator.With(body.Each, element.Value, frame, body.Points, evaluator.Evaluate));
            sum = Bounds.Plus(sum, element.IsCertain ? points : Bounds.OrZero(points, element.Blame));
        }

        return sum;
    }

    /// <summary>A value as points; nothing is 0.</summary>
    public static Value.Number Number(Value value)
    {
        Value.Number number = Evaluator.AsNumber(value) ?? Value.Of(0);
        return number.MayBeNothing ? Bounds.OrZero(number, Blame.None) : number;
    }
}
