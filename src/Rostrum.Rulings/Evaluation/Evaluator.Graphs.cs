using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>Connected parts, ways and pairs.</content>
internal sealed partial class Evaluator
{
    private const int MostPaired = 200;

    private Value Groups(Term.Apply apply, Value[] frame)
    {
        Value.Many many = Through(apply.Pick!, frame);
        Value[] elements = Elements(many);
        Kleene[,] joined = Joined(apply, elements, frame, out Blame why);
        if (!many.IsCertain || why.IsAny)
        {
            return Value.Open(many.WhyUnknown + why, isList: false);
        }

        return Value.Certain(Graph.Of(joined).Parts().Select(p => Value.Certain(p.Select(i => elements[i]), isList: false)), isList: false);
    }

    private static Value[] Elements(Value.Many many) => [.. many.Members.Select(m => m.Value)];

    private Value.Number LongestWay(Term.Apply apply, Value[] frame)
    {
        string measure = MeasureOf(apply);
        Value.Many many = Through(apply.Pick!, frame);
        Kleene[,] joined = Joined(apply, Elements(many), frame, out Blame why);
        why += many.WhyUnknown;
        if (many.IsCertain && !why.IsAny)
        {
            Way way = Remembered(apply, Elements(many), () => Ways.Longest(Graph.Of(joined), measure));
            return Value.Between(way.Least, way.Most, Blame.Of(GapKind.Limit, Ways.LimitInWords(measure)));
        }

        // More elements and more joins can only make a walk or a group longer; a span or a bare way they can make shorter, but never longer than a group.
        bool grows = measure is "walk" or "group";
        int[] sure = [.. Enumerable.Range(0, many.Members.Length).Where(i => many.Members[i] is { IsCertain: true, Value: not Value.Unknown })];
        int low = grows ? Ways.Longest(Graph.Of(joined).Only(sure), measure).Least : many.Members.Any(m => m.IsCertain) ? 1 : 0;
        Way high = Ways.Longest(Graph.Of(joined, Kleene.Unknown), grows ? measure : "group");
        return Value.Between(Math.Max(low, many.Members.Any(m => m.IsCertain) ? 1 : 0), many.More == 0 ? high.Most : null, why);
    }

    private static string MeasureOf(Term.Apply apply) => ((Term.Text)apply.Argument(1)).Words;

    /// <summary>The elements of one longest way, in its order; of a group its members. Empty where the elements are not certain.</summary>
    internal ImmutableArray<Value> WayOf(Term.Apply apply, Value[] frame)
    {
        Value.Many many = Through(apply.Pick!, frame);
        Value[] elements = Elements(many);
        Kleene[,] joined = Joined(apply, elements, frame, out Blame why);
        return many.IsCertain && !why.IsAny ? [.. Remembered(apply, elements, () => Ways.Longest(Graph.Of(joined), MeasureOf(apply))).Elements.Select(e => elements[e])] : [];
    }

    private Value.Number MostPairs(Term.Apply apply, Value[] frame)
    {
        Value.Many many = Through(apply.Pick!, frame);
        Value.Many others = Many(apply.Argument(0), frame);
        long? most = Bounds.Lower(many.Members.Length + many.More, others.Members.Length + others.More);
        if (many.Members.Length > MostPaired || others.Members.Length > MostPaired)
        {
            return Value.Between(0, most, Blame.Of(GapKind.Limit, $"pairs are not worked out above {MostPaired} by {MostPaired}"));
        }

        Value.Truth[,] joins = Joins(many, others, (Term.Joining)apply.Argument(1), frame);
        Blame why = many.WhyUnknown + others.WhyUnknown;
        foreach (Value.Truth join in joins)
        {
            why += join.Blame;
        }

        int low = Pairs(joins, Kleene.Yes).Length;
        return Value.Between(low, many.More == 0 && others.More == 0 ? Pairs(joins, Kleene.Unknown).Length : most, why);
    }

    private static (int One, int Other)[] Pairs(Value.Truth[,] joins, Kleene least) =>
        Matching.Most(joins.GetLength(0), joins.GetLength(1), (i, j) => joins[i, j].Is >= least);

    /// <summary>As many pairs as can be made for certain.</summary>
    internal ImmutableArray<(Value One, Value Other)> PairsOf(Term.Apply apply, Value[] frame)
    {
        Value.Many many = Through(apply.Pick!, frame);
        Value.Many others = Many(apply.Argument(0), frame);
        return many.Members.Length > MostPaired || others.Members.Length > MostPaired
            ? []
            : [.. Pairs(Joins(many, others, (Term.Joining)apply.Argument(1), frame), Kleene.Yes).Select(p => (many.Members[p.One].Value, others.Members[p.Other].Value))];
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
