namespace Rostrum.Pictures;

/// <summary>The contrast ratio of WCAG 2.2.</summary>
public static class Contrast
{
    /// <summary>What success criterion 1.4.3 (level AA) asks of text of ordinary size.</summary>
    public const double TextMinimum = 4.5;

    /// <summary>What success criterion 1.4.11 (level AA) asks of shapes that carry meaning.</summary>
    public const double ShapeMinimum = 3;

    /// <summary>The ratio of two colours, 1 (equal) to 21 (black and white), whichever is lighter.</summary>
    public static double Ratio(Rgb first, Rgb second)
    {
        double a = LinearRgb.From(first).Luminance;
        double b = LinearRgb.From(second).Luminance;
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }
}
