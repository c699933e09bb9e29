using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Positions;

/// <summary>What a mark holds, in a position and in a state.</summary>
internal static class MarkTable
{
    /// <summary>The number in a state for what a position has.</summary>
    public static int ToState(TableLayout layout, Mark mark, int at, long held) => mark.Sort.Kind switch
    {
        SortKind.Number or SortKind.Truth => checked((int)held),
        _ when held == Position.NothingMarked => Node.Nothing,
        SortKind.Space => First(layout, mark, at) + (int)held,
        SortKind.Value => layout.Values.First((Rostrum.Sheets.Model.Attribute)mark.Sort.Of!) + (int)held,
        _ => (int)held,
    };

    /// <summary>What a position has for the number in a state.</summary>
    public static long ToPosition(TableLayout layout, Mark mark, int at, int number) => mark.Sort.Kind switch
    {
        SortKind.Number or SortKind.Truth => number,
        _ when number == Node.Nothing => Position.NothingMarked,
        SortKind.Space => number - First(layout, mark, at),
        SortKind.Value => number - layout.Values.First((Rostrum.Sheets.Model.Attribute)mark.Sort.Of!),
        _ => number,
    };

    // Marks of spaces are about the first board.
    private static int First(TableLayout layout, Mark mark, int at) =>
        layout.HolderOf(layout.Sheet.Boards[0].Place, layout.Sheet.Boards[0].Place.EachPlayer ? MarkLayout.At(layout.Sheet, mark, at).Seat : 0).First;
}
