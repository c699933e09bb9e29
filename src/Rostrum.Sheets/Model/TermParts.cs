namespace Rostrum.Sheets.Model;

/// <summary>The terms of which a term is made.</summary>
public static class TermParts
{
    /// <summary>The terms right below one, meanings of words left out.</summary>
    /// <param name="term">The term.</param>
    public static IEnumerable<Term> Of(Term term)
    {
        ArgumentNullException.ThrowIfNull(term);
        IEnumerable<Term?> parts = term switch
        {
            Term.Apply apply => [.. InPick(apply.Pick), .. apply.Arguments],
            Term.SpaceNamed space => [space.Owner],
            Term.PlaceOf place => [place.Owner],
            Term.MarkOf mark => [mark.Owner],
            Term.Property property => [property.Subject],
            Term.CardCell cell => [cell.Subject],
            Term.LineOf line => [line.Subject],
            Term.LinesOf lines => [lines.Board],
            Term.RegionOf region => [region.Player],
            Term.LinkOf link => [link.Space],
            Term.PrintedOn printed => [printed.Space],
            Term.Within within => [within.Container],
            Term.TheOnly only => [only.All],
            Term.Matches matches => [matches.Subject],
            Term.Call call => [.. call.Subjects],
            Term.LookUp lookUp => [lookUp.Key],
            Term.Listed listed => [.. listed.Items],
            Term.If condition => [condition.Condition, condition.Then, condition.Otherwise],
            Term.Filtered filtered => InPick(filtered.Through),
            Term.Joining joining => [joining.Holds],
            Term.Fork fork => [.. fork.Alternatives],
            Term.Idiomatic idiom => [idiom.Inner],
            Term.Done done => [done.By],
            Term.CanDo can => [can.Player, .. can.Given],
            _ => [],
        };
        return parts.OfType<Term>();
    }

    /// <summary>A term and every term inside it, meanings of words left out.</summary>
    /// <param name="term">The term.</param>
    public static IEnumerable<Term> All(Term term) => Of(term).SelectMany(All).Prepend(term);

    private static IEnumerable<Term?> InPick(Pick? pick) => pick is null ? [] : [pick.Domain, pick.Where];
}
