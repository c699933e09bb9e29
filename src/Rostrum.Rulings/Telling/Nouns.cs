using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Telling;

/// <summary>Finds the words for what a formula goes through: <c>whole plates</c>, <c>sticks</c>.</summary>
internal static class Nouns
{
    /// <summary>The look that the elements of a pick have; null where the formula does not say in so many words.</summary>
    public static Look? Of(Pick pick) => InWhere(pick.Where) ?? InDomain(pick.Domain);

    /// <summary>One of a look with its owner last: <c>plank of yours</c>.</summary>
    public static string One(Look look) => LookWords.One(look with { Owner = LookOwner.Anyone }) + Owner(look);

    /// <summary>Several of a look with their owner last: <c>planks of yours</c>.</summary>
    public static string Many(Look look) => LookWords.Many(look with { Owner = LookOwner.Anyone }) + Owner(look);

    private static string Owner(Look look) => look.Owner switch { LookOwner.Mine => " of yours", LookOwner.Theirs => " of theirs", _ => "" };

    /// <summary>The words for so many of a look.</summary>
    public static string Count(long number, Look look) => (look.Card, number) switch
    {
        ({ } card, 0) => $"no {card.Name}",
        ({ } card, 1) => card.Name,
        ({ } card, _) => $"{number} times {card.Name}",
        _ => $"{number} {(number is 1 or -1 ? One(look) : Many(look))}",
    };

    /// <summary>The words for so many things of a kind.</summary>
    public static string Count(long number, Kind kind) => $"{number} {(number is 1 or -1 ? kind.Name : kind.Plural)}";

    /// <summary>The kind of the things that a pick goes through; null where it is not known.</summary>
    public static Kind? KindOf(Pick pick) => pick.Element.Of as Kind;

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
