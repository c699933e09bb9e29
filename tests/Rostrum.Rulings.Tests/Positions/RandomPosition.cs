using System.Collections.Immutable;
using CsCheck;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Positions;

/// <summary>Random positions of a sheet: every content that the model allows, written or not.</summary>
internal static class RandomPosition
{
    public static Gen<Position> Of(Sheet sheet) =>
        from seats in Gen.Int[sheet.FewestPlayers ?? 1, sheet.MostPlayers ?? 4]
        from me in Gen.Int[0, seats - 1]
        from boards in Each(sheet.Boards, b => Layers(b.Place, seats, b.Spaces.Length, s => Content(sheet, b.Holds, seats, s, b.MostInSpace ?? 3, true)))
        from places in Each(sheet.Places, p => Layers(p.Place, seats, Math.Max(1, p.Slots), s => Content(sheet, p.Holds, seats, s, 3, p.Place.Form is PlaceForm.Heap or PlaceForm.Row)))
        from marks in Each(sheet.Marks, m => Each([.. Enumerable.Range(0, m.EachPlayer ? seats : 1)], _ => Mark(sheet, m, seats)))
        select new Position(sheet, "test", seats, me, boards, places, marks);

    private static Gen<ImmutableArray<ImmutableArray<Stack>>> Layers(Place place, int seats, int parts, Func<int?, Gen<Stack>> content) =>
        Each(place.EachPlayer ? [.. Enumerable.Range(0, seats).Select(s => (int?)s)] : ImmutableArray.Create((int?)null), seat =>
            Gen.Bool.SelectMany(given => given ? Each([.. Enumerable.Range(0, parts)], _ => content(seat)) : Gen.Const(Enumerable.Repeat(Stack.NotGiven, parts).ToImmutableArray())));

    private static Gen<Stack> Content(Sheet sheet, ImmutableArray<Kind> holds, int seats, int? seat, int most, bool facesUp) =>
        from given in Gen.Int[0, 4]
        from count in Gen.Int[0, most]
        from things in ThingOf(sheet, holds, seats, seat, facesUp).Array[count]
        from isDoubled in Gen.Bool
        select given == 0 ? Stack.NotGiven : new Stack([.. isDoubled && count > 1 ? things.Select((t, i) => i == 1 ? things[0] : t) : things]);

    private static Gen<Thing> ThingOf(Sheet sheet, ImmutableArray<Kind> holds, int seats, int? seat, bool facesUp) =>
        from isUnknown in Gen.Int[0, 9]
        from kind in One([.. sheet.Kinds.Where(k => holds.IsEmpty || holds.Contains(k.Kind))])
        from isUsual in Gen.Bool
        from owner in Owner(kind, seats, seat, isUsual)
        from values in Each(kind.Attributes, a => Value(a, seats, owner))
        from card in Card(sheet, kind)
        from face in One<bool?>(true, false, null)
        select isUnknown == 0
            ? new Thing(null, [], null, null, null)
            : new Thing(kind.Kind, values, card, owner, kind.Kind.Family != KindFamily.Card ? true : isUsual ? facesUp : face);

    private static Gen<int?> Owner(KindFacts kind, int seats, int? seat, bool isUsual)
    {
        int?[] all = [Thing.Nobody, null, .. Enumerable.Range(0, seats).Select(s => (int?)s)];
        bool isOwned = kind.Supply.EachPlayer || kind.Attributes.Any(a => a.HoldsPlayer);
        return isUsual ? Gen.Const(isOwned ? seat : (int?)Thing.Nobody) : One(all);
    }

    // The player of a state that holds one is its owner: a position writes the two together.
    private static Gen<int?> Value(AttributeFacts attribute, int seats, int? owner) => attribute.HoldsPlayer
        ? Gen.Const(owner is >= 0 && owner < seats ? owner : null)
        : One<int?>([null, .. Enumerable.Range(0, attribute.Values.Length).Select(v => (int?)v)]);

    private static Gen<Card?> Card(Sheet sheet, KindFacts kind) => kind.Kind.Family == KindFamily.Card
        ? One<Card?>([null, .. sheet.Cards(kind.Kind).Rows.Select(r => r.Card)])
        : Gen.Const((Card?)null);

    private static Gen<long?> Mark(Sheet sheet, Mark mark, int seats)
    {
        long most = mark.Sort.Kind switch
        {
            SortKind.Number => mark.Highest!.Value,
            SortKind.Player => seats - 1,
            SortKind.Space => sheet.Boards[0].Spaces.Length - 1,
            _ => 1,
        };
        return Gen.Select(Gen.Bool, Gen.Long[mark.Lowest ?? 0, most], (given, value) => given ? value : (long?)null);
    }

    private static Gen<ImmutableArray<TTo>> Each<TFrom, TTo>(ImmutableArray<TFrom> from, Func<TFrom, Gen<TTo>> gen) =>
        from.Aggregate(Gen.Const(ImmutableArray<TTo>.Empty), (all, item) => Gen.Select(all, gen(item), (done, next) => done.Add(next)));

    private static Gen<T> One<T>(params T[] items) => Gen.Int[0, items.Length - 1].Select(i => items[i]);
}
