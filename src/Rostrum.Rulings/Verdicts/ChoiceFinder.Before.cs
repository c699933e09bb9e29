using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <content>What was chosen in an action that is over: nobody asks whether it was legal, and a thing has gone where it was put.</content>
internal sealed partial class ChoiceFinder
{
    // Stands in a gap for what is not given, as in drawings.
    private const string Untold = "?";

    private static Value NotTold { get; } = new Value.Unknown(Blame.Of(GapKind.NotGiven, "what was chosen before"));

    // What could be chosen then is not what can be chosen now; where it belongs is the same.
    private static Term Unfiltered(Term from) => from is Term.Filtered filtered ? Unfiltered(filtered.Through.Domain) : from;

    // The thing that is told is one on the table, if its words or its space fit no other; else it is known to be one, and not which.
    private Value? ThingOfBefore(ActionChoice choice, SourceSpan span, Value.Many domain)
    {
        if (!IsThing(choice))
        {
            return domain.More == 0 ? null : NotTold;
        }

        (string words, string? on) = Placed(Prose.Fold(span.Text));
        Value.ThingAt[] table = [.. OnTable()];
        if (table.LastOrDefault(v => _naming.SpacesOf(v) is [var space] && Same(space, words)) is { } top)
        {
            return top;
        }

        if ((NumberedLook(choice, words, Value.Certain(table, isList: false)) ?? LookOf(words)) is not { } look || (look.Kind is null && look.Card is null))
        {
            return null;
        }

        var evaluator = new Evaluator(_position, _position.Me, Setting.First, new SortedSet<int>());
        Value.ThingAt[] fitting = [.. table.Where(v => (on is null || LiesOn(v, on)) && evaluator.HasLook(v, look).Is == Kleene.Yes)];
        return fitting is [var only] && (on is not null || IsOne(look)) ? only : NotTold;
    }

    private bool IsOne(Look look) => look.Card is { } card ? Sheet.Cards(card.Kind).Rows[card.Index].Count == 1
        : Sheet.KindOf(look.Kind!).Supply is { EachPlayer: false, Total: 1 };

    private IEnumerable<Value.ThingAt> OnTable() => Lying(SpotKind.Space, _position.Boards).Concat(Lying(SpotKind.Slot, _position.Places));

    private static IEnumerable<Value.ThingAt> Lying(SpotKind kind, ImmutableArray<ImmutableArray<ImmutableArray<Stack>>> all) =>
        from place in Enumerable.Range(0, all.Length)
        from seat in Enumerable.Range(0, all[place].Length)
        from part in Enumerable.Range(0, all[place][seat].Length)
        from thing in all[place][seat][part].Things.Select((t, i) => (Thing: t, Index: i))
        where thing.Thing.Covers.IsEmpty || thing.Thing.Covers[0] == part
        select new Value.ThingAt(thing.Thing, new Spot(kind, place, seat, part), thing.Index);
}
