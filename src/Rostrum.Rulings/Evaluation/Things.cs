using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <summary>Things as a sheet makes them.</summary>
internal static class Things
{
    /// <summary>A thing of a kind that has the given values; states begin with their first value, other attributes are not given.</summary>
    /// <param name="sheet">Says what the kind is made of.</param>
    /// <param name="kind">The kind.</param>
    /// <param name="values">What is known of it.</param>
    /// <param name="owner">The 0-based seat of whose it is, where each player has things of the kind; null where not given.</param>
    public static Thing Fresh(Sheet sheet, Kind kind, IReadOnlyCollection<AttributeValue> values, int? owner)
    {
        KindFacts facts = sheet.KindOf(kind);
        ImmutableArray<int?> all = [.. facts.Attributes.Select(a => values.FirstOrDefault(v => ReferenceEquals(v.Attribute, a.Attribute))?.Index
            ?? (a.HoldsPlayer ? owner : a.Attribute.IsState || a.Values.Length == 1 ? 0 : null))];
        return new Thing(kind, all, null, facts.Supply.EachPlayer ? owner : Thing.Nobody, kind.Family != KindFamily.Card ? true : null);
    }

    /// <summary>A card that is at hand, its face seen.</summary>
    public static Thing Card(Sheet sheet, Card card) =>
        Fresh(sheet, card.Kind, [], Thing.Nobody) with { Card = card, Owner = Thing.Nobody, IsFaceUp = true };

    /// <summary>A thing of a kind of which nothing else is known.</summary>
    public static Thing Unknown(Sheet sheet, Kind kind)
    {
        KindFacts facts = sheet.KindOf(kind);
        return new Thing(kind, [.. facts.Attributes.Select(_ => (int?)null)], null, facts.Supply.EachPlayer ? null : Thing.Nobody, kind.Family != KindFamily.Card ? true : null);
    }
}
