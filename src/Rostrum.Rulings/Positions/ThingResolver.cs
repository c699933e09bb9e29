using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <summary>Finds the one kind of which all named values and cards can be.</summary>
internal static class ThingResolver
{
    /// <summary>The thing that some names tell together; null (with a message) where none or several kinds can be meant.</summary>
    /// <param name="reading">Receives the message.</param>
    /// <param name="groups">The names.</param>
    /// <param name="whole">The place of all words.</param>
    /// <param name="spot">Where it lies: of several kinds one that may lie there is meant.</param>
    public static ThingDraft? Resolve(PositionReading reading, ImmutableArray<NamedWords> groups, SourceSpan whole, ThingSpot spot)
    {
        if (groups.IsEmpty)
        {
            reading.Problems.Add(PositionProblems.UnknownThing(whole, whole.Text, reading.Lexicon.Names, null));
            return null;
        }

        ThingDraft[] fitting = [.. reading.Sheet.Kinds.Select(k => AsKind(k, groups)).OfType<ThingDraft>()];
        ThingDraft[] here = [.. fitting.Where(d => spot.Holds.Contains(d.Kind.Kind))];
        ThingDraft[] meant = here.Length > 0 ? here : fitting;
        switch (meant.Length)
        {
            case 1:
                return meant[0];
            case 0:
                ReportMisfit(reading, groups);
                return null;
            default:
                reading.Problems.Add(PositionProblems.SeveralKinds(whole, whole.Text, meant.Select(d => d.Kind.Kind)));
                return null;
        }
    }

    private static ThingDraft? AsKind(KindFacts kind, ImmutableArray<NamedWords> groups)
    {
        var values = new List<AttributeValue>();
        Card? card = null;
        foreach (NamedWords group in groups)
        {
            switch (group.Senses.FirstOrDefault(s => Belongs(s, kind.Kind, values)))
            {
                case AttributeValue value:
                    values.Add(value);
                    break;
                case Card found when card is null:
                    card = found;
                    break;
                case Kind:
                    break;
                default:
                    return null;
            }
        }

        return new ThingDraft(kind, [.. values], card);
    }

    private static bool Belongs(Named sense, Kind kind, List<AttributeValue> taken) => sense switch
    {
        Kind k => ReferenceEquals(k, kind),
        Card c => ReferenceEquals(c.Kind, kind),
        AttributeValue v => ReferenceEquals(v.Attribute.Kind, kind) && taken.TrueForAll(t => !ReferenceEquals(t.Attribute, v.Attribute)),
        _ => false,
    };

    // The first name that cannot join those before it is underlined.
    private static void ReportMisfit(PositionReading reading, ImmutableArray<NamedWords> groups)
    {
        int misfit = 1;
        while (misfit < groups.Length - 1 && reading.Sheet.Kinds.Any(k => AsKind(k, groups[..(misfit + 1)]) is not null))
        {
            misfit++;
        }

        NamedWords group = groups[Math.Min(misfit, groups.Length - 1)];
        NamedWords other = groups.Take(misfit).FirstOrDefault(g => reading.Sheet.Kinds.All(k => AsKind(k, [g, group]) is null)) ?? groups[0];
        reading.Problems.Add(PositionProblems.DoNotGoTogether(group.At, other.Senses[0].Name, group.Senses[0].Name));
    }
}
