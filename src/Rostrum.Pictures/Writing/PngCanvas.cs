using SkiaSharp;

namespace Rostrum.Pictures;

/// <summary>Draws scene nodes on a Skia canvas.</summary>
internal sealed class PngCanvas(SKCanvas canvas, Palette palette) : IDisposable
{
    private readonly SKPaint _brush = new()
    {
        IsAntialias = true,
        StrokeJoin = SKStrokeJoin.Round,
        StrokeCap = SKStrokeCap.Round,
    };

    private readonly Dictionary<FontWeight, SKTypeface> _faces = [];

    public static SKColor Colour(Rgb colour) => new(colour.R, colour.G, colour.B);

    public void Draw(SceneNode node)
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
            case SceneNode.Arrow a:
                DrawLine(a.From, a.Neck, Pictures.Paint.Line(a.Tone, a.Width));
                DrawPath(a.Head, new Paint(a.Tone));
                break;
            case SceneNode.Text t:
                DrawText(t);
                break;
            case SceneNode.Group g:
                foreach (SceneNode child in g.Children)
                {
                    Draw(child);
                }

                break;
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
        using SKFont font = new(Face(text.Weight), (float)text.Size)
        {
            Subpixel = true,
            Hinting = SKFontHinting.None,
            Edging = SKFontEdging.Antialias,
            LinearMetrics = true,
        };
        double left = text.Anchor switch
        {
            TextAnchor.Middle => text.At.X - (text.Width / 2),
            TextAnchor.End => text.At.X - text.Width,
            _ => text.At.X,
        };
        Paint(new Paint(text.Tone), brush => canvas.DrawText(text.Content, (float)left, (float)text.At.Y, SKTextAlign.Left, font, brush));
    }

    private SKTypeface Face(FontWeight weight)
    {
        if (!_faces.TryGetValue(weight, out SKTypeface? face))
        {
            using SKData data = SKData.CreateCopy(ShippedFonts.Bytes(weight).AsSpan());
            face = SKTypeface.FromData(data) ?? throw new InvalidOperationException("The shipped font could not be loaded.");
            _faces[weight] = face;
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
