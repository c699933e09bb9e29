using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace Rostrum.Pictures;

/// <summary>The silhouettes that a sheet can give to pieces.</summary>
public static partial class Outlines
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<Outline> All { get; } =
    [
        new("bowl", Bowl, Square(0.5, 0.58, 0.4), BowlLines),
        new("jug", Jug, Square(0.42, 0.66, 0.4), PathData.Empty),
        new("plate", Plate, Square(0.5, 0.48, 0.4), PlateLines),
        new("lamp", Lamp, Square(0.5, 0.66, 0.42), LampLines),
        new("disc", PathData.Ellipse(new Point(0.5, 0.5), 0.48, 0.48), Square(0.5, 0.5, 0.46), PathData.Empty),
        new("square", Rounded(0.04, 0.04, 0.92, 0.92, 0.1), Square(0.5, 0.5, 0.46), PathData.Empty),
        new("card", Rounded(0.16, 0, 0.68, 1, 0.1), Square(0.5, 0.5, 0.42), PathData.Empty),
        new("tile", Rounded(0, 0.24, 1, 0.76, 0.06), Square(0.5, 0.62, 0.46), PathData.Empty),
        new("hex", Ring(6, 0.5, 0.5), Square(0.5, 0.5, 0.42), PathData.Empty),
        new("wedge", PathData.Polygon(new Point(0.5, 0.02), new Point(1, 1), new Point(0, 1)), Square(0.5, 0.7, 0.36), PathData.Empty),
        new("kite", PathData.Polygon(new Point(0.5, 0), new Point(1, 0.5), new Point(0.5, 1), new Point(0, 0.5)), Square(0.5, 0.5, 0.38), PathData.Empty),
        new("figure", Figure, Square(0.5, 0.74, 0.32), PathData.Empty),
        new("hut", PathData.Polygon(new Point(0.5, 0), new Point(1, 0.46), new Point(0.9, 0.46), new Point(0.9, 1), new Point(0.1, 1), new Point(0.1, 0.46), new Point(0, 0.46)), Square(0.5, 0.66, 0.4), PathData.Empty),
        new("rod", PathData.Polygon(new Point(0.08, 0.72), new Point(0.84, 0.12), new Point(0.96, 0.28), new Point(0.2, 0.9)), Square(0.52, 0.505, 0.17), PathData.Empty),
        new("plank", Rounded(0, 0.44, 1, 0.42, 0.05), Square(0.5, 0.65, 0.29), PlankLines),
        new("drum", Drum, Square(0.5, 0.66, 0.4), DrumLines),
    ];

    /// <summary>What a pattern card shows where only the colour is asked for: a soft round that is no piece's silhouette.</summary>
    public static Outline Anything { get; } = new("anything", Ring(12, 0.5, 0.46), Square(0.5, 0.5, 0.42), PathData.Empty);

    /// <summary>Looks a silhouette up by its word; false where there is none.</summary>
    public static bool TryFind(string name, [NotNullWhen(true)] out Outline? outline) => Catalogue.TryFind(All, name, out outline);

    /// <summary>The silhouette of that word.</summary>
    /// <exception cref="ArgumentException">There is none; the message lists those there are.</exception>
    public static Outline Find(string name) => Catalogue.Find(All, name, "outline");

    private static Box Square(double x, double y, double side) => new(x - (side / 2), y - (side / 2), side, side);
}
