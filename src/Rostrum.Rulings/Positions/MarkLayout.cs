using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>Where the values of a mark stand in <see cref="Position.Marks"/>: one for the table, one a seat, or one a space, seat by seat for a board of each player.</summary>
internal static class MarkLayout
{
    /// <summary>How many values a mark has.</summary>
    public static int Count(Sheet sheet, Mark mark, int seats) =>
        mark.EachSpaceOf is { } board ? SpacesOf(sheet, board) * (board.EachPlayer ? seats : 1) : mark.EachPlayer ? seats : 1;

    /// <summary>The position of the value of a space.</summary>
    public static int Of(Sheet sheet, Mark mark, int seat, int space) => (mark.EachSpaceOf!.EachPlayer ? seat * SpacesOf(sheet, mark.EachSpaceOf) : 0) + space;

    /// <summary>The seat and the space of a position; of a mark of no space the position is the seat.</summary>
    public static (int Seat, int Space) At(Sheet sheet, Mark mark, int at) =>
        mark.EachSpaceOf is { } board ? (at / SpacesOf(sheet, board), at % SpacesOf(sheet, board)) : (at, 0);

    /// <summary>True where positions write it below a seat.</summary>
    public static bool IsOfSeat(Mark mark) => mark.EachSpaceOf?.EachPlayer ?? mark.EachPlayer;

    /// <summary>What a space has that a list of spaces leaves out: what the mark has at the start; not given where a formula says what that is.</summary>
    public static long? Unlisted(Sheet sheet, Mark mark) => mark.Sort.Kind switch
    {
        _ when sheet.MarkFacts.Any(f => ReferenceEquals(f.Mark, mark) && f.Starts is not null) => null,
        SortKind.Number => mark.Lowest ?? 0,
        SortKind.Truth => 0,
        _ => Position.NothingMarked,
    };

    private static int SpacesOf(Sheet sheet, Place board) => sheet.Board(board).Spaces.Length;
}
