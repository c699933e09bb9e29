using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Positions;

/// <summary>Reads the boards, places and marks of one seat, or of the table.</summary>
/// <param name="reading">What the reader shares.</param>
/// <param name="draft">Receives what is read.</param>
/// <param name="seat">The 0-based seat; null for the table.</param>
internal sealed class PlacesReader(PositionReading reading, PositionDraft draft, int? seat)
{
    private readonly Dictionary<string, SourceSpan> _met = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Reads one entry: the name of a board, a place or a mark and what it holds.</summary>
    public void Read(OutlineEntry entry)
    {
        string name = Prose.Fold(entry.Key.Text);
        SourceSpan at = WordCutter.WordsOf(entry.Key);
        Sheet sheet = reading.Sheet;
        if (Index(sheet.Boards, b => b.Place.Name, name) is { } board)
        {
            if (IsHere(sheet.Boards[board].Place.EachPlayer, at, name))
            {
                draft.PutBoard(board, seat, new BoardReader(reading, board, seat).Read(entry.Value));
            }
        }
        else if (Index(sheet.Places, p => p.Place.Name, name) is { } place)
        {
            if (IsHere(sheet.Places[place].Place.EachPlayer, at, name))
            {
                draft.PutPlace(place, seat, Place(place, entry.Value));
            }
        }
        else if (Index(sheet.Marks, m => m.Name, name) is { } mark)
        {
            if (!IsHere(MarkLayout.IsOfSeat(sheet.Marks[mark]), at, name))
            {
                return;
            }

            if (sheet.Marks[mark].EachSpaceOf is { } ofSpaces)
            {
                draft.PutMarks(sheet.Marks[mark], seat, MarkReader.ReadSpaces(reading, sheet.Marks[mark], sheet.Board(ofSpaces), entry.Value));
            }
            else
            {
                draft.PutMark(sheet.Marks[mark].Index, seat, MarkReader.Read(reading, sheet.Marks[mark], entry.Value));
            }
        }
        else
        {
            reading.Problems.Add(name is "supply" or "box" ? PositionProblems.NotWritten(at, name) : Unknown(at, name));
        }
    }

    private Diagnostic Unknown(SourceSpan at, string name)
    {
        // `player 2`, `P2` and `seat2` are seats to everybody who writes them.
        string number = name[name.TrimEnd([.. "0123456789"]).Length..];
        if (seat is null && number.Length is 1 or 2 && name[..^number.Length].Trim().ToLowerInvariant() is "player" or "p" or "seat" or "pl")
        {
            return PositionProblems.SeatByItsNumber(at, name, number);
        }

        string[] own = [.. NamesOf(seat is not null)];
        return seat is null
            ? PositionProblems.UnknownPlace(at, name, "a position", [.. PositionDialect.TopKeys, "seat 1", .. own])
            : PositionProblems.UnknownPlace(at, name, reading.Seats.NameOf(seat.Value), own);
    }

    private IEnumerable<string> NamesOf(bool eachPlayer) =>
        reading.Sheet.Boards.Where(b => b.Place.EachPlayer == eachPlayer).Select(b => b.Place.Name)
            .Concat(reading.Sheet.Places.Where(p => p.Place.EachPlayer == eachPlayer).Select(p => p.Place.Name))
            .Concat(reading.Sheet.Marks.Where(m => MarkLayout.IsOfSeat(m) == eachPlayer).Select(m => m.Name));

    private bool IsHere(bool eachPlayer, SourceSpan at, string name)
    {
        if (eachPlayer != seat is not null)
        {
            reading.Problems.Add(eachPlayer ? PositionProblems.BelongsToSeats(at, name) : PositionProblems.BelongsToTable(at, name));
            return false;
        }

        if (!_met.TryAdd(name, at))
        {
            reading.Problems.Add(PositionProblems.SpaceTwice(at, $"'{name}'", _met[name]));
            return false;
        }

        return true;
    }

    private ImmutableArray<Stack> Place(int index, OutlineNode node)
    {
        PlaceFacts facts = reading.Sheet.Places[index];
        var spot = new ThingSpot(facts.Place.Form, facts.Holds, seat, $"'{facts.Place.Name}'");
        if (facts.Slots > 0)
        {
            return Slots(index, facts, node, spot);
        }

        reading.Spots[new PositionSpot(false, index, seat ?? 0, 0)] = node.Span;
        return [ContentReader.Read(reading, node, spot)];
    }

    // An empty list, or `nothing`, is a row of empty slots.
    private ImmutableArray<Stack> Slots(int index, PlaceFacts facts, OutlineNode node, ThingSpot spot)
    {
        if (node is OutlineSequence { Items.Length: 0 } or OutlineScalar { Text: ContentReader.Nothing })
        {
            return [.. Enumerable.Repeat(Stack.Empty, facts.Slots)];
        }

        if (node is OutlineScalar { Text: ContentReader.NotGiven })
        {
            return [.. Enumerable.Repeat(Stack.NotGiven, facts.Slots)];
        }

        ImmutableArray<OutlineNode> items = node is OutlineSequence list ? list.Items : [node];
        if (items.Length != facts.Slots)
        {
            reading.Problems.Add(PositionProblems.SlotCount(node.Span, spot.Told, facts.Slots, items.Length, facts.SlotNoun?.Name ?? "slot"));
        }

        Stack[] read = [.. items.Select((item, slot) => Slot(index, slot, item, spot))];
        return [.. read.Concat(Enumerable.Repeat(Stack.NotGiven, facts.Slots)).Take(facts.Slots)];
    }

    private Stack Slot(int index, int slot, OutlineNode item, ThingSpot spot)
    {
        reading.Spots[new PositionSpot(false, index, seat ?? 0, slot)] = item.Span;
        return ContentReader.Read(reading, item, spot);
    }

    private static int? Index<T>(ImmutableArray<T> all, Func<T, string> nameOf, string name)
    {
        for (int i = 0; i < all.Length; i++)
        {
            if (string.Equals(nameOf(all[i]), name, StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }

        return null;
    }
}
