using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>A shape as the steps of a pen; where contours overlap, the even-odd rule says what is inside.</summary>
/// <param name="Steps">Each contour begins with <see cref="PathStep.Start"/>.</param>
public sealed record PathData(ValueList<PathStep> Steps)
{
    /// <summary>Control points at this share of the radius turn a cubic curve into a quarter circle, at most 0.03 % off.</summary>
    internal const double QuarterCircle = 0.5522847498;

    /// <summary>Nothing drawn yet.</summary>
    public static PathData Empty { get; } = new([]);

    /// <summary>A closed shape with straight sides.</summary>
    /// <param name="corners">In order round the shape; at least three.</param>
    public static PathData Polygon(params IEnumerable<Point> corners)
    {
        ImmutableArray<Point> all = [.. corners];
        return new PathData([new PathStep.Start(all[0]), .. all.Skip(1).Select(corner => new PathStep.Straight(corner)), new PathStep.Close()]);
    }

    /// <summary>A line with bends, not closed.</summary>
    public static PathData Polyline(params IEnumerable<Point> points)
    {
        ImmutableArray<Point> all = [.. points];
        return new PathData([new PathStep.Start(all[0]), .. all.Skip(1).Select(point => new PathStep.Straight(point))]);
    }

    /// <summary>An ellipse.</summary>
    /// <param name="centre">Its middle.</param>
    /// <param name="radiusX">Half of its width.</param>
    /// <param name="radiusY">Half of its height.</param>
    public static PathData Ellipse(Point centre, double radiusX, double radiusY)
    {
        (double x, double y) = (centre.X, centre.Y);
        (double kx, double ky) = (radiusX * QuarterCircle, radiusY * QuarterCircle);
        return Empty.From(x + radiusX, y)
            .Curve(x + radiusX, y + ky, x + kx, y + radiusY, x, y + radiusY)
            .Curve(x - kx, y + radiusY, x - radiusX, y + ky, x - radiusX, y)
            .Curve(x - radiusX, y - ky, x - kx, y - radiusY, x, y - radiusY)
            .Curve(x + kx, y - radiusY, x + radiusX, y - ky, x + radiusX, y)
            .Closed();
    }

    /// <summary>Continues with a new contour.</summary>
    public PathData From(double x, double y) => Then(new PathStep.Start(new Point(x, y)));

    /// <summary>Continues with a straight line.</summary>
    public PathData To(double x, double y) => Then(new PathStep.Straight(new Point(x, y)));

    /// <summary>Continues with a cubic Bézier curve.</summary>
    public PathData Curve(double x1, double y1, double x2, double y2, double x, double y) =>
        Then(new PathStep.Curve(new Point(x1, y1), new Point(x2, y2), new Point(x, y)));

    /// <summary>Closes the contour.</summary>
    public PathData Closed() => Then(new PathStep.Close());

    /// <summary>Both shapes as one; where they overlap there is a hole.</summary>
    public PathData And(PathData other) => new([.. Steps, .. other.Steps]);

    /// <summary>The shape with every point carried along.</summary>
    public PathData Mapped(Func<Point, Point> map) => new([.. Steps.Select(step => step.Mapped(map))]);

    /// <summary>The shape carried from the unit square (0 to 1, y downwards) into a box.</summary>
    public PathData Into(Box box) =>
        Mapped(point => new Point(box.X + (point.X * box.Width), box.Y + (point.Y * box.Height)));

    private PathData Then(PathStep step) => new([.. Steps, step]);
}
