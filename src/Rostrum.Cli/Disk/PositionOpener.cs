using Rostrum.Cli.Commands;
using Rostrum.Rulings.Games;
using Rostrum.Rulings.Pasted;
using Rostrum.Sheets.Loading;
using Rostrum.Text;

namespace Rostrum.Cli.Disk;

/// <summary>Opens the position that a user names or pastes.</summary>
/// <param name="desk">Has the standard input.</param>
/// <param name="request">The game, with the variants that the user wants.</param>
internal sealed class PositionOpener(Desk desk, GameRequest request)
{
    /// <summary>Opens a position.</summary>
    /// <param name="named">As <see cref="PositionFinder"/> takes it.</param>
    /// <param name="seat">From 1: the seat of what is pasted without one.</param>
    /// <param name="board">What is pasted without the name of its board; null where the user does not say.</param>
    public Found<OpenedPosition> Open(string named, int seat, string? board)
    {
        Found<SourceText> text = PositionFinder.Find(request.Game, named, desk);
        if (text.Value is null)
        {
            return Found<OpenedPosition>.None(text.Complaint!);
        }

        SheetReading sheet = request.Game.Sheet(request.Variants);
        PastedPosition? pasted = named == PositionFinder.StandardInput && sheet.IsSound ? PastedPosition.Of(sheet.Sheet!, text.Value) : null;
        return pasted is null
            ? board is null ? Found<OpenedPosition>.Of(request.Game.Open(text.Value, request.Variants)) : Found<OpenedPosition>.None($"'--board' is for a drawing that is pasted, and the position '{named}' names its boards itself.")
            : Complaint(pasted, sheet.Sheet!, board) is { } complaint ? Found<OpenedPosition>.None(complaint)
            : Found<OpenedPosition>.Of(Game.Open(pasted, sheet, seat, board));
    }

    private static string? Complaint(PastedPosition pasted, Sheets.Model.Sheet sheet, string? board)
    {
        string[] boards = [.. sheet.Boards.Select(b => b.Place.Name)];
        return board is not null && !boards.Contains(board, StringComparer.OrdinalIgnoreCase)
            ? $"'{Prose.Clip(board)}' is no board of {sheet.Game}. {(NearSpelling.Find(board, boards) is { } near ? $"Did you mean '{near}'?" : boards.Length == 0 ? "It has none." : $"There are {Prose.And(boards.Select(b => $"'{b}'"))}.")}"
            : pasted.Unclear(board) is { } unclear
            ? $"The drawing at {unclear.At} may be {Prose.Or(unclear.Boards.Select(b => $"'{b}'"))}. Say which: '--board \"{unclear.Boards[0]}\"', or the name on a line of its own above the drawing."
            : null;
    }
}
