using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>Connected parts, ways and pairs.</content>
internal sealed partial class Evaluator
{
    private Value Groups(Term.Apply apply, Value[] frame)
    {
        Value.Many many = Through(apply.Pick!, frame);
        Value[] elements = [.. many.Members.Select(m => m.Value)];
        Kleene[,] joined = Joined(apply, elements, frame, out Blame why);
        if (!many.IsCertain || why.IsAny)
        {
            return Value.Open(many.WhyUnknown + why, isList: false);
        }

        return Value.Certain(Graph.Of(joined).Parts().Select(p => Value.Certain(p.Select(i => elements[i]), isList: false)), isList: false);
    }

    // Whether each two of the elements belong together; the same both ways.
    private Kleene[,] Joined(Term.Apply apply, Value[] elements, Value[] frame, out Blame why)
    {
        var joining = apply.Arguments[0] as Term.Joining;
        Value[]? alike = apply.Operation.Id == Op.Groups && apply.Arguments[1] is { } value
            ? [.. elements.Select(e => With(apply.Pick!, e, frame, value, Evaluate))] : null;
        var joined = new Kleene[elements.Length, elements.Length];
        why = Blame.None;
        for (int i = 0; i < elements.Length; i++)
        {
            for (int j = i + 1; j < elements.Length; j++)
            {
                Value.Truth together = Together(elements, alike, i, j, joining, frame);
                joined[i, j] = joined[j, i] = together.Is;
                why += together.Blame;
            }
        }

        return joined;
    }

    private Value.Truth Together(Value[] elements, Value[]? alike, int i, int j, Term.Joining? joining, Value[] frame)
    {
        Value.Truth together = joining is null ? AreNeighbours(elements[i], elements[j]) : Join(joining, elements[i], elements[j], frame);
        if (joining is not null && together.Is != Kleene.Yes)
        {
            together = Or(together, Join(joining, elements[j], elements[i], frame));
        }

        return alike is null || together.Is == Kleene.No ? together : And(together, Same(alike[i], alike[j]));
    }

    private Value.Truth Join(Term.Joining joining, Value one, Value other, Value[] frame)
    {
        frame[joining.First] = one;
        frame[joining.Second] = other;
        return Ask(joining.Holds, frame);
    }

    private Value LongestWay(Term.Apply apply, Value[] frame)
    {
        Value.Many many = Through(apply.Pick!, frame);
        Value[] elements = [.. many.Members.Select(m => m.Value)];
        Kleene[,] joined = Joined(apply, elements, frame, out Blame why);
        if (!many.IsCertain || why.IsAny)
        {
            long low = many.Members.Any(m => m.IsCertain) ? 1 : 0;
            return Value.Between(low, elements.Length + many.More, many.WhyUnknown + why);
        }

        string measure = ((Term.Text)apply.Argument(1)).Words;
        int? length = Ways.Longest(Graph.Of(joined), measure);
        return length is { } found
            ? Value.Of(found)
            : Value.Between(0, elements.Length, Blame.Of(GapKind.Limit, $"the longest way ({measure}) is not worked out above 64 spaces or 2,000,000 steps"));
    }

    private Value MostPairs(Term.Apply apply, Value[] frame)
    {
        const int mostElements = 200;
        Value.Many many = Through(apply.Pick!, frame);
        Value.Many others = Many(apply.Argument(0), frame);
        long? most = many.More == 0 ? many.Members.Length : others.More == 0 ? others.Members.Length : null;
        if (many.Members.Length > mostElements || others.Members.Length > mostElements)
        {
            return Value.Between(0, most, Blame.Of(GapKind.Limit, "pairs are not worked out above 200 by 200"));
        }

        Value.Truth[,] joins = Joins(many, others, (Term.Joining)apply.Argument(1), frame);
        Blame why = many.WhyUnknown + others.WhyUnknown;
        foreach (Value.Truth join in joins)
        {
            why += join.Blame;
        }

        int low = Matching.Most(many.Members.Length, others.Members.Length, (i, j) => joins[i, j].Is == Kleene.Yes);
        int high = Matching.Most(many.Members.Length, others.Members.Length, (i, j) => joins[i, j].Is != Kleene.No);
        return Value.Between(low, many.More == 0 && others.More == 0 ? high : null, why);
    }

    private Value.Truth[,] Joins(Value.Many many, Value.Many others, Term.Joining joining, Value[] frame)
    {
        var joins = new Value.Truth[many.Members.Length, others.Members.Length];
        for (int i = 0; i < many.Members.Length; i++)
        {
            for (int j = 0; j < others.Members.Length; j++)
            {
                Member one = many.Members[i];
                Member other = others.Members[j];
                joins[i, j] = And(Join(joining, one.Value, other.Value, frame), And(new Value.Truth(one.Is, one.Blame), new Value.Truth(other.Is, other.Blame)));
            }
        }

        return joins;
    }
}
