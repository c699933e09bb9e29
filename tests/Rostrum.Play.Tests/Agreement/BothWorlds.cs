using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Play.Positions;
using Rostrum.Rulings.Evaluation;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Tests.Agreement;

/// <summary>Turns what a node gives into what the reference evaluator gives, on one table.</summary>
internal sealed class BothWorlds(TableLayout layout, Run run, FormulaCompiler compiler)
{
    private readonly StateValues _values = new(layout, compiler.Boards, compiler.Lines, compiler.FitsKnown);

    /// <summary>The value of the reference for the number of a node.</summary>
    public Value ToValue(int number, Sort sort) =>
        sort.IsMany ? ToMany(run.List(number).Span.ToArray(), sort) : _values.ToValue(run.State, number, sort);

    /// <summary>The set or list of the reference for the elements of a node.</summary>
    public Value ToMany(int[] elements, Sort sort) => Value.Certain(elements.Select(e => ToValue(e, sort.Element!)), sort.Kind == SortKind.List);

    /// <summary>True where both worlds say the same; a set is the same in any order, a card that is named is any copy of it.</summary>
    public static bool AreSame(Value reference, Value node)
    {
        return (reference, node) switch
        {
            (Value.Many a, Value.Many b) => a.Members.Length == b.Members.Length && (a.IsList && b.IsList
                ? a.Members.Zip(b.Members).All(p => AreSame(p.First.Value, p.Second.Value))
                : Matched([.. a.Members.Select(m => m.Value)], [.. b.Members.Select(m => m.Value)])),
            (Value.Nothing, Value.Truth truth) => truth.Is == Kleene.No, // A truth about nothing is asked as no.
            (Value.CardIs card, Value.ThingAt thing) => ReferenceEquals(card.Card, thing.Thing.Card),
            (Value.Number number, Value.AttributeIs { Which.Number: { } numeral }) => number.Low == numeral,
            (Value.ThingAt { Spot.Kind: SpotKind.Nowhere } a, Value.ThingAt b) => ReferenceEquals(a.Thing.Card, b.Thing.Card),
            _ => reference.Equals(node),
        };
    }

    private static bool Matched(List<Value> one, List<Value> other) => one.All(v => other.FindIndex(o => AreSame(v, o)) is >= 0 and var at && Drop(other, at));

    private static bool Drop(List<Value> from, int at)
    {
        from.RemoveAt(at);
        return true;
    }
}
