using System.Globalization;
using Rostrum.Play.Course;
using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Telling;

/// <summary>Names of what stands in states: spaces, things, players, values.</summary>
internal sealed class PlayNames(CoursePlan plan)
{
    private readonly TableLayout _layout = plan.Layout;
    private readonly SeatWords _seats = new(plan.Sheet);

    /// <summary>A seat by its name.</summary>
    public string Seat(int seat) => _seats.NameOf(seat);

    /// <summary>The shortest name of a value that tells it from the other candidates.</summary>
    /// <param name="state">Where it is.</param>
    /// <param name="value">The value, as nodes give it.</param>
    /// <param name="sort">What it is.</param>
    /// <param name="among">The candidates.</param>
    public string Of(TableState state, int value, SortKind sort, int[] among)
    {
        if (value == Node.Nothing)
        {
            return "nothing";
        }

        return sort switch
        {
            SortKind.Thing => Thing(state, value, among),
            SortKind.Space => Space(value, among),
            SortKind.Slot => Slot(value),
            SortKind.Player => Seat(value),
            SortKind.Truth => value != 0 ? "yes" : "no",
            SortKind.Value => _layout.Values.All[value].Name,
            SortKind.Place => _layout.Holders[value].Place.Name,
            SortKind.Direction => plan.DirectionName(value),
            SortKind.Line => plan.LineNames[value],
            _ => value.ToString(CultureInfo.InvariantCulture),
        };
    }

    /// <summary>What a thing looks like, in words.</summary>
    public string Look(TableState state, int thing)
    {
        ThingClass of = _layout.Class(thing);
        return of.Card is { } card ? card.Name : ThingWords.Look(of.Kind, PlayThings.Of(state, thing), tellsGaps: false);
    }

    private string Thing(TableState state, int thing, int[] among)
    {
        string look = Look(state, thing);
        bool isClear = among.All(t => t == thing || Look(state, t) != look || state.Spot(t) == state.Spot(thing));
        return isClear ? look : $"{look} on {Spot(state.Spot(thing))}";
    }

    /// <summary>A space, slot or place by its name.</summary>
    public string Spot(int spot)
    {
        Holder holder = _layout.SpotHolder[spot];
        return holder.Form switch
        {
            PlaceForm.Board => Space(spot, []),
            PlaceForm.Row => Slot(spot),
            _ => holder.Seat >= 0 ? $"{Seat(holder.Seat)}'s {holder.Place.Name}" : $"the {holder.Place.Name}",
        };
    }

    // Candidates on several boards, or on boards of several players, are told apart by their board.
    private string Space(int spot, int[] among)
    {
        Holder holder = _layout.SpotHolder[spot];
        string name = holder.Board!.Spaces[spot - holder.First].Name.Name;
        return among.All(s => holder.Holds(s)) ? name : holder.Seat >= 0 ? $"{name} of {Seat(holder.Seat)}'s {holder.Place.Name}" : $"{name} of {holder.Place.Name}";
    }

    private string Slot(int spot)
    {
        Holder holder = _layout.SpotHolder[spot];
        string noun = holder.Facts?.SlotNoun?.Name ?? holder.Place.Name;
        return $"{noun} {(spot - holder.First + 1).ToString(CultureInfo.InvariantCulture)}";
    }
}
