namespace Rostrum.Pictures;

/// <summary>Light in the sRGB primaries without gamma encoding.</summary>
/// <param name="R">Red light; 0 is none, 1 the screen's full red.</param>
/// <param name="G">Green light, same scale.</param>
/// <param name="B">Blue light, same scale.</param>
public readonly record struct LinearRgb(double R, double G, double B)
{
    /// <summary>Decodes the gamma of one channel.</summary>
    /// <param name="encoded">A channel in [0, 1].</param>
    /// <remarks>Threshold 0.04045, as IEC 61966-2-1 and, since May 2021, WCAG 2.2 have it.</remarks>
    public static double Decode(double encoded) =>
        encoded <= 0.04045 ? encoded / 12.92 : Math.Pow((encoded + 0.055) / 1.055, 2.4);

    /// <summary>The light that a screen gives for an encoded colour.</summary>
    public static LinearRgb From(Rgb colour) =>
        new(Decode(colour.R / 255.0), Decode(colour.G / 255.0), Decode(colour.B / 255.0));

    /// <summary>The nearest encoded colour; light outside [0, 1] is clipped channel by channel.</summary>
    public Rgb ToRgb() => new(Encode(R), Encode(G), Encode(B));

    /// <summary>Relative luminance as WCAG 2.2 defines it: 0 for black, 1 for white.</summary>
    public double Luminance => (0.2126 * R) + (0.7152 * G) + (0.0722 * B);

    private static byte Encode(double light)
    {
        double clipped = Math.Clamp(light, 0, 1);
        double encoded = clipped <= 0.0031308 ? clipped * 12.92 : (1.055 * Math.Pow(clipped, 1 / 2.4)) - 0.055;
        return (byte)Math.Round(encoded * 255);
    }
}
