using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Telling;

/// <summary>Finds the words for what a formula goes through: <c>whole plates</c>, <c>sticks</c>.</summary>
internal static class Nouns
{
    /// <summary>The look that the elements of a pick have; null where the formula does not say in so many words.</summary>
    public static Look? Of(Pick pick) => InWhere(pick.Where) ?? InDomain(pick.Domain);

    /// <summary>The words for so many of a look.</summary>
    public static string Count(long number, Look look) => $"{number} {(number is 1 or -1 ? One(look) : Many(look))}";

    /// <summary>The words for so many things of a kind.</summary>
    public static string Count(long number, Kind kind) => $"{number} {(number is 1 or -1 ? kind.Name : kind.Plural)}";

    /// <summary>A look in the singular: what comes before a noun first, the noun last.</summary>
    public static string One(Look look) => Words(look, isMany: false);

    /// <summary>A look in the plural.</summary>
    public static string Many(Look look) => Words(look, isMany: true);

    /// <summary>The kind of the things that a pick goes through; null where it is not known.</summary>
    public static Kind? KindOf(Pick pick) => pick.Element.Of as Kind;

    // The first attribute of a kind is its noun (a jug), the others stand before it (a copper jug); without one the kind is the noun (copper ware).
    private static string Words(Look look, bool isMany)
    {
        if (look.Card is { } card)
        {
            return card.Name;
        }

        AttributeValue? noun = look.Values.FirstOrDefault(v => v.Attribute is { IsState: false, Index: 0 });
        IEnumerable<string> before = look.Values.Where(v => !ReferenceEquals(v, noun)).OrderByDescending(v => v.Attribute.Index).Select(v => v.Name)
            .Concat(look.Traits.Select(t => t.Word?.Name ?? Said(t.Adjective)));
        string head = noun is not null ? (isMany ? noun.Plural : noun.Name)
            : look.Kind is { } kind ? (isMany ? kind.Plural : kind.Name)
            : look.SpotNoun?.Name ?? "";
        string owner = look.Owner switch { LookOwner.Mine => "your ", LookOwner.Theirs => "their ", _ => "" };
        return owner + string.Join(' ', before.Append(head).Where(w => w.Length > 0));
    }

    private static string Said(Adjective adjective) => adjective switch
    {
        Adjective.FaceUp => "face-up",
        Adjective.FaceDown => "face-down",
        _ => adjective.ToString().ToLowerInvariant(),
    };

    private static Look? InWhere(Term? where) => where switch
    {
        Term.Matches { Looks: [var look], Subject: Term.Variable } when HasNoun(look) => look,
        Term.Apply { Operation.Id: Op.And } and => and.Arguments.Select(InWhere).FirstOrDefault(l => l is not null),
        _ => null,
    };

    private static Look? InDomain(Term domain) => domain switch
    {
        Term.Within { Look: var look } when HasNoun(look) => look,
        Term.Filtered filtered => InWhere(filtered.Through.Where) ?? InDomain(filtered.Through.Domain),
        Term.Apply { Pick: { } pick } => Of(pick),
        _ => null,
    };

    private static bool HasNoun(Look look) => look.Kind is not null || look.Values.Length > 0;
}
