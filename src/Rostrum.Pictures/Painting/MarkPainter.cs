namespace Rostrum.Pictures;

/// <summary>Draws what points at spaces: rings with tags, and arrows.</summary>
internal sealed class MarkPainter(Func<string, BoardPlace> places, TableMeasures measures)
{
    public IEnumerable<SceneNode> Ring(SpaceMark mark)
    {
        Box niche = places(mark.At.Board).Niche(mark.At.Column, mark.At.Row);
        double width = Math.Max(2, measures.Shelf * 0.065);
        double dash = mark.Kind == MarkKind.Asked ? width * 1.7 : 0;
        yield return new SceneNode.Rectangle(niche.Grown(width * 0.1), Paint.Line(Tones.Paper, width * 1.7), width);
        yield return new SceneNode.Rectangle(niche.Grown(width * 0.1), Paint.Line(Tone(mark.Kind), width, dash), width);
    }

    /// <summary>The tag at the upper left corner of the space, half on the wood so that it hides little.</summary>
    public IEnumerable<SceneNode> Tag(SpaceMark mark)
    {
        Box niche = places(mark.At.Board).Niche(mark.At.Column, mark.At.Row);
        double height = measures.TagHeight;
        SceneNode.Text label = Label(mark);
        double width = Fits(mark) ? height + label.Width + (height * 0.2) : height;
        Box tag = new(niche.X - (height * 0.42), niche.Y - (height * 0.45), width, height);
        yield return new SceneNode.Rectangle(tag, new Paint(Tone(mark.Kind), Tones.Paper, Math.Max(1, height * 0.08)), height * 0.3);
        yield return Sign(mark.Kind, new Box(tag.X, tag.Y, height, height).Grown(-height * 0.26), height * 0.15);
        if (Fits(mark))
        {
            yield return label with { At = new Point(tag.X + (height * 0.88), tag.Y + (height * 0.5) + (label.Size * 0.35)) };
        }
    }

    /// <summary>Whether the label has room on the tag; otherwise it belongs on the slip.</summary>
    public bool Fits(SpaceMark mark) => mark.Label.Length > 0 && Label(mark).Width + (measures.TagHeight * 0.9) <= measures.Shelf;

    public IEnumerable<SceneNode> Arrow(SpaceArrow arrow)
    {
        Point from = Middle(arrow.From);
        Point to = Middle(arrow.To);
        double length = double.Hypot(to.X - from.X, to.Y - from.Y);
        double share = measures.Shelf * 0.22 / length;
        (double dx, double dy) = ((to.X - from.X) * share, (to.Y - from.Y) * share);
        double width = Math.Max(2.2, measures.Shelf * 0.075);
        SceneNode.Arrow shaft = new(from.Moved(dx, dy), to.Moved(-dx, -dy), Tones.Arrow, width);
        double halo = width * 0.9;
        return
        [
            new SceneNode.Line(shaft.From, shaft.Neck, Paint.Line(Tones.Paper, width + halo)),
            new SceneNode.Path(shaft.Head, new Paint(Tones.Paper, Tones.Paper, halo)),
            shaft,
            .. arrow.Label.Length > 0 ? ArrowLabel(arrow.Label, new Point((from.X + to.X) / 2, (from.Y + to.Y) / 2)) : [],
        ];
    }

    private IEnumerable<SceneNode> ArrowLabel(string label, Point middle)
    {
        double size = measures.SmallSize;
        SceneNode.Text text = new(middle.Moved(0, size * 0.35), label, size, Tones.PaperInk, TextAnchor.Middle, FontWeight.Bold);
        Box tag = new(middle.X - (text.Width / 2) - (size * 0.4), middle.Y - (size * 0.72), text.Width + (size * 0.8), size * 1.44);
        yield return new SceneNode.Rectangle(tag, new Paint(Tones.Paper, Tones.Arrow, Math.Max(1, size * 0.09)), size * 0.25);
        yield return text;
    }

    private SceneNode.Text Label(SpaceMark mark) =>
        new(default, mark.Label, measures.TagHeight * 0.77, Tones.TagInk, TextAnchor.Start, FontWeight.Bold);

    private Point Middle(SpaceAt space) => places(space.Board).Niche(space.Column, space.Row).Centre;

    private static Tone Tone(MarkKind kind) => kind switch
    {
        MarkKind.Good => Tones.Good,
        MarkKind.Bad => Tones.Bad,
        _ => Tones.Asked,
    };

    private static SceneNode.Path Sign(MarkKind kind, Box box, double width) => new(
        (kind switch
        {
            MarkKind.Good => PathData.Polyline(new Point(0, 0.55), new Point(0.36, 0.92), new Point(1, 0.1)),
            MarkKind.Bad => PathData.Polyline(new Point(0.05, 0.05), new Point(0.95, 0.95)).And(PathData.Polyline(new Point(0.95, 0.05), new Point(0.05, 0.95))),
            _ => PathData.Empty.From(0.16, 0.3).Curve(0.2, -0.14, 0.88, -0.14, 0.86, 0.26).Curve(0.86, 0.48, 0.5, 0.46, 0.5, 0.72)
                .And(PathData.Polyline(new Point(0.5, 1.04), new Point(0.5, 1.05))),
        }).Into(box),
        Paint.Line(Tones.TagInk, width));
}
