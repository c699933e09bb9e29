using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <summary>How things of a kind come into a supply and out of it, as the steps of a sheet say: looked up once a sheet.</summary>
internal sealed class SupplyWays
{
    /// <summary>Looks through the steps of a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="kind">The kind of the things.</param>
    public SupplyWays(Sheet sheet, Kind kind)
    {
        KindFacts facts = sheet.KindOf(kind);
        Term.PlaceOf[] goals = [.. sheet.AllSteps.Select(s => Goal(s, kind)).OfType<Term.PlaceOf>()];
        bool hasHome = sheet.Places.Any(p =>
            (p.Starts is { } look && ReferenceEquals(look.Kind, kind)) || (p.Place.Form is PlaceForm.Bag or PlaceForm.Deck && !p.StartsEmpty && p.Holds.Contains(kind)));
        MayLieThere = !hasHome || goals.Any(g => g.Place.Form == PlaceForm.Supply);
        MayHideElsewhere = facts.Attributes.Any(a => a.Attribute.IsState) || goals.Any(g => g.Place.Form == PlaceForm.Box)
            || goals.Any(g => g.Place.Form == PlaceForm.Supply && facts.Supply.EachPlayer == g.Owner is null)
            || sheet.Places.Any(p => p.Starts is { Kind: null });
    }

    /// <summary>False for things that begin elsewhere, such as in a bag, and that no step carries into a supply.</summary>
    public bool MayLieThere { get; }

    /// <summary>True where they may be in the box, or in a supply that is not their own; nor does a supply say whether its things were turned before they came back.</summary>
    public bool MayHideElsewhere { get; }

    // Where a step may carry things of the kind; null for none. Terms of a move: amount, things or a look, from, to.
    private static Term? Goal(Step step, Kind kind) => step.Kind switch
    {
        StepKind.Move when Moved(step.Terms[1]) is { } moved && !ReferenceEquals(moved, kind) => null,
        StepKind.Move => step.Terms[3],
        StepKind.Deal or StepKind.Push => step.Terms[^1],
        _ => null,
    };

    // The kind of what a step moves; null where the step does not say.
    private static Kind? Moved(Term things) => things is Term.LookOf look ? look.Look.Kind : TermParts.All(things).OfType<Term.Within>().Select(w => w.Look.Kind).FirstOrDefault();
}
