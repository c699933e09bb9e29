using System.Text;

namespace Rostrum.Pictures;

/// <summary>The custom properties that make pictures in a page follow its light or dark.</summary>
public static class PaletteCss
{
    /// <summary>A style sheet: light by default, dark where the reader's system asks for it, either where <c>data-light</c> on the root says so.</summary>
    /// <remarks><c>data-light="dark"</c> or <c>data-light="light"</c> on the html element is stronger than the system.</remarks>
    public static string Write()
    {
        StringBuilder css = new();
        Rule(css, ":root", Palette.Light);
        css.Append("@media screen and (prefers-color-scheme: dark) {\n");
        Rule(css, ":root:not([data-light=\"light\"])", Palette.Dark);
        css.Append("}\n");
        Rule(css, ":root[data-light=\"dark\"]", Palette.Dark);
        return css.ToString();
    }

    private static void Rule(StringBuilder css, string selector, Palette palette)
    {
        css.Append(selector).Append(" {");
        foreach (Tone tone in palette.KnownTones)
        {
            css.Append(' ').Append(tone.CssProperty).Append(": ").Append(palette[tone].Hex).Append(';');
        }

        css.Append(" }\n");
    }
}
