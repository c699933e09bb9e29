namespace Rostrum.Pictures;

/// <summary>A colour of pieces. Pieces are things, so they keep their colour when a page goes dark.</summary>
/// <param name="Name">The word in a sheet, such as <c>moss</c>.</param>
/// <param name="Rgb">Its colour in every palette.</param>
public sealed record PieceColour(string Name, Rgb Rgb) : INamedLook
{
    /// <summary>The tone of the piece's body.</summary>
    public Tone Body { get; } = new("piece-" + Name);

    /// <summary>The tone of what is drawn on the body: dark or light, whichever stands out more.</summary>
    public Tone Mark { get; } = Contrast.Ratio(Rgb, new Rgb(0x24, 0x1b, 0x15)) >= Contrast.Ratio(Rgb, new Rgb(0xff, 0xf4, 0xe0))
        ? Tones.DarkMark
        : Tones.LightMark;
}
