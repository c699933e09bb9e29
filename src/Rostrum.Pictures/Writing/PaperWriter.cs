using SkiaSharp;

namespace Rostrum.Pictures;

/// <summary>Writes a document for paper as a PDF: shapes stay shapes, text stays text in the shipped fonts, which the file holds.</summary>
/// <remarks>The same document gives the same bytes with the same version of the library: no date goes in. Colours are those of <see cref="Palette.Print"/>.</remarks>
public static class PaperWriter
{
    /// <summary>Writes the document.</summary>
    /// <param name="document">What to write.</param>
    /// <exception cref="ArgumentException">The document has no page, or its language is none.</exception>
    public static byte[] Write(PaperDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        if (document.Pages.Count == 0)
        {
            throw new ArgumentException("A document has at least one page.", nameof(document));
        }

        using MemoryStream stream = new();
        SKDocumentPdfMetadata about = SKDocumentPdfMetadata.Default;
        about.Title = document.Title;
        about.Subject = document.Subject;
        about.Creator = "Rostrum";
        using (SKDocument pdf = SKDocument.CreatePdf(stream, about) ?? throw new InvalidOperationException("The drawing library could not begin a PDF."))
        {
            foreach (PaperPage page in document.Pages)
            {
                Draw(pdf.BeginPage((float)page.Width, (float)page.Height), page);
                pdf.EndPage();
            }

            pdf.Close();
        }

        return PdfLanguage.Said(stream.ToArray(), document.Language);
    }

    private static void Draw(SKCanvas canvas, PaperPage page)
    {
        using SkiaCanvas target = new(canvas, Palette.Print);
        foreach (PlacedScene picture in page.Pictures)
        {
            canvas.Save();
            canvas.Translate((float)picture.At.X, (float)picture.At.Y);
            canvas.Scale((float)picture.Scale);
            target.DrawAll(picture.Scene.Nodes);
            canvas.Restore();
        }

        target.DrawAll(page.Nodes);
    }
}
