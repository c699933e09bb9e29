namespace Rostrum.Pictures;

/// <summary>A drawn picture as colours.</summary>
/// <param name="Width">Pixels a row.</param>
/// <param name="Height">Rows.</param>
/// <param name="Pixels">Row by row from the top left; <paramref name="Width"/> times <paramref name="Height"/> of them.</param>
public sealed record PixelGrid(int Width, int Height, ValueList<Rgb> Pixels);
