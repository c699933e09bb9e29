using System.Globalization;

namespace Rostrum.Pictures;

/// <summary>Tells in sentences what a table picture shows.</summary>
internal static class TableWords
{
    public static string Describe(TablePicture picture) => string.Join(
        ' ',
        [
            .. picture.Boards.SelectMany(BoardWords.Describe),
            .. picture.Marks.Select(mark => Mark(mark, picture)),
            .. picture.Arrows.Select(arrow => Arrow(arrow, picture)),
            .. picture.Heaps.Select(heap => Heap(heap, picture)),
            .. picture.Caption is { } caption ? [Sentence(caption)] : Array.Empty<string>(),
        ]);

    public static string MarkLine(SpaceMark mark, TablePicture picture) => $"{Name(mark.At, picture)}: {mark.Label}";

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
        $"An arrow leads from {Name(arrow.From, picture)}{Through(arrow, picture)} to {Name(arrow.To, picture)}{(arrow.Label.Length > 0 ? ": " + arrow.Label : "")}");

    private static string Through(SpaceArrow arrow, TablePicture picture) =>
        arrow.Through.Count == 0 ? "" : $" through {string.Join(", ", arrow.Through.Select(space => Name(space, picture)))}";

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
        return picture.Boards.Count > 1 ? $"{space.Space} of {board.Title ?? board.Name}" : space.Space;
    }

    private static string Sentence(string text) => text.EndsWith('.') || text.EndsWith('!') || text.EndsWith('?') ? text : text + ".";
}
