using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Verdicts;

/// <content>Things that are told by a number: the face of a die, the number of a card.</content>
internal sealed partial class ChoiceFinder
{
    // In a formula '5' is the number and '5 salt die' a slip; in the gap of a phrase nothing but a thing can be meant. A position says 'salt die 5'.
    private Look? NumberedLook(ActionChoice choice, string words, Value.Many domain)
    {
        ImmutableArray<Kind> may = [.. domain.Members.Select(m => m.Value).OfType<Value.ThingAt>().Select(t => t.Thing.Kind).OfType<Kind>().Concat(Held(choice)).Distinct()];
        return (from kind in may
                from attribute in Sheet.KindOf(kind).Attributes
                from value in attribute.Values
                where ThingPhrase.NumberIn(value.Name) is not null
                    && (Same(value.Name, words) || Same($"{value.Name} {kind.Name}", words) || Same($"{kind.Name} {value.Name}", words))
                select new Look(kind, [value], null, LookOwner.Anyone, [], words)).FirstOrDefault();
    }
}
