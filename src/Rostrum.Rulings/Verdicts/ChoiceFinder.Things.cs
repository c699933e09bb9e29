using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <content>Pieces and cards: those that are there, and those that are taken to be at hand.</content>
internal sealed partial class ChoiceFinder
{
    private static bool IsThing(ActionChoice choice) => (choice.From.Sort.Element ?? choice.Sort).Kind is SortKind.Thing or SortKind.Any;

    private Value? Thing(ActionChoice choice, string words, Value.Many domain, List<Value> taken)
    {
        if (!IsThing(choice) || LookOf(words) is not { } look || (look.Kind is null && look.Card is null))
        {
            return null;
        }

        var evaluator = new Evaluator(_position, _position.Me, Setting.First, new SortedSet<int>());
        Value? there = domain.Members.Where(m => m.IsCertain).Select(m => m.Value).FirstOrDefault(v => !taken.Contains(v) && evaluator.HasLook(v, look).Is == Kleene.Yes);
        Value? perhaps = domain.Members.Select(m => m.Value).FirstOrDefault(v => v is Value.ThingAt { Index: >= 0, Spot.Kind: SpotKind.Slot } && !taken.Contains(v) && evaluator.HasLook(v, look).Is == Kleene.Unknown);
        return there ?? (perhaps is Value.ThingAt at ? TakenFor(at, look) : AtHand(choice, look, domain, taken.Count));
    }

    // One of the things there may be the one that is meant: it is taken to be so, rather than laying another beside it.
    private Value TakenFor(Value.ThingAt at, Look look)
    {
        Thing meant = look.Card is { } card ? Things.Card(Sheet, card) : Things.Fresh(Sheet, look.Kind!, look.Values, _position.Me);
        Thing thing = meant with
        {
            Values = at.Thing.Kind is null ? meant.Values : [.. at.Thing.Values.Select((v, i) => v ?? meant.Values[i])],
            Owner = at.Thing.Owner ?? meant.Owner,
            IsFaceUp = at.Thing.IsFaceUp ?? meant.IsFaceUp,
        };
        return Lay(at.Spot, at.Index, thing, look);
    }

    private Look? LookOf(string words)
    {
        foreach (Card card in Sheet.CardTables.SelectMany(t => t.Rows).Select(r => r.Card).Where(c => Same(c.Name, words)))
        {
            return new Look(card.Kind, [], card, LookOwner.Anyone, [], card.Name);
        }

        var quiet = new DiagnosticBag();
        Look? look = OutsideFormula.Look(Sheet, FormulaText.Of(words, "action"), quiet);
        return quiet.HasErrors ? null : look;
    }

    private Value AtHand(ActionChoice choice, Look look, Value.Many domain, int taken)
    {
        Thing thing = look.Card is { } card ? Things.Card(Sheet, card) : Things.Fresh(Sheet, look.Kind!, look.Values, _position.Me);
        Spot spot = Source(choice.From, isCard: look.Card is not null, isOpen: domain.More != 0 || domain.Members.Any(m => !m.IsCertain));
        bool mayLie = Held(choice) is var held && (held.IsEmpty || held.Contains(look.Card?.Kind ?? look.Kind!));
        if (!mayLie)
        {
            _impossible.Add(match.Action.Choices.IndexOf(choice));
        }

        if (mayLie && spot.Kind == SpotKind.Outside)
        {
            return FromOutside(choice, look, new Value.ThingAt(thing, spot, taken));
        }

        return mayLie && spot.Kind == SpotKind.Slot ? Lay(spot, spot.In(_position).Things.Length, thing, look) : new Value.ThingAt(thing, Spot.Nowhere, 0);
    }

    // A position never says what lies in the supply: it is what no other place holds. So a piece is there for certain only where all else is given.
    private Value.ThingAt FromOutside(ActionChoice choice, Look look, Value.ThingAt thing)
    {
        _granted.Add(match.Action.Choices.IndexOf(choice));
        var supply = thing.Thing.Kind is { } kind && look.Card is null ? new SupplyLooks(Sheet.KindOf(kind)) : null;
        bool isThere = supply is not null && thing.Spot.Place != -2 && IsAllGiven(thing.Thing.Kind!) && supply.IsLeft(thing.Thing, [.. _before.Things]);
        if (!isThere)
        {
            Assume(thing.Thing, look, thing.Spot.Place == -2 ? "the box" : "the supply", "");
        }

        return thing;
    }

    private bool IsAllGiven(Kind kind)
    {
        bool isKnown = _before.Things.All(t => t.Kind is not null && (!ReferenceEquals(t.Kind, kind) || t.Values.All(v => v is not null)));
        IEnumerable<Stack> boards = _before.Boards.SelectMany(b => b).SelectMany(s => s);
        IEnumerable<Stack> places = _before.Places.Where((_, i) => Sheet.Places[i].Holds is var held && (held.IsEmpty || held.Contains(kind))).SelectMany(p => p).SelectMany(s => s);
        return isKnown && boards.Concat(places).All(s => s.IsGiven);
    }

    private void Assume(Thing thing, Look look, string place, string instead)
    {
        string told = look.Card is null ? Prose.A(_naming.Look(thing)) : look.Card.Name;
        string beyond = thing.Kind is { } kind && look.Card is null && new SupplyLooks(Sheet.KindOf(kind)).IsUsedUp(thing, [.. _before.Things]) ? ", although the game has no more of them" : "";
        _assumed.Add($"{told} in {place}{instead}{beyond}");
    }

    private Value.ThingAt Lay(Spot spot, int index, Thing thing, Look look)
    {
        Stack there = spot.In(_position);
        _position = spot.Put(_position, there with { Things = index < there.Things.Length ? there.Things.SetItem(index, thing) : there.Things.Add(thing) });
        string place = _naming.Of(new Value.PlaceAt(Sheet.Places[spot.Place].Place, spot.Seat));
        Assume(thing, look, place, there.IsGiven && index >= there.Things.Length ? $", where the position has {new PositionWords(_before).Content(there)}" : "");
        return new Value.ThingAt(thing, spot, index);
    }

    // Where the thing is laid. A card that is not where all cards are given is not there; a piece is always taken to be at hand.
    private Spot Source(Term from, bool isCard, bool isOpen)
    {
        if ((isCard && !isOpen) || Holder(from) is not { } place)
        {
            return Spot.Nowhere;
        }

        var evaluator = new Evaluator(_position, _position.Me, Setting.First, new SortedSet<int>());
        Spot spot = evaluator.SpotOf(evaluator.Evaluate(place, Evaluator.Frame(match.Action.FrameSize)));
        if (spot.Kind != SpotKind.Slot)
        {
            return spot;
        }

        ImmutableArray<Stack> parts = _position.Places[spot.Place][spot.Seat];
        int open = parts.IndexOf(parts.FirstOrDefault(p => !p.IsGiven) ?? parts[0]);
        return spot with { Part = open };
    }

    // The kinds that may lie where the choice takes from; empty where the sheet does not say.
    private ImmutableArray<Kind> Held(ActionChoice choice) =>
        Holder(choice.From) is { } from && Sheet.Places.FirstOrDefault(p => ReferenceEquals(p.Place, from.Place)) is { } facts ? facts.Holds : [];

    private static Term.PlaceOf? Holder(Term from) => from switch
    {
        Term.PlaceOf place => place,
        Term.Filtered filtered => Holder(filtered.Through.Domain),
        Term.Within within => Holder(within.Container),
        Term.Apply { Operation.Id: Op.ThingsIn or Op.SlotsOf } held => Holder(held.Argument(0)),
        _ => null,
    };
}
