using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tests.Outside;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Games;

/// <summary>A fact of a Kiln Night table that is taken away, and the ways to give it again, worked out apart from the evaluator.</summary>
/// <param name="Name">Of a shelf or a heap.</param>
/// <param name="Fillings">What may be there.</param>
internal sealed record KilnNightBlank(string Name, Func<Position, Position> Taken, ImmutableArray<Func<Position, Position>> Fillings);

/// <summary>Takes facts away from full tables.</summary>
internal static class KilnNightBlanks
{
    private const int Glaze = 1;

    /// <summary>The glaze of the ware on a shelf; null where the shelf is free.</summary>
    public static KilnNightBlank? GlazeOf(HandScore table, int shelf)
    {
        Position full = KilnNightCases.Position(table);
        if (full.At(0, 0, shelf).Things is not [var ware])
        {
            return null;
        }

        return Shelf(full, shelf, With(ware, null), [.. Enumerable.Range(0, 3).Select(g => With(ware, g))]);
    }

    /// <summary>All that is on a shelf: nothing, or any of the 24 sorts of ware.</summary>
    public static KilnNightBlank ContentOf(HandScore table, int shelf)
    {
        Position full = KilnNightCases.Position(table);
        Kind ware = full.Sheet.Kinds.Single(k => k.Kind.Name == "ware").Kind;
        IEnumerable<Stack> all = from form in Enumerable.Range(0, 4)
                                 from glaze in Enumerable.Range(0, 3)
                                 from wear in Enumerable.Range(0, 2)
                                 select new Stack([new Thing(ware, [form, glaze, wear], null, Thing.Nobody, true)]);
        return Shelf(full, shelf, Stack.NotGiven, [Stack.Empty, .. all]);
    }

    /// <summary>The sticks: none to the thirty of the box.</summary>
    public static KilnNightBlank Sticks(HandScore table) => Heap(table, "sticks", n => table with { Sticks = n }, 30);

    /// <summary>The shards: none to eight.</summary>
    public static KilnNightBlank Shards(HandScore table) => Heap(table, "shards", n => table with { Shards = n }, 8);

    /// <summary>Every position that fills all blanks.</summary>
    public static IEnumerable<Position> Completions(Position blanked, IEnumerable<KilnNightBlank> blanks) =>
        blanks.Aggregate((IEnumerable<Position>)[blanked], (sum, b) => sum.SelectMany(p => b.Fillings.Select(f => f(p))));

    private static Stack With(Thing ware, int? glaze) => new([ware with { Values = ware.Values.SetItem(Glaze, glaze) }]);

    private static KilnNightBlank Shelf(Position full, int shelf, Stack taken, ImmutableArray<Stack> fillings) =>
        new(full.Sheet.Boards[0].Spaces[shelf].Name.Name, p => p.With(0, 0, shelf, taken), [.. fillings.Select(f => (Func<Position, Position>)(p => p.With(0, 0, shelf, f)))]);

    private static KilnNightBlank Heap(HandScore table, string name, Func<int, HandScore> with, int most)
    {
        ImmutableArray<PlaceFacts> places = KilnNightCases.Position(table).Sheet.Places;
        int place = places.IndexOf(places.Single(p => p.Place.Name == name));
        return new KilnNightBlank(
            name,
            p => p.WithPlace(place, 0, 0, Stack.NotGiven),
            [.. Enumerable.Range(0, most + 1).Select(n => (Func<Position, Position>)(p => p.WithPlace(place, 0, 0, KilnNightCases.Position(with(n)).Places[place][0][0])))]);
    }
}
