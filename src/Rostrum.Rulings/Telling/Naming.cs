using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Telling;

/// <summary>Says spaces, things, lines and missing facts in the words of the sheet, to somebody at the table.</summary>
/// <param name="sheet">Gives the words.</param>
/// <param name="me">The 0-based seat that is spoken to as "you".</param>
internal sealed partial class Naming(Sheet sheet, int me)
{
    private readonly PositionWords _words = new(sheet, me);
    private readonly SeatWords _seats = new(sheet);

    /// <summary>A seat: its name, else its number counted from 1.</summary>
    public string Seat(int seat) => _seats.NameOf(seat);

    /// <summary>A space by its name; with its board where that is not clear.</summary>
    public string Space(int board, int seat, int index) => _words.Space(board, seat, index);

    /// <summary>A value in words.</summary>
    public string Of(Value value) => value switch
    {
        Value.Nothing => "nothing",
        Value.Number number => Number(number),
        Value.Truth truth => truth.Is switch { Kleene.Yes => "yes", Kleene.No => "no", _ => "unknown" },
        Value.SpaceAt space => Space(space.Board, space.Seat, space.Index),
        Value.SlotAt slot => Slot(slot.Place, slot.Index),
        Value.PlaceAt place => Place(place.Place, place.Seat),
        Value.ThingAt thing => ThingWithPlace(thing),
        Value.CardIs card => card.Card.Name,
        Value.PlayerAt player => player.Seat == me ? "you" : Seat(player.Seat),
        Value.DirectionIs direction => direction.Direction.Name,
        Value.LineAt line => Line(line),
        Value.FitAt fit => Prose.And(SpacesOf(fit)),
        Value.AttributeIs attribute => attribute.Which.Name,
        Value.LookIs look => look.Look.Words,
        Value.TextIs text => text.Words,
        Value.Many many => many.Members.IsEmpty ? "none" : Prose.And(InOrder(many).Select(Of)),
        Value.DrawingIs => "the drawing",
        _ => "unknown",
    };

    /// <summary>The names of the spaces that a value lies on; empty for one that lies on none.</summary>
    public ImmutableArray<string> SpacesOf(Value value) => value switch
    {
        Value.SpaceAt space => [Space(space.Board, space.Seat, space.Index)],
        Value.ThingAt { Spot: { Kind: SpotKind.Space } spot, Thing.Covers: var covers } =>
            [.. covers.IsEmpty ? [Space(spot.Place, spot.Seat, spot.Part)] : covers.Select(c => Space(spot.Place, spot.Seat, c))],
        Value.FitAt fit => SpacesOf(Seen(fit)),
        Value.Many many => [.. InOrder(many).SelectMany(m => SpacesOf(m)).Distinct()],
        _ => [],
    };

    // The spaces of a fit that its drawing asks something of; a plain one shows nothing.
    private static Value.Many Seen(Value.FitAt fit) => Value.Certain(
        fit.Placement.Spaces.Where((_, i) => fit.Drawing.Cells.All(c => c is { Asks: null, Alike: null, IsEmpty: false, Height: null }) || fit.Drawing.Cells[i] is { Asks: not null } or { Alike: not null } or { IsEmpty: true } or { Height: not null })
            .Select(s => new Value.SpaceAt(fit.Board, fit.Seat, s)),
        isList: false);

    // Spaces, and things on spaces, are told column by column from the left, each from below; everything else as it comes.
    private IEnumerable<Value> InOrder(Value.Many many) =>
        many.Members.Select(m => m.Value).OrderBy(v => On(v)?.Column ?? 0).ThenBy(v => On(v)?.Row ?? 0);

    private BoardSpace? On(Value value) => value switch
    {
        Value.SpaceAt space => sheet.Boards[space.Board].Spaces[space.Index],
        Value.ThingAt { Spot: { Kind: SpotKind.Space } spot } => sheet.Boards[spot.Place].Spaces[spot.Part],
        _ => null,
    };

    /// <summary>The words that tell a thing, such as <c>cracked copper jug</c>; what is not given is left out.</summary>
    public string Look(Thing thing)
    {
        if (thing.Card is not null)
        {
            return thing.Card.Name;
        }

        if (thing.Kind is null)
        {
            return "thing";
        }

        return ThingWords.Look(sheet.KindOf(thing.Kind), thing, tellsGaps: false);
    }

    /// <summary>A thing with an article and where it lies: <c>the ash bowl on A2</c>.</summary>
    public string ThingWithPlace(Value.ThingAt at)
    {
        string look = Look(at.Thing);
        return at.Thing.Card is not null ? look : at.Spot.Kind == SpotKind.Space
            ? $"the {look} on {Prose.And(SpacesOf(at))}"
            : $"the {look}";
    }

    /// <summary>A place with its owner: <c>your sticks</c>.</summary>
    public string Place(Place place, int seat) => _words.Place(place, seat);

    private static string Number(Value.Number number) => (number.Low, number.High) switch
    {
        ({ } low, { } high) when low == high => Number(low),
        ({ } low, { } high) => $"{Number(low)} to {Number(high)}",
        ({ } low, null) => $"at least {Number(low)}",
        (null, { } high) => $"at most {Number(high)}",
        _ => "an unknown number",
    };

    private static string Number(long number) => number < 0 ? $"minus {-number}" : $"{number}";

    private static string Line(Value.LineAt line) => $"{line.Family.Name} {line.Family.Lines[line.Index].Label}";

    private string Slot(int place, int index)
    {
        PlaceFacts facts = sheet.Places[place];
        return facts.Slots > 0 ? $"{facts.SlotNoun?.Name ?? $"{facts.Place.Name}"} {index + 1}" : $"the {facts.Place.Name}";
    }
}
