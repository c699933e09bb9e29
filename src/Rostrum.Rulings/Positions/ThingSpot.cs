using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>Where a thing is written, as far as it decides what goes without saying.</summary>
/// <param name="Form">How the place holds things.</param>
/// <param name="Holds">The kinds that may lie there; empty where the sheet does not say.</param>
/// <param name="Seat">The 0-based seat whose place it is; null for the table.</param>
/// <param name="Told">The place in words for messages, such as <c>'sticks'</c>.</param>
internal sealed record ThingSpot(PlaceForm Form, ImmutableArray<Kind> Holds, int? Seat, string Told)
{
    /// <summary>The owner of a thing of this kind where nothing is said: nobody for a kind that nobody owns, the player whose place it is, else
    /// not given.</summary>
    public int? OwnerOf(KindFacts kind) => IsOwned(kind) ? Seat : Thing.Nobody;

    /// <summary>Whether the face of a thing of this kind is seen where nothing is said.</summary>
    public bool FaceOf(KindFacts kind) => kind.Kind.Family != KindFamily.Card || Form is PlaceForm.Board or PlaceForm.Row or PlaceForm.Heap;

    /// <summary>The value of an attribute where nothing is said: not given; of a state its first one; of a state that holds a player the owner.</summary>
    public static int? ValueOf(AttributeFacts attribute, int? owner) => attribute switch
    {
        { HoldsPlayer: true } => owner is null or Thing.Nobody ? null : owner,
        { Attribute.IsState: true } => 0,
        _ => null,
    };

    /// <summary>True for a kind whose things belong to players.</summary>
    public static bool IsOwned(KindFacts kind) => kind.Supply.EachPlayer || kind.Attributes.Any(a => a.HoldsPlayer);
}
