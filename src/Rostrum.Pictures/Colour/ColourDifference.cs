namespace Rostrum.Pictures;

/// <summary>The CIEDE2000 colour difference: about 1 is just visible side by side, 20 is plainly another colour.</summary>
/// <remarks>Formulae (2) to (22) of G. Sharma, W. Wu, E. Dalal, "The CIEDE2000 color-difference formula: implementation notes",
/// Color Research and Application 30(1), 2005, 21-30, with all parametric factors 1.</remarks>
public static class ColourDifference
{
    private const double Full = 360;

    /// <summary>The difference between two colours; symmetric, never negative, 0 only for equal ones.</summary>
    public static double Ciede2000(Lab first, Lab second)
    {
        (double chroma1, double hue1, double chroma2, double hue2) = Adjusted(first, second);
        double lightness = second.L - first.L;
        double chroma = chroma2 - chroma1;
        double turn = HueStep(chroma1 * chroma2, hue1, hue2);
        double hue = 2 * Math.Sqrt(chroma1 * chroma2) * Sine(turn / 2);
        double meanL = (first.L + second.L) / 2;
        double meanC = (chroma1 + chroma2) / 2;
        double meanH = MeanHue(chroma1 * chroma2, hue1, hue2);
        double l = lightness / LightnessWeight(meanL);
        double c = chroma / (1 + (0.045 * meanC));
        double h = hue / (1 + (0.015 * meanC * HueFactor(meanH)));
        return Math.Sqrt(Math.Max(0, (l * l) + (c * c) + (h * h) + (Rotation(meanC, meanH) * c * h)));
    }

    private static (double Chroma1, double Hue1, double Chroma2, double Hue2) Adjusted(Lab first, Lab second)
    {
        double mean = (double.Hypot(first.A, first.B) + double.Hypot(second.A, second.B)) / 2;
        double stretch = 1 + (0.5 * (1 - SeventhPowerShare(mean)));
        double a1 = first.A * stretch;
        double a2 = second.A * stretch;
        return (double.Hypot(a1, first.B), Hue(a1, first.B), double.Hypot(a2, second.B), Hue(a2, second.B));
    }

    private static double Hue(double a, double b)
    {
        double degrees = double.RadiansToDegrees(Math.Atan2(b, a));
        return degrees < 0 ? degrees + Full : degrees;
    }

    private static double HueStep(double chromaProduct, double hue1, double hue2) => (hue2 - hue1) switch
    {
        _ when chromaProduct == 0 => 0,
        > 180 => hue2 - hue1 - Full,
        < -180 => hue2 - hue1 + Full,
        var step => step,
    };

    private static double MeanHue(double chromaProduct, double hue1, double hue2) => (hue1 + hue2) switch
    {
        var sum when chromaProduct == 0 => sum,
        var sum when Math.Abs(hue1 - hue2) <= 180 => sum / 2,
        < Full and var sum => (sum + Full) / 2,
        var sum => (sum - Full) / 2,
    };

    private static double LightnessWeight(double meanL)
    {
        double square = (meanL - 50) * (meanL - 50);
        return 1 + (0.015 * square / Math.Sqrt(20 + square));
    }

    private static double HueFactor(double meanH) =>
        1 - (0.17 * Cosine(meanH - 30)) + (0.24 * Cosine(2 * meanH))
        + (0.32 * Cosine((3 * meanH) + 6)) - (0.20 * Cosine((4 * meanH) - 63));

    private static double Rotation(double meanC, double meanH)
    {
        double distance = (meanH - 275) / 25;
        return -2 * SeventhPowerShare(meanC) * Sine(60 * Math.Exp(-distance * distance));
    }

    // sqrt(C^7 / (C^7 + 25^7)), which the paper uses twice.
    private static double SeventhPowerShare(double chroma)
    {
        double seventh = Math.Pow(chroma, 7);
        return Math.Sqrt(seventh / (seventh + 6103515625.0));
    }

    private static double Sine(double degrees) => Math.Sin(double.DegreesToRadians(degrees));

    private static double Cosine(double degrees) => Math.Cos(double.DegreesToRadians(degrees));
}
