namespace Rostrum.Lessons.HandOuts;

/// <summary>A size of paper.</summary>
/// <param name="Name">As it stands in a file's name, such as <c>a4</c>.</param>
/// <param name="Title">As people call it, such as <c>A4</c>.</param>
/// <param name="Width">In points of 1/72 inch.</param>
/// <param name="Height">In points of 1/72 inch.</param>
public sealed record PaperSize(string Name, string Title, double Width, double Height)
{
    /// <summary>210 by 297 mm (ISO 216), in whole points.</summary>
    public static PaperSize A4 { get; } = new("a4", "A4", 595, 842);

    /// <summary>8.5 by 11 inches (ANSI/ASME Y14.1, size A).</summary>
    public static PaperSize Letter { get; } = new("letter", "US Letter", 612, 792);
}
