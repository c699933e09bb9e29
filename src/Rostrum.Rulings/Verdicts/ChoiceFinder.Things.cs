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

    private Value? Thing(ActionChoice choice, SourceSpan span, Value.Many domain, List<Value> taken)
    {
        (string words, string? on) = Placed(Prose.Fold(span.Text));
        if (IsThing(choice) && domain.Members.Select(m => m.Value).LastOrDefault(v => _naming.SpacesOf(v) is [var space] && Same(space, words)) is Value.ThingAt top)
        {
            return top;
        }

        (words, int? owner) = Owned(words);
        if (!IsThing(choice) || (NumberedLook(choice, words, domain) ?? LookOf(words)) is not { } look || (look.Kind is null && look.Card is null))
        {
            return null;
        }

        var evaluator = new Evaluator(_position, _position.Me, Setting.First, new SortedSet<int>());
        Value[] all = [.. domain.Members.Select(m => m.Value).Where(v => !taken.Contains(v) && (owner is null || v is Value.ThingAt { Thing.Owner: var whose } && whose == owner) && (on is null || LiesOn(v, on)))];
        Value[] there = [.. all.Where(v => domain.Members.Any(m => m.IsCertain && m.Value == v) && evaluator.HasLook(v, look).Is == Kleene.Yes)];
        string[] kinds = [.. there.Select(Told).Distinct()];
        if (kinds.Length > 1)
        {
            problems.Add(RulingProblems.SeveralFit(span, kinds.Take(MostExamples)));
            return null;
        }

        Value? perhaps = all.FirstOrDefault(v => v is Value.ThingAt { Index: >= 0, Spot.Kind: SpotKind.Slot } && evaluator.HasLook(v, look).Is == Kleene.Unknown);
        return there.Length > 0 ? there[0] : on is not null || owner is not null ? null : perhaps is Value.ThingAt at ? TakenFor(at, look) : AtHand(choice, look, domain, taken.Count);
    }

    // A thing is told by its slot or its space; one that lies on several spaces by any of them, or by all in any order.
    private bool LiesOn(Value thing, string on) => thing is Value.ThingAt { Spot: { Kind: SpotKind.Slot } at } && Sheet.Places[at.Place].Slots > 0
        ? Names(new Value.SlotAt(at.Place, at.Seat, at.Part)).Any(slot => Same(slot, on))
        : _naming.SpacesOf(thing) is var spaces && (spaces.Any(space => Same(space, on)) || (spaces.Length > 1 && spaces.ToHashSet(StringComparer.OrdinalIgnoreCase).SetEquals(Joint().Split(on))));

    // 'pawn of seat 2' names a thing by its owner, where pieces of several players lie together.
    private (string Words, int? Owner) Owned(string named) =>
        named.LastIndexOf(" of ", StringComparison.OrdinalIgnoreCase) is var at and > 0 && new SeatWords(Sheet).NumberOf(named[(at + 4)..]) is { } number && LookOf(named) is null
            ? (named[..at], number - 1)
            : (named, null);

    // 'the ash bowl on A2' names a thing by its space.
    private static (string Words, string? On) Placed(string named)
    {
        string words = named.StartsWith("the ", StringComparison.OrdinalIgnoreCase) ? named[4..] : named;
        return words.LastIndexOf(" on ", StringComparison.OrdinalIgnoreCase) is var at and > 0 ? (words[..at], words[(at + 4)..]) : (words, null);
    }

    // Things of one look in one heap are one and the same to a player; on a board each lies for itself.
    private string Told(Value value) => value switch
    {
        Value.ThingAt { Spot.Kind: SpotKind.Space } => _naming.Of(value),
        Value.ThingAt { Thing.Card: null } thing => Prose.A(_naming.Look(thing.Thing)),
        _ => _naming.Of(value),
    };

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
        var evaluator = new Evaluator(_position, _position.Me, Setting.First, new SortedSet<int>());
        bool isNoneLeft = spot is { Kind: SpotKind.Outside, IsBox: false } && domain.IsCertain && domain.Members.All(m => evaluator.HasLook(m.Value, look).Is == Kleene.No);
        string? reason = WhyNot(choice, look, spot) ?? (isNoneLeft ? $"no {(look.Card is null ? _naming.Look(thing) : look.Card.Name)} is left in {_naming.PlaceOf(spot)}" : null);
        if (reason is not null)
        {
            _impossible.Add(match.Action.Choices.IndexOf(choice), reason);
        }

        return (reason is null ? spot.Kind : SpotKind.Nowhere) switch
        {
            SpotKind.Outside => FromOutside(choice, look, new Value.ThingAt(thing, spot, taken)),
            SpotKind.Slot => Lay(spot, spot.In(_position).Things.Length, thing, look),
            _ => new Value.ThingAt(thing, Spot.Nowhere, 0),
        };
    }

    // A kind that the place never holds, or a card of which every copy lies elsewhere.
    private string? WhyNot(ActionChoice choice, Look look, Spot spot)
    {
        Kind kind = look.Card?.Kind ?? look.Kind!;
        if (Held(choice) is { IsEmpty: false } held && !held.Contains(kind))
        {
            return $"{Prose.A(kind.Name)} never lies in {_naming.Place(Holder(choice.From)!.Place, _position.Me)}";
        }

        if (look.Card is not { } card)
        {
            return null;
        }

        Spot[] lying = [.. SpotsOf(card)];
        return lying.Length >= Sheet.Cards(card.Kind).Rows[card.Index].Count && lying.Length > 0 && lying.All(s => s != spot)
            ? $"{card.Name} lies in {_naming.PlaceOf(lying[0])}"
            : null;
    }

    private IEnumerable<Spot> SpotsOf(Card card)
    {
        IEnumerable<Spot> Among(SpotKind kind, ImmutableArray<ImmutableArray<ImmutableArray<Stack>>> all) =>
            from place in Enumerable.Range(0, all.Length)
            from seat in Enumerable.Range(0, all[place].Length)
            from part in Enumerable.Range(0, all[place][seat].Length)
            from thing in all[place][seat][part].Things.Where(t => ReferenceEquals(t.Card, card))
            select new Spot(kind, place, seat, part);

        return Among(SpotKind.Space, _before.Boards).Concat(Among(SpotKind.Slot, _before.Places));
    }

    // A position never says what lies in the supply: it is what no other place holds. So a piece is there for certain only where all else is given.
    private Value.ThingAt FromOutside(ActionChoice choice, Look look, Value.ThingAt thing)
    {
        _granted.Add(match.Action.Choices.IndexOf(choice));
        bool isThere = look.Card is null && !thing.Spot.IsBox && IsAllGiven(look.Kind!) && new SupplyLooks(Sheet.KindOf(look.Kind!)).IsLeft(thing.Thing, [.. _before.Things]);
        if (!isThere)
        {
            Assume(thing.Thing, look, thing.Spot, "");
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

    private void Assume(Thing thing, Look look, Spot spot, string instead)
    {
        string told = look.Card is null ? Prose.A(_naming.Look(thing)) : look.Card.Name;
        string beyond = thing.Kind is { } kind && look.Card is null && new SupplyLooks(Sheet.KindOf(kind)).IsUsedUp(thing, [.. _before.Things]) ? ", although the game has no more of them" : "";
        _assumed.Add($"{told} in {_naming.PlaceOf(spot)}{instead}{beyond}");
    }

    private Value.ThingAt Lay(Spot spot, int index, Thing thing, Look look)
    {
        Stack there = spot.In(_position);
        _position = spot.Put(_position, there with { Things = index < there.Things.Length ? there.Things.SetItem(index, thing) : there.Things.Add(thing) });
        Assume(thing, look, spot, there.IsGiven && index >= there.Things.Length ? $", where the position has {new PositionWords(_before).Content(there)}" : "");
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
