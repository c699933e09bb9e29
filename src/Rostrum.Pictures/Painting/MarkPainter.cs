namespace Rostrum.Pictures;

/// <summary>Draws what points at spaces: rings with tags, and arrows.</summary>
internal sealed class MarkPainter(Func<string, BoardPlace> places, TableMeasures measures)
{
    public IEnumerable<SceneNode> Ring(SpaceMark mark)
    {
        (BoardPlace place, int space) = Find(mark.At);
        double width = Math.Max(2, measures.Shelf * 0.065);
        double dash = mark.Kind == MarkKind.Asked ? width * 1.7 : 0;
        yield return place.Shape(space, Paint.Line(Tones.Paper, width * 1.7), width * 0.1);
        yield return place.Shape(space, Paint.Line(Tone(mark.Kind), width, dash), width * 0.1);
    }

    /// <summary>The tag at the upper left corner of the space, half on the wood so that it hides little.</summary>
    public IEnumerable<SceneNode> Tag(SpaceMark mark)
    {
        (BoardPlace place, int space) = Find(mark.At);
        Point corner = place.TagCorner(space);
        double height = measures.TagHeight;
        SceneNode.Text label = Label(mark);
        double width = Fits(mark) ? height + label.Width + (height * 0.2) : height;
        Box tag = new(corner.X - (height * 0.42), corner.Y - (height * 0.45), width, height);
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
        Point[] way = [Middle(arrow.From), .. arrow.Through.Select(Middle), Middle(arrow.To)];
        double off = measures.Shelf * 0.22;
        way[0] = Towards(way[0], way[1], off);
        way[^1] = Towards(way[^1], way[^2], off);
        double width = Math.Max(2.2, measures.Shelf * 0.075);
        SceneNode.Arrow shaft = new(way[^2], way[^1], Tones.Arrow, width);
        Point[] bends = way[..^1];
        double halo = width * 0.9;
        return
        [
            new SceneNode.Path(PathData.Polyline([.. bends, shaft.Neck]), Paint.Line(Tones.Paper, width + halo)),
            new SceneNode.Path(shaft.Head, new Paint(Tones.Paper, Tones.Paper, halo)),
            .. bends.Length > 1 ? [new SceneNode.Path(PathData.Polyline(bends), Paint.Line(Tones.Arrow, width))] : Array.Empty<SceneNode>(),
            shaft,
            .. arrow.Label.Length > 0 ? ArrowLabel(arrow.Label, Half(way)) : [],
        ];
    }

    private static Point Towards(Point from, Point to, double off)
    {
        double length = double.Hypot(to.X - from.X, to.Y - from.Y);
        return from.Moved((to.X - from.X) * off / length, (to.Y - from.Y) * off / length);
    }

    // The middle of the leg in the middle.
    private static Point Half(Point[] way)
    {
        (Point from, Point to) = (way[(way.Length / 2) - 1], way[way.Length / 2]);
        return new Point((from.X + to.X) / 2, (from.Y + to.Y) / 2);
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

    private Point Middle(SpaceAt at)
    {
        (BoardPlace place, int space) = Find(at);
        return place.Niche(space).Centre;
    }

    private (BoardPlace Place, int Space) Find(SpaceAt at)
    {
        BoardPlace place = places(at.Board);
        return place.Board.TryFind(at.Space, out int space) ? (place, space) : throw new ArgumentException($"Board '{at.Board}' has no space '{at.Space}'.", nameof(at));
    }

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
