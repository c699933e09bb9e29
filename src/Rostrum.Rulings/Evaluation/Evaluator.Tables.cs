using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>Tables, and the elements of lists.</content>
internal sealed partial class Evaluator
{
    private Value LookUp(Term.LookUp term, Value[] frame)
    {
        Value key = Evaluate(term.Key, frame);
        TableFacts facts = Sheet.Tables[term.Table.Index];
        if (key is Value.Nothing)
        {
            return key;
        }

        TableVersion version = facts.Versions[facts.Choice is null ? 0 : Pick(facts.Choice)];
        if (key is Value.AttributeIs value && version.Rows.FirstOrDefault(r => ReferenceEquals(r.Key, value.Which)) is { } row)
        {
            return Entry(row.Entry);
        }

        return AsNumber(key) is not { } number ? Absent(key) : number.IsKnown ? ByNumber(version, number.Low!.Value) : ByBounds(version, number);
    }

    private Value Entry(Term entry) => Evaluate(entry, Frame(8));

    private Value ByNumber(TableVersion version, long number)
    {
        if (version.Rows.FirstOrDefault(r => r.Low <= number && (r.High is null || r.High >= number)) is { } row)
        {
            return Entry(row.Entry);
        }

        bool isBeyond = version.Rows.All(r => r.Low is null || (r.High ?? r.Low) < number);
        return isBeyond ? Beyond(version) : Value.None;
    }

    private Value Beyond(TableVersion version) => version.Beyond switch
    {
        TableBeyond.Last when !version.Rows.IsEmpty => Entry(version.Rows[^1].Entry),
        TableBeyond.Given when version.BeyondTerm is not null => Entry(version.BeyondTerm),
        _ => Value.None,
    };

    // Every key that the number may be: up to one above the highest row, which stands for all beyond.
    private Value ByBounds(TableVersion version, Value.Number number)
    {
        long top = version.Rows.Select(r => (r.High ?? r.Low ?? 0) + 1).DefaultIfEmpty(0).Max();
        long bottom = version.Rows.Select(r => (r.Low ?? 0) - 1).DefaultIfEmpty(0).Min();
        long from = Math.Clamp(number.Low ?? bottom, bottom, top);
        long to = Math.Clamp(number.High ?? top, bottom, top);
        if (to - from > 1_000)
        {
            return new Value.Unknown(number.Blame);
        }

        Value sum = ByNumber(version, from);
        for (long n = from + 1; n <= to; n++)
        {
            sum = Either(sum, ByNumber(version, n), number.Blame);
        }

        return number.MayBeNothing ? Either(sum, Value.None, number.Blame) : sum;
    }

    private Value Element(Term.Apply apply, Value[] frame)
    {
        Value first = Evaluate(apply.Argument(0), frame);
        return apply.Operation.Id switch
        {
            Op.First => At(AsMany(first), 0, first),
            Op.Last => LastOf(AsMany(first)),
            Op.Item => Item(first, Many(apply.Argument(1), frame)),
            _ => OrderOf(first),
        };
    }

    private static Value Item(Value number, Value.Many list) =>
        AsNumber(number) is not { } n ? Value.None
        : n.IsKnown ? n.Low is >= 1 and <= int.MaxValue ? At(list, (int)n.Low.Value - 1, list) : Value.None
        : new Value.Unknown(n.Blame + list.WhyUnknown);

    private static Value At(Value.Many list, int index, Value whole)
    {
        for (int i = 0; i < list.Members.Length && i <= index; i++)
        {
            if (!list.Members[i].IsCertain)
            {
                return new Value.Unknown(list.WhyUnknown);
            }
        }

        if (index < list.Members.Length && (list.More == 0 || index < 1))
        {
            return list.More == 0 ? list.Members[index].Value : new Value.Unknown(whole.WhyUnknown);
        }

        return list.More == 0 ? Value.None : new Value.Unknown(list.WhyUnknown);
    }

    private static Value LastOf(Value.Many list)
    {
        if (list.More != 0 || (!list.Members.IsEmpty && !list.Members[^1].IsCertain))
        {
            return new Value.Unknown(list.WhyUnknown);
        }

        return list.Members.IsEmpty ? Value.None : list.Members[^1].Value;
    }

    private static Value OrderOf(Value value) => value switch
    {
        Value.LineAt line => Value.Of(line.Index + 1),
        Value.SlotAt slot => Value.Of(slot.Index + 1),
        Value.PlayerAt player => Value.Of(player.Seat + 1),
        Value.SpaceAt space => Value.Of(space.Index + 1),
        Value.AttributeIs attribute => Value.Of(attribute.Which.Index + 1),
        _ => Absent(value),
    };
}
