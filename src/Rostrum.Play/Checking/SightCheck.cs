using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Checking;

/// <summary>Finds choices, laws and powers that hang on what the acting player cannot see: what lies in a bag or deck, or in the hand of somebody else.</summary>
internal sealed class SightCheck(Sheet sheet)
{
    /// <summary>Each clause once.</summary>
    public IEnumerable<Diagnostic> All()
    {
        IEnumerable<(string Owner, Term? Asked)> asked = sheet.Actions.SelectMany(a => a.Choices.Select(c => ($"what is chosen as '{c.Name}'", (Term?)c.From)))
            .Concat(sheet.Laws.SelectMany(l => l.Bodies.SelectMany(b => b).SelectMany(b => b.Demands).Where(d => d.Kind is DemandKind.Needs or DemandKind.Forbids).Select(d => ($"the law '{l.Name}'", (Term?)d.Truth))))
            .Concat(sheet.Powers.Select(p => ($"the power '{p.Name}'", p.If)));
        return from clause in asked
               where clause.Asked is not null
               let unseen = Unseen(clause.Asked, isCounted: false)
               where unseen is not null
               select CourseProblems.ReadsUnseen(clause.Asked.Origin.At, clause.Owner, unseen);
    }

    // How many there are is seen by everybody.
    private Place? Unseen(Term term, bool isCounted)
    {
        switch (term)
        {
            case Term.Within { Container: Term.PlaceOf place, Look: { SpotNoun: null } look } when IsUnseen(place) && !(isCounted && look is { Values.IsEmpty: true, Card: null, Traits.IsEmpty: true }):
                return place.Place;
            case Term.Filtered { Through: { Domain: Term.PlaceOf place, Where: not null } } when IsUnseen(place):
                return place.Place;
            case Term.Apply { Pick: { Where: not null, Domain: Term.PlaceOf place } } when IsUnseen(place):
                return place.Place;
        }

        bool counts = term is Term.Apply { Operation.Id: Op.Count or Op.Any or Op.No, Pick: null or { Where: null } };
        return TermParts.Of(term).Select(t => Unseen(t, counts)).FirstOrDefault(p => p is not null);
    }

    private bool IsUnseen(Term.PlaceOf place) => place.Place.Form switch
    {
        PlaceForm.Bag or PlaceForm.Deck => sheet.Places.Any(p => ReferenceEquals(p.Place, place.Place) && !p.StartsEmpty),
        PlaceForm.Hand => place.Place.EachPlayer && place.Owner is not (null or Term.Me),
        _ => false,
    };
}
