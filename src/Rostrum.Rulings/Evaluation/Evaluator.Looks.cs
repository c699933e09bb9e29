using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>Whether things and spaces have a look.</content>
internal sealed partial class Evaluator
{
    private Value Matches(Term.Matches term, Value[] frame)
    {
        Value subject = Evaluate(term.Subject, frame);
        Value.Truth any = Value.No;
        foreach (Look look in term.Looks)
        {
            any = Or(any, term.AsksTop ? Shows(subject, look) : HasLook(subject, look));
            if (any.Is == Kleene.Yes)
            {
                return any;
            }
        }

        return any;
    }

    /// <summary>Whether the top thing of a space or slot has a look.</summary>
    internal Value.Truth Shows(Value spot, Look look) => HasLook(TopOf(spot), look);

    /// <summary>Whether a thing, space, line, place or value has a look; nothing has none.</summary>
    internal Value.Truth HasLook(Value subject, Look look) => subject switch
    {
        Value.Nothing => Value.No,
        Value.Unknown unknown => Value.Maybe(unknown.Blame),
        Value.ThingAt thing => And(ThingHas(thing, look), HasTraits(thing, look)),
        Value.CardIs card => HasLook(CardOnTable(card.Card), look),
        Value.AttributeIs value => Value.Of(look.Values.Contains(value.Which)),
        _ => And(OwnerFits(OwnerOf(subject), look.Owner), HasTraits(subject, look)),
    };

    private Value.Truth ThingHas(Value.ThingAt at, Look look)
    {
        Value.Truth fits = KindFits(at, look.Kind);
        if (fits.Is != Kleene.No && look.Card is not null)
        {
            fits = And(fits, IsCard(at, look.Card));
        }

        foreach (AttributeValue value in look.Values)
        {
            fits = fits.Is == Kleene.No ? fits : And(fits, ValueFits(at, value));
        }

        return fits.Is == Kleene.No || look.Owner == LookOwner.Anyone ? fits : And(fits, OwnerFits(OwnerOf(at), look.Owner));
    }

    private static Value.Truth KindFits(Value.ThingAt at, Kind? kind)
    {
        if (kind is null)
        {
            return Value.Yes;
        }

        return at.Thing.Kind is null ? Value.Maybe(Blame.Of(BlankOf(at, Aspect.Kind))) : Value.Of(ReferenceEquals(at.Thing.Kind, kind));
    }

    private Value.Truth ValueFits(Value.ThingAt at, AttributeValue value)
    {
        if (at.Thing.Kind is null)
        {
            return Value.Maybe(Blame.Of(BlankOf(at, Aspect.Kind)));
        }

        if (!ReferenceEquals(at.Thing.Kind, value.Attribute.Kind))
        {
            return Value.No;
        }

        return IndexOf(at.Thing, value.Attribute) is { } index
            ? Value.Of(index == value.Index)
            : Value.Maybe(Blame.Of(BlankOf(at, Aspect.Value, value.Attribute)));
    }

    private Value.Truth OwnerFits(Value owner, LookOwner wanted)
    {
        if (wanted == LookOwner.Anyone)
        {
            return Value.Yes;
        }

        return owner switch
        {
            Value.PlayerAt player => Value.Of((player.Seat == me) == (wanted == LookOwner.Mine)),
            Value.Unknown unknown => Value.Maybe(unknown.Blame),
            _ => Value.No,
        };
    }

    private Value.Truth HasTraits(Value subject, Look look)
    {
        Value.Truth all = Value.Yes;
        foreach (Trait trait in look.Traits)
        {
            all = all.Is == Kleene.No ? all : And(all, HasTrait(subject, trait));
        }

        return all;
    }

    private Value.Truth HasTrait(Value subject, Trait trait) => trait.Adjective switch
    {
        Adjective.Word => AsTruth(CallWord(trait.Word!, [subject])),
        Adjective.Empty => IsEmpty(subject),
        Adjective.Full => IsFull(subject),
        Adjective.FaceUp => FaceUp(subject),
        _ => FaceUp(subject) is var up && subject is Value.ThingAt ? Not(up) : Value.No,
    };

    private static Value.Truth FaceUp(Value subject) => subject switch
    {
        Value.ThingAt { Thing.IsFaceUp: { } up } => Value.Of(up),
        Value.ThingAt thing => Value.Maybe(Blame.Of(BlankOf(thing, Aspect.Face))),
        _ => Value.No,
    };

    private Value.Truth IsEmpty(Value subject)
    {
        if (subject is Value.ThingAt or Value.PlayerAt)
        {
            return Value.No;
        }

        Value.Many things = AsMany(ThingsOf(subject));
        if (things.Members.Any(m => m.IsCertain))
        {
            return Value.No;
        }

        return things.Members.IsEmpty && things.More == 0 ? Value.Yes : Value.Maybe(things.WhyUnknown);
    }

    private Value.Truth IsFull(Value subject)
    {
        switch (subject)
        {
            case Value.SpaceAt space:
                int least = Sheet.Boards[space.Board].MostInSpace ?? 1;
                return NotBelow(HeightOf(SpotOf(space)), Value.Of(least));
            case Value.SlotAt slot:
                return NotBelow(HeightOf(SpotOf(slot)), Value.Of(1));
            case Value.ThingAt or Value.PlayerAt:
                return Value.No;
            case Value.PlaceAt { Place.Form: not (PlaceForm.Board or PlaceForm.Row) }:
                return Not(IsEmpty(subject));
        }

        Value.Many parts = AsMany(subject is Value.PlaceAt { Place.Form: PlaceForm.Row } ? SlotsOf(subject) : SpacesOf(subject));
        Value.Truth all = parts.More == 0 ? Value.Yes : Value.Maybe(parts.Blame);
        foreach (Member part in parts.Members)
        {
            all = And(all, Or(Not(new Value.Truth(part.Is, part.Blame)), IsFull(part.Value)));
        }

        return all;
    }

    /// <summary>The fact of a thing that is not given: the whole spot, its kind, or the aspect itself.</summary>
    internal static Blank BlankOf(Value.ThingAt at, Aspect aspect, Rostrum.Sheets.Model.Attribute? attribute = null) =>
        at.Index < 0 ? new Blank(at.Spot, 0, Aspect.Content)
        : at.Thing.Kind is null ? new Blank(at.Spot, at.Index, Aspect.Kind)
        : new Blank(at.Spot, at.Index, aspect, attribute);

    /// <summary>A thing of which nothing is known, on a spot whose content is not given.</summary>
    internal static Thing AnyThing { get; } = new(null, [], null, null, null);
}
