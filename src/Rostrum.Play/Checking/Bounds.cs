using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Checking;

/// <summary>Between which numbers a formula lies whatever happens, as far as the components of a sheet say, and which conditions can never hold.</summary>
/// <param name="layout">The components, for as many players as the sheet allows.</param>
internal sealed class Bounds(TableLayout layout)
{
    private readonly ILookup<int, int> _ofClass = layout.ClassOf.ToLookup(c => c);

    /// <summary>Why a condition can never hold, in words; null where it may.</summary>
    public string? WhyNever(Term truth) => truth switch
    {
        Term.Truth { IsYes: false } => "it is always no",
        Term.Apply { Operation.Id: Op.And } and => and.Arguments.OfType<Term>().Select(WhyNever).FirstOrDefault(w => w is not null),
        Term.Apply { Operation.Id: Op.Or } or => or.Arguments.OfType<Term>().Select(WhyNever).ToArray() is var whys && whys.All(w => w is not null) ? whys[0] : null,
        Term.Apply { Operation.Id: Op.Same or Op.AtLeast or Op.MoreThan or Op.AtMost or Op.LessThan } compared => WhyNever(compared),
        _ => null,
    };

    private string? WhyNever(Term.Apply compared)
    {
        if (compared.Arguments is not [{ } one, { } other])
        {
            return null;
        }

        ((long? Low, long? High) left, (long? Low, long? High) right) = (Of(one), Of(other));
        Op op = compared.Operation.Id;
        if ((op is Op.Same or Op.AtLeast && left.High < right.Low) || (op is Op.MoreThan && left.High <= right.Low))
        {
            return $"'{Words(one)}' is {left.High} at the most";
        }

        return (op is Op.Same or Op.AtMost && left.Low > right.High) || (op is Op.LessThan && left.Low >= right.High) ? $"'{Words(one)}' is {left.Low} at least" : null;
    }

    private (long? Low, long? High) Of(Term number) => number switch
    {
        Term.Number given => (given.Amount, given.Amount),
        Term.Constant constant => (constant.Which.Amount, constant.Which.Amount),
        Term.MarkOf { Mark: { Sort.Kind: SortKind.Number } mark } => (mark.Lowest, mark.Highest),
        Term.Apply { Operation.Id: Op.Count } count => (0, Most(count.Pick?.Domain ?? count.Arguments.OfType<Term>().FirstOrDefault())),
        _ => (null, null),
    };

    // How many elements there can be; null where nobody can say.
    private long? Most(Term? many) => many switch
    {
        Term.Within { Container: var container, Look: { SpotNoun: null } look } => Narrowed(look, container),
        Term.Within { Container: Term.PlaceOf { Place.Form: PlaceForm.Board } board, Look.SpotNoun: not null } => layout.Sheet.Board(board.Place).Spaces.Length,
        Term.PlaceOf { Place.Form: PlaceForm.Board } board => layout.Sheet.Board(board.Place).Spaces.Length,
        Term.AllOf all => Things(all.Look),
        Term.Filtered filtered => Most(filtered.Through.Domain),
        _ => null,
    };

    // A limit of the spaces binds the kinds that it names, or all.
    private long Narrowed(Look look, Term container) => container is Term.PlaceOf { Place: { Form: PlaceForm.Board } place }
        && layout.Sheet.Board(place) is { MostInSpace: { } most } board && (board.Holds.IsEmpty || board.Holds.Any(k => ReferenceEquals(k, look.Kind)))
        ? Math.Min(Things(look), most * (long)board.Spaces.Length) : Things(look);

    /// <summary>How many things there are of a look, states left out; of what each player has, one player's where the look says whose.</summary>
    public long Things(Look look) => layout.Classes.Select((c, i) => Fits(c, look) ? _ofClass[i].Count() : 0).Sum();

    private static bool Fits(ThingClass of, Look look)
    {
        if ((look.Kind is { } kind && !ReferenceEquals(kind, of.Kind.Kind)) || (look.Card is { } card && !ReferenceEquals(card, of.Card)))
        {
            return false;
        }

        if (look.Owner == LookOwner.Mine && of.Kind.Supply.EachPlayer && of.Owner != 0)
        {
            return false;
        }

        return look.Values.Where(v => ReferenceEquals(v.Attribute.Kind, of.Kind.Kind) && !ThingTable.IsChanging(of.Kind.Attributes[v.Attribute.Index])).GroupBy(v => v.Attribute)
            .All(g => of.Values[g.Key.Index] >= 0 && g.Any(v => of.Kind.Attributes[g.Key.Index].Values.IndexOf(v) == of.Values[g.Key.Index]));
    }

    private static string Words(Term term) => Text.Prose.Clip(Text.Prose.Fold(term.Origin.At.Text));
}
