using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <summary>Reads the things of one cell of a drawn board.</summary>
internal sealed class CellReader(PositionReading reading, ThingSpot spot)
{
    private readonly CellSigns _signs = new(reading.Sheet);

    /// <summary>The content of a cell that is none of the three single signs; not given (with a message) where it cannot be read.</summary>
    public Stack Read(SourceSpan cell)
    {
        var things = new List<Thing>();
        bool fine = true;
        int start = 0;
        foreach (string part in cell.Text.Split(CellSigns.Join))
        {
            Thing[]? found = Part(part, cell.Part(start, part.Length), cell);
            fine &= found is not null;
            things.AddRange(found ?? []);
            start += part.Length + 1;
        }

        return fine ? new Stack([.. things]) : Stack.NotGiven;
    }

    private Thing[]? Part(string text, SourceSpan at, SourceSpan cell)
    {
        if (text.Length == 0)
        {
            reading.Problems.Add(PositionProblems.NothingBetween(cell));
            return null;
        }

        int signs = text.TakeWhile(_signs.Counts).Count();
        bool statesOpen = text.Length > 1 && text[^1] == CellSigns.StatesNotGiven;
        int end = text.Length - (statesOpen ? 1 : 0);
        int owner = end;
        while (owner > signs && _signs.Counts(text[owner - 1]))
        {
            owner--;
        }

        return Number(text[..signs], at) is { } count && Owner(text[owner..end], at.Part(owner, end - owner)) is { } seat
            ? Things(at.Part(signs, owner - signs), at, count, seat, statesOpen)
            : null;
    }

    private Thing[]? Things(SourceSpan signs, SourceSpan at, int count, int seat, bool statesOpen)
    {
        if (signs.Length == 0)
        {
            ThingDraft? bare = _signs.OnlyKind is { } kind ? new ThingDraft(reading.Sheet.KindOf(kind), [], null) : null;
            return reading.Write(bare is null ? ThingPhrase.Unknown : Complete(bare, seat, statesOpen).At(spot), count, at);
        }

        ThingDraft? draft = Groups(signs) is { } groups ? ThingResolver.Resolve(reading, groups, signs, spot) : null;
        if (draft is not null && !spot.Holds.IsEmpty && !spot.Holds.Contains(draft.Kind.Kind))
        {
            reading.Problems.Add(PositionProblems.NotHeldHere(at, draft.Kind.Kind.Name, spot.Told, spot.Holds));
        }

        if (draft is not null && seat > 0 && !ThingSpot.IsOwned(draft.Kind))
        {
            reading.Problems.Add(PositionProblems.OwnedByNobody(at, draft.Kind.Kind));
        }

        return draft is null ? null : reading.Write(Complete(draft, seat, statesOpen).At(spot), count, at);
    }

    private ImmutableArray<NamedWords>? Groups(SourceSpan signs)
    {
        if (SignLegend.IsWord(signs.Text, _signs.Legend))
        {
            reading.Problems.Add(PositionProblems.WordInCell(signs, signs.Text, SignLegend.Of(signs.Text, _signs.Legend), SignLegend.Told(_signs.Legend)));
            return null;
        }

        var groups = ImmutableArray.CreateBuilder<NamedWords>();
        bool fine = true;
        int at = 0;
        foreach (string sign in Elements(signs.Text))
        {
            Named? meaning = sign.Length == 1 ? _signs.Meaning(sign[0]) : null;
            SourceSpan here = signs.Part(at, sign.Length);
            at += sign.Length;
            if (meaning is null)
            {
                fine = false;
                reading.Problems.Add(PositionProblems.UnknownSign(here, sign, SignLegend.Told(_signs.Legend)));
            }
            else
            {
                groups.Add(new NamedWords([meaning], here));
            }
        }

        return fine ? groups.ToImmutable() : null;
    }

    private static ThingDraft Complete(ThingDraft draft, int seat, bool statesOpen) => draft with
    {
        SaysOwner = seat > 0,
        Owner = seat > 0 ? seat - 1 : null,
        NotGiven = statesOpen
            ? [.. draft.Kind.Attributes.Where(a => a.Attribute.IsState && !a.HoldsPlayer).Select(a => a.Attribute).Where(a => draft.Values.All(v => v.Attribute != a))]
            : [],
    };

    // 1 where nothing is said; null (with a message) where it is too much.
    private int? Number(string digits, SourceSpan at)
    {
        if (digits.Length == 0)
        {
            return 1;
        }

        if (int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count > 0)
        {
            return count;
        }

        reading.Problems.Add(PositionProblems.WantedNumber(at, digits, "a stack of things"));
        return null;
    }

    // 0 where nothing is said; null (with a message) where there is no such seat.
    private int? Owner(string digits, SourceSpan at)
    {
        if (digits.Length == 0)
        {
            return 0;
        }

        bool isNumber = int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int seat);
        if (isNumber && seat >= 1 && seat <= reading.Seats.Most)
        {
            return seat;
        }

        reading.Problems.Add(PositionProblems.SeatBeyond(at, isNumber ? seat : int.MaxValue, reading.Seats.Most, reading.Seats.WhyNoMore));
        return null;
    }

    private static IEnumerable<string> Elements(string text)
    {
        TextElementEnumerator elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            yield return elements.GetTextElement();
        }
    }
}
