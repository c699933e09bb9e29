using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Boards;

/// <summary>A drawing as it lies after mirroring and turning, its bounding box at the origin.</summary>
/// <param name="Cells">Column (from the left) and row (from the lowest) of each cell, in the order of the drawing.</param>
/// <param name="Width">Columns of the bounding box of the cells.</param>
/// <param name="Height">Rows of it.</param>
/// <param name="Turns">Quarter turns clockwise, made after mirroring.</param>
/// <param name="IsMirrored">True where left and right are exchanged.</param>
internal sealed record DrawingPose(ImmutableArray<(int Column, int Row)> Cells, int Width, int Height, int Turns, bool IsMirrored)
{
    /// <summary>The poses that two permissions allow, as drawn first.</summary>
    public static IEnumerable<DrawingPose> All(Drawing drawing, bool rotated, bool mirrored)
    {
        if (drawing.Cells.IsEmpty)
        {
            yield break;
        }

        DrawingPose drawn = Packed([.. drawing.Cells.Select(c => (c.Column, c.Row))]);
        foreach (DrawingPose start in mirrored ? [drawn, drawn.Mirrored()] : new[] { drawn })
        {
            DrawingPose pose = start;
            for (int turns = 0; turns < (rotated ? 4 : 1); turns++)
            {
                yield return pose;
                pose = pose.Turned();
            }
        }
    }

    private static DrawingPose Packed(ImmutableArray<(int Column, int Row)> cells)
    {
        int left = cells.Min(c => c.Column);
        int low = cells.Min(c => c.Row);
        return new DrawingPose([.. cells.Select(c => (c.Column - left, c.Row - low))], cells.Max(c => c.Column) - left + 1, cells.Max(c => c.Row) - low + 1, 0, false);
    }

    private DrawingPose Mirrored() => this with { Cells = [.. Cells.Select(c => (Width - 1 - c.Column, c.Row))], IsMirrored = true };

    private DrawingPose Turned() => new([.. Cells.Select(c => (c.Row, Width - 1 - c.Column))], Height, Width, Turns + 1, IsMirrored);
}
