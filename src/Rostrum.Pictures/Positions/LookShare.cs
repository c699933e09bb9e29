using Rostrum.Sheets.Model;
using Attribute = Rostrum.Sheets.Model.Attribute;

namespace Rostrum.Pictures.Positions;

/// <summary>What a kind was given to look like, for as much as the sheet does not say.</summary>
/// <param name="Outlines">Silhouettes.</param>
/// <param name="Colours">Colours, for things without an owner.</param>
/// <param name="Emblems">Emblems; null where no attribute is left to be told by them.</param>
/// <param name="Holder">The state that says whose a thing is; null for most kinds.</param>
internal sealed record LookShare(LookPick Outlines, LookPick Colours, LookPick? Emblems, Attribute? Holder)
{
    /// <summary>The share of a kind.</summary>
    /// <param name="told">What the sheet says.</param>
    /// <param name="facts">The kind.</param>
    /// <param name="hands">Gives out what is left.</param>
    public static LookShare Of(Appearance told, KindFacts facts, LookHands hands)
    {
        AttributeFacts[] apart = [.. facts.Attributes.Where(a => !a.Attribute.IsState && a.Values.Length > 1)];
        AttributeFacts? shaped = apart.FirstOrDefault(a => Says(told.Outlines, a));
        AttributeFacts? form = shaped ?? (apart.Length > 1 && !Says(told.Outlines, facts) ? apart[0] : null);
        AttributeFacts? skin = Says(told.Emblems, facts) ? null : apart.FirstOrDefault(a => a != form);
        bool isCard = facts.Kind.Family == KindFamily.Card;
        return new LookShare(
            isCard ? new LookPick(null, ["card"]) : shaped is null && Says(told.Outlines, facts) ? new LookPick(null, [LookHands.Plainest]) : hands.Outlines(facts.Kind, form),
            Says(told.Colours, facts) || (skin is null && LookHands.IsOwned(facts)) ? new LookPick(null, [LookHands.Plain]) : hands.Colours(facts.Kind, skin),
            skin is not null ? LookHands.Emblems(skin) : null,
            facts.Attributes.FirstOrDefault(a => a.HoldsPlayer)?.Attribute);
    }

    private static bool Says(IEnumerable<(Named Of, string Drawn)> rows, KindFacts facts) =>
        rows.Any(r => ReferenceEquals(r.Of, facts.Kind) || (r.Of is AttributeValue value && ReferenceEquals(value.Attribute.Kind, facts.Kind)));

    private static bool Says(IEnumerable<(Named Of, string Drawn)> rows, AttributeFacts attribute) =>
        rows.Any(r => r.Of is AttributeValue value && ReferenceEquals(value.Attribute, attribute.Attribute));
}
