namespace Rostrum.Pictures;

/// <summary>How somebody sees a picture.</summary>
public enum Sight
{
    /// <summary>All colours.</summary>
    Full,

    /// <summary>Only lightness, as on a grey print.</summary>
    Grey,

    /// <summary>No red cones.</summary>
    NoRed,

    /// <summary>No green cones.</summary>
    NoGreen,

    /// <summary>No blue cones.</summary>
    NoBlue,
}

/// <summary>How much of two small pictures looks plainly different.</summary>
public static class TileDifference
{
    /// <summary>From this CIEDE2000 difference on, a pixel counts as plainly different. Our choice, no source; 1 to 2 can just be
    /// seen side by side.</summary>
    public const double PlainlyDifferent = 15;

    /// <summary>So many plainly different pixels of the 576 of a tile of 24 by 24 make two pieces different at a glance: 7 in 100.
    /// Our choice, no source; a gem and a spot as emblems of otherwise equal bowls stay below it.</summary>
    public const int AtAGlance = 40;

    /// <summary>The number of pixels that look plainly different.</summary>
    /// <param name="first">One tile.</param>
    /// <param name="second">Another one of the same size.</param>
    /// <param name="sight">How both are seen.</param>
    /// <exception cref="ArgumentException">The tiles differ in size.</exception>
    public static int Pixels(PixelGrid first, PixelGrid second, Sight sight)
    {
        if (first.Width != second.Width || first.Height != second.Height)
        {
            throw new ArgumentException("Only tiles of one size can be compared.", nameof(second));
        }

        Dictionary<Rgb, Lab> seen = [];
        return first.Pixels.Zip(second.Pixels).Count(pair =>
            pair.First != pair.Second && ColourDifference.Ciede2000(SeenOnce(pair.First), SeenOnce(pair.Second)) >= PlainlyDifferent);

        Lab SeenOnce(Rgb colour)
        {
            if (!seen.TryGetValue(colour, out Lab lab))
            {
                lab = Seen(colour, sight);
                seen[colour] = lab;
            }

            return lab;
        }
    }

    /// <summary>The colour as it is seen.</summary>
    public static Lab Seen(Rgb colour, Sight sight) => sight switch
    {
        Sight.Grey => Lab.From(colour) with { A = 0, B = 0 },
        Sight.NoRed => Lab.From(ColourVisionSimulation.Simulate(colour, ColourVision.Protanomaly)),
        Sight.NoGreen => Lab.From(ColourVisionSimulation.Simulate(colour, ColourVision.Deuteranomaly)),
        Sight.NoBlue => Lab.From(ColourVisionSimulation.Simulate(colour, ColourVision.Tritanomaly)),
        _ => Lab.From(colour),
    };
}
