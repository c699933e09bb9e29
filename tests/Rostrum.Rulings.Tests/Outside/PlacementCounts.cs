using Rostrum.Rulings.Positions;

namespace Rostrum.Rulings.Tests.Outside;

/// <summary>Counts by exhaustive search what the laws of a sheet allow; knows nothing of the puzzles themselves.</summary>
internal static class PlacementCounts
{
    /// <summary>How many sets of spaces can be filled one after the other in reading order, the empty set included.</summary>
    public static long Sets(PlacementSheet sheet) => Sets(sheet, sheet.Empty, 0);

    /// <summary>Every way to put one thing into each row, as the column for each row.</summary>
    public static IEnumerable<int[]> OneInEachRow(PlacementSheet sheet) => OneInEachRow(sheet, sheet.Empty, []);

    /// <summary>How many ways there are to fill every space from some space on in reading order.</summary>
    public static long Full(PlacementSheet sheet, Position position, int from = 0) => from == position.Boards[0][0].Length
        ? 1
        : sheet.Things.Where(t => sheet.Allows(position, t, from)).Sum(t => Full(sheet, With(position, t, from), from + 1));

    /// <summary>How many ways there are to cover every space by pairs.</summary>
    public static long Pairs(PlacementSheet sheet) => Pairs(sheet, sheet.Empty);

    /// <summary>A position with a thing more.</summary>
    public static Position With(Position position, Thing thing, int space) => position.With(0, 0, space, new Stack([thing]));

    private static long Sets(PlacementSheet sheet, Position position, int from)
    {
        long count = 1;
        for (int space = from; space < position.Boards[0][0].Length; space++)
        {
            count += sheet.Allows(position, sheet.Things[0], space) ? Sets(sheet, With(position, sheet.Things[0], space), space + 1) : 0;
        }

        return count;
    }

    private static IEnumerable<int[]> OneInEachRow(PlacementSheet sheet, Position position, int[] columns) => columns.Length == sheet.Side
        ? [columns]
        : Enumerable.Range(0, sheet.Side)
            .Where(c => sheet.Allows(position, sheet.Things[0], (columns.Length * sheet.Side) + c))
            .SelectMany(c => OneInEachRow(sheet, With(position, sheet.Things[0], (columns.Length * sheet.Side) + c), [.. columns, c]));

    // The first free space is covered together with some later one, so no covering is met twice.
    private static long Pairs(PlacementSheet sheet, Position position)
    {
        int first = position.Boards[0][0].IndexOf(Stack.Empty);
        return first < 0
            ? 1
            : Enumerable.Range(first + 1, position.Boards[0][0].Length - first - 1)
                .Where(second => sheet.Allows(position, first, second))
                .Sum(second => Pairs(sheet, With(With(position, sheet.Things[0], first), sheet.Things[0], second)));
    }
}
