using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Pictures.Positions;

/// <summary>Chooses how things look, from what the sheet says under <c>outlines</c>, <c>colours</c>, <c>emblems</c> and <c>flaws</c>.</summary>
internal sealed class ThingLooks(Position position)
{
    private const string UsualColour = "chalk";

    private static readonly string[] SeatColours = ["sea", "rust", "sun", "plum", "pine", "slate"];

    private readonly Sheet _sheet = position.Sheet;
    private readonly PositionWords _words = new(position);

    /// <summary>What stands for something that the position does not give.</summary>
    public static PieceLook NotGiven(string says) => new(Outlines.Anything, PieceColours.Find(UsualColour), null, Flaws.Hidden, says);

    /// <summary>How a thing looks.</summary>
    public PieceLook Of(Thing thing)
    {
        string says = _words.Thing(thing);
        if (thing.Kind is not { } kind)
        {
            return NotGiven(says);
        }

        Appearance drawn = _sheet.Appearance;
        Outline outline = Named(drawn.Outlines, thing) is { } o && Outlines.TryFind(o, out Outline? found) ? found : Usual(kind, thing);
        PieceColour colour = PieceColours.TryFind(Named(drawn.Colours, thing) ?? OwnerColour(thing), out PieceColour? c) ? c : PieceColours.Find(UsualColour);
        Emblem? emblem = Named(drawn.Emblems, thing) is { } e && Emblems.TryFind(e, out Emblem? mark) ? mark : null;
        Flaw? flaw = thing.IsFaceUp == false || outline == Outlines.Anything ? Flaws.Hidden : Named(drawn.Flaws, thing) is { } f && Flaws.TryFind(f, out Flaw? broken) ? broken : null;
        return new PieceLook(outline, colour, emblem, flaw, says);
    }

    // A silhouette that nobody gave: a card for cards, anything where the form is not given, a disc otherwise.
    private Outline Usual(Kind kind, Thing thing)
    {
        bool lacksForm = thing.Values.Any(v => v is null) && _sheet.Appearance.Outlines.Any(o => o.Of is AttributeValue value && ReferenceEquals(value.Attribute.Kind, kind));
        return lacksForm ? Outlines.Anything : Outlines.Find(kind.Family == KindFamily.Card ? "card" : "disc");
    }

    private static string OwnerColour(Thing thing) => thing.Owner is >= 0 and { } seat ? SeatColours[seat % SeatColours.Length] : UsualColour;

    private static string? Named(IEnumerable<(Named Of, string Drawn)> rows, Thing thing)
    {
        foreach ((Named of, string drawn) in rows)
        {
            bool fits = of switch
            {
                AttributeValue value => ReferenceEquals(value.Attribute.Kind, thing.Kind) && thing.Values[value.Attribute.Index] == value.Index,
                _ => ReferenceEquals(of, thing.Kind),
            };
            if (fits)
            {
                return drawn;
            }
        }

        return null;
    }
}
