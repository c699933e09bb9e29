using System.Collections.Immutable;
using System.Text;

namespace Rostrum.Lessons.Page;

/// <summary>The colours of our pages, by what lies where.</summary>
/// <remarks>
/// A name is a ground (<c>table</c>) or a ground and what is printed on it (<c>table-ink</c>). So every pair of text
/// and ground can be read from the names, and a test works out each contrast (WCAG 2.2, success criteria 1.4.3 and 1.4.11).
/// Names that end in <c>-line</c> or <c>-edge</c> carry no text.
/// </remarks>
internal static class PageTheme
{
    /// <summary>What text is printed on: the first part of its name, and every shade that this ground has.</summary>
    public static ImmutableArray<(string Ground, ImmutableArray<string> Shades)> Grounds { get; } =
    [
        ("surround", ["surround", "surround-glow"]),
        ("table", ["table", "table-shade"]),
        ("slip", ["slip"]),
    ];

    /// <summary>Every colour: name, in light, in dark; each <c>#rrggbb</c>.</summary>
    public static ImmutableArray<(string Name, string Light, string Dark)> Colours { get; } =
    [
        // The dark room around the table, a little lighter near the lamp.
        ("surround", "#151d1b", "#0b100f"),
        ("surround-glow", "#2b3a35", "#1b2523"),
        ("surround-ink", "#f1f4ec", "#e7ece4"),
        ("surround-faint", "#b5c3bb", "#a6b4ac"),
        ("surround-link", "#f1c878", "#edc474"),
        ("surround-line", "#43534d", "#2f3d38"),
        ("surround-focus", "#f1c878", "#edc474"),

        // The cloth where the light falls, and where it falls off.
        ("table", "#ebf0e8", "#1f2a28"),
        ("table-shade", "#dae2d8", "#161f1e"),
        ("table-ink", "#16211e", "#e5ebe2"),
        ("table-faint", "#465650", "#aab8b0"),
        ("table-link", "#0b5560", "#93d3d8"),
        ("table-right", "#175c3b", "#9ad9b0"),
        ("table-wrong", "#94271d", "#ffb3a6"),
        ("table-open", "#6e4600", "#f0c878"),
        ("table-line", "#b4c1b6", "#3a4946"),
        ("table-focus", "#0b5560", "#93d3d8"),

        // Under a drawing, which follows the page's light and dark. No text of ours.
        ("drawing-lit", "#f4f6ec", "#2b2722"),
        ("drawing-edge", "#d6ddcf", "#1c1a17"),

        // Paper.
        ("slip", "#fffdf6", "#e6e0cf"),
        ("slip-ink", "#1d211d", "#1d211d"),
        ("slip-faint", "#575c52", "#4c5047"),
        ("slip-link", "#0b5560", "#0a4a54"),
        ("slip-right", "#14603a", "#0f4f30"),
        ("slip-wrong", "#97281d", "#862116"),
        ("slip-open", "#744a00", "#643f00"),
        ("slip-line", "#cdc9b8", "#b5ae99"),
        ("slip-edge", "#a3ad9f", "#0b100f"),
        ("slip-focus", "#0b5560", "#0a4a54"),
    ];

    /// <summary>The colours as custom properties, light first, dark where the reader asks for it.</summary>
    public static string Css()
    {
        var css = new StringBuilder(":root { color-scheme: light dark;\n");
        Append(css, colour => colour.Light);
        css.Append("}\n@media screen and (prefers-color-scheme: dark) {\n:root {\n");
        Append(css, colour => colour.Dark);
        return css.Append("}\n}\n").ToString();
    }

    private static void Append(StringBuilder css, Func<(string Name, string Light, string Dark), string> shade)
    {
        foreach ((string Name, string Light, string Dark) colour in Colours)
        {
            css.Append("  --").Append(colour.Name).Append(": ").Append(shade(colour)).Append(";\n");
        }
    }
}
