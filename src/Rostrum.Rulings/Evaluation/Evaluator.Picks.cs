using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>Operations that go through elements.</content>
internal sealed partial class Evaluator
{
    /// <summary>The elements that a pick goes through, those included that may count.</summary>
    internal Value.Many Through(Pick pick, Value[] frame)
    {
        Value.Many domain = Many(pick.Domain, frame);
        return pick.Where is null ? domain : Sifted(domain, v => With(pick, v, frame, pick.Where, Ask));
    }

    /// <summary>Asks something of one element of a pick.</summary>
    internal static T With<T>(Pick pick, Value element, Value[] frame, Term term, Func<Term, Value[], T> ask)
    {
        frame[pick.Slot] = element;
        return ask(term, frame);
    }

    private Value GoThrough(Term.Apply apply, Value[] frame)
    {
        Pick pick = apply.Pick!;
        Value.Many many = Through(pick, frame);
        if (apply.Operation.Id is Op.Count or Op.Any or Op.No)
        {
            return Counted(apply.Operation.Id, many);
        }

        Term each = apply.Argument(0);
        if (apply.Operation.Id == Op.All)
        {
            return AllOf(many, v => With(pick, v, frame, each, Ask));
        }

        ImmutableArray<(Member Member, Value Of)> values = [.. many.Members.Select(m => (m, With(pick, m.Value, frame, each, Evaluate)))];
        return apply.Operation.Id switch
        {
            Op.Sum => SumOf(many, values),
            Op.Largest => Extreme(many, values, isLargest: true),
            Op.Smallest => Extreme(many, values, isLargest: false),
            Op.Different => Different(many, values, each.Sort),
            Op.Most => Chosen(many, values, isMost: true),
            Op.Least => Chosen(many, values, isMost: false),
            Op.Ranked => Ranked(many, values),
            _ => Union(values.Select(v => v.Member.IsCertain ? AsMany(v.Of) : Doubted(AsMany(v.Of), v.Member.Blame))) is var union && many.More == 0
                ? union
                : ((Value.Many)union) with { More = null, Blame = union.WhyUnknown + many.Blame },
        };
    }

    private static Value Counted(Op id, Value.Many many)
    {
        if (id == Op.Count)
        {
            return CountOf(many);
        }

        Value.Truth any = many.Members.Any(m => m.IsCertain) ? Value.Yes
            : many.Members.IsEmpty && many.More == 0 ? Value.No : Value.Maybe(many.WhyUnknown);
        return id == Op.Any ? any : Not(any);
    }

    /// <summary>How many elements there are.</summary>
    internal static Value.Number CountOf(Value.Many many)
    {
        long low = many.Members.Count(m => m.IsCertain);
        if (!many.IsList && low > 1 && many.Members.Any(m => m.Value is Value.Unknown))
        {
            // Elements of a set that are not known may be one and the same.
            low = Math.Max(1, many.Members.Count(m => m.IsCertain && m.Value is not Value.Unknown));
        }

        long high = many.Members.Length;
        return low == high && many.More == 0 ? Value.Of(low) : Value.Between(low, high + many.More, many.WhyUnknown);
    }

    private static Value.Truth AllOf(Value.Many many, Func<Value, Value.Truth> ask)
    {
        Value.Truth all = many.More == 0 ? Value.Yes : Value.Maybe(many.Blame);
        foreach (Member member in many.Members)
        {
            all = And(all, Or(Not(new Value.Truth(member.Is, member.Blame)), ask(member.Value)));
            if (all.Is == Kleene.No)
            {
                return all;
            }
        }

        return all;
    }

    private static Value.Number SumOf(Value.Many many, ImmutableArray<(Member Member, Value Of)> values)
    {
        Value.Number sum = many.More == 0 ? Value.Of(0) : new Value.Number(null, null, false, many.Blame);
        foreach ((Member member, Value of) in values)
        {
            if (AsNumber(of) is { } number)
            {
                bool isSure = member.IsCertain && !number.MayBeNothing;
                sum = Bounds.Plus(sum, isSure ? number : Bounds.OrZero(number, member.Blame));
            }
        }

        return sum;
    }

    private static Value.Number Extreme(Value.Many many, ImmutableArray<(Member Member, Value Of)> values, bool isLargest)
    {
        (Value.Number Number, bool IsSure)[] all = [.. values.Select(v => (AsNumber(v.Of), v.Member.IsCertain))
            .Where(v => v.Item1 is not null).Select(v => (isLargest ? v.Item1! : Bounds.Negative(v.Item1!), v.IsCertain && !v.Item1!.MayBeNothing))];
        Blame why = values.Aggregate(many.Blame, (sum, v) => sum + v.Member.Blame + v.Of.WhyUnknown);
        bool isAnySure = all.Any(a => a.IsSure);

        // The greatest is at least the least bound of any sure one, and at most the greatest bound of all.
        long? low = isAnySure ? all.Where(a => a.IsSure).Max(a => a.Number.Low) : all.Select(a => a.Number.Low).Append(0).Aggregate(Bounds.Least);
        long? high = all.Select(a => a.Number.High).Concat(isAnySure ? [] : [0L]).Aggregate((long?)long.MinValue, Bounds.Greatest);
        if (many.More != 0)
        {
            (low, high) = (isAnySure ? low : null, null);
        }

        Value.Number found = Value.Between(low, high, why);
        return isLargest ? found : Bounds.Negative(found);
    }

    private Value.Number Different(Value.Many many, ImmutableArray<(Member Member, Value Of)> values, Sort sort)
    {
        var sure = new HashSet<Value>();
        var possible = new HashSet<Value>();
        long unknown = 0;
        bool isSomeSure = false;
        foreach ((Member member, Value of) in values.Where(v => v.Of is not Value.Nothing))
        {
            if (!of.IsSettled)
            {
                unknown++;
                isSomeSure |= member.IsCertain && of is Value.Number { MayBeNothing: false } or Value.Many;
                continue;
            }

            possible.Add(of);
            if (member.IsCertain)
            {
                sure.Add(of);
            }
        }

        long low = sure.Count == 0 && isSomeSure ? 1 : sure.Count;
        long? high = possible.Count + unknown + many.More;
        if (sort is { Kind: SortKind.Value, Of: Rostrum.Sheets.Model.Attribute attribute })
        {
            high = Math.Min(high ?? long.MaxValue, _index.Facts(attribute).Values.Length);
        }

        return Value.Between(low, high, values.Aggregate(many.Blame, (sum, v) => sum + v.Member.Blame + v.Of.WhyUnknown));
    }

    private static Value.Many Chosen(Value.Many many, ImmutableArray<(Member Member, Value Of)> values, bool isMost)
    {
        var numbers = values.Select(v => (v.Member, Number: AsNumber(v.Of) is { } n ? isMost ? n : Bounds.Negative(n) : null)).Where(v => v.Number is not null).ToArray();
        Blame why = values.Aggregate(many.Blame, (sum, v) => sum + v.Member.Blame + v.Of.WhyUnknown);
        long? bar = numbers.Where(n => n.Member.IsCertain && !n.Number!.MayBeNothing && n.Number.Low is not null).Max(n => n.Number!.Low);
        long? ceiling = numbers.Select(n => n.Number!.High).Aggregate((long?)long.MinValue, Bounds.Greatest);
        var kept = ImmutableArray.CreateBuilder<Member>();
        foreach ((Member member, Value.Number? number) in numbers)
        {
            bool isSure = member.IsCertain && !number!.MayBeNothing && number.Low >= ceiling && many.More == 0;
            if (isSure || bar is null || number!.High is null || number.High >= bar)
            {
                kept.Add(new Member(member.Value, isSure ? Kleene.Yes : Kleene.Unknown, isSure ? Blame.None : why));
            }
        }

        return new Value.Many(kept.ToImmutable(), many.More, false, many.Blame);
    }

    private static Value Ranked(Value.Many many, ImmutableArray<(Member Member, Value Of)> values)
    {
        if (!many.IsCertain || values.Any(v => !v.Of.IsSettled))
        {
            return Value.Open(values.Aggregate(many.WhyUnknown, (sum, v) => sum + v.Of.WhyUnknown), isList: true);
        }

        return Value.Certain(values.Where(v => AsNumber(v.Of) is not null).OrderByDescending(v => AsNumber(v.Of)!.Low).Select(v => v.Member.Value), isList: true);
    }

    private static Value.Many Doubted(Value.Many many, Blame why) =>
        many with { Members = [.. many.Members.Select(m => new Member(m.Value, Kleene.Unknown, m.Blame + why))] };

    /// <summary>The elements that are in at least one of several sets; each once.</summary>
    private static Value.Many Union(IEnumerable<Value.Many> sets)
    {
        var members = new List<Member>();
        var at = new Dictionary<Value, int>();
        long? more = 0;
        Blame why = Blame.None;
        foreach (Value.Many set in sets)
        {
            more += set.More;
            why += set.Blame;
            foreach (Member member in set.Members)
            {
                if (!at.TryGetValue(member.Value, out int known))
                {
                    at[member.Value] = members.Count;
                    members.Add(member);
                }
                else if (member.IsCertain || !members[known].IsCertain)
                {
                    members[known] = member.IsCertain ? member : member with { Blame = member.Blame + members[known].Blame };
                }
            }
        }

        return new Value.Many([.. members], more, false, why);
    }

    private static Value.Many Except(Value.Many from, Value.Many what) => Sifted(from, v => Not(Belongs(v, what)));
}
