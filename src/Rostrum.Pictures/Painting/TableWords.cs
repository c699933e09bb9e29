using System.Globalization;

namespace Rostrum.Pictures;

/// <summary>Tells in sentences what a table picture shows.</summary>
internal static class TableWords
{
    public static string Describe(TablePicture picture) => string.Join(
        ' ',
        [
            .. picture.Boards.SelectMany(Board),
            .. picture.Marks.Select(mark => Mark(mark, picture)),
            .. picture.Arrows.Select(arrow => Arrow(arrow, picture)),
            .. picture.Heaps.Select(heap => Heap(heap, picture)),
            .. picture.Caption is { } caption ? [Sentence(caption)] : Array.Empty<string>(),
        ]);

    public static string MarkLine(SpaceMark mark, TablePicture picture) => $"{Name(mark.At, picture)}: {mark.Label}";

    private static IEnumerable<string> Board(BoardPicture board)
    {
        yield return Sentence($"{board.Title ?? "The board"}, from the lowest row");
        foreach ((BoardRow row, int index) in board.Rows.Select((row, index) => (row, index)))
        {
            IEnumerable<string> cells = row.Cells
                .Select((cell, column) => (cell, column))
                .Where(space => space.cell is not CellPicture.Missing)
                .Select(space => $"{board.NameOf(space.column, index)} {Cell(space.cell)}");
            yield return Sentence($"Row {row.Label}: {(row.Cells.All(cell => cell is CellPicture.Free) ? "all free" : string.Join(", ", cells))}");
        }
    }

    private static string Cell(CellPicture cell) =>
        cell is CellPicture.Stack stack ? string.Join(" under ", stack.Pieces.Select(piece => piece.Says)) : "free";

    private static string Mark(SpaceMark mark, TablePicture picture)
    {
        string kind = mark.Kind switch
        {
            MarkKind.Good => "marked with a tick",
            MarkKind.Bad => "marked with a cross",
            _ => "asked about",
        };
        return Sentence($"{Name(mark.At, picture)} is {kind}{(mark.Label.Length > 0 ? ": " + mark.Label : "")}");
    }

    private static string Arrow(SpaceArrow arrow, TablePicture picture) => Sentence(
        $"An arrow leads from {Name(arrow.From, picture)} to {Name(arrow.To, picture)}{(arrow.Label.Length > 0 ? ": " + arrow.Label : "")}");

    private static string Heap(Heap heap, TablePicture picture)
    {
        IEnumerable<string> pieces = heap.Pieces.Select(each =>
            each.Says ?? (each.Count == 1 ? each.Look.Says : string.Create(CultureInfo.InvariantCulture, $"{each.Count} times {each.Look.Says}")));
        IEnumerable<string> parts = heap.Text is { Length: > 0 } text ? pieces.Prepend(text) : pieces;
        string beside = picture.Boards.Count == 1 ? "Beside the board, " : "";
        return Sentence($"{beside}{heap.Name}: {string.Join(", ", parts)}");
    }

    private static string Name(SpaceAt space, TablePicture picture)
    {
        BoardPicture board = picture.Boards.First(each => each.Name == space.Board);
        string name = board.NameOf(space.Column, space.Row);
        return picture.Boards.Count > 1 ? $"{name} of {board.Title ?? board.Name}" : name;
    }

    private static string Sentence(string text) => text.EndsWith('.') || text.EndsWith('!') || text.EndsWith('?') ? text : text + ".";
}
