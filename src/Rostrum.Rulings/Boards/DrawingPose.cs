using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Boards;

/// <summary>A drawing as it lies after mirroring and turning, its bounding box at the origin.</summary>
/// <param name="Cells">Column (from the left; on hexes in half steps) and row (from the lowest) of each cell, in the order of the drawing.</param>
/// <param name="Width">Columns of the bounding box of the cells.</param>
/// <param name="Height">Rows of it.</param>
/// <param name="Turns">Turns clockwise, made after mirroring: quarters on squares, sixths on hexes.</param>
/// <param name="IsMirrored">True where left and right are exchanged.</param>
internal sealed record DrawingPose(ImmutableArray<(int Column, int Row)> Cells, int Width, int Height, int Turns, bool IsMirrored)
{
    /// <summary>The poses that two permissions allow, as drawn first; none for a drawing without cells.</summary>
    public static IEnumerable<DrawingPose> All(Drawing drawing, bool isHex, bool rotated, bool mirrored)
    {
        if (drawing.Cells.IsEmpty)
        {
            yield break;
        }

        DrawingPose drawn = Packed([.. drawing.Cells.Select(c => (isHex ? (2 * c.Column) + c.HalfSteps : c.Column, c.Row))], 0, false);
        foreach (DrawingPose start in mirrored ? [drawn, drawn.Mirrored()] : new[] { drawn })
        {
            DrawingPose pose = start;
            for (int turns = 0; turns < (!rotated ? 1 : isHex ? 6 : 4); turns++)
            {
                yield return pose;
                pose = isHex ? pose.TurnedBySixth() : pose.TurnedByQuarter();
            }
        }
    }

    private static DrawingPose Packed(ImmutableArray<(int Column, int Row)> cells, int turns, bool isMirrored)
    {
        int left = cells.Min(c => c.Column);
        int low = cells.Min(c => c.Row);
        return new DrawingPose(
            [.. cells.Select(c => (c.Column - left, c.Row - low))], cells.Max(c => c.Column) - left + 1, cells.Max(c => c.Row) - low + 1, turns, isMirrored);
    }

    private DrawingPose Mirrored() => Packed([.. Cells.Select(c => (-c.Column, c.Row))], 0, true);

    private DrawingPose TurnedByQuarter() => Packed([.. Cells.Select(c => (c.Row, -c.Column))], Turns + 1, IsMirrored);

    // East (2, 0) goes to southeast (1, -1), northeast (1, 1) to east. Exact, for column and row of a hex are both even or both odd
    // when counted from one of its cells.
    private DrawingPose TurnedBySixth()
    {
        (int column, int row) = Cells[0];
        return Packed([.. Cells.Select(c => SixthOf(c.Column - column, c.Row - row))], Turns + 1, IsMirrored);
    }

    private static (int Column, int Row) SixthOf(int column, int row) => ((column + (3 * row)) / 2, (row - column) / 2);
}
