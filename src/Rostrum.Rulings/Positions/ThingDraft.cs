using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>What was written of a thing, before what goes without saying is added.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Values">The values that were named; no two of one attribute.</param>
/// <param name="Card">The card that was named, or null.</param>
internal sealed record ThingDraft(KindFacts Kind, ImmutableArray<AttributeValue> Values, Card? Card)
{
    /// <summary>True where the owner was said.</summary>
    public bool SaysOwner { get; init; }

    /// <summary>The owner that was said.</summary>
    public int? Owner { get; init; }

    /// <summary>True where it was said which face is seen.</summary>
    public bool SaysFace { get; init; }

    /// <summary>The face that was said.</summary>
    public bool? IsFaceUp { get; init; }

    /// <summary>Attributes that were said not to be given.</summary>
    public ImmutableArray<Sheets.Model.Attribute> NotGiven { get; init; } = [];

    /// <summary>The thing where it lies.</summary>
    public Thing At(ThingSpot spot)
    {
        int? owner = SaysOwner ? Owner : spot.OwnerOf(Kind);
        return new Thing(
            Kind.Kind,
            [.. Kind.Attributes.Select(a => ValueOf(a, owner))],
            Card,
            owner,
            SaysFace ? IsFaceUp : spot.FaceOf(Kind));
    }

    private int? ValueOf(AttributeFacts attribute, int? owner)
    {
        if (NotGiven.Contains(attribute.Attribute))
        {
            return null;
        }

        return Values.FirstOrDefault(v => ReferenceEquals(v.Attribute, attribute.Attribute)) is { } said ? said.Index : ThingSpot.ValueOf(attribute, owner);
    }
}
