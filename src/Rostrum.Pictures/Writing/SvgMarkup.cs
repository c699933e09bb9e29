using System.Text;
using static Rostrum.Pictures.SvgWriter;

namespace Rostrum.Pictures;

/// <summary>The SVG text while it grows.</summary>
internal sealed class SvgMarkup(SvgOptions options)
{
    private readonly StringBuilder _text = new();

    public void Open(Scene scene)
    {
        string id = Escaped(options.IdPrefix);
        string size = $"width=\"{Number(scene.Width)}\" height=\"{Number(scene.Height)}\" viewBox=\"0 0 {Number(scene.Width)} {Number(scene.Height)}\"";
        Line(0, $"<svg xmlns=\"http://www.w3.org/2000/svg\" {size} role=\"img\" aria-labelledby=\"{id}-title {id}-desc\" font-family=\"{Families}\">");
        Line(1, $"<title id=\"{id}-title\">{Escaped(scene.Title)}</title>");
        Line(1, $"<desc id=\"{id}-desc\">{Escaped(scene.Description)}</desc>");
        if (options.Font == SvgFont.Embedded)
        {
            WriteFaces(scene);
        }
    }

    public string Close()
    {
        Line(0, "</svg>");
        return _text.ToString();
    }

    public void Write(SceneNode node, int depth)
    {
        switch (node)
        {
            case SceneNode.Rectangle r:
                string corner = r.Radius > 0 ? $" rx=\"{Number(r.Radius)}\"" : "";
                Line(depth, $"<rect x=\"{Number(r.Box.X)}\" y=\"{Number(r.Box.Y)}\" width=\"{Number(r.Box.Width)}\" height=\"{Number(r.Box.Height)}\"{corner}{Coloured(r.Paint)}/>");
                break;
            case SceneNode.Circle c:
                Line(depth, $"<circle cx=\"{Number(c.Centre.X)}\" cy=\"{Number(c.Centre.Y)}\" r=\"{Number(c.Radius)}\"{Coloured(c.Paint)}/>");
                break;
            case SceneNode.Path p:
                Line(depth, $"<path d=\"{Steps(p.Data)}\" fill-rule=\"evenodd\"{Coloured(p.Paint)}/>");
                break;
            case SceneNode.Line l:
                WriteLine(l.From, l.To, l.Paint, depth);
                break;
            case SceneNode.Arrow a:
                WriteLine(a.From, a.Neck, Paint.Line(a.Tone, a.Width), depth);
                Line(depth, $"<path d=\"{Steps(a.Head)}\"{Coloured(new Paint(a.Tone))}/>");
                break;
            case SceneNode.Text t:
                WriteText(t, depth);
                break;
            case SceneNode.Group g:
                WriteGroup(g, depth);
                break;
        }
    }

    private string Families => options.Font == SvgFont.Embedded
        ? "Rostrum Letters, sans-serif"
        : $"{ShippedFonts.Family}, Verdana, DejaVu Sans, sans-serif";

    private void WriteFaces(Scene scene)
    {
        Line(1, "<style>");
        foreach (FontWeight weight in Weights(scene.Nodes))
        {
            string data = Convert.ToBase64String(ShippedFonts.Bytes(weight).AsSpan());
            Line(2, $"@font-face{{font-family:\"Rostrum Letters\";font-weight:{Css(weight)};src:url(data:font/ttf;base64,{data})}}");
        }

        Line(1, "</style>");
    }

    private void WriteLine(Point from, Point to, Paint paint, int depth) =>
        Line(depth, $"<line x1=\"{Number(from.X)}\" y1=\"{Number(from.Y)}\" x2=\"{Number(to.X)}\" y2=\"{Number(to.Y)}\"{Coloured(paint with { Fill = null })}/>");

    private void WriteText(SceneNode.Text text, int depth)
    {
        string anchor = text.Anchor switch
        {
            TextAnchor.Middle => " text-anchor=\"middle\"",
            TextAnchor.End => " text-anchor=\"end\"",
            _ => "",
        };
        string weight = text.Weight == FontWeight.Bold ? $" font-weight=\"{Css(FontWeight.Bold)}\"" : "";
        string width = text.Content.Length > 0 ? $" textLength=\"{Number(text.Width)}\" lengthAdjust=\"spacingAndGlyphs\"" : "";
        Line(depth, $"<text x=\"{Number(text.At.X)}\" y=\"{Number(text.At.Y)}\" font-size=\"{Number(text.Size)}\"{weight}{anchor}{width} fill=\"{Value(text.Tone)}\">{Escaped(text.Content)}</text>");
    }

    private void WriteGroup(SceneNode.Group group, int depth)
    {
        Line(depth, $"<g id=\"{Escaped(options.IdPrefix)}-{Escaped(group.Id)}\">");
        foreach (SceneNode child in group.Children)
        {
            Write(child, depth + 1);
        }

        Line(depth, "</g>");
    }

    private string Coloured(Paint paint)
    {
        string fill = $" fill=\"{(paint.Fill is { } inside ? Value(inside) : "none")}\"";
        if (paint.Stroke is not { } edge)
        {
            return fill;
        }

        string dash = paint.Dash > 0 ? $" stroke-dasharray=\"{Number(paint.Dash)}\"" : "";
        return $"{fill} stroke=\"{Value(edge)}\" stroke-width=\"{Number(paint.StrokeWidth)}\" stroke-linejoin=\"round\" stroke-linecap=\"round\"{dash}";
    }

    private string Value(Tone tone) =>
        options.FollowsPage ? $"var({tone.CssProperty},{options.Palette[tone].Hex})" : options.Palette[tone].Hex;

    private static int Css(FontWeight weight) => weight == FontWeight.Bold ? 700 : 400;

    private static string Steps(PathData data) => string.Join(' ', data.Steps.Select(step => step switch
    {
        PathStep.Start start => "M" + Pair(start.To),
        PathStep.Straight line => "L" + Pair(line.To),
        PathStep.Curve curve => $"C{Pair(curve.First)} {Pair(curve.Second)} {Pair(curve.To)}",
        _ => "Z",
    }));

    private static string Pair(Point point) => $"{Number(point.X)},{Number(point.Y)}";

    private void Line(int depth, string text) => _text.Append(' ', 2 * depth).Append(text).Append('\n');
}
