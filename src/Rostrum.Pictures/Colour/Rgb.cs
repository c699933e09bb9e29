using System.Globalization;

namespace Rostrum.Pictures;

/// <summary>An opaque sRGB colour (IEC 61966-2-1), eight bits a channel.</summary>
/// <param name="R">Red, gamma-encoded, 0 to 255.</param>
/// <param name="G">Green, gamma-encoded, 0 to 255.</param>
/// <param name="B">Blue, gamma-encoded, 0 to 255.</param>
public readonly record struct Rgb(byte R, byte G, byte B)
{
    /// <summary>The colour in the six-digit notation of CSS, lower case, such as <c>#1b1a18</c>.</summary>
    public string Hex => string.Create(CultureInfo.InvariantCulture, $"#{R:x2}{G:x2}{B:x2}");

    /// <summary>Reads the six-digit notation of CSS.</summary>
    /// <param name="hex">A hash sign and six hexadecimal digits, either case.</param>
    /// <exception cref="FormatException">The text is anything else.</exception>
    public static Rgb Parse(string hex)
    {
        if (hex is not ['#', _, _, _, _, _, _])
        {
            throw new FormatException($"'{hex}' is not a colour such as #1b1a18.");
        }

        int value = int.Parse(hex.AsSpan(1), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
        return new Rgb((byte)(value >> 16), (byte)((value >> 8) & 0xFF), (byte)(value & 0xFF));
    }

    /// <inheritdoc />
    public override string ToString() => Hex;
}
