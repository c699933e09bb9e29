using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace Rostrum.Pictures;

/// <summary>The emblems that a sheet can put on pieces. Each is bold enough for eight pixels.</summary>
public static class Emblems
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<Emblem> All { get; } =
    [
        new("dots", Dot(0.22, 0.22).And(Dot(0.78, 0.22)).And(Dot(0.22, 0.78)).And(Dot(0.78, 0.78))),
        new("bars", Bar(0, 0.08, 1, 0.27).And(Bar(0, 0.65, 1, 0.27))),
        new("stripes", Bar(0.08, 0, 0.27, 1).And(Bar(0.65, 0, 0.27, 1))),
        new("ring", Round(0.5).And(Round(0.24))),
        new("spot", Round(0.36)),
        new("wave", Wave),
        new("cross", Cross),
        new("peak", PathData.Polygon(new Point(0.5, 0.04), new Point(1, 0.94), new Point(0, 0.94))),
        new("gem", PathData.Polygon(new Point(0.5, 0), new Point(1, 0.5), new Point(0.5, 1), new Point(0, 0.5))),
        new("star", Star),
        new("moon", Moon),
        new("arch", Arch),
    ];

    /// <summary>Looks an emblem up by its word; false where there is none.</summary>
    public static bool TryFind(string name, [NotNullWhen(true)] out Emblem? emblem) => Catalogue.TryFind(All, name, out emblem);

    /// <summary>The emblem of that word.</summary>
    /// <exception cref="ArgumentException">There is none; the message lists those there are.</exception>
    public static Emblem Find(string name) => Catalogue.Find(All, name, "emblem");

    private static PathData Wave => PathData.Empty
        .From(0, 0.52).Curve(0.2, 0.1, 0.36, 0.1, 0.5, 0.36).Curve(0.64, 0.62, 0.8, 0.62, 1, 0.2)
        .To(1, 0.56).Curve(0.8, 0.98, 0.64, 0.98, 0.5, 0.72).Curve(0.36, 0.46, 0.2, 0.46, 0, 0.88).Closed();

    private static PathData Cross => PathData.Polygon(
        new Point(0.34, 0), new Point(0.66, 0), new Point(0.66, 0.34), new Point(1, 0.34), new Point(1, 0.66), new Point(0.66, 0.66),
        new Point(0.66, 1), new Point(0.34, 1), new Point(0.34, 0.66), new Point(0, 0.66), new Point(0, 0.34), new Point(0.34, 0.34));

    private static PathData Star => PathData.Polygon(Enumerable.Range(0, 10).Select(corner =>
    {
        double radius = corner % 2 == 0 ? 0.54 : 0.23;
        double angle = (corner * Math.PI / 5) - (Math.PI / 2);
        return new Point(0.5 + (radius * Math.Cos(angle)), 0.53 + (radius * Math.Sin(angle)));
    }));

    private static PathData Moon => PathData.Empty
        .From(0.72, 0.02).Curve(0.3, -0.08, -0.04, 0.2, 0.02, 0.56).Curve(0.08, 0.96, 0.54, 1.14, 0.9, 0.84)
        .Curve(0.62, 0.86, 0.42, 0.7, 0.42, 0.46).Curve(0.42, 0.26, 0.54, 0.1, 0.72, 0.02).Closed();

    private static PathData Arch => PathData.Empty
        .From(0, 1).To(0, 0.5).Curve(0, -0.16, 1, -0.16, 1, 0.5).To(1, 1).To(0.7, 1).To(0.7, 0.54)
        .Curve(0.7, 0.22, 0.3, 0.22, 0.3, 0.54).To(0.3, 1).Closed();

    private static PathData Dot(double x, double y) => PathData.Ellipse(new Point(x, y), 0.21, 0.21);

    private static PathData Round(double radius) => PathData.Ellipse(new Point(0.5, 0.5), radius, radius);

    private static PathData Bar(double x, double y, double width, double height) => PathData.Polygon(
        new Point(x, y), new Point(x + width, y), new Point(x + width, y + height), new Point(x, y + height));
}
