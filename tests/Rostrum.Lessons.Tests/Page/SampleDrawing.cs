using System.Globalization;
using System.Text;
using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

/// <summary>Placeholder drawings of a chamber; the real ones come from another room.</summary>
internal static class SampleDrawing
{
    private const int Shelf = 76;

    public static PageBlock.Figure Chamber { get; } = new(
        Svg(["pa", "pa", "pi", "jc", "bc"], ["ba", "ji", "bi", ".", "."], ["ba", ".", "li", ".", "."], [".", ".", ".", ".", "."]),
        "A chamber after the firing",
        "Tier 4: nothing.\nTier 3: A3 ash bowl, C3 iron lamp.\nTier 2: A2 ash bowl, B2 iron jug, C2 iron bowl.\nTier 1: A1 ash plate, B1 ash plate, C1 iron plate, D1 copper jug, E1 copper bowl.",
        "drawings/E1.svg");

    public static PageBlock.Figure CopperBesideAsh { get; } = new(
        Svg(["pi", "pi", ".", ".", "."], ["ba", ".", ".", ".", "."]),
        "Copper beside ash",
        "Tier 2: A2 ash bowl.\nTier 1: A1 iron plate, B1 iron plate.",
        "drawings/copper-ash-near.svg");

    /// <summary>Tiers from the lowest; form letter, then glaze letter; a point is a free shelf.</summary>
    private static string Svg(params string[][] tiers)
    {
        int width = (5 * Shelf) + 60;
        int height = (tiers.Length * Shelf) + 56;
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" width=\"{width}\" height=\"{height}\">");
        svg.Append("<defs><linearGradient id=\"clay\" x1=\"0\" x2=\"0\" y1=\"0\" y2=\"1\"><stop offset=\"0\" stop-color=\"#b78a6b\"/><stop offset=\"1\" stop-color=\"#8f6448\"/></linearGradient></defs>");
        svg.Append(CultureInfo.InvariantCulture, $"<rect x=\"36\" y=\"8\" width=\"{(5 * Shelf) + 16}\" height=\"{(tiers.Length * Shelf) + 14}\" rx=\"6\" fill=\"url(#clay)\"/>");
        for (int tier = 0; tier < tiers.Length; tier++)
        {
            int y = 15 + ((tiers.Length - 1 - tier) * Shelf);
            svg.Append(CultureInfo.InvariantCulture, $"<text x=\"18\" y=\"{y + 44}\" text-anchor=\"middle\" font-size=\"17\" fill=\"#3c3a33\">{tier + 1}</text>");
            for (int bay = 0; bay < 5; bay++)
            {
                svg.Append(ShelfAt(44 + (bay * Shelf), y, tiers[tier][bay]));
            }
        }

        for (int bay = 0; bay < 5; bay++)
        {
            svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{44 + (bay * Shelf) + 38}\" y=\"{height - 10}\" text-anchor=\"middle\" font-size=\"17\" fill=\"#3c3a33\">{"ABCDE"[bay]}</text>");
        }

        return svg.Append("</svg>").ToString();
    }

    private static string ShelfAt(int x, int y, string ware)
    {
        string free = string.Create(CultureInfo.InvariantCulture, $"<rect x=\"{x + 2}\" y=\"{y + 2}\" width=\"{Shelf - 4}\" height=\"{Shelf - 4}\" rx=\"3\" fill=\"#f6efe4\"/>");
        return ware == "." ? free : free + Ware(x, y, ware);
    }

    private static string Ware(int x, int y, string ware)
    {
        string shape = ware[0] switch
        {
            'b' => "M14 34 H62 Q60 62 46 64 H30 Q16 62 14 34 Z",
            'j' => "M28 16 H46 L44 28 Q60 40 54 64 H22 Q16 40 32 28 Z",
            'p' => "M10 50 H66 L58 62 H18 Z",
            _ => "M14 52 Q14 40 34 40 L58 34 L64 40 Q58 62 38 64 Q14 64 14 52 Z",
        };
        string glaze = ware[1] switch { 'a' => "#d9d3c4", 'i' => "#4d4743", _ => "#5f8f7c" };
        return string.Create(
            CultureInfo.InvariantCulture,
            $"<path transform=\"translate({x} {y})\" d=\"{shape}\" fill=\"{glaze}\" stroke=\"#2d2a26\" stroke-width=\"2\"/>");
    }
}
