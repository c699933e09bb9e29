namespace Rostrum.Pictures;

public static partial class Outlines
{
    private static PathData Bowl => PathData.Empty
        .From(0, 0.26).To(1, 0.26).Curve(1, 0.6, 0.86, 0.84, 0.66, 0.9)
        .To(0.7, 1).To(0.3, 1).To(0.34, 0.9).Curve(0.14, 0.84, 0, 0.6, 0, 0.26).Closed();

    private static PathData BowlLines => PathData.Polyline(new Point(0.03, 0.36), new Point(0.97, 0.36));

    private static PathData Jug => PathData.Empty
        .From(0.08, 0.02).To(0.62, 0.02).To(0.6, 0.14)
        .Curve(0.9, 0.08, 1, 0.24, 1, 0.44).Curve(1, 0.6, 0.94, 0.74, 0.8, 0.82)
        .Curve(0.78, 0.9, 0.74, 0.96, 0.68, 1).To(0.18, 1)
        .Curve(0.06, 0.92, 0.02, 0.8, 0.02, 0.7).Curve(0.02, 0.5, 0.2, 0.46, 0.22, 0.28).Closed()
        .From(0.65, 0.27).Curve(0.66, 0.38, 0.78, 0.46, 0.82, 0.62)
        .Curve(0.88, 0.54, 0.88, 0.46, 0.87, 0.4).Curve(0.86, 0.26, 0.76, 0.22, 0.65, 0.27).Closed();

    private static PathData Plate => PathData.Empty
        .From(0.34, 1).To(0.38, 0.92).Curve(0.16, 0.87, 0.02, 0.69, 0.02, 0.48).Curve(0.02, 0.21, 0.23, 0, 0.5, 0)
        .Curve(0.77, 0, 0.98, 0.21, 0.98, 0.48).Curve(0.98, 0.69, 0.84, 0.87, 0.62, 0.92).To(0.66, 1).Closed();

    private static PathData PlateLines => PathData.Ellipse(new Point(0.5, 0.48), 0.35, 0.35);

    // A lantern: a ring to carry it by, a curved roof, a bellied glass, a foot.
    private static PathData Lamp => PathData.Empty
        .From(0.43, 0.2).Curve(0.28, 0.16, 0.3, 0, 0.5, 0).Curve(0.7, 0, 0.72, 0.16, 0.57, 0.2)
        .Curve(0.66, 0.3, 0.8, 0.34, 0.9, 0.36).To(0.82, 0.44).Curve(1.02, 0.58, 1.02, 0.76, 0.82, 0.88).To(0.9, 0.9).To(0.9, 1)
        .To(0.1, 1).To(0.1, 0.9).To(0.18, 0.88).Curve(-0.02, 0.76, -0.02, 0.58, 0.18, 0.44).To(0.1, 0.36)
        .Curve(0.2, 0.34, 0.34, 0.3, 0.43, 0.2).Closed()
        .And(PathData.Ellipse(new Point(0.5, 0.115), 0.06, 0.045));

    private static PathData LampLines => PathData.Polyline(new Point(0.18, 0.44), new Point(0.82, 0.44)).And(PathData.Polyline(new Point(0.18, 0.88), new Point(0.82, 0.88)));

    private static PathData Figure => PathData.Empty
        .From(0.5, 0).Curve(0.74, 0, 0.78, 0.3, 0.62, 0.4).Curve(0.8, 0.5, 0.86, 0.76, 0.9, 1)
        .To(0.1, 1).Curve(0.14, 0.76, 0.2, 0.5, 0.38, 0.4).Curve(0.22, 0.3, 0.26, 0, 0.5, 0).Closed();

    private static PathData Drum => PathData.Empty
        .From(0.04, 0.22).Curve(0.04, 0, 0.96, 0, 0.96, 0.22).To(0.96, 0.86).Curve(0.96, 1.05, 0.04, 1.05, 0.04, 0.86).Closed();

    private static PathData DrumLines => PathData.Empty.From(0.04, 0.22).Curve(0.04, 0.42, 0.96, 0.42, 0.96, 0.22);

    private static PathData PlankLines => PathData.Polyline(new Point(0.1, 0.45), new Point(0.1, 0.85)).And(PathData.Polyline(new Point(0.9, 0.45), new Point(0.9, 0.85)));

    private static PathData Rounded(double x, double y, double width, double height, double radius)
    {
        (double right, double bottom) = (x + width, y + height);
        return PathData.Empty
            .From(x + radius, y).To(right - radius, y).Curve(right, y, right, y, right, y + radius)
            .To(right, bottom - radius).Curve(right, bottom, right, bottom, right - radius, bottom)
            .To(x + radius, bottom).Curve(x, bottom, x, bottom, x, bottom - radius)
            .To(x, y + radius).Curve(x, y, x, y, x + radius, y).Closed();
    }

    private static PathData Ring(int corners, double centre, double radius) => PathData.Polygon(
        Enumerable.Range(0, corners).Select(corner =>
        {
            double angle = ((2 * corner) + 1) * Math.PI / corners;
            return new Point(centre + (radius * Math.Sin(angle)), centre + (radius * Math.Cos(angle)));
        }));
}
