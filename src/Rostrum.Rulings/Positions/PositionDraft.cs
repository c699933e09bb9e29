using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>A position while it is read: what was not read yet is not given.</summary>
internal sealed class PositionDraft
{
    private readonly Sheet _sheet;
    private readonly ImmutableArray<Stack>[][] _boards;
    private readonly ImmutableArray<Stack>[][] _places;
    private readonly long?[][] _marks;

    public PositionDraft(Sheet sheet, int seats)
    {
        Position blank = Position.Blank(sheet, "", seats);
        (_sheet, Seats) = (sheet, seats);
        _boards = [.. blank.Boards.Select(b => b.ToArray())];
        _places = [.. blank.Places.Select(p => p.ToArray())];
        _marks = [.. blank.Marks.Select(m => m.ToArray())];
    }

    /// <summary>How many seats there are.</summary>
    public int Seats { get; }

    public void PutBoard(int index, int? seat, ImmutableArray<Stack> content) => _boards[index][seat ?? 0] = content;

    public void PutPlace(int index, int? seat, ImmutableArray<Stack> content) => _places[index][seat ?? 0] = content;

    public void PutMark(int index, int? seat, long? value) => _marks[index][seat ?? 0] = value;

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
