using Rostrum.Pictures;

namespace Rostrum.Lessons.HandOuts;

/// <summary>A drawing in the size in which it goes onto paper.</summary>
/// <param name="Caption">What it shows.</param>
/// <param name="Scene">The drawing.</param>
/// <param name="Scale">Points of a scene unit.</param>
internal sealed record HandOutDrawing(string Caption, Scene Scene, double Scale)
{
    // Letters of a drawing are at least 10 units high: 8.5 points at this scale.
    private const double Readable = 0.85;

    private const double Highest = 260;

    private static readonly double[] Spaces = [32, 27, 23, 20];

    /// <summary>The drawing as large as a column takes it; null where its letters would become too small to read.</summary>
    public static HandOutDrawing? Of(HandOutFigure figure, double width) =>
        Spaces.Select(s => new HandOutDrawing(figure.Caption, figure.Draw(s), Readable)).FirstOrDefault(d => d.Scene.Width * Readable <= width && d.Scene.Height * Readable <= Highest);
}
