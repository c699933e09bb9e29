using SkiaSharp;

namespace Rostrum.Pictures;

/// <summary>Draws scene nodes on a Skia canvas.</summary>
internal sealed class SkiaCanvas(SKCanvas canvas, Palette palette) : IDisposable
{
    private readonly SKPaint _brush = new()
    {
        IsAntialias = true,
        StrokeJoin = SKStrokeJoin.Round,
        StrokeCap = SKStrokeCap.Round,
    };

    private readonly Dictionary<ShippedFace, SKTypeface> _faces = [];

    public static SKColor Colour(Rgb colour) => new(colour.R, colour.G, colour.B);

    public void Draw(SceneNode node)
    {
        switch (node)
        {
            case SceneNode.Group group:
                DrawAll(group.Children);
                break;
            case SceneNode.Text text:
                DrawText(text);
                break;
            case SceneNode.Arrow arrow:
                DrawLine(arrow.From, arrow.Neck, Pictures.Paint.Line(arrow.Tone, arrow.Width));
                DrawPath(arrow.Head, new Paint(arrow.Tone));
                break;
            default:
                DrawShape(node);
                break;
        }
    }

    public void DrawAll(IEnumerable<SceneNode> nodes)
    {
        foreach (SceneNode node in nodes)
        {
            Draw(node);
        }
    }

    public void Dispose()
    {
        _brush.Dispose();
        foreach (SKTypeface face in _faces.Values)
        {
            face.Dispose();
        }
    }

    private void DrawShape(SceneNode node)
    {
        switch (node)
        {
            case SceneNode.Rectangle r:
                SKRect edges = new((float)r.Box.X, (float)r.Box.Y, (float)r.Box.Right, (float)r.Box.Bottom);
                Paint(r.Paint, brush => canvas.DrawRoundRect(edges, (float)r.Radius, (float)r.Radius, brush));
                break;
            case SceneNode.Circle c:
                Paint(c.Paint, brush => canvas.DrawCircle(At(c.Centre), (float)c.Radius, brush));
                break;
            case SceneNode.Path p:
                DrawPath(p.Data, p.Paint);
                break;
            case SceneNode.Line l:
                DrawLine(l.From, l.To, l.Paint);
                break;
        }
    }

    private void DrawLine(Point from, Point to, Paint paint) =>
        Paint(paint with { Fill = null }, brush => canvas.DrawLine(At(from), At(to), brush));

    private void DrawPath(PathData data, Paint paint)
    {
        using SKPathBuilder builder = new() { FillType = SKPathFillType.EvenOdd };
        foreach (PathStep step in data.Steps)
        {
            Append(builder, step);
        }

        using SKPath path = builder.Detach();
        Paint(paint, brush => canvas.DrawPath(path, brush));
    }

    private static void Append(SKPathBuilder builder, PathStep step)
    {
        switch (step)
        {
            case PathStep.Start start:
                builder.MoveTo(At(start.To));
                break;
            case PathStep.Straight line:
                builder.LineTo(At(line.To));
                break;
            case PathStep.Curve curve:
                builder.CubicTo(At(curve.First), At(curve.Second), At(curve.To));
                break;
            default:
                builder.Close();
                break;
        }
    }

    private void DrawText(SceneNode.Text text)
    {
        double left = text.Anchor switch
        {
            TextAnchor.Middle => text.At.X - (text.Width / 2),
            TextAnchor.End => text.At.X - text.Width,
            _ => text.At.X,
        };
        foreach (TextRun run in ShippedFonts.Runs(text.Content, text.Weight))
        {
            DrawRun(run, text, left);
            left += run.Face.Metrics.Width(run.Text, text.Size);
        }
    }

    private void DrawRun(TextRun run, SceneNode.Text text, double left)
    {
        using SKFont font = new(Face(run.Face), (float)text.Size)
        {
            Subpixel = true,
            Hinting = SKFontHinting.None,
            Edging = SKFontEdging.Antialias,
            LinearMetrics = true,
        };
        Paint(new Paint(text.Tone), brush => canvas.DrawText(run.Text, (float)left, (float)text.At.Y, SKTextAlign.Left, font, brush));
    }

    private SKTypeface Face(ShippedFace shipped)
    {
        if (!_faces.TryGetValue(shipped, out SKTypeface? face))
        {
            using SKData data = SKData.CreateCopy(shipped.Bytes.AsSpan());
            face = SKTypeface.FromData(data) ?? throw new InvalidOperationException($"The font {shipped.Name} could not be loaded.");
            _faces[shipped] = face;
        }

        return face;
    }

    private void Paint(Paint paint, Action<SKPaint> draw)
    {
        if (paint.Fill is { } inside)
        {
            _brush.Style = SKPaintStyle.Fill;
            _brush.Color = Colour(palette[inside]);
            draw(_brush);
        }

        if (paint.Stroke is { } edge && paint.StrokeWidth > 0)
        {
            using SKPathEffect? dash = paint.Dash > 0 ? SKPathEffect.CreateDash([(float)paint.Dash, (float)paint.Dash], 0) : null;
            _brush.Style = SKPaintStyle.Stroke;
            _brush.Color = Colour(palette[edge]);
            _brush.StrokeWidth = (float)paint.StrokeWidth;
            _brush.PathEffect = dash;
            draw(_brush);
            _brush.PathEffect = null;
        }
    }

    private static SKPoint At(Point point) => new((float)point.X, (float)point.Y);
}
