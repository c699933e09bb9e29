using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>What lies in places, on lines, in slots and on spaces.</content>
internal sealed partial class Evaluator
{
    private SupplyRest? _supplies;

    /// <summary>A value as a set or list; unknown is any set.</summary>
    internal static Value.Many AsMany(Value value) => value switch
    {
        Value.Many many => many,
        Value.Unknown unknown => Value.Open(unknown.Blame, isList: false),
        _ => Value.Certain([], isList: false),
    };

    private Value.Many Many(Term term, Value[] frame) => AsMany(Evaluate(term, frame));

    private Value Within(Term.Within within, Value[] frame)
    {
        Value container = Evaluate(within.Container, frame);
        Value held = within.Look.SpotNoun switch
        {
            SlotNoun => SlotsOf(container),
            null => ThingsOf(container),
            _ => SpacesOf(container),
        };
        return Sifted(AsMany(held), v => HasLook(v, within.Look));
    }

    /// <summary>The elements for which a test holds, those included that may belong.</summary>
    private static Value.Many Sifted(Value.Many many, Func<Value, Value.Truth> test)
    {
        var kept = ImmutableArray.CreateBuilder<Member>(many.Members.Length);
        foreach (Member member in many.Members)
        {
            Value.Truth belongs = And(new Value.Truth(member.Is, member.Blame), test(member.Value));
            if (belongs.Is != Kleene.No)
            {
                kept.Add(new Member(member.Value, belongs.Is, belongs.Blame));
            }
        }

        return many with { Members = kept.ToImmutable() };
    }

    private Value TheOnly(Term.TheOnly only, Value[] frame)
    {
        Value.Many all = AsMany(Within(only.All, frame));
        if (all.Members.IsEmpty && all.More == 0)
        {
            return Value.None;
        }

        if (all.IsCertain)
        {
            return all.Members.Length == 1
                ? all.Members[0].Value
                : new Value.Unknown(Blame.Of(GapKind.Limit, $"'the {only.All.Look.Words}' fits {all.Members.Length} of them, so nobody can say which is meant"));
        }

        return new Value.Unknown(all.WhyUnknown);
    }

    /// <summary>The things in a value that holds things, lowest first.</summary>
    internal Value ThingsOf(Value container) => container switch
    {
        Value.SpaceAt or Value.SlotAt => ThingsOn(SpotOf(container)),
        Value.PlaceAt place => ThingsInPlace(place),
        Value.LineAt or Value.FitAt => Once(Flat(AsMany(SpacesOf(container)), ThingsOf)),
        Value.Many many => Once(Flat(many, v => v is Value.ThingAt ? Value.Certain([v], isList: true) : ThingsOf(v))),
        Value.ThingAt => Value.Certain([container], isList: true),
        Value.Unknown unknown => Value.Open(unknown.Blame, isList: true),
        _ => Value.Certain([], isList: true),
    };

    // What lies in no place that is given may lie in the supply, as long as not all of them are met.
    private Value.Many AllOf(Term.AllOf all)
    {
        IEnumerable<Value> places = Sheet.Boards.Select(b => b.Place).Concat(Sheet.Places.Select(p => p.Place))
            .SelectMany(p => Enumerable.Range(0, p.EachPlayer ? position.Seats : 1).Select(Value (seat) => new Value.PlaceAt(p, seat)));
        Value.Many met = Flat(Value.Certain(places, isList: false), ThingsOf) with { IsList = false };
        Value.Many ofKind = Sifted(met, v => HasLook(v, all.Look with { Values = [], Traits = [], Owner = LookOwner.Anyone }));
        Supply supply = Sheet.KindOf(all.Look.Kind!).Supply;
        long? there = supply.EachPlayer ? supply.Total * position.Seats : supply.Total;
        Value.Many wanted = Sifted(ofKind, v => HasLook(v, all.Look));
        return there <= ofKind.Members.Count(m => m.IsCertain)
            ? wanted with { More = 0, Blame = Blame.None }
            : wanted with { More = there - ofKind.Members.Count(m => m.IsCertain), Blame = wanted.Blame + Blame.Of(new Blank(new Spot(SpotKind.Outside, -1, 0, 0), 0, Aspect.Content)) };
    }

    private Value ThingsInPlace(Value.PlaceAt place)
    {
        int board = _index.BoardOf(place.Place);
        if (board >= 0)
        {
            return Once(Flat(AsMany(SpacesOf(place)), ThingsOf));
        }

        int at = _index.PlaceOf(place.Place);
        if (at < 0)
        {
            var outside = new Spot(SpotKind.Outside, place.Place.Index, place.Seat, 0);
            return place.Place.Form == PlaceForm.Supply
                ? (_supplies ??= new SupplyRest(position)).In(outside, place.Seat)
                : Value.Open(Blame.Of(new Blank(outside, 0, Aspect.Content)), isList: true);
        }

        IEnumerable<Value> parts = Enumerable.Range(0, position.Places[at][place.Seat].Length).Select(i => new Value.SlotAt(at, place.Seat, i));
        return Flat(Value.Certain(parts, isList: true), ThingsOf);
    }

    // A piece that lies on several of the spaces is met on each of them and is one.
    private static Value.Many Once(Value.Many many) => many.Members.Any(m => m.Value is Value.ThingAt { Thing.Covers.IsEmpty: false })
        ? many with { Members = [.. many.Members.OrderBy(m => !m.IsCertain).DistinctBy(m => m.Value is Value.ThingAt { Thing.Covers.IsEmpty: false } at ? (object)(at.Spot, at.Index) : new object())] }
        : many;

    private Value.Many ThingsOn(Spot spot)
    {
        Stack stack = spot.In(position);
        var members = ImmutableArray.CreateBuilder<Member>();
        for (int i = 0; i < stack.Things.Length; i++)
        {
            members.Add(new Member(ThingOn(spot, stack, i), Kleene.Yes, Blame.None));
        }

        if (stack.IsGiven)
        {
            return new Value.Many(members.ToImmutable(), 0, true, Blame.None);
        }

        Blame why = Blame.Of(new Blank(spot, 0, Aspect.Content));
        if (MostOn(spot) == 1)
        {
            members.Add(new Member(new Value.ThingAt(AnyThing, spot, -1), Kleene.Unknown, why));
            return new Value.Many(members.ToImmutable(), 0, true, Blame.None);
        }

        return new Value.Many(members.ToImmutable(), MostOn(spot) ?? MostInHeap(spot), true, why);
    }

    /// <summary>The most things that a space holds; null where nobody says.</summary>
    internal int? MostOn(Spot spot) => spot.Kind == SpotKind.Space ? Sheet.Boards[spot.Place].MostInSpace : null;

    // No heap holds more than there is in the game.
    private long? MostInHeap(Spot spot)
    {
        ImmutableArray<Kind> holds = spot.Kind == SpotKind.Slot ? Sheet.Places[spot.Place].Holds : [];
        if (holds.IsEmpty)
        {
            return null;
        }

        long sum = 0;
        foreach (Supply supply in holds.Select(k => Sheet.KindOf(k).Supply))
        {
            if (supply.Total is not { } total)
            {
                return null;
            }

            sum += supply.EachPlayer ? total * position.Seats : total;
        }

        return sum;
    }

    /// <summary>All elements of all values that a function gives, in order.</summary>
    private static Value.Many Flat(Value.Many outer, Func<Value, Value> inner)
    {
        var members = ImmutableArray.CreateBuilder<Member>();
        long? more = outer.More == 0 ? 0 : null;
        Blame why = outer.Blame;
        foreach (Member member in outer.Members)
        {
            Value.Many part = AsMany(inner(member.Value));
            more += part.More;
            why += part.Blame;
            members.AddRange(part.Members.Select(m => member.IsCertain ? m : m with { Is = Kleene.Unknown, Blame = m.Blame + member.Blame }));
        }

        return new Value.Many(members.ToImmutable(), more, outer.IsList, why);
    }

    /// <summary>The spaces of a board, a line or a fit, in reading order (a line from its first space on).</summary>
    internal Value SpacesOf(Value container) => container switch
    {
        Value.PlaceAt place => _index.BoardOf(place.Place) is var board && board >= 0
            ? Spaces(Enumerable.Range(0, Sheet.Boards[board].Spaces.Length), board, place.Seat, isList: true)
            : Value.Certain([], isList: true),
        Value.LineAt line => Spaces(line.Family.Lines[line.Index].Spaces, line.Board, line.Seat, isList: true),
        Value.FitAt fit => Spaces(fit.Placement.Spaces, fit.Board, fit.Seat, isList: true),
        Value.SpaceAt => Value.Certain([container], isList: true),
        Value.ThingAt { Spot.Kind: SpotKind.Space } at => Spaces(at.Thing.Covers.IsEmpty ? [at.Spot.Part] : at.Thing.Covers, at.Spot.Place, at.Spot.Seat, isList: true),
        Value.Many many => Flat(many, v => v is Value.SpaceAt ? Value.Certain([v], isList: true) : SpacesOf(v)),
        Value.Unknown unknown => Value.Open(unknown.Blame, isList: true),
        _ => Value.Certain([], isList: true),
    };

    private static Value.Many Spaces(IEnumerable<int> spaces, int board, int seat, bool isList) =>
        Value.Certain(spaces.Select(s => new Value.SpaceAt(board, seat, s)), isList);

    /// <summary>The slots of a row.</summary>
    internal Value SlotsOf(Value container) => container switch
    {
        Value.PlaceAt place when _index.PlaceOf(place.Place) is var at && at >= 0 =>
            Value.Certain(Enumerable.Range(0, Sheet.Places[at].Slots).Select(i => new Value.SlotAt(at, place.Seat, i)), isList: true),
        Value.Many many => many,
        Value.SlotAt => Value.Certain([container], isList: true),
        Value.Unknown unknown => Value.Open(unknown.Blame, isList: true),
        _ => Value.Certain([], isList: true),
    };

    /// <summary>Where the things of a space, slot or heap lie.</summary>
    internal Spot SpotOf(Value value) => value switch
    {
        Value.SpaceAt space => new Spot(SpotKind.Space, space.Board, space.Seat, space.Index),
        Value.SlotAt slot => new Spot(SpotKind.Slot, slot.Place, slot.Seat, slot.Index),
        Value.PlaceAt place when _index.PlaceOf(place.Place) is var at && at >= 0 => new Spot(SpotKind.Slot, at, place.Seat, 0),
        Value.PlaceAt place => new Spot(SpotKind.Outside, place.Place.Index, place.Seat, 0),
        _ => Spot.Nowhere,
    };
}
