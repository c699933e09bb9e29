using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <summary>How the look of a thing is said in English: adjectives, then a noun.</summary>
/// <remarks>A sheet does not say which of its values are nouns. Ours by custom: where a kind has two attributes or more, the first is the noun
/// (<c>form: [bowl, jug]</c> gives <c>copper jug</c>) unless its name says that it describes (<c>colour</c>); a single attribute is the noun only
/// where its name says so (<c>form</c>). Otherwise the kind is the noun: <c>red stone</c>.</remarks>
internal static class ThingWords
{
    private static readonly ImmutableHashSet<string> Nouns =
        ImmutableHashSet.Create(StringComparer.OrdinalIgnoreCase, "form", "type", "kind", "shape", "role", "sort", "figure", "species");

    private static readonly ImmutableHashSet<string> Descriptions =
        ImmutableHashSet.Create(StringComparer.OrdinalIgnoreCase, "colour", "color", "size", "glaze", "suit", "side", "value", "number", "level", "team");

    /// <summary>The look without article and owner: <c>cracked copper jug</c>, <c>jug whose glaze is not given</c>.</summary>
    /// <param name="kind">What the sheet says of its kind.</param>
    /// <param name="thing">The thing.</param>
    /// <param name="plural">True for several of them.</param>
    /// <param name="tellsGaps">True where attributes that are not given are named.</param>
    public static string Look(KindFacts kind, Thing thing, bool plural = false, bool tellsGaps = true)
    {
        AttributeFacts? noun = NounOf(kind);
        // States come behind the attributes, so reading backwards puts them first: `cracked copper jug`. A numeral stands behind the noun: `number card 4`.
        AttributeValue[] values = [.. kind.Attributes.Reverse().Where(a => a != noun && (ThingSpot.IsSaid(a, thing) || !a.Attribute.IsState)).Select(a => ValueOf(a, thing)).OfType<AttributeValue>()];
        IEnumerable<string> words = values.Where(v => v.Number is null).Select(v => v.Name).Append(Noun(kind, noun, thing, plural)).Concat(values.Where(v => v.Number is not null).Select(v => v.Name));
        string[] gaps = [.. kind.Attributes.Where(a => tellsGaps && !a.HoldsPlayer && thing.Values[a.Attribute.Index] is null).Select(a => a.Attribute.Name)];
        string look = string.Join(' ', words);
        return gaps.Length == 0 ? look : $"{look} whose {Prose.And(gaps)} {(gaps.Length == 1 ? "is" : "are")} not given";
    }

    private static AttributeValue? ValueOf(AttributeFacts attribute, Thing thing) =>
        thing.Values[attribute.Attribute.Index] is { } value && !attribute.HoldsPlayer ? attribute.Values[value] : null;

    private static string Noun(KindFacts kind, AttributeFacts? noun, Thing thing, bool plural) =>
        noun is not null && ValueOf(noun, thing) is { } value
            ? plural ? value.Plural : value.Name
            : plural ? kind.Kind.Plural : kind.Kind.Name;

    private static AttributeFacts? NounOf(KindFacts kind)
    {
        AttributeFacts[] own = [.. kind.Attributes.Where(a => !a.Attribute.IsState)];
        bool isNoun = own.Length > 0 && (own.Length == 1 ? Nouns.Contains(own[0].Attribute.Name) : !Descriptions.Contains(own[0].Attribute.Name));
        return isNoun && kind.Kind.Family == KindFamily.Piece ? own[0] : null;
    }
}
