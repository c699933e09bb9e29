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
    private readonly ImmutableArray<Thing> _seen;
    private readonly bool _isEachThingKnown;

    /// <summary>The supplies of a position.</summary>
    public SupplyRest(Position position)
    {
        _position = position;
        _seen = [.. position.Things];
        _isEachThingKnown = _seen.All(t => t.Kind is not null);
    }

    /// <summary>The things in a supply.</summary>
    /// <param name="spot">The supply.</param>
    /// <param name="owner">The 0-based seat of its owner; <see cref="Thing.Nobody"/> for that of the table.</param>
    public Value.Many In(Spot spot, int owner)
    {
        var members = new List<Thing>();
        long more = 0;
        foreach (KindFacts kind in _position.Sheet.Kinds.Where(k => k.Supply.EachPlayer == (owner != Thing.Nobody) && (!HasHome(k.Kind) || IsCarried(k.Kind, PlaceForm.Supply))))
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
        bool isClear = _isEachThingKnown && !MayHideElsewhere(kind.Kind) && _seen.All(t => !ReferenceEquals(t.Kind, kind.Kind) || (t.Owner is not null && Enumerable.Range(0, t.Values.Length).All(i => ValueOf(kind, t, i) is not null)));
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

    // Things that begin elsewhere come to no supply unless a step carries them there.
    private bool HasHome(Kind kind) => _position.Sheet.Places.Any(p =>
        (p.Starts is { } look && ReferenceEquals(look.Kind, kind)) || (p.Place.Form is PlaceForm.Bag or PlaceForm.Deck && !p.StartsEmpty && p.Holds.Contains(kind)));

    // In the box, or in a supply that is not its own; nor does a supply say whether its things were turned before they came back.
    private bool MayHideElsewhere(Kind kind) => _position.Sheet.KindOf(kind).Attributes.Any(a => a.Attribute.IsState) || IsCarried(kind, PlaceForm.Box)
        || IsCarried(kind, PlaceForm.Supply, p => _position.Sheet.KindOf(kind).Supply.EachPlayer == p.Owner is null)
        || _position.Sheet.Places.Any(p => p.Starts is { Kind: null });

    // Whether a step may carry things of a kind into the box or into a supply.
    private bool IsCarried(Kind kind, PlaceForm form, Func<Term.PlaceOf, bool>? into = null) =>
        _position.Sheet.StepLists.Where(l => !l.IsDefault).SelectMany(l => l).Any(s => Carries(s, kind, form, into));

    private static bool Carries(Step step, Kind kind, PlaceForm form, Func<Term.PlaceOf, bool>? into)
    {
        if (step.Inner.Concat(step.Otherwise).Any(s => Carries(s, kind, form, into)))
        {
            return true;
        }

        // Terms of a move: amount, things or a look, from, to.
        Term? goal = step.Kind == StepKind.Move ? step.Terms[3] : step.Kind is StepKind.Deal or StepKind.Push ? step.Terms[^1] : null;
        bool isOthers = step.Kind == StepKind.Move && Moved(step.Terms[1]) is { } moved && !ReferenceEquals(moved, kind);
        return !isOthers && goal is Term.PlaceOf place && place.Place.Form == form && (into is null || into(place));
    }

    // The kind of what a step moves; null where the step does not say.
    private static Kind? Moved(Term things) => things is Term.LookOf look ? look.Look.Kind : TermParts.All(things).OfType<Term.Within>().Select(w => w.Look.Kind).FirstOrDefault();
}
