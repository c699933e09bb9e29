using System.Collections.Immutable;
using System.Text;

namespace Rostrum.Pictures;

/// <summary>The weights of text.</summary>
public enum FontWeight
{
    /// <summary>Weight 400, for running text.</summary>
    Regular,

    /// <summary>Weight 700, for titles and labels.</summary>
    Bold,
}

/// <summary>The fonts that every picture is measured with and every PNG drawn with; all under the SIL Open Font License 1.1.</summary>
/// <remarks>Rostrum Letters, which is Atkinson Hyperlegible (copyright 2020 Braille Institute of America) with a plain zero, has Latin letters. For what it lacks stand in, in this
/// order: Noto Sans (Greek, Cyrillic), Noto Sans Symbols (arrows), Noto Sans Symbols 2 (suits, dice, ticks); copyright 2022 the Noto
/// Project Authors; the symbols have one weight. The licences lie beside the files in the source tree.</remarks>
public static class ShippedFonts
{
    /// <summary>The family of ordinary text, by the name under which readers may have it installed; theirs has a stroke in its zero.</summary>
    public const string Family = "Atkinson Hyperlegible";

    private static readonly ShippedFace Arrows = new("NotoSansSymbols-Regular");

    private static readonly ShippedFace Signs = new("NotoSansSymbols2-Regular");

    private static readonly ImmutableArray<ShippedFace> Regular =
        [new("RostrumLetters-Regular"), new("NotoSans-Regular"), Arrows, Signs];

    private static readonly ImmutableArray<ShippedFace> Bold =
        [new("RostrumLetters-Bold"), new("NotoSans-Bold"), Arrows, Signs];

    /// <summary>The fonts of a weight, the one of ordinary text first, then those that stand in.</summary>
    public static ImmutableArray<ShippedFace> Faces(FontWeight weight) => weight == FontWeight.Bold ? Bold : Regular;

    /// <summary>The line cut where the font changes; what no font can draw stays with the first, as an empty box.</summary>
    /// <param name="text">One line.</param>
    /// <param name="weight">Its weight.</param>
    public static IEnumerable<TextRun> Runs(string text, FontWeight weight)
    {
        StringBuilder run = new();
        ShippedFace? face = null;
        foreach (Rune character in text.EnumerateRunes())
        {
            ShippedFace next = FaceFor(character, weight);
            if (face is not null && next != face)
            {
                yield return new TextRun(face, run.ToString());
                run.Clear();
            }

            face = next;
            run.Append(character);
        }

        if (face is not null)
        {
            yield return new TextRun(face, run.ToString());
        }
    }

    /// <summary>The width of a line, in the unit of its size.</summary>
    /// <param name="text">One line.</param>
    /// <param name="size">Height of an em.</param>
    /// <param name="weight">Its weight.</param>
    public static double Width(string text, double size, FontWeight weight) =>
        Runs(text, weight).Sum(run => run.Face.Metrics.Width(run.Text, size));

    private static ShippedFace FaceFor(Rune character, FontWeight weight)
    {
        ImmutableArray<ShippedFace> faces = Faces(weight);
        return faces.FirstOrDefault(face => face.Metrics.Has(character)) ?? faces[0];
    }
}
