using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>The lines of a board of squares or hexes.</summary>
internal static class BoardLines
{
    /// <summary>The lines of a form, in the order that <see cref="LineFamily.Lines"/> states.</summary>
    public static ImmutableArray<BoardLine> Of(BoardShape shape, LineForm form) => form switch
    {
        LineForm.Columns => [.. shape.Columns.Select((label, i) => new BoardLine(label, InOrder(shape, s => s.Column == i)))],
        LineForm.Rows => Rows(shape),
        LineForm.Rising => Slanting(shape, s => s.Column - s.Row),
        _ => Slanting(shape, s => s.Column + s.Row),
    };

    // Rows of hexes are counted from the far side, as they are named.
    private static ImmutableArray<BoardLine> Rows(BoardShape shape)
    {
        IEnumerable<BoardLine> rows = shape.Rows.Select((label, i) => new BoardLine(label, InOrder(shape, s => s.Row == i)));
        return [.. shape.Layout == BoardLayout.Hexes ? rows.Reverse() : rows];
    }

    private static ImmutableArray<BoardLine> Slanting(BoardShape shape, Func<ShapeSpace, int> line) =>
    [
        .. shape.Spaces.Select(line).Distinct().Order().ToArray()
            .Select((key, i) => new BoardLine((i + 1).ToString(CultureInfo.InvariantCulture), InOrder(shape, s => line(s) == key))),
    ];

    // From below, or from the left.
    private static ImmutableArray<int> InOrder(BoardShape shape, Func<ShapeSpace, bool> isIn) =>
    [
        .. Enumerable.Range(0, shape.Spaces.Length).Where(i => isIn(shape.Spaces[i])).OrderBy(i => shape.Spaces[i].Column).ThenBy(i => shape.Spaces[i].Row),
    ];
}
