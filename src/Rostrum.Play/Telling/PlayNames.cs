using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Play.Course;
using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Play.Positions;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

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
            SortKind.Place => Place(_layout.Holders[value], among),
            SortKind.Direction => plan.DirectionName(value),
            SortKind.Line => plan.LineNames[value],
            SortKind.Fit => Prose.And(Fit(value).Select(s => Space(s, []))),
            _ => value.ToString(CultureInfo.InvariantCulture),
        };
    }

    /// <summary>Every name by which a value may be called, the longest included; some may be the names of others too.</summary>
    public IEnumerable<string> Every(TableState state, int value, SortKind sort)
    {
        if (value == Node.Nothing)
        {
            return ["nothing"];
        }

        return sort switch
        {
            SortKind.Thing => EveryOfThing(state, value),
            SortKind.Space => OnBoard(value) is var (name, board) ? [name, $"{name} of {board}"] : [],
            SortKind.Slot => [Slot(value), NumberOf(value)],
            SortKind.Player => [Seat(value), string.Create(CultureInfo.InvariantCulture, $"seat {value + 1}")],
            SortKind.Line => [plan.LineNames[value], plan.LineNames[value].Split(' ')[^1]],
            SortKind.Place => [_layout.Holders[value].Place.Name, Place(_layout.Holders[value])],
            _ => [Of(state, value, sort, [])],
        };
    }

    /// <summary>The spaces of a fit of a drawing, column by column from the left, each from below.</summary>
    public IEnumerable<int> Fit(int fit) => InOrder(plan.FitSpaces(fit));

    private IEnumerable<int> InOrder(IEnumerable<int> spaces) => spaces.OrderBy(s => At(s).Column).ThenBy(s => At(s).Row);

    private BoardSpace At(int spot) => _layout.SpotHolder[spot] is { Board: { } board } holder ? board.Spaces[spot - holder.First] : throw new ArgumentOutOfRangeException(nameof(spot));

    private IEnumerable<string> EveryOfThing(TableState state, int thing)
    {
        string look = Look(state, thing);
        string[] owned = _layout.Class(thing).Owner is >= 0 and var owner ? [OwnedLook(look, owner)] : [];
        string[] looks = [look, .. owned, .. Numerals(state, thing)];
        IEnumerable<string> spots = state.SpotsOf(thing).SelectMany(s => Every(state, s, KindOfSpot(s)).Prepend(Spot(s))).Prepend(Lying(state, thing));
        return looks.Concat(looks.SelectMany(l => spots.Distinct().Select(s => $"{l} on {s}")));
    }

    private SortKind KindOfSpot(int spot) => _layout.SpotHolder[spot].Form switch
    {
        PlaceForm.Board => SortKind.Space,
        PlaceForm.Row => SortKind.Slot,
        _ => SortKind.Any,
    };

    // A die is called by what it shows: '5', '5 salt die' or 'salt die 5'.
    private IEnumerable<string> Numerals(TableState state, int thing)
    {
        ThingClass of = _layout.Class(thing);
        ImmutableArray<int?> values = StateWriter.ThingOf(state, thing).Values;
        return of.Card is not null ? [] : of.Kind.Attributes.Where(a => !a.HoldsPlayer && values[a.Attribute.Index] is not null)
            .Select(a => a.Values[values[a.Attribute.Index]!.Value]).Where(v => v.Number is not null)
            .SelectMany(v => (IEnumerable<string>)[v.Name, $"{v.Name} {of.Kind.Kind.Name}", $"{of.Kind.Kind.Name} {v.Name}"]);
    }

    /// <summary>What a thing looks like, in words.</summary>
    public string Look(TableState state, int thing)
    {
        ThingClass of = _layout.Class(thing);
        return of.Card is { } card ? card.Name : ThingWords.Look(of.Kind, StateWriter.ThingOf(state, thing), tellsGaps: false);
    }

    // By its look; where that is not clear, by its owner too if it lies where another's of that look lies, and by its spot if they lie in several.
    private string Thing(TableState state, int thing, int[] among)
    {
        string look = Look(state, thing);
        int owner = _layout.Class(thing).Owner;
        int[] alike = [.. among.Concat(Beside(state, thing)).Where(t => t != thing && Look(state, t) == look)];
        bool isOwned = alike.Any(t => state.Spot(t) == state.Spot(thing) && _layout.Class(t).Owner != owner);
        string told = isOwned ? OwnedLook(look, owner) : look;
        return alike.All(t => state.Spot(t) == state.Spot(thing) || (isOwned && _layout.Class(t).Owner != owner)) ? told : $"{told} on {Lying(state, thing)}";
    }

    private string OwnedLook(string look, int owner) => $"{look} of {Seat(owner)}";

    // All its spaces, column by column from the left, each from below: two pieces may have one in common.
    private string Lying(TableState state, int thing) =>
        _layout.SecondFoot[thing] >= 0 && _layout.SpotHolder[state.Spot(thing)].Board is not null ? Prose.And(InOrder(state.SpotsOf(thing)).Select(Spot)) : Spot(state.Spot(thing));

    // What lies on the same board or row is told apart too: those who hear the phrase see it all, not only what is legal.
    private static IEnumerable<int> Beside(TableState state, int thing)
    {
        Holder holder = state.Layout.SpotHolder[state.Spot(thing)];
        for (int spot = holder.First; spot < holder.First + holder.Length; spot++)
        {
            for (int there = state.Bottom(spot); there != TableState.None; there = state.Above(there))
            {
                yield return state.Layout.ThingOfFoot[there];
            }
        }
    }

    /// <summary>A space, slot or place by its name.</summary>
    public string Spot(int spot)
    {
        Holder holder = _layout.SpotHolder[spot];
        return holder.Form switch
        {
            PlaceForm.Board => Space(spot, []),
            PlaceForm.Row => Slot(spot),
            _ => Place(holder),
        };
    }

    private string Place(Holder holder, int[] among) => among.Any(h => h != holder.Number && ReferenceEquals(_layout.Holders[h].Place, holder.Place)) ? Place(holder) : holder.Place.Name;

    private string Place(Holder holder) => holder.Seat >= 0 ? $"{Seat(holder.Seat)}'s {holder.Place.Name}" : $"the {holder.Place.Name}";

    // Candidates on several boards, or on boards of several players, are told apart by their board.
    private string Space(int spot, int[] among)
    {
        (string name, string board) = OnBoard(spot);
        return among.All(_layout.SpotHolder[spot].Holds) ? name : $"{name} of {board}";
    }

    private (string Name, string Board) OnBoard(int spot)
    {
        Holder holder = _layout.SpotHolder[spot];
        return (At(spot).Name.Name, holder.Seat >= 0 ? $"{Seat(holder.Seat)}'s {holder.Place.Name}" : holder.Place.Name);
    }

    private string Slot(int spot)
    {
        Holder holder = _layout.SpotHolder[spot];
        return $"{holder.Facts?.SlotNoun?.Name ?? holder.Place.Name} {NumberOf(spot)}";
    }

    private string NumberOf(int slot) => (slot - _layout.SpotHolder[slot].First + 1).ToString(CultureInfo.InvariantCulture);
}
