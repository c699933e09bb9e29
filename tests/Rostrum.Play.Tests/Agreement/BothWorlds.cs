using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Boards;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Tests.Agreement;

/// <summary>Turns what a node gives into what the reference evaluator gives, on one table.</summary>
internal sealed class BothWorlds(TableLayout layout, Position position, Run run, FormulaCompiler compiler)
{
    private Sheet Sheet => layout.Sheet;

    /// <summary>The value of the reference for the number of a node.</summary>
    public Value ToValue(int number, Sort sort)
    {
        if (sort.IsMany)
        {
            return ToMany(run.List(number).Span.ToArray(), sort);
        }

        return number == Node.Nothing && sort.Kind != SortKind.Truth ? Value.None : sort.Kind switch
        {
            SortKind.Number => Value.Of(number),
            SortKind.Truth => Value.Of(number != Node.Nothing && number != 0),
            SortKind.Space or SortKind.Slot => Spot(number),
            SortKind.Place => Place(layout.Holders[number]),
            SortKind.Thing => Thing(number),
            SortKind.Player => new Value.PlayerAt(number),
            SortKind.Value => new Value.AttributeIs(layout.Values.All[number]),
            SortKind.Line => Line(number),
            SortKind.Fit => Fit(number),
            _ => throw new NotSupportedException(sort.InWords),
        };
    }

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

    private Value Spot(int spot)
    {
        Holder holder = layout.SpotHolder[spot];
        int seat = Math.Max(0, holder.Seat);
        return holder.Board is { } board ? new Value.SpaceAt(Sheet.Boards.IndexOf(board), seat, spot - holder.First)
            : holder.Facts is { Slots: > 0 } facts ? new Value.SlotAt(Sheet.Places.IndexOf(facts), seat, spot - holder.First)
            : Place(holder);
    }

    private static Value.PlaceAt Place(Holder holder) => new(holder.Place, Math.Max(0, holder.Seat));

    private Value Thing(int thing)
    {
        int spot = run.State.Spot(thing);
        Holder holder = layout.SpotHolder[spot];
        int index = 0;
        for (int below = run.State.Below(thing); below != TableState.None; below = run.State.Below(below))
        {
            index++;
        }

        int seat = Math.Max(0, holder.Seat);
        var at = holder.Board is { } board ? new Spot(SpotKind.Space, Sheet.Boards.IndexOf(board), seat, spot - holder.First)
            : holder.Facts is { } facts ? new Spot(SpotKind.Slot, Sheet.Places.IndexOf(facts), seat, spot - holder.First)
            : Rulings.Evaluation.Spot.Nowhere;
        Thing told = at.Kind == SpotKind.Nowhere ? Play.Positions.StateWriter.ThingOf(run.State, thing) : at.In(position).Things[index];
        return new Value.ThingAt(told, at, index);
    }

    private Value.LineAt Line(int line)
    {
        (LineFamily family, Holder holder, int index) = compiler.Lines.Tell(line);
        return new Value.LineAt(Sheet.Boards.IndexOf(holder.Board!), Math.Max(0, holder.Seat), family, index);
    }

    private Value.FitAt Fit(int fit)
    {
        (Drawing drawing, Holder holder, DrawingPlacement placement) = compiler.FitsKnown.Tell(fit);
        return new Value.FitAt(Sheet.Boards.IndexOf(holder.Board!), Math.Max(0, holder.Seat), placement, drawing);
    }
}
