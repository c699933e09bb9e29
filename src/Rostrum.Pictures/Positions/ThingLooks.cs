using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Pictures.Positions;

/// <summary>Chooses how things look, from what the sheet says under <c>outlines</c>, <c>colours</c>, <c>emblems</c> and <c>flaws</c>.</summary>
internal sealed class ThingLooks(Position position)
{
    private readonly Sheet _sheet = position.Sheet;
    private readonly PositionWords _words = PositionWords.ForAudience(position.Sheet);
    private readonly UsualLooks _usual = new(position.Sheet);
    private readonly LookLegend _legend = new();

    /// <summary>Which piece is which, of those that do not look like what they are called; null where there is nothing to tell.</summary>
    public string? Legend => _legend.InWords;

    /// <summary>What stands for something that the position does not give.</summary>
    public static PieceLook NotGiven(string says) => new(Outlines.Anything, PieceColours.Find(LookHands.Plain), null, Flaws.Hidden, says);

    /// <summary>How a thing looks.</summary>
    public PieceLook Of(Thing thing)
    {
        string says = _words.Thing(thing);
        if (thing.Kind is not { } kind)
        {
            return NotGiven(says);
        }

        Appearance drawn = _sheet.Appearance;
        Outline outline = Named(drawn.Outlines, thing) is { } o && Outlines.TryFind(o, out Outline? found) ? found : LacksForm(kind, thing) ? Outlines.Anything : _usual.OutlineOf(kind, thing);
        PieceColour colour = Named(drawn.Colours, thing) is { } c && PieceColours.TryFind(c, out PieceColour? paint) ? paint : _usual.ColourOf(kind, thing);
        Emblem? emblem = Named(drawn.Emblems, thing) is { } e && Emblems.TryFind(e, out Emblem? mark) ? mark : _usual.EmblemOf(kind, thing);
        Flaw? flaw = thing.IsFaceUp == false || outline == Outlines.Anything ? Flaws.Hidden : Named(drawn.Flaws, thing) is { } f && Flaws.TryFind(f, out Flaw? broken) ? broken : null;
        // A piece on several spaces has the silhouette of its spaces, so it is told by its colour.
        var look = new PieceLook(thing.Covers.IsEmpty ? outline : outline with { Name = "shape" }, colour, emblem, flaw, says);
        bool showsItself = Named(drawn.Outlines, thing) is not null && says.Contains(outline.Name, StringComparison.Ordinal) && !_usual.HasOwner(kind, thing);
        if (flaw != Flaws.Hidden && !showsItself)
        {
            _legend.Add(look);
        }

        return look;
    }

    // The sheet tells silhouettes by a value that is not given here.
    private bool LacksForm(Kind kind, Thing thing) =>
        thing.Values.Any(v => v is null) && _sheet.Appearance.Outlines.Any(o => o.Of is AttributeValue value && ReferenceEquals(value.Attribute.Kind, kind));

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
