using SkiaSharp;

namespace Rostrum.Pictures;

/// <summary>Draws a scene as a PNG with the shipped fonts. The native drawing library loads at the first call and not before.</summary>
/// <remarks>The same scene, palette and scale give the same bytes with the same version of the library.</remarks>
public static class PngWriter
{
    /// <summary>Draws the picture.</summary>
    /// <param name="scene">What to draw.</param>
    /// <param name="scale">Pixels a scene unit; above 0. The size in pixels is rounded up.</param>
    /// <param name="palette">The colours; light where left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">The scale is not above 0, or the picture would be wider or higher than 16,384 pixels.</exception>
    public static byte[] Write(Scene scene, double scale = 1, Palette? palette = null)
    {
        using SKBitmap bitmap = Draw(scene, scale, palette ?? Palette.Light);
        using SKPixmap pixels = bitmap.PeekPixels();
        using SKData data = pixels.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.AllFilters, 6))
            ?? throw new InvalidOperationException("The drawing library could not write a PNG.");
        return data.ToArray();
    }

    /// <summary>The picture as pixels, row by row from the top left, for checks of what can be told apart.</summary>
    /// <inheritdoc cref="Write"/>
    public static PixelGrid Pixels(Scene scene, double scale = 1, Palette? palette = null)
    {
        using SKBitmap bitmap = Draw(scene, scale, palette ?? Palette.Light);
        return new PixelGrid(bitmap.Width, bitmap.Height, [.. bitmap.Pixels.Select(pixel => new Rgb(pixel.Red, pixel.Green, pixel.Blue))]);
    }

    private static SKBitmap Draw(Scene scene, double scale, Palette palette)
    {
        SKBitmap bitmap = new(new SKImageInfo(Size(scene.Width, scale), Size(scene.Height, scale), SKColorType.Rgba8888, SKAlphaType.Opaque));
        using SKCanvas canvas = new(bitmap);
        canvas.Clear(SkiaCanvas.Colour(palette[Tones.Surround]));
        canvas.Scale((float)scale);
        using SkiaCanvas target = new(canvas, palette);
        target.DrawAll(scene.Nodes);
        return bitmap;
    }

    private static int Size(double units, double scale)
    {
        double pixels = Math.Ceiling((units * scale) - 1e-6);
        return pixels is >= 1 and <= 16384
            ? (int)pixels
            : throw new ArgumentOutOfRangeException(nameof(scale), scale, "A picture has 1 to 16,384 pixels a side.");
    }
}
