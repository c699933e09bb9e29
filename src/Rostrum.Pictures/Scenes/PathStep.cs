namespace Rostrum.Pictures;

/// <summary>One step of the pen.</summary>
public abstract record PathStep
{
    private PathStep()
    {
    }

    /// <summary>Lifts the pen and begins a contour.</summary>
    /// <param name="To">Where it begins.</param>
    public sealed record Start(Point To) : PathStep;

    /// <summary>A straight line.</summary>
    /// <param name="To">Its end.</param>
    public sealed record Straight(Point To) : PathStep;

    /// <summary>A cubic Bézier curve.</summary>
    /// <param name="First">Control point at the beginning.</param>
    /// <param name="Second">Control point at the end.</param>
    /// <param name="To">Its end.</param>
    public sealed record Curve(Point First, Point Second, Point To) : PathStep;

    /// <summary>A straight line back to the beginning of the contour.</summary>
    public sealed record Close : PathStep;

    /// <summary>The step with every point carried along.</summary>
    internal PathStep Mapped(Func<Point, Point> map) => this switch
    {
        Start start => new Start(map(start.To)),
        Straight line => new Straight(map(line.To)),
        Curve curve => new Curve(map(curve.First), map(curve.Second), map(curve.To)),
        _ => this,
    };
}
