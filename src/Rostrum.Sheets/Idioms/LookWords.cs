using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Idioms;

/// <summary>Says a look in English: <c>whole bowl</c>, <c>whole bowls</c>; a look without a noun gets its kind's: <c>whole copper ware</c>.</summary>
internal static class LookWords
{
    public static (string Singular, string Plural) Of(Look look)
    {
        if (look.Card is { } card)
        {
            return (card.Name, card.Name);
        }

        string owner = look.Owner switch
        {
            LookOwner.Mine => "your ",
            LookOwner.Theirs => "their ",
            _ => "",
        };
        AttributeValue? noun = look.Values.FirstOrDefault(v => !v.Attribute.IsState && v.Attribute.Index == 0);
        IEnumerable<string> before = look.Values.Where(v => !ReferenceEquals(v, noun)).OrderByDescending(v => v.Attribute.Index).Select(v => v.Name)
            .Concat(look.Traits.Select(t => t.Word?.Name ?? t.Adjective.ToString().ToLowerInvariant()));
        string head = owner + string.Concat(before.Select(w => w + " "));
        (string one, string many) = (noun, look.Kind, look.SpotNoun) switch
        {
            ({ } value, _, _) => (value.Name, value.Plural),
            (_, { } kind, _) => (kind.Name, kind.Plural),
            (_, _, SpaceNoun spot) => (spot.Name, spot.Plural),
            (_, _, SlotNoun slot) => (slot.Name, slot.Plural),
            _ => (look.Words, OutlineAsk.PluralOf(look.Words)),
        };
        return (head + one, head + many);
    }
}
