using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Rostrum.Pictures;

/// <summary>Writes a scene as SVG 1.1 with a title, a description and no reference to anything outside.</summary>
/// <remarks>The same scene and options always give the same characters. Numbers have at most two decimals.</remarks>
public static class SvgWriter
{
    /// <summary>Writes the picture.</summary>
    /// <param name="scene">What to draw.</param>
    /// <param name="options">Null for a light picture with the font by name.</param>
    /// <returns>One <c>svg</c> element, lines ended by a line feed, without an XML declaration.</returns>
    public static string Write(Scene scene, SvgOptions? options = null)
    {
        SvgOptions chosen = options ?? new SvgOptions();
        SvgMarkup markup = new(chosen);
        markup.Open(scene);
        foreach (SceneNode node in scene.Nodes)
        {
            markup.Write(node, depth: 1);
        }

        return markup.Close();
    }

    /// <summary>A number as SVG wants it: at most two decimals, a full stop, no exponent, no minus zero.</summary>
    internal static string Number(double value)
    {
        double rounded = Math.Round(value, 2, MidpointRounding.AwayFromZero) + 0.0;
        return (rounded == 0 ? 0 : rounded).ToString("0.##", CultureInfo.InvariantCulture);
    }

    /// <summary>Text as XML wants it; characters that XML 1.0 forbids become the replacement character.</summary>
    internal static string Escaped(string text)
    {
        StringBuilder safe = new(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
        {
            safe.Append(rune.Value switch
            {
                '&' => "&amp;",
                '<' => "&lt;",
                '>' => "&gt;",
                '"' => "&quot;",
                '\'' => "&#39;",
                '\t' or '\n' or '\r' => " ",
                < 0x20 or 0xFFFE or 0xFFFF => "\uFFFD",
                _ => rune.ToString(),
            });
        }

        return safe.ToString();
    }

    /// <summary>The font files that the texts of a scene need, each with the weight that it serves, in order.</summary>
    internal static ImmutableArray<(FontWeight Weight, ShippedFace Face)> Faces(IEnumerable<SceneNode> nodes) =>
        [.. nodes.SelectMany(FacesOf).Distinct().OrderBy(use => use.Weight).ThenBy(use => ShippedFonts.Faces(use.Weight).IndexOf(use.Face))];

    private static IEnumerable<(FontWeight Weight, ShippedFace Face)> FacesOf(SceneNode node) => node switch
    {
        SceneNode.Text text => ShippedFonts.Runs(text.Content, text.Weight).Select(run => (text.Weight, run.Face)),
        SceneNode.Group group => group.Children.SelectMany(FacesOf),
        _ => [],
    };
}
