using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>Properties of things, cells of cards, marks, tables.</content>
internal sealed partial class Evaluator
{
    private Value Property(Term.Apply apply, Value[] frame)
    {
        Value subject = Evaluate(apply.Argument(0), frame);
        return apply.Operation.Id switch
        {
            Op.TopOf => TopOf(subject),
            Op.HeightOf => subject is Value.SpaceAt or Value.SlotAt ? HeightOf(SpotOf(subject)) : Absent(subject),
            Op.OwnerOf => OwnerOf(subject),
            Op.PlaceOfThing => PlaceOf(subject is Value.CardIs card ? CardOnTable(card.Card) : subject),
            _ => subject is Value.ThingAt { Thing.Kind: { } kind } ? ValueOf(subject, Sheet.KindOf(kind).Attributes[0].Attribute) : Absent(subject),
        };
    }

    private static Value Absent(Value subject) => subject is Value.Unknown ? subject : Value.None;

    private Value TopOf(Value spot)
    {
        if (spot is not (Value.SpaceAt or Value.SlotAt))
        {
            return Absent(spot);
        }

        Spot at = SpotOf(spot);
        Stack stack = at.In(position);
        if (!stack.IsGiven)
        {
            return new Value.Unknown(Blame.Of(new Blank(at, 0, Aspect.Content)));
        }

        return stack.Things.IsEmpty ? Value.None : ThingOn(at, stack, stack.Things.Length - 1);
    }

    // A piece that lies on several spaces is told by the first of them, so that it is one thing wherever it is met.
    private Value.ThingAt ThingOn(Spot spot, Stack stack, int index)
    {
        Thing thing = stack.Things[index];
        if (thing.Covers.IsEmpty || thing.Covers[0] == spot.Part)
        {
            return new Value.ThingAt(thing, spot, index);
        }

        int below = stack.Things.Take(index).Count(t => t.Covers.AsSpan().SequenceEqual(thing.Covers.AsSpan()));
        Spot first = spot with { Part = thing.Covers[0] };
        Stack there = first.In(position);
        int at = Enumerable.Range(0, there.Things.Length).Where(i => there.Things[i].Covers.AsSpan().SequenceEqual(thing.Covers.AsSpan())).ElementAt(below);
        return new Value.ThingAt(there.Things[at], first, at);
    }

    private Value.Number HeightOf(Spot spot)
    {
        Stack stack = spot.In(position);
        return stack.IsGiven
            ? Value.Of(stack.Things.Length)
            : Value.Between(stack.Things.Length, MostOn(spot) ?? MostInHeap(spot), Blame.Of(new Blank(spot, 0, Aspect.Content)));
    }

    /// <summary>Whose a thing, space, slot or place is.</summary>
    internal Value OwnerOf(Value value) => value switch
    {
        Value.ThingAt thing => OwnerOfThing(thing),
        Value.SpaceAt space => Sheet.Boards[space.Board].Place.EachPlayer ? new Value.PlayerAt(space.Seat) : Value.None,
        Value.SlotAt slot => Sheet.Places[slot.Place].Place.EachPlayer ? new Value.PlayerAt(slot.Seat) : Value.None,
        Value.PlaceAt place => place.Place.EachPlayer ? new Value.PlayerAt(place.Seat) : Value.None,
        Value.LineAt line => Sheet.Boards[line.Board].Place.EachPlayer ? new Value.PlayerAt(line.Seat) : Value.None,
        _ => Absent(value),
    };

    private Value OwnerOfThing(Value.ThingAt at)
    {
        if (at.Thing.Kind is { } kind && Sheet.KindOf(kind).Attributes.FirstOrDefault(a => a.HoldsPlayer && a.Attribute.Name == "owner") is { } state)
        {
            return ValueOf(at, state.Attribute);
        }

        return at.Thing.Owner switch
        {
            null => new Value.Unknown(Blame.Of(BlankOf(at, Aspect.Owner))),
            Thing.Nobody => Value.None,
            { } seat => new Value.PlayerAt(seat),
        };
    }

    private Value PlaceOf(Value thing) => thing is not Value.ThingAt at ? Absent(thing) : at.Spot.Kind switch
    {
        SpotKind.Space => new Value.SpaceAt(at.Spot.Place, at.Spot.Seat, at.Spot.Part),
        SpotKind.Slot when Sheet.Places[at.Spot.Place].Place.Form == PlaceForm.Row => new Value.SlotAt(at.Spot.Place, at.Spot.Seat, at.Spot.Part),
        SpotKind.Slot => new Value.PlaceAt(Sheet.Places[at.Spot.Place].Place, at.Spot.Seat),
        _ => new Value.Unknown(Blame.Of(new Blank(at.Spot, 0, Aspect.Content))),
    };

    private Value PropertyOf(Term.Property property, Value[] frame) => ValueOf(Evaluate(property.Subject, frame), property.Attribute);

    /// <summary>The value of an attribute or state; nothing for a thing of another kind.</summary>
    internal Value ValueOf(Value subject, Rostrum.Sheets.Model.Attribute attribute)
    {
        if (subject is Value.CardIs card)
        {
            subject = CardOnTable(card.Card);
        }

        if (subject is not Value.ThingAt at)
        {
            return Absent(subject);
        }

        if (at.Thing.Kind is not null && !ReferenceEquals(at.Thing.Kind, attribute.Kind))
        {
            return Value.None;
        }

        return at.Thing.Kind is null || IndexOf(at.Thing, attribute) is not { } index
            ? new Value.Unknown(Blame.Of(BlankOf(at, Aspect.Value, attribute)))
            : index < 0 ? Value.None : ValueAt(_index.Facts(attribute), index);
    }

    /// <summary>The 0-based value of a thing's attribute: as the position gives it, else as its card has it; -1 where the card lacks it; null where not given.</summary>
    private int? IndexOf(Thing thing, Rostrum.Sheets.Model.Attribute attribute)
    {
        if (thing.Values[attribute.Index] is { } given)
        {
            return given;
        }

        ImmutableArray<int> ofCard = thing.Card is { } card ? Sheet.Cards(card.Kind).Rows[card.Index].Values : [];
        return attribute.Index < ofCard.Length ? ofCard[attribute.Index] : null;
    }

    private static Value ValueAt(AttributeFacts facts, int index)
    {
        if (facts.HoldsPlayer)
        {
            return new Value.PlayerAt(index);
        }

        AttributeValue value = facts.Values[index];
        return value.Number is { } number && facts.Values.All(v => v.Number is not null) ? Value.Of(number) : new Value.AttributeIs(value);
    }

    /// <summary>A named card as a thing: where it lies on the table, else as one that is only spoken of.</summary>
    internal Value CardOnTable(Card card)
    {
        foreach ((Spot spot, Stack stack) in Spots())
        {
            for (int i = 0; i < stack.Things.Length; i++)
            {
                if (ReferenceEquals(stack.Things[i].Card, card))
                {
                    return new Value.ThingAt(stack.Things[i], spot, i);
                }
            }
        }

        return new Value.ThingAt(Things.Card(Sheet, card), Spot.Nowhere, 0);
    }

    /// <summary>Every spot of the position with its content.</summary>
    internal IEnumerable<(Spot Spot, Stack Stack)> Spots() =>
        Spots(position.Boards, SpotKind.Space).Concat(Spots(position.Places, SpotKind.Slot));

    private static IEnumerable<(Spot Spot, Stack Stack)> Spots(ImmutableArray<ImmutableArray<ImmutableArray<Stack>>> layers, SpotKind kind)
    {
        for (int place = 0; place < layers.Length; place++)
        {
            for (int seat = 0; seat < layers[place].Length; seat++)
            {
                for (int part = 0; part < layers[place][seat].Length; part++)
                {
                    yield return (new Spot(kind, place, seat, part), layers[place][seat][part]);
                }
            }
        }
    }

    private Value CellOf(Term.CardCell cell, Value[] frame) => CellOf(cell.Column, Evaluate(cell.Subject, frame));

    private Value CellOf(Column column, Value subject)
    {
        Card? card = subject switch
        {
            Value.CardIs named => named.Card,
            Value.ThingAt thing => thing.Thing.Card,
            _ => null,
        };
        if (card is null)
        {
            bool isOther = subject is Value.ThingAt { Thing.Kind: { } kind } && !ReferenceEquals(kind, column.Kind);
            return subject is Value.ThingAt at && !isOther ? new Value.Unknown(Blame.Of(BlankOf(at, Aspect.Card))) : Absent(subject);
        }

        if (!ReferenceEquals(card.Kind, column.Kind))
        {
            return Value.None;
        }

        CardRow row = Sheet.Cards(card.Kind).Rows[card.Index];
        return Evaluate(row.Cells[column.Index], Frame(row.FrameSize));
    }

    private Value MarkOf(Mark mark, int at)
    {
        if (position.Marks[mark.Index][at] is not { } held)
        {
            Blame why = Blame.Of(new Blank(new Spot(SpotKind.Mark, mark.Index, at, 0), 0, Aspect.Mark));
            return mark.Sort.Kind == SortKind.Number ? Value.Between(mark.Lowest, mark.Highest, why) : new Value.Unknown(why);
        }

        return mark.Sort.Kind switch
        {
            SortKind.Number => Value.Of(held),
            not SortKind.Truth when held == Position.NothingMarked => Value.None,
            SortKind.Truth => Value.Of(held != 0),
            SortKind.Player => new Value.PlayerAt((int)held),
            SortKind.Space => new Value.SpaceAt(0, Sheet.Boards[0].Place.EachPlayer ? MarkLayout.At(Sheet, mark, at).Seat : 0, (int)held),
            SortKind.Value when mark.Sort.Of is Rostrum.Sheets.Model.Attribute attribute => ValueAt(_index.Facts(attribute), (int)held),
            _ => Value.None,
        };
    }
}
