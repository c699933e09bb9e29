using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Rostrum.Sheets.Model;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Positions;

/// <summary>Writes a position in the format in which positions are read, in one fixed way.</summary>
/// <remarks>Reading the text with the same sheet gives an equal position. A file of an author is never printed: it is edited in place, see
/// <see cref="PositionFile"/>.</remarks>
public static class PositionPrinter
{
    /// <summary>The text of a position: variants, number of players, what lies on the table, then seat by seat, then whose turn it is, then what was done before. Places in
    /// which nothing is given are left out.</summary>
    /// <param name="position">What is printed; its name is not part of the text.</param>
    /// <returns>Lines that end in LF.</returns>
    public static string Print(Position position)
    {
        ArgumentNullException.ThrowIfNull(position);
        var text = new StringBuilder();
        if (!position.Sheet.VariantsOn.IsEmpty)
        {
            text.Append(CultureInfo.InvariantCulture, $"variants: [{string.Join(", ", position.Sheet.VariantsOn.Select(Key))}]\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"players: {position.Seats}\n");
        text.Append(Places(position, null, ""));
        var seats = new SeatWords(position.Sheet);
        for (int seat = 0; seat < position.Seats; seat++)
        {
            string places = Places(position, seat, "  ");
            text.Append(places.Length == 0 ? "" : $"{Key(seats.NameOf(seat))}:\n{places}");
        }

        return text.Append(CultureInfo.InvariantCulture, $"turn of: {Key(seats.NameOf(position.Me))}\n").Append(Done(position, seats)).ToString();
    }

    // A record that a game keeps knows only what its sheet asks, which no phrase could tell; it is left out.
    private static string Done(Position position, SeatWords seats)
    {
        if (position.Record is not ToldRecord record)
        {
            return "";
        }

        var text = new StringBuilder(record.Deeds.IsEmpty ? "done: {}\n" : "done:\n");
        foreach ((DoneWhen when, string words) in DoneTimes.All.Where(t => record.Deeds.Any(d => d.When == t.When)))
        {
            text.Append(CultureInfo.InvariantCulture, $"  {words}:\n");
            text.AppendJoin("", record.Deeds.Where(d => d.When == when).Select(d => $"    - {Key(seats.NameOf(d.Seat))}: {Key(d.Words)}\n"));
        }

        return text.ToString();
    }

    /// <summary>A name as a key or a text of an outline: in quotes where a sign in it would mean something.</summary>
    internal static string Key(string name) =>
        name.All(c => char.IsLetterOrDigit(c) || c is ' ' or '-' or '\'' or '_') && name.Length > 0 && name[0] is not ('-' or '\'') ? name : OutlineQuotes.Quote(name);

    private static string Places(Position position, int? seat, string margin)
    {
        Sheet sheet = position.Sheet;
        int at = seat ?? 0;
        bool eachPlayer = seat is not null;
        IEnumerable<string> boards = sheet.Boards.Select((board, i) => board.Place.EachPlayer == eachPlayer && IsGiven(position.Boards[i][at])
            ? new BoardPrinter(sheet, board, seat).Print(position.Boards[i][at], margin)
            : "");
        IEnumerable<string> places = sheet.Places.Select((place, i) => place.Place.EachPlayer == eachPlayer && IsGiven(position.Places[i][at])
            ? $"{margin}{Key(place.Place.Name)}: {PlaceText(sheet, place, position.Places[i][at], seat)}\n"
            : "");
        IEnumerable<string> marks = sheet.Marks.Select(mark => MarkLayout.IsOfSeat(mark) != eachPlayer ? "" : mark.EachSpaceOf is { } board ? SpacesText(position, mark, sheet.Board(board), at, margin)
            : position.Marks[mark.Index][at] is { } value
            ? $"{margin}{Key(mark.Name)}: {Key(MarkReader.Tell(sheet, mark, value))}\n"
            : "");
        return string.Concat(boards.Concat(places).Concat(marks));
    }

    // Spaces that have what the mark has at the start are left out, as they may be when it is read.
    private static string SpacesText(Position position, Mark mark, BoardFacts board, int seat, string margin)
    {
        long? unlisted = MarkLayout.Unlisted(position.Sheet, mark);
        (BoardSpace Space, long? Value)[] all = [.. board.Spaces.Select(s => (s, position.Marks[mark.Index][MarkLayout.Of(position.Sheet, mark, seat, s.Name.Index)]))];
        IEnumerable<string> told = all.Where(v => v.Value != unlisted)
            .Select(v => $"{Key(v.Space.Name.Name)}: {(v.Value is { } value ? Key(MarkReader.Tell(position.Sheet, mark, value)) : "not given")}");
        return all.All(v => v.Value is null) ? "" : $"{margin}{Key(mark.Name)}: {{{string.Join(", ", told)}}}\n";
    }

    private static bool IsGiven(ImmutableArray<Stack> content) => content.Any(s => s.IsGiven);

    private static string PlaceText(Sheet sheet, PlaceFacts place, ImmutableArray<Stack> content, int? seat)
    {
        var spot = new ThingSpot(place.Place.Form, place.Holds, seat, "");
        var words = new ThingPrinter(sheet);
        return place.Slots == 0 ? words.Print(content[0], spot) : $"[{string.Join(", ", content.Select(c => words.Print(c, spot)))}]";
    }
}
