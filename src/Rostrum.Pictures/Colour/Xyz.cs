namespace Rostrum.Pictures;

/// <summary>A colour in CIE 1931 XYZ, scaled so that the white point's Y is 100.</summary>
/// <param name="X">Tristimulus value X.</param>
/// <param name="Y">Tristimulus value Y: luminance, 0 to 100 for a screen colour.</param>
/// <param name="Z">Tristimulus value Z.</param>
public readonly record struct Xyz(double X, double Y, double Z)
{
    /// <summary>White of a daylight screen: CIE D65, 2 degree observer.</summary>
    public static Xyz D65 { get; } = new(95.047, 100, 108.883);

    /// <summary>White of a print viewing booth: CIE D50, 2 degree observer.</summary>
    public static Xyz D50 { get; } = new(96.422, 100, 82.521);

    /// <summary>The tristimulus values of screen light, by the matrix of IEC 61966-2-1.</summary>
    public static Xyz From(LinearRgb light) => new(
        100 * ((0.4124564 * light.R) + (0.3575761 * light.G) + (0.1804375 * light.B)),
        100 * ((0.2126729 * light.R) + (0.7151522 * light.G) + (0.0721750 * light.B)),
        100 * ((0.0193339 * light.R) + (0.1191920 * light.G) + (0.9503041 * light.B)));
}
