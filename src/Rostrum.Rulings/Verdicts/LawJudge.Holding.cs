using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Verdicts;

/// <content>What spaces and places may hold at the most.</content>
internal sealed partial class LawJudge
{
    /// <summary>Whether no space and no place holds more afterwards than it may: yes, no, or unknown with its causes. What was too much before is not told of the action.</summary>
    /// <remarks>Steps that hang on chance or on what is decided later are as in play: asked is what lies there when they begin.</remarks>
    public Value.Truth HoldsEnough(Position position)
    {
        if (!position.Sheet.Boards.Any(b => b.MostInSpace is not null) && !position.Sheet.Places.Any(p => p.Most is not null))
        {
            return Value.Yes;
        }

        (StepCarrier carrier, Position after, Blame why) = Carried(position);
        if (!why.Blanks.IsEmpty)
        {
            return Value.Maybe(why);
        }

        return OverfullIn(position, after) is not null || OverfullPlaceIn(position, after) is not null
            ? Value.No
            : Unseen(position, after) is { IsAny: true } blame ? Value.Maybe(blame.Map(carrier.Before)) : Value.Yes;
    }

    /// <summary>The first space that holds more afterwards than its board allows and than before; null where there is none or nobody can say.</summary>
    public (BoardFacts Board, Value.SpaceAt Space, int Things)? Overfull(Position position) => OverfullIn(position, Carried(position).After);

    /// <summary>The first heap, hand, bag or deck that holds more than it may after the action and took something by it; null where there is none.</summary>
    public (PlaceFacts Place, int Seat, int Things)? OverfullPlace(Position position) => OverfullPlaceIn(position, Carried(position).After);

    private (StepCarrier Carrier, Position After, Blame Why) Carried(Position position)
    {
        var carrier = new StepCarrier(position, Me, setting, touched, proposal.Frame(On(position), 0));
        (Position? after, Blame why) = carrier.Carry(proposal.Action.Steps);
        return (carrier, after ?? carrier.Reached, why);
    }

    private static (BoardFacts Board, Value.SpaceAt Space, int Things)? OverfullIn(Position position, Position after)
    {
        var full = from spot in Spaces(after)
                   let things = after.At(spot.Board, spot.Seat, spot.Space).Things.Length
                   where things > position.Sheet.Boards[spot.Board].MostInSpace && things > position.At(spot.Board, spot.Seat, spot.Space).Things.Length
                   select (position.Sheet.Boards[spot.Board], new Value.SpaceAt(spot.Board, spot.Seat, spot.Space), things);
        return full.Cast<(BoardFacts, Value.SpaceAt, int)?>().FirstOrDefault();
    }

    private static (PlaceFacts Place, int Seat, int Things)? OverfullPlaceIn(Position position, Position after)
    {
        var full = from spot in Layers(after)
                   let things = after.Places[spot.Place][spot.Seat].Sum(s => s.Things.Length)
                   where things > position.Sheet.Places[spot.Place].Most && things > position.Places[spot.Place][spot.Seat].Sum(s => s.Things.Length)
                   select (position.Sheet.Places[spot.Place], spot.Seat, things);
        return full.Cast<(PlaceFacts, int, int)?>().FirstOrDefault();
    }

    // Something was added where nobody says what lies there already.
    private static Blame Unseen(Position position, Position after)
    {
        IEnumerable<Spot> spaces = from spot in Spaces(after)
                                   where position.Sheet.Boards[spot.Board].MostInSpace is not null
                                   select new Spot(SpotKind.Space, spot.Board, spot.Seat, spot.Space);
        IEnumerable<Spot> places = from spot in Layers(after)
                                   where position.Sheet.Places[spot.Place].Most is not null
                                   from part in Enumerable.Range(0, after.Places[spot.Place][spot.Seat].Length)
                                   select new Spot(SpotKind.Slot, spot.Place, spot.Seat, part);
        return spaces.Concat(places).Where(s => s.In(after) is { IsGiven: false, Things.Length: > 0 } open && open.Things.Length > s.In(position).Things.Length)
            .Aggregate(Blame.None, (sum, s) => sum + Blame.Of(new Blank(s, 0, Aspect.Content)));
    }

    private static IEnumerable<(int Board, int Seat, int Space)> Spaces(Position position) =>
        from board in Enumerable.Range(0, position.Boards.Length)
        where position.Sheet.Boards[board].MostInSpace is not null
        from seat in Enumerable.Range(0, position.Boards[board].Length)
        from space in Enumerable.Range(0, position.Boards[board][seat].Length)
        select (board, seat, space);

    private static IEnumerable<(int Place, int Seat)> Layers(Position position) =>
        from place in Enumerable.Range(0, position.Places.Length)
        where position.Sheet.Places[place].Most is not null
        from seat in Enumerable.Range(0, position.Places[place].Length)
        select (place, seat);
}
