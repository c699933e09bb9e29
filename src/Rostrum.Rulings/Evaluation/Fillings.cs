using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <summary>All ways to fill a fact that is not given: each a position that gives a little more.</summary>
internal static class Fillings
{
    private const int MostFillings = 1_000;

    /// <summary>The positions, one for each candidate in the order of the sheet; empty where the candidates cannot be listed, as for a heap of any size.</summary>
    public static IReadOnlyList<Position> Of(Position position, Blank blank) => !IsBlank(position, blank) ? [] : blank.Aspect switch
    {
        Aspect.Mark => OfMark(position, blank),
        Aspect.Content => OfContent(position, blank),
        _ => OfThing(position, blank),
    };

    /// <summary>How many ways there are to fill a fact and everything that is still open behind it: a kind brings its attributes. 1 where it cannot be filled.</summary>
    public static long Leaves(Position position, Blank blank) => !IsBlank(position, blank) ? 1 : blank.Aspect switch
    {
        Aspect.Content when OfContent(position, blank).Length > 0 => 1 + KindsOnBoards(position.Sheet).Sum(k => LooksOf(position.Sheet, k)),
        Aspect.Kind => KindsAt(position.Sheet, blank.Spot).Sum(k => LooksOf(position.Sheet, k)),
        _ => Math.Max(1, Of(position, blank).Count),
    };

    private static long LooksOf(Sheet sheet, Kind kind) =>
        sheet.KindOf(kind).Attributes.Aggregate(1L, (product, a) => Math.Min(product * Math.Max(1, a.Values.Length), 1_000_000));

    // What a position gives is never filled in again.
    private static bool IsBlank(Position position, Blank blank)
    {
        if (blank.Aspect == Aspect.Mark)
        {
            return position.Marks[blank.Spot.Place][blank.Spot.Seat] is null;
        }

        if (blank.Spot.Kind is not (SpotKind.Space or SpotKind.Slot))
        {
            return false;
        }

        Stack stack = blank.Spot.In(position);
        if (blank.Aspect == Aspect.Content)
        {
            return !stack.IsGiven;
        }

        return blank.Index >= 0 && blank.Index < stack.Things.Length && IsBlank(stack.Things[blank.Index], blank);
    }

    private static bool IsBlank(Thing thing, Blank blank) => blank.Aspect switch
    {
        Aspect.Kind => thing.Kind is null,
        Aspect.Card => thing.Card is null,
        Aspect.Owner => thing.Owner is null,
        Aspect.Face => thing.IsFaceUp is null,
        _ => blank.Attribute is { } attribute && ReferenceEquals(thing.Kind, attribute.Kind) && thing.Values[attribute.Index] is null,
    };

    private static Position[] OfContent(Position position, Blank blank)
    {
        if (blank.Spot.Kind != SpotKind.Space || position.Sheet.Boards[blank.Spot.Place].MostInSpace != 1)
        {
            return [];
        }

        ImmutableArray<Kind> kinds = KindsOnBoards(position.Sheet);
        ImmutableArray<Kind> held = position.Sheet.Boards[blank.Spot.Place].Holds;
        if (position.Sheet.Kinds.Any(k => k.Shape is not null && (held.IsEmpty || held.Contains(k.Kind))))
        {
            // Part of a piece that lies on other spaces too: nobody can say by this space alone.
            return [];
        }

        return [.. kinds.Select(k => new Stack([Things.Unknown(position.Sheet, k)])).Prepend(Stack.Empty).Select(s => blank.Spot.Put(position, s))];
    }

    /// <summary>The kinds that may lie on a board: those that the signs of drawings can show where they show any, else all pieces.</summary>
    public static ImmutableArray<Kind> KindsOnBoards(Sheet sheet)
    {
        ImmutableArray<Kind> drawn = [.. sheet.Signs.Select(s => s.Stands switch
        {
            Kind kind => kind,
            AttributeValue value => value.Attribute.Kind,
            Card card => card.Kind,
            _ => null,
        }).OfType<Kind>().Distinct()];
        return drawn.IsEmpty ? [.. sheet.Kinds.Where(k => k.Kind.Family == KindFamily.Piece && k.Shape is null).Select(k => k.Kind)] : drawn;
    }

    private static Position[] OfThing(Position position, Blank blank)
    {
        Stack stack = blank.Spot.In(position);
        IEnumerable<Thing> candidates = Candidates(position, blank, stack.Things[blank.Index]);
        return [.. candidates.Select(t => blank.Spot.Put(position, stack with { Things = stack.Things.SetItem(blank.Index, t) }))];
    }

    private static IEnumerable<Thing> Candidates(Position position, Blank blank, Thing thing)
    {
        switch (blank.Aspect)
        {
            case Aspect.Kind:
                return KindsAt(position.Sheet, blank.Spot).Select(k => Known(Things.Unknown(position.Sheet, k), thing));
            case Aspect.Card when thing.Kind is { Family: KindFamily.Card } kind:
                return position.Sheet.Cards(kind).Rows.Select(r => thing with { Card = r.Card });
            case Aspect.Owner:
                return Enumerable.Range(0, position.Seats).Select(s => thing with { Owner = s });
            case Aspect.Face:
                return [thing with { IsFaceUp = true }, thing with { IsFaceUp = false }];
            case Aspect.Value when blank.Attribute is { } attribute:
                AttributeFacts facts = position.Sheet.KindOf(attribute.Kind).Attributes[attribute.Index];
                int count = facts.HoldsPlayer ? position.Seats : facts.Values.Length;
                return Enumerable.Range(0, count).Select(v => thing with { Values = thing.Values.SetItem(attribute.Index, v) });
            default:
                return [];
        }
    }

    private static ImmutableArray<Kind> KindsAt(Sheet sheet, Spot spot)
    {
        if (spot.Kind == SpotKind.Space)
        {
            return KindsOnBoards(sheet);
        }

        ImmutableArray<Kind> holds = sheet.Places[spot.Place].Holds;
        return holds.IsEmpty ? [.. sheet.Kinds.Select(k => k.Kind)] : holds;
    }

    // What was known of the thing before its kind was.
    private static Thing Known(Thing filled, Thing before) => filled with { Owner = before.Owner ?? filled.Owner, IsFaceUp = before.IsFaceUp ?? filled.IsFaceUp };

    private static Position[] OfMark(Position position, Blank blank)
    {
        Mark mark = position.Sheet.Marks[blank.Spot.Place];
        (long low, long high)? range = mark.Sort.Kind switch
        {
            SortKind.Truth => (0, 1),
            SortKind.Player => (Position.NothingMarked, position.Seats - 1),
            SortKind.Number when mark.Lowest is { } lowest && mark.Highest is { } highest => (lowest, highest),
            SortKind.Value when mark.Sort.Of is Rostrum.Sheets.Model.Attribute a => (Position.NothingMarked, position.Sheet.KindOf(a.Kind).Attributes[a.Index].Values.Length - 1),
            SortKind.Space when !position.Sheet.Boards.IsEmpty => (Position.NothingMarked, position.Sheet.Boards[0].Spaces.Length - 1),
            _ => null,
        };
        if (range is not var (from, to) || to - from >= MostFillings)
        {
            return [];
        }

        ImmutableArray<long?> seats = position.Marks[mark.Index];
        return [.. Enumerable.Range(0, (int)(to - from + 1)).Select(i =>
            position with { Marks = position.Marks.SetItem(mark.Index, seats.SetItem(blank.Spot.Seat, from + i)) })];
    }
}
