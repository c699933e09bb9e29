using SkiaSharp;

namespace Rostrum.Pictures;

/// <summary>Writes a scene as a PDF of one page, as large as the picture, in whole points. Shapes stay shapes and text stays text, in the shipped fonts.</summary>
/// <remarks>The same scene and palette give the same bytes with the same version of the library: no date goes in.</remarks>
public static class PdfWriter
{
    /// <summary>PDF points, 1/72 inch, of a scene unit, which is a pixel of 1/96 inch as in SVG.</summary>
    public const double PointsPerUnit = 0.75;

    /// <summary>Writes the picture.</summary>
    /// <param name="scene">What to draw; its title becomes the document's, its description the document's subject.</param>
    /// <param name="palette">The colours; light where left out.</param>
    public static byte[] Write(Scene scene, Palette? palette = null)
    {
        Palette chosen = palette ?? Palette.Light;
        using MemoryStream stream = new();
        SKDocumentPdfMetadata about = SKDocumentPdfMetadata.Default;
        about.Title = scene.Title;
        about.Subject = scene.Description;
        about.Creator = "Rostrum";
        using (SKDocument document = SKDocument.CreatePdf(stream, about) ?? throw new InvalidOperationException("The drawing library could not begin a PDF."))
        {
            SKCanvas page = document.BeginPage(Points(scene.Width), Points(scene.Height));
            page.Clear(SkiaCanvas.Colour(chosen[Tones.Surround]));
            page.Scale((float)PointsPerUnit);
            using SkiaCanvas target = new(page, chosen);
            target.DrawAll(scene.Nodes);
            document.EndPage();
            document.Close();
        }

        return stream.ToArray();
    }

    private static float Points(double units) => (float)Math.Ceiling((units * PointsPerUnit) - 1e-6);
}
