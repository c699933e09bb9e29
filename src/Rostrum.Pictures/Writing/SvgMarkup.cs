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
        Line(0, $"<svg xmlns=\"http://www.w3.org/2000/svg\" {size} role=\"img\" aria-labelledby=\"{id}-title {id}-desc\"{Families}>");
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
            case SceneNode.Group group:
                WriteGroup(group, depth);
                break;
            case SceneNode.Text text:
                WriteText(text, depth);
                break;
            case SceneNode.Arrow arrow:
                WriteShape(new SceneNode.Line(arrow.From, arrow.Neck, Paint.Line(arrow.Tone, arrow.Width)), depth);
                WriteShape(new SceneNode.Path(arrow.Head, new Paint(arrow.Tone)), depth);
                break;
            default:
                WriteShape(node, depth);
                break;
        }
    }

    private void WriteShape(SceneNode node, int depth) => Line(depth, node switch
    {
        SceneNode.Rectangle r => $"<rect {Edges(r.Box)}{(r.Radius > 0 ? $" rx=\"{Number(r.Radius)}\"" : "")}{Coloured(r.Paint)}/>",
        SceneNode.Circle c => $"<circle cx=\"{Number(c.Centre.X)}\" cy=\"{Number(c.Centre.Y)}\" r=\"{Number(c.Radius)}\"{Coloured(c.Paint)}/>",
        SceneNode.Path p => $"<path d=\"{Steps(p.Data)}\" fill-rule=\"evenodd\"{Coloured(p.Paint)}/>",
        SceneNode.Line l => $"<line x1=\"{Number(l.From.X)}\" y1=\"{Number(l.From.Y)}\" x2=\"{Number(l.To.X)}\" y2=\"{Number(l.To.Y)}\"{Coloured(l.Paint with { Fill = null })}/>",
        _ => throw new InvalidOperationException("The kinds of node are closed."),
    });

    // In a page a picture takes the letters of the page.
    private string Families => options switch
    {
        { FollowsPage: true } => "",
        { Font: SvgFont.Embedded } => $" font-family=\"{string.Join(", ", ShippedFonts.Faces(FontWeight.Regular).Select((_, rank) => EmbeddedFamily(rank)).Append("sans-serif"))}\"",
        _ => $" font-family=\"{ShippedFonts.Family}, Verdana, DejaVu Sans, sans-serif\"",
    };

    private void WriteFaces(Scene scene)
    {
        Line(1, "<style>");
        foreach ((FontWeight weight, ShippedFace face) in Faces(scene.Nodes))
        {
            string family = EmbeddedFamily(ShippedFonts.Faces(weight).IndexOf(face));
            string data = Convert.ToBase64String(face.Bytes.AsSpan());
            Line(2, $"@font-face{{font-family:\"{family}\";font-weight:{Css(weight)};src:url(data:font/ttf;base64,{data})}}");
        }

        Line(1, "</style>");
    }

    // Names of our own, so that a font that the reader has installed under the real name does not step in.
    private static string EmbeddedFamily(int rank) => rank switch
    {
        0 => "Rostrum Letters",
        1 => "Rostrum More Letters",
        2 => "Rostrum Arrows",
        _ => "Rostrum Signs",
    };

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

    private static string Edges(Box box) =>
        $"x=\"{Number(box.X)}\" y=\"{Number(box.Y)}\" width=\"{Number(box.Width)}\" height=\"{Number(box.Height)}\"";

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
