namespace Rostrum.Pictures;

/// <summary>A colour in CIE 1976 L*a*b*, where equal steps look roughly equal.</summary>
/// <param name="L">Lightness: 0 black, 100 the white point.</param>
/// <param name="A">Green (negative) to red (positive).</param>
/// <param name="B">Blue (negative) to yellow (positive).</param>
public readonly record struct Lab(double L, double A, double B)
{
    /// <summary>The colour relative to a white point.</summary>
    /// <param name="colour">Tristimulus values on the scale of the white point.</param>
    /// <param name="white">What counts as white, such as <see cref="Xyz.D65"/>.</param>
    /// <remarks>CIE 15:2004, with the exact fractions 216/24389 and 24389/27.</remarks>
    public static Lab From(Xyz colour, Xyz white)
    {
        double x = Compress(colour.X / white.X);
        double y = Compress(colour.Y / white.Y);
        double z = Compress(colour.Z / white.Z);
        return new Lab((116 * y) - 16, 500 * (x - y), 200 * (y - z));
    }

    /// <summary>A screen colour relative to <see cref="Xyz.D65"/>.</summary>
    public static Lab From(Rgb colour) => From(Xyz.From(LinearRgb.From(colour)), Xyz.D65);

    private static double Compress(double ratio) =>
        ratio > 216.0 / 24389 ? Math.Cbrt(ratio) : ((24389.0 / 27 * ratio) + 16) / 116;
}
