namespace Rostrum.Pictures;

/// <summary>The silhouette of a piece.</summary>
/// <param name="Name">The word in a sheet, such as <c>jug</c>.</param>
/// <param name="Shape">In the unit square, y downwards, standing on y = 1; filled by the even-odd rule.</param>
/// <param name="EmblemBox">Where an emblem goes, in the same square.</param>
/// <param name="Lines">Fine lines on the body that make the thing recognisable from near; may be empty.</param>
public sealed record Outline(string Name, PathData Shape, Box EmblemBox, PathData Lines) : INamedLook
{
    /// <summary>Height of the topmost corner in the unit square: 0 where the piece fills it.</summary>
    internal double Top { get; } = Shape.Steps.Min(step => step switch
    {
        PathStep.Start start => start.To.Y,
        PathStep.Straight line => line.To.Y,
        PathStep.Curve curve => curve.To.Y,
        _ => double.MaxValue,
    });
}
