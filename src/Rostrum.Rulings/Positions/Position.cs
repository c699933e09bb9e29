using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>Everything on the table at a moment: a value laid out by the schema that the sheet gives (places times seats).</summary>
/// <param name="Sheet">The sheet, with the position's variants on, that gives the schema.</param>
/// <param name="Name">The name of its file, or words of the caller.</param>
/// <param name="Seats">How many players sit at the table; at least 1.</param>
/// <param name="Me">The 0-based seat whose turn it is and from whose place questions are asked.</param>
/// <param name="Boards">By the board's index in <see cref="Sheet.Boards"/>, then by seat (one entry for a board of the table), then by
/// <see cref="SpaceName.Index"/>.</param>
/// <param name="Places">By the place's index in <see cref="Sheet.Places"/>, then by seat (one entry for a place of the table), then by slot
/// (one entry for a place without slots).</param>
/// <param name="Marks">By <see cref="Mark.Index"/>, then by seat (one entry for a mark of the table; for a mark of each space one a space, seat by seat where each player has the board): the number, 1 or 0 for yes or no, the 0-based seat, space
/// or value (<see cref="NothingMarked"/> where it has none); null where not given.</param>
public sealed record Position(
    Sheet Sheet,
    string Name,
    int Seats,
    int Me,
    ImmutableArray<ImmutableArray<ImmutableArray<Stack>>> Boards,
    ImmutableArray<ImmutableArray<ImmutableArray<Stack>>> Places,
    ImmutableArray<ImmutableArray<long?>> Marks)
{
    /// <summary>The value of a mark for a player, a space or a value of an attribute that has none.</summary>
    public const long NothingMarked = -1;

    /// <summary>False where nobody said whose turn it is, and <see cref="Me"/> is a guess.</summary>
    public bool IsTurnSaid { get; init; } = true;

    /// <summary>What was done before; null where that is not given.</summary>
    public GameRecord? Record { get; init; }

    /// <summary>A position in which nothing is given.</summary>
    /// <param name="sheet">Gives the schema.</param>
    /// <param name="name">For messages.</param>
    /// <param name="seats">At least 1.</param>
    public static Position Blank(Sheet sheet, string name, int seats) => new(
        sheet,
        name,
        seats,
        0,
        [.. sheet.Boards.Select(b => Layers(b.Place.EachPlayer, seats, b.Spaces.Length))],
        [.. sheet.Places.Select(p => Layers(p.Place.EachPlayer, seats, Math.Max(1, p.Slots)))],
        [.. sheet.Marks.Select(m => Enumerable.Repeat<long?>(null, MarkLayout.Count(sheet, m, seats)).ToImmutableArray())]);

    /// <summary>The content of a space.</summary>
    /// <param name="board">Index in <see cref="Sheet.Boards"/>.</param>
    /// <param name="seat">0-based; 0 for a board of the table.</param>
    /// <param name="space">0-based.</param>
    public Stack At(int board, int seat, int space) => Boards[board][seat][space];

    /// <summary>Every thing that is given, on boards first; one that lies on several spaces once.</summary>
    public IEnumerable<Thing> Things => Boards.SelectMany(p => p).SelectMany(s => s.SelectMany((stack, space) => stack.Things.Where(t => t.Covers.IsEmpty || t.Covers[0] == space)))
        .Concat(Places.SelectMany(p => p).SelectMany(s => s).SelectMany(s => s.Things));

    /// <summary>This position with other content on one space.</summary>
    public Position With(int board, int seat, int space, Stack content) =>
        this with { Boards = Boards.SetItem(board, Boards[board].SetItem(seat, Boards[board][seat].SetItem(space, content))) };

    /// <summary>This position with other content in one slot or heap.</summary>
    public Position WithPlace(int place, int seat, int slot, Stack content) =>
        this with { Places = Places.SetItem(place, Places[place].SetItem(seat, Places[place][seat].SetItem(slot, content))) };

    private static ImmutableArray<ImmutableArray<Stack>> Layers(bool eachPlayer, int seats, int parts) =>
        [.. Enumerable.Range(0, eachPlayer ? seats : 1).Select(_ => Enumerable.Repeat(Stack.NotGiven, parts).ToImmutableArray())];
}
