using Rostrum.Rulings.Positions;

namespace Rostrum.Rulings.Evaluation;

/// <summary>Where a thing can lie: a space of a board, a slot of a row or a heap.</summary>
/// <param name="Kind">What sort of spot.</param>
/// <param name="Place">Index in the boards, the places or the marks of the sheet; -1 for nowhere.</param>
/// <param name="Seat">0-based; 0 for what belongs to the table; of a mark its position in <see cref="Position.Marks"/>.</param>
/// <param name="Part">The space or slot, 0-based; 0 for a heap.</param>
internal readonly record struct Spot(SpotKind Kind, int Place, int Seat, int Part)
{
    /// <summary>Where a thing is that is only spoken of.</summary>
    public static Spot Nowhere { get; } = new(SpotKind.Nowhere, -1, 0, 0);

    /// <summary>True for the box, which holds what is out of the game; the other place outside is the supply.</summary>
    public bool IsBox => Kind == SpotKind.Outside && Place == -2;

    /// <summary>What a position says of a space, slot or heap.</summary>
    public Stack In(Position position) => Kind switch
    {
        SpotKind.Space => position.Boards[Place][Seat][Part],
        SpotKind.Slot => position.Places[Place][Seat][Part],
        _ => Stack.NotGiven,
    };

    /// <summary>A position with other content here.</summary>
    public Position Put(Position position, Stack content) => Kind switch
    {
        SpotKind.Space => position.With(Place, Seat, Part, content),
        SpotKind.Slot => position.WithPlace(Place, Seat, Part, content),
        _ => position,
    };
}

/// <summary>The sorts of spots.</summary>
internal enum SpotKind
{
    /// <summary>A thing that is only spoken of.</summary>
    Nowhere,

    /// <summary>A space of a board.</summary>
    Space,

    /// <summary>A slot of a row, or the whole of a heap, hand, bag or deck.</summary>
    Slot,

    /// <summary>A mark.</summary>
    Mark,

    /// <summary>The supply or the box, of which positions say nothing.</summary>
    Outside,
}

/// <summary>What of a thing or spot is not given.</summary>
internal enum Aspect
{
    /// <summary>What lies on the spot at all.</summary>
    Content,

    /// <summary>The kind of a thing.</summary>
    Kind,

    /// <summary>The value of an attribute or state.</summary>
    Value,

    /// <summary>Which card it is.</summary>
    Card,

    /// <summary>Whose it is.</summary>
    Owner,

    /// <summary>Which side of a card is seen.</summary>
    Face,

    /// <summary>What a mark holds.</summary>
    Mark,
}

/// <summary>A fact that a position does not give.</summary>
/// <param name="Spot">Where.</param>
/// <param name="Index">0-based from the lowest thing there; 0 for the content itself.</param>
/// <param name="Aspect">What of it.</param>
/// <param name="Attribute">The attribute or state, for <see cref="Aspect.Value"/>; null otherwise.</param>
internal sealed record Blank(Spot Spot, int Index, Aspect Aspect, Rostrum.Sheets.Model.Attribute? Attribute = null);

/// <summary>Something that the sheet does not say, or that this version does not answer.</summary>
/// <param name="Kind">Which.</param>
/// <param name="What">Its name: the author's, or a sentence about the limit.</param>
internal sealed record Gap(GapKind Kind, string What)
{
    /// <summary>The gap as an entry of a list of what is missing.</summary>
    public string Listed => Kind switch { GapKind.NotYet => $"{What} (not worked out yet)", GapKind.ByPlay => $"{What} (worked out by play)", _ => What };

    /// <summary>The gap as a sentence without its full stop.</summary>
    public string Told => Kind switch { GapKind.Limit => What, GapKind.NotYet => $"{What} is not worked out yet", GapKind.NotGiven => $"{What} is not given", GapKind.ByPlay => $"{What} is worked out by play", _ => $"{What} is not modelled" };
}

/// <summary>Why a sheet gives no answer.</summary>
internal enum GapKind
{
    /// <summary>The author left it out.</summary>
    NotModelled,

    /// <summary>Understood, but not answered in this version.</summary>
    NotYet,

    /// <summary>What a position never says, such as what was done before.</summary>
    NotGiven,

    /// <summary>What only playing on shows.</summary>
    ByPlay,

    /// <summary>Too large to work out.</summary>
    Limit,
}
