using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Pictures;

/// <summary>Breaks text into lines by the widths of the shipped font.</summary>
public static class TextFlow
{
    /// <summary>The lines of a text; a word wider than a line gets a line to itself and sticks out.</summary>
    /// <param name="text">Any white space counts as one blank.</param>
    /// <param name="width">What a line may measure, in the unit of <paramref name="size"/>.</param>
    /// <param name="size">Height of an em.</param>
    /// <param name="weight">Regular or bold.</param>
    public static ImmutableArray<string> Lines(string text, double width, double size, FontWeight weight = FontWeight.Regular)
    {
        List<string> lines = [];
        string line = "";
        foreach (string word in Prose.WordsOf(text))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (line.Length > 0 && ShippedFonts.Width(longer, size, weight) > width)
            {
                lines.Add(line);
                longer = word;
            }

            line = longer;
        }

        return line.Length > 0 ? [.. lines, line] : [];
    }
}
