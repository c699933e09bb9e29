using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>Which elements a word joins.</content>
internal sealed partial class Evaluator
{
    // Whether each two of the elements belong together; the same both ways.
    private Kleene[,] Joined(Term.Apply apply, Value[] elements, Value[] frame, out Blame why)
    {
        var joining = apply.Arguments[0] as Term.Joining;
        Value[]? alike = apply.Operation.Id == Op.Groups && apply.Arguments[1] is { } value
            ? [.. elements.Select(e => With(apply.Pick!, e, frame, value, Evaluate))] : null;
        return Joined(elements, joining, alike, frame, out why);
    }

    private Kleene[,] Joined(Value[] elements, Term.Joining? joining, Value[]? alike, Value[] frame, out Blame why)
    {
        Asks asks = AskedBy(joining);
        var joined = new Kleene[elements.Length, elements.Length];
        why = Blame.None;
        Dictionary<Value, int>? numbers = asks == Asks.Anything || elements.Any(e => e is not Value.SpaceAt) || elements.Distinct().Count() < elements.Length
            ? null : elements.Select((e, i) => (e, i)).ToDictionary(p => p.e, p => p.i);
        for (int i = 0; i < elements.Length; i++)
        {
            foreach (int j in Later(i, elements, numbers))
            {
                Value.Truth together = Together(elements[i], elements[j], asks, joining, frame);
                together = alike is null || together.Is == Kleene.No ? together : And(together, Same(alike[i], alike[j]));
                joined[i, j] = joined[j, i] = together.Is;
                why += together.Blame;
            }
        }

        return joined;
    }

    // The elements behind one that may be joined with it: where only neighbours can be, they are looked up instead of asked for.
    private IEnumerable<int> Later(int of, Value[] elements, Dictionary<Value, int>? numbers)
    {
        if (numbers is null)
        {
            return Enumerable.Range(of + 1, elements.Length - of - 1);
        }

        var space = (Value.SpaceAt)elements[of];
        int[] near = _index.Geometry[space.Board].Neighbours(space.Index).ToArray();
        return near.Select(n => numbers.GetValueOrDefault(space with { Index = n }, -1)).Where(n => n > of);
    }

    // Steps over the whole board between spaces that the word joins. What may be joined bounds them from below, what is joined from above.
    private Value StepsBetween(Value from, Value to, Term.Joining joining, Value[] frame)
    {
        if (from is not Value.SpaceAt a || to is not Value.SpaceAt b)
        {
            return from is Value.Unknown || to is Value.Unknown ? new Value.Unknown(from.WhyUnknown + to.WhyUnknown) : Value.None;
        }

        int count = Sheet.Boards[a.Board].Spaces.Length;
        if (a.Board != b.Board || a.Seat != b.Seat)
        {
            return Value.None;
        }

        if (count > Ways.MostElements)
        {
            return new Value.Unknown(Blame.Of(GapKind.Limit, $"a distance by a word is not worked out above {Ways.MostElements} spaces"));
        }

        Kleene[,] joined = Joined([.. Enumerable.Range(0, count).Select(i => a with { Index = i })], joining, alike: null, frame, out Blame why);
        int least = Graph.Of(joined, Kleene.Unknown).DistancesFrom(a.Index)[b.Index];
        int most = Graph.Of(joined).DistancesFrom(a.Index)[b.Index];
        return least < 0 ? Value.None : Value.Between(least, most < 0 ? null : most, why, mayBeNothing: most < 0);
    }

    // A word is asked both ways only where the first way gave no yes, and not at all where it could not hold.
    private Value.Truth Together(Value one, Value other, Asks asks, Term.Joining? joining, Value[] frame)
    {
        Value.Truth neighbours = asks == Asks.Anything ? Value.Yes : AreNeighbours(one, other);
        if (joining is null || asks == Asks.Neighbours || neighbours.Is == Kleene.No)
        {
            return neighbours;
        }

        Value.Truth together = Join(joining, one, other, frame);
        return together.Is == Kleene.Yes ? together : Or(together, Join(joining, other, one, frame));
    }

    private Value.Truth Join(Term.Joining joining, Value one, Value other, Value[] frame)
    {
        frame[joining.First] = one;
        frame[joining.Second] = other;
        return Ask(joining.Holds, frame);
    }

    // No word stands for neighbours.
    private Asks AskedBy(Term.Joining? joining)
    {
        if (joining is null)
        {
            return Asks.Neighbours;
        }

        Term? body = joining.Holds is Term.Call call ? Sheet.Meanings[call.Word.Index].Body : null;
        return body is null || !HoldsForNeighboursOnly(body) ? Asks.Anything : body is Term.Apply { Operation.Id: Op.NextTo } ? Asks.Neighbours : Asks.NeighboursAndMore;
    }

    private static bool HoldsForNeighboursOnly(Term term) => term switch
    {
        Term.Apply { Operation.Id: Op.NextTo, Arguments: [Term.Variable { Slot: 0 or 1 } one, Term.Variable { Slot: 0 or 1 } other] } => one.Slot != other.Slot,
        Term.Apply { Operation.Id: Op.And } and => and.Arguments.Any(a => HoldsForNeighboursOnly(a!)),
        _ => false,
    };

    // What a word of two subjects asks: whether they are neighbours, that and more, or anything.
    private enum Asks
    {
        Anything,
        Neighbours,
        NeighboursAndMore,
    }
}
