using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <summary>What lies in a supply. No position says it: it is what no other place holds, and so it is known where all else is given.</summary>
internal sealed class SupplyRest
{
    // Far more than anybody counts one by one.
    private const int MostListed = 500;

    private readonly Position _position;
    private readonly SheetIndex _index;
    private readonly Dictionary<int, Value.Many> _known = [];
    private readonly ImmutableArray<Thing> _seen;
    private readonly bool _isEachThingKnown;

    /// <summary>The supplies of a position.</summary>
    public SupplyRest(Position position)
    {
        (_position, _index) = (position, SheetIndex.Of(position.Sheet));
        _seen = [.. position.Things];
        _isEachThingKnown = _seen.All(t => t.Kind is not null);
    }

    /// <summary>The things in a supply.</summary>
    /// <param name="spot">The supply.</param>
    /// <param name="owner">The 0-based seat of its owner; <see cref="Thing.Nobody"/> for that of the table.</param>
    public Value.Many In(Spot spot, int owner)
    {
        if (!_known.TryGetValue(owner, out Value.Many? known))
        {
            _known[owner] = known = Found(spot, owner);
        }

        return known;
    }

    private Value.Many Found(Spot spot, int owner)
    {
        var members = new List<Thing>();
        long more = 0;
        foreach (KindFacts kind in _position.Sheet.Kinds.Where(k => k.Supply.EachPlayer == (owner != Thing.Nobody) && _index.SupplyWaysOf(k.Kind).MayLieThere))
        {
            if (Left(kind, owner) is not { } left)
            {
                return Value.Open(Blame.Of(new Blank(spot, 0, Aspect.Content)), isList: true);
            }

            members.AddRange(left.SelectMany(l => Enumerable.Repeat(l.Thing, (int)Math.Min(l.Count, MostListed))));
            more += left.Sum(l => Math.Max(0, l.Count - MostListed));
        }

        Value.Many listed = Value.Certain(members.Select((t, i) => new Value.ThingAt(t, spot, i)), isList: true);
        return more == 0 ? listed : listed with { More = more, Blame = Blame.Of(GapKind.Limit, $"more than {MostListed} of a kind in the supply are not told one by one") };
    }

    // So many things of each look are left; null where nobody can say.
    private List<(Thing Thing, long Count)>? Left(KindFacts kind, int owner)
    {
        Thing[] there = [.. _seen.Where(t => ReferenceEquals(t.Kind, kind.Kind) && t.Owner == owner)];
        bool isClear = _isEachThingKnown && !_index.SupplyWaysOf(kind.Kind).MayHideElsewhere && _seen.All(t => !ReferenceEquals(t.Kind, kind.Kind) || (t.Owner is not null && Enumerable.Range(0, t.Values.Length).All(i => ValueOf(kind, t, i) is not null)));
        if (!isClear || kind.Supply.Total is not { } total || !IsAllGiven(kind.Kind))
        {
            return null;
        }

        // Where the sheet counts looks, what is left of each is known; where it counts only the kind, what is left has no look of its own.
        if (kind.Supply.OfEach.IsEmpty)
        {
            return total < there.Length ? null : [(Things.Fresh(_position.Sheet, kind.Kind, [], owner), total - there.Length)];
        }

        var left = kind.Supply.OfEach.Select(r => (Thing: Things.Fresh(_position.Sheet, kind.Kind, r.Values, owner), Count: r.Count - there.Count(t => Shows(kind, t, r)))).ToList();
        bool addsUp = left.TrueForAll(l => l.Count >= 0) && left.Sum(l => l.Count) == total - there.Length;
        return addsUp ? left : null;
    }

    private static bool Shows(KindFacts kind, Thing thing, SupplyRow row) =>
        row.Values.All(v => kind.Attributes.Select((a, i) => (a, i)).Any(a => ReferenceEquals(a.a.Attribute, v.Attribute) && ValueOf(kind, thing, a.i) == v.Index));

    // An attribute with one value need not be given.
    private static int? ValueOf(KindFacts kind, Thing thing, int attribute) => thing.Values[attribute] ?? (kind.Attributes[attribute].Values.Length == 1 ? 0 : null);

    private bool IsAllGiven(Kind kind)
    {
        Sheet sheet = _position.Sheet;
        return _position.Boards.Where((_, i) => MayHold(sheet.Boards[i].Holds, kind)).Concat(_position.Places.Where((_, i) => MayHold(sheet.Places[i].Holds, kind)))
            .SelectMany(p => p).SelectMany(s => s).All(s => s.IsGiven);
    }

    private static bool MayHold(ImmutableArray<Kind> holds, Kind kind) => holds.IsEmpty || holds.Any(h => ReferenceEquals(h, kind));
}
