using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Pictures.Positions;

/// <summary>How things look of which the sheet says nothing: in the order of the sheet, each kind takes a silhouette and a colour that no kind before it has;
/// values are told apart by colour and emblem, and so are owners.</summary>
internal sealed class UsualLooks
{
    private static readonly string?[] SeatEmblems = [null, "ring", "cross", "bars"];

    private readonly string[] _seatColours;
    private readonly Dictionary<Kind, LookShare> _shares = new(ReferenceEqualityComparer.Instance);

    /// <summary>Shares out silhouettes and colours among the kinds of a sheet.</summary>
    /// <param name="sheet">The sheet; what it gives to some of its kinds is not given to others.</param>
    public UsualLooks(Sheet sheet)
    {
        _seatColours = LookHands.SeatColours(sheet);
        var hands = new LookHands(sheet);
        foreach (KindFacts facts in sheet.Kinds)
        {
            _shares[facts.Kind] = LookShare.Of(sheet.Appearance, facts, hands);
        }
    }

    /// <summary>Its silhouette: by the first of several attributes, otherwise by its kind; a soft round where the attribute is not given.</summary>
    public Outline OutlineOf(Kind kind, Thing thing) => _shares[kind].Outlines.For(thing) is { } name ? Outlines.Find(name) : Outlines.Anything;

    /// <summary>Its colour: by its owner, otherwise by an attribute, otherwise by its kind.</summary>
    public PieceColour ColourOf(Kind kind, Thing thing)
    {
        LookShare share = _shares[kind];
        return PieceColours.Find((Owner(share, thing) is { } seat ? _seatColours[seat % _seatColours.Length] : share.Colours.For(thing)) ?? LookHands.Plain);
    }

    /// <summary>Its emblem: by an attribute that nothing else tells, otherwise by its owner.</summary>
    public Emblem? EmblemOf(Kind kind, Thing thing)
    {
        LookShare share = _shares[kind];
        string? name = share.Emblems is { } emblems ? emblems.For(thing) : Owner(share, thing) is { } seat ? SeatEmblems[seat % SeatEmblems.Length] : null;
        return name is null ? null : Emblems.Find(name);
    }

    /// <summary>Whether a thing belongs to a seat, so that its usual colour and emblem are those of the seat.</summary>
    public bool HasOwner(Kind kind, Thing thing) => Owner(_shares[kind], thing) is not null;

    private static int? Owner(LookShare share, Thing thing) => (share.Holder is { } state ? thing.Values[state.Index] : thing.Owner) is >= 0 and { } seat ? seat : null;
}
