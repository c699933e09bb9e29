namespace Rostrum.Pictures;

/// <summary>The shape of a hex with a corner on top.</summary>
internal static class HexShape
{
    /// <summary>How many radii wide a hex is.</summary>
    public static readonly double WidthByRadius = Math.Sqrt(3);

    /// <summary>The shape.</summary>
    /// <param name="centre">Its middle.</param>
    /// <param name="radius">From the middle to a corner.</param>
    public static PathData Of(Point centre, double radius)
    {
        double side = radius * WidthByRadius / 2;
        return PathData.Polygon(
            centre.Moved(0, -radius), centre.Moved(side, -radius / 2), centre.Moved(side, radius / 2),
            centre.Moved(0, radius), centre.Moved(-side, radius / 2), centre.Moved(-side, -radius / 2));
    }
}
