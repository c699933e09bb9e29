namespace Rostrum.Pictures;

/// <summary>All lengths of a picture, from the side of one shelf.</summary>
/// <param name="Shelf">Side of the square that a space takes, in scene units.</param>
internal sealed record TableMeasures(double Shelf)
{
    public double Margin => Math.Max(12, Shelf * 0.4);

    public double Gap => Math.Max(12, Shelf * 0.5);

    public double FrameWidth => Shelf * 0.16;

    public double PlankHeight => Shelf * 0.11;

    public double PostWidth => Shelf * 0.08;

    public double PieceSide => Shelf * 0.76;

    public double TitleSize => Math.Clamp(Shelf * 0.38, 13, 26);

    public double LabelSize => Math.Clamp(Shelf * 0.3, 11, 20);

    public double SmallSize => Math.Clamp(Shelf * 0.25, 10, 17);

    public double TagHeight => Math.Clamp(Shelf * 0.34, 13, 28);

    /// <summary>Distance of base lines.</summary>
    public static double LineHeight(double size) => size * 1.32;

    /// <summary>From the top of a line to its base line.</summary>
    public static double BaseLine(double size) => size * 0.98;
}
