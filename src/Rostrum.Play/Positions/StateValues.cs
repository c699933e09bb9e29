using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Boards;
using Rostrum.Rulings.Evaluation;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Positions;

/// <summary>Turns the numbers for which nodes stand into the values of rulings, and back.</summary>
/// <param name="layout">The numbering of the table.</param>
/// <param name="boards">The numbering of directions.</param>
/// <param name="lines">The numbering of lines.</param>
/// <param name="fits">The numbering of fits.</param>
internal sealed class StateValues(TableLayout layout, BoardTables boards, LineTable lines, FitTable fits)
{
    private Sheet Sheet => layout.Sheet;

    /// <summary>The value of a number in a state.</summary>
    public Value ToValue(TableState state, int number, Sort sort) => number == Node.Nothing && sort.Kind != SortKind.Truth ? Value.None : sort.Kind switch
    {
        SortKind.Number => Value.Of(number),
        SortKind.Truth => Value.Of(number != Node.Nothing && number != 0),
        SortKind.Space or SortKind.Slot => Spot(number),
        SortKind.Place => Place(layout.Holders[number]),
        SortKind.Thing => Thing(state, number),
        SortKind.Player => new Value.PlayerAt(number),
        SortKind.Value => new Value.AttributeIs(layout.Values.All[number]),
        SortKind.Line => Line(number),
        SortKind.Fit => Fit(number),
        SortKind.Direction => new Value.DirectionIs(boards.Numbered(number)),
        _ => throw new NotSupportedException(sort.InWords),
    };

    /// <summary>The set or list of the numbers of its elements.</summary>
    public Value ToMany(TableState state, IEnumerable<int> elements, Sort sort) =>
        Value.Certain(elements.Select(e => ToValue(state, e, sort.Element!)), sort.Kind == SortKind.List);

    /// <summary>The number of a value in a state; null where it stands for nothing that the state has.</summary>
    public int? ToNumber(TableState state, Value value) => value switch
    {
        Value.Nothing => Node.Nothing,
        Value.Number { IsKnown: true, Low: >= int.MinValue and <= int.MaxValue and var number } => (int)number,
        Value.Truth { Is: not Kleene.Unknown and var holds } => holds == Kleene.Yes ? 1 : 0,
        Value.SpaceAt space => layout.HolderOf(Sheet.Boards[space.Board].Place, space.Seat).First + space.Index,
        Value.SlotAt slot => layout.HolderOf(Sheet.Places[slot.Place].Place, slot.Seat).First + slot.Index,
        Value.PlaceAt place => layout.HolderOf(place.Place, place.Seat).Number,
        Value.ThingAt thing => Thing(state, thing),
        Value.PlayerAt player => player.Seat,
        Value.AttributeIs attribute => layout.Values.Of(attribute.Which),
        Value.LineAt line => lines.OfHolder(line.Family, line.Index)[layout.HolderOf(Sheet.Boards[line.Board].Place, line.Seat).Number],
        Value.DirectionIs direction => boards.Number(direction.Direction),
        _ => null,
    };

    private Value Spot(int spot)
    {
        Holder holder = layout.SpotHolder[spot];
        int seat = Math.Max(0, holder.Seat);
        return holder.Board is { } board ? new Value.SpaceAt(Sheet.Boards.IndexOf(board), seat, spot - holder.First)
            : holder.Facts is { Slots: > 0 } facts ? new Value.SlotAt(Sheet.Places.IndexOf(facts), seat, spot - holder.First)
            : Place(holder);
    }

    private static Value.PlaceAt Place(Holder holder) => new(holder.Place, Math.Max(0, holder.Seat));

    private Value Thing(TableState state, int thing)
    {
        int spot = state.Spot(thing);
        Holder holder = layout.SpotHolder[spot];
        int index = 0;
        for (int below = state.Below(thing); below != TableState.None; below = state.Below(below))
        {
            index++;
        }

        int seat = Math.Max(0, holder.Seat);
        var at = holder.Board is { } board ? new Spot(SpotKind.Space, Sheet.Boards.IndexOf(board), seat, spot - holder.First)
            : holder.Facts is { } facts ? new Spot(SpotKind.Slot, Sheet.Places.IndexOf(facts), seat, spot - holder.First)
            : Rulings.Evaluation.Spot.Nowhere;
        return new Value.ThingAt(StateWriter.ThingOf(state, thing), at, index);
    }

    private int? Thing(TableState state, Value.ThingAt at)
    {
        Place? place = at.Spot.Kind switch { SpotKind.Space => Sheet.Boards[at.Spot.Place].Place, SpotKind.Slot => Sheet.Places[at.Spot.Place].Place, _ => null };
        if (place is null)
        {
            return null;
        }

        int thing = state.Bottom(layout.HolderOf(place, at.Spot.Seat).First + at.Spot.Part);
        for (int index = 0; index < at.Index && thing != TableState.None; index++)
        {
            thing = state.Above(thing);
        }

        return thing == TableState.None ? null : thing;
    }

    private Value.LineAt Line(int line)
    {
        (LineFamily family, Holder holder, int index) = lines.Tell(line);
        return new Value.LineAt(Sheet.Boards.IndexOf(holder.Board!), Math.Max(0, holder.Seat), family, index);
    }

    private Value.FitAt Fit(int fit)
    {
        (Drawing drawing, Holder holder, DrawingPlacement placement) = fits.Tell(fit);
        return new Value.FitAt(Sheet.Boards.IndexOf(holder.Board!), Math.Max(0, holder.Seat), placement, drawing);
    }
}
