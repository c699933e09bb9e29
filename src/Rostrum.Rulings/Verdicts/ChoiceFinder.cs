using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Telling;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <summary>Finds what the words in the gaps of a phrase stand for: the shortest name that tells a candidate.</summary>
/// <remarks>A piece or a card that is not where the action would take it from is laid there, and remembered as assumed.</remarks>
internal sealed class ChoiceFinder(PhraseMatch match, Position position, SourceSpan at, DiagnosticBag problems)
{
    private readonly Naming _naming = new(position.Sheet, position.Me);
    private readonly List<Value?> _chosen = [];
    private readonly List<string> _assumed = [];
    private Position _position = position;

    private Sheet Sheet => _position.Sheet;

    /// <summary>The action with its choices; null where a gap names nothing, which is reported.</summary>
    public Proposal? Find()
    {
        foreach (ActionChoice choice in match.Action.Choices)
        {
            if (choice.Amount == ChoiceAmount.Given || !match.Gaps.TryGetValue(choice.Name, out string? words))
            {
                _chosen.Add(null);
                continue;
            }

            if (Choose(choice, words) is not { } value)
            {
                return null;
            }

            _chosen.Add(value);
        }

        return new Proposal(match.Action, _position, [.. _chosen], [.. _assumed]);
    }

    private Value? Choose(ActionChoice choice, string words)
    {
        Value.Many domain = Domain(choice);
        if (choice.Amount == ChoiceAmount.One)
        {
            return One(choice, words, domain, []);
        }

        string[] names = [.. words.Split([" and ", ", "], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
        if (choice.Amount == ChoiceAmount.Exactly && names.Length != choice.Number)
        {
            problems.Add(RulingProblems.WrongNumber(at, choice.Name, choice.Number, names.Length));
            return null;
        }

        var values = new List<Value>();
        foreach (string name in names)
        {
            if (One(choice, name, domain, values) is not { } value)
            {
                return null;
            }

            values.Add(value);
        }

        return Value.Certain(values, isList: true);
    }

    // What may be chosen, earlier choices known.
    private Value.Many Domain(ActionChoice choice)
    {
        var evaluator = new Evaluator(_position, _position.Me, Setting.First, new SortedSet<int>());
        Value[] frame = Evaluator.Frame(match.Action.FrameSize);
        for (int i = 0; i < _chosen.Count; i++)
        {
            ActionChoice earlier = match.Action.Choices[i];
            frame[earlier.Slot] = _chosen[i] ?? evaluator.Evaluate(earlier.From, frame);
        }

        return Evaluator.AsMany(evaluator.Evaluate(choice.From, frame));
    }

    private Value? One(ActionChoice choice, string words, Value.Many domain, List<Value> taken)
    {
        Value? named = domain.Members.Select(m => m.Value).FirstOrDefault(v => Names(v).Any(n => Same(n, words)))
            ?? OfSort(choice.From.Sort.Element ?? choice.Sort, words, domain);
        if (named is not null)
        {
            return named;
        }

        if (Thing(choice, words, domain, taken) is { } thing)
        {
            return thing;
        }

        problems.Add(RulingProblems.NotAChoice(at, words, choice.Name, NearSpelling.Find(words, domain.Members.SelectMany(m => Names(m.Value)))));
        return null;
    }

    private static bool Same(string name, string words) => string.Equals(name, words, StringComparison.OrdinalIgnoreCase);

    private string[] Names(Value value) => value switch
    {
        Value.SpaceAt space => [Sheet.Boards[space.Board].Spaces[space.Index].Name.Name],
        Value.SlotAt slot => [_naming.Of(slot), $"{slot.Index + 1}"],
        Value.LineAt line => [_naming.Of(line), _naming.Of(line).Split(' ')[^1]],
        Value.PlayerAt player => [_naming.Seat(player.Seat), $"seat {player.Seat + 1}"],
        Value.ThingAt { Thing.Card: { } card } => [card.Name],
        Value.ThingAt => [],
        _ => [_naming.Of(value)],
    };

    // A name that is none of the domain's: a space elsewhere on the board, a number, a direction.
    private Value? OfSort(Sort sort, string words, Value.Many domain)
    {
        switch (sort.Kind)
        {
            case SortKind.Space:
                int first = domain.Members.Select(m => m.Value).OfType<Value.SpaceAt>().FirstOrDefault()?.Board ?? 0;
                return Enumerable.Range(0, Sheet.Boards.Length).OrderByDescending(b => b == first).SelectMany(b => Sheet.Boards[b].Spaces
                    .Where(s => Same(s.Name.Name, words)).Select(s => new Value.SpaceAt(b, Sheet.Boards[b].Place.EachPlayer ? _position.Me : 0, s.Name.Index))).FirstOrDefault();
            case SortKind.Number when long.TryParse(words, System.Globalization.CultureInfo.InvariantCulture, out long number):
                return Value.Of(number);
            case SortKind.Truth when words is "yes" or "no":
                return Value.Of(words == "yes");
            case SortKind.Player:
                return Enumerable.Range(0, _position.Seats).Select(s => new Value.PlayerAt(s)).FirstOrDefault(p => Names(p).Any(n => Same(n, words)));
            default:
                return null;
        }
    }

    private Value? Thing(ActionChoice choice, string words, Value.Many domain, List<Value> taken)
    {
        if ((choice.From.Sort.Element ?? choice.Sort).Kind is not (SortKind.Thing or SortKind.Any) || LookOf(words) is not { } look || (look.Kind is null && look.Card is null))
        {
            return null;
        }

        var evaluator = new Evaluator(_position, _position.Me, Setting.First, new SortedSet<int>());
        Value? there = domain.Members.Where(m => m.IsCertain).Select(m => m.Value).FirstOrDefault(v => !taken.Contains(v) && evaluator.HasLook(v, look).Is == Kleene.Yes);
        Value? perhaps = domain.Members.Select(m => m.Value).FirstOrDefault(v => v is Value.ThingAt { Index: >= 0, Spot.Kind: SpotKind.Slot } && !taken.Contains(v) && evaluator.HasLook(v, look).Is == Kleene.Unknown);
        return there ?? (perhaps is Value.ThingAt at ? TakenFor(at, look) : AtHand(choice, look, domain));
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

    private Value AtHand(ActionChoice choice, Look look, Value.Many domain)
    {
        Thing thing = look.Card is { } card ? Things.Card(Sheet, card) : Things.Fresh(Sheet, look.Kind!, look.Values, _position.Me);
        Spot spot = Source(choice.From, isCard: look.Card is not null, isOpen: domain.More != 0 || domain.Members.Any(m => !m.IsCertain));
        if (spot.Kind == SpotKind.Nowhere)
        {
            return new Value.ThingAt(thing, Spot.Nowhere, 0);
        }

        return Lay(spot, spot.In(_position).Things.Length, thing, look);
    }

    private Value.ThingAt Lay(Spot spot, int index, Thing thing, Look look)
    {
        Stack there = spot.In(_position);
        _position = spot.Put(_position, there with { Things = index < there.Things.Length ? there.Things.SetItem(index, thing) : there.Things.Add(thing) });
        string place = _naming.Of(new Value.PlaceAt(Sheet.Places[spot.Place].Place, spot.Seat));
        _assumed.Add($"{(look.Card is null ? Prose.A(_naming.Look(thing)) : look.Card.Name)} in {place}");
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
            return Spot.Nowhere;
        }

        ImmutableArray<Stack> parts = _position.Places[spot.Place][spot.Seat];
        int open = parts.IndexOf(parts.FirstOrDefault(p => !p.IsGiven) ?? parts[0]);
        return spot with { Part = open };
    }

    private static Term.PlaceOf? Holder(Term from) => from switch
    {
        Term.PlaceOf place => place,
        Term.Filtered filtered => Holder(filtered.Through.Domain),
        Term.Within within => Holder(within.Container),
        Term.Apply { Operation.Id: Op.ThingsIn or Op.SlotsOf } held => Holder(held.Argument(0)),
        _ => null,
    };
}
