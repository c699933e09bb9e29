using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>The weights of the font that comes with Rostrum.</summary>
public enum FontWeight
{
    /// <summary>Weight 400, for running text.</summary>
    Regular,

    /// <summary>Weight 700, for titles and labels.</summary>
    Bold,
}

/// <summary>The font that every picture is measured with and every PNG drawn with.</summary>
/// <remarks>Atkinson Hyperlegible, copyright 2020 Braille Institute of America, SIL Open Font License 1.1 (Fonts/OFL.txt).
/// It has Latin letters with accents, but neither arrows nor ticks nor Cyrillic: pictures draw their signs as shapes.</remarks>
public static class ShippedFonts
{
    /// <summary>The family name as it stands in the font files.</summary>
    public const string Family = "Atkinson Hyperlegible";

    private static readonly Lazy<ImmutableArray<byte>> Regular = new(() => Read("AtkinsonHyperlegible-Regular.ttf"));

    private static readonly Lazy<ImmutableArray<byte>> Bold = new(() => Read("AtkinsonHyperlegible-Bold.ttf"));

    private static readonly Lazy<FontMetrics> RegularMetrics = new(() => new FontMetrics(Regular.Value.AsSpan()));

    private static readonly Lazy<FontMetrics> BoldMetrics = new(() => new FontMetrics(Bold.Value.AsSpan()));

    /// <summary>The whole TrueType file of a weight, unmodified.</summary>
    public static ImmutableArray<byte> Bytes(FontWeight weight) =>
        weight == FontWeight.Bold ? Bold.Value : Regular.Value;

    /// <summary>The advance widths of a weight.</summary>
    public static FontMetrics Metrics(FontWeight weight) =>
        weight == FontWeight.Bold ? BoldMetrics.Value : RegularMetrics.Value;

    private static ImmutableArray<byte> Read(string name)
    {
        using Stream stream = typeof(ShippedFonts).Assembly.GetManifestResourceStream("Fonts/" + name)
            ?? throw new InvalidOperationException($"The font {name} was not built into this assembly.");
        byte[] bytes = new byte[checked((int)stream.Length)];
        stream.ReadExactly(bytes);
        return ImmutableArray.Create(bytes);
    }
}
