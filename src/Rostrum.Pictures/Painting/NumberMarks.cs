using System.Globalization;

namespace Rostrum.Pictures;

/// <summary>Draws the numbers that are printed on a space, side by side. A ring sets them apart from how many things lie there; small ones do without.</summary>
internal static class NumberMarks
{
    private const double LeastShelfWithRing = 36;

    /// <summary>Half of what a number takes in height, with its ring.</summary>
    public static double Radius(TableMeasures measures) => measures.SmallSize * (measures.Shelf >= LeastShelfWithRing ? 0.62 : 0.48);

    /// <summary>Half of the width of so many numbers.</summary>
    public static double HalfWidth(int count, TableMeasures measures) => Radius(measures) * (1 + (1.1 * (count - 1)));

    /// <summary>The numbers.</summary>
    /// <param name="numbers">From the left.</param>
    /// <param name="middle">The middle of them all.</param>
    /// <param name="measures">Lengths of the picture.</param>
    public static IEnumerable<SceneNode> Paint(IReadOnlyList<long> numbers, Point middle, TableMeasures measures)
    {
        double size = measures.SmallSize * 0.92;
        for (int i = 0; i < numbers.Count; i++)
        {
            Point centre = middle.Moved((i - ((numbers.Count - 1) / 2.0)) * Radius(measures) * 2.2, 0);
            SceneNode.Text text = new(centre.Moved(0, size * 0.36), numbers[i].ToString(CultureInfo.InvariantCulture), size, Tones.BackInk, TextAnchor.Middle, FontWeight.Bold);
            if (measures.Shelf >= LeastShelfWithRing && text.Width <= Radius(measures) * 1.6)
            {
                yield return new SceneNode.Circle(centre, Radius(measures), Pictures.Paint.Line(Tones.BackInk, Math.Max(1, size * 0.07)));
            }

            yield return text;
        }
    }
}
