using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Verdicts;

/// <content>Players who change sides.</content>
internal sealed partial class StepCarrier
{
    // Each goes on with all that the other had; parts of boards that belong to seats stay with the seats, so that nobody can say what is left there.
    private bool SwapPlayers(int one, int two)
    {
        if (_position.Sheet.Boards.Any(b => !b.Regions.IsEmpty))
        {
            return false;
        }

        int Other(int seat) => seat == one ? two : seat == two ? one : seat;
        int? OtherOf(int? seat) => seat is { } known ? Other(known) : null;
        Sheet sheet = _position.Sheet;
        Thing Changed(Thing thing) => thing with
        {
            Owner = OtherOf(thing.Owner),
            Values = thing.Kind is { } kind ? [.. thing.Values.Select((v, i) => sheet.KindOf(kind).Attributes[i].HoldsPlayer ? OtherOf(v) : v)] : thing.Values,
        };
        ImmutableArray<ImmutableArray<Stack>> Layers(ImmutableArray<ImmutableArray<Stack>> seats) =>
            [.. seats.Select((_, s) => seats[seats.Length == 1 ? 0 : Other(s)].Select(stack => stack with { Things = [.. stack.Things.Select(Changed)] }).ToImmutableArray())];
        Spot Gone(Spot spot) => spot.Kind switch
        {
            SpotKind.Space when sheet.Boards[spot.Place].Place.EachPlayer => spot with { Seat = Other(spot.Seat) },
            SpotKind.Slot when sheet.Places[spot.Place].Place.EachPlayer => spot with { Seat = Other(spot.Seat) },
            _ => spot,
        };
        _position = _position with
        {
            Boards = [.. _position.Boards.Select(Layers)],
            Places = [.. _position.Places.Select(Layers)],
            Marks = [.. sheet.Marks.Select(m => Exchanged(m, _position.Marks[m.Index], Other))],
        };
        _back.Push((spot, index) => (Gone(spot), index));
        Follow(t => t with { Spot = Gone(t.Spot), Thing = Changed(t.Thing) });
        return true;
    }

    private ImmutableArray<long?> Exchanged(Mark mark, ImmutableArray<long?> held, Func<int, int> other) =>
        [.. held.Select((_, at) =>
        {
            (int seat, int space) = MarkLayout.At(_position.Sheet, mark, at);
            int from = !MarkLayout.IsOfSeat(mark) ? at : mark.EachSpaceOf is null ? other(at) : MarkLayout.Of(_position.Sheet, mark, other(seat), space);
            return mark.Sort.Kind == SortKind.Player && held[from] is >= 0 and var player ? other((int)player) : held[from];
        })];
}
