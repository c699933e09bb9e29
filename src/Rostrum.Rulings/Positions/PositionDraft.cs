using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>A position while it is read: what was not read yet is not given.</summary>
internal sealed class PositionDraft
{
    private readonly Sheet _sheet;
    private ImmutableArray<Stack>[][] _boards;
    private ImmutableArray<Stack>[][] _places;
    private long?[][] _marks;

    public PositionDraft(Sheet sheet, int seats)
    {
        Position blank = Position.Blank(sheet, "", seats);
        (_sheet, Seats) = (sheet, seats);
        _boards = [.. blank.Boards.Select(b => b.ToArray())];
        _places = [.. blank.Places.Select(p => p.ToArray())];
        _marks = [.. blank.Marks.Select(m => m.ToArray())];
    }

    /// <summary>How many seats there are.</summary>
    public int Seats { get; private set; }

    public void PutBoard(int index, int? seat, ImmutableArray<Stack> content) => _boards[index][seat ?? 0] = content;

    public void PutPlace(int index, int? seat, ImmutableArray<Stack> content) => _places[index][seat ?? 0] = content;

    public void PutMark(int index, int? seat, long? value) => _marks[index][seat ?? 0] = value;

    /// <summary>Puts what a mark has on each space of a board.</summary>
    public void PutMarks(Mark mark, int? seat, IReadOnlyList<long?> values)
    {
        for (int i = 0; i < values.Count; i++)
        {
            _marks[mark.Index][MarkLayout.Of(_sheet, mark, seat ?? 0, i)] = values[i];
        }
    }

    /// <summary>Adds seats of which nothing is given.</summary>
    /// <param name="seats">How many there are afterwards; never fewer than before.</param>
    public void Grow(int seats)
    {
        var more = new PositionDraft(_sheet, seats);
        _boards = [.. _boards.Zip(more._boards, Over)];
        _places = [.. _places.Zip(more._places, Over)];
        _marks = [.. _marks.Zip(more._marks, Over)];
        Seats = seats;
    }

    private static T[] Over<T>(T[] known, T[] blank) => [.. known, .. blank.Skip(known.Length)];

    /// <summary>The position as it is now.</summary>
    public Position Finish(string name, int me) => new(
        _sheet,
        name,
        Seats,
        me,
        [.. _boards.Select(b => b.ToImmutableArray())],
        [.. _places.Select(p => p.ToImmutableArray())],
        [.. _marks.Select(m => m.ToImmutableArray())]);
}
