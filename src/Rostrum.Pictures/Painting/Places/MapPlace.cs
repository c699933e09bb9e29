using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>A sheet in a frame, with discs joined by lines.</summary>
internal sealed record MapPlace : DiscPlace
{
    private readonly ImmutableArray<Point> _centres;
    private readonly ImmutableArray<PathData> _ways;
    private readonly MapNames _grid;
    private readonly Box _extent;

    public MapPlace(BoardPicture board, TableMeasures measures, SpaceNames names)
        : base(board, measures, names)
    {
        _grid = MapNames.Of(board);
        ImmutableArray<Box> prints = [.. Enumerable.Range(0, board.Spaces.Count).Select(Print)];
        _centres = MapLayout.Place(board, _grid, prints, measures.Shelf);
        _ways = [.. new WayRouter(_centres, prints, measures.Shelf).Ways(MapLayout.Joins(board))];
        IEnumerable<Point> corners = _centres.Zip(prints, (centre, print) => print.Moved(centre.X, centre.Y)).SelectMany(box => new[] { new Point(box.X, box.Y), new Point(box.Right, box.Bottom) });
        Point[] all = [.. corners, .. _ways.SelectMany(way => way.Steps).OfType<PathStep.Curve>().Select(curve => curve.First)];
        (double x, double y) = (all.Min(point => point.X), all.Min(point => point.Y));
        _extent = new Box(x, y, all.Max(point => point.X) - x, all.Max(point => point.Y) - y).Grown(measures.FrameWidth + (measures.Shelf * (board.Areas.Count > 0 ? 0.5 : 0.3)));
    }

    public override (double Width, double Height) Size => (_extent.Width, _extent.Height);

    public override Surroundings Outside => !_grid.IsGrid || Names == SpaceNames.None
        ? default
        : new Surroundings(_grid.Numbers.Max(label => ShippedFonts.Width(label.Label, Measures.LabelSize, FontWeight.Bold)) + (Measures.LabelSize * 0.45), 0, 0, (Measures.Shelf * 0.14) + TableMeasures.LineHeight(Measures.LabelSize));

    public override PathData Frame => PathData.Polygon(
        new Point(Framed.X, Framed.Y), new Point(Framed.Right, Framed.Y), new Point(Framed.Right, Framed.Bottom), new Point(Framed.X, Framed.Bottom));

    protected override bool HasNumbersOnSpaces => base.HasNumbersOnSpaces && !IsTagged;

    public override bool NamesFreeSpaces => _grid.IsGrid && Names != SpaceNames.None;

    public override IEnumerable<SceneNode> Below =>
    [
        new SceneNode.Rectangle(Framed.Grown(-Measures.FrameWidth), new Paint(Tones.Back)),
        .. Contours(),
        .. _ways.Select(way => new SceneNode.Path(way.Mapped(InFrame), Paint.Line(Tones.Frame, Math.Max(1.6, Measures.Shelf * 0.06)))),
    ];

    public override IEnumerable<SceneNode> Labels => Names == SpaceNames.None ? [] : _grid.IsGrid ? GridLabels() : Board.Spaces.Select((_, at) => at).SelectMany(NameTag);

    public override IEnumerable<SceneNode> Ground(int space, Tone tone) =>
        [Shape(space, new Paint(Tones.Paper, Tones.Frame, Math.Max(1.6, Measures.Shelf * 0.06)))];

    public override Point Centre(int space) => InFrame(_centres[space]);

    public override IEnumerable<PlateSpot> PlateSpots(AreaPicture area)
    {
        int part = 0;
        foreach (ImmutableArray<int> spaces in MapLayout.Parts(area.Spaces, MapLayout.Joins(Board)))
        {
            foreach (Point top in spaces.Select(Centre).OrderBy(centre => centre.Y).ThenBy(centre => centre.X))
            {
                yield return new PlateSpot(part, top.Moved(0, -Halo), Measures.Shelf * 3);
            }

            part++;
        }
    }

    public override IEnumerable<int> Sides(int space) =>
        MapLayout.Joins(Board).Where(join => join.From == space || join.To == space).Select(join => join.From == space ? join.To : join.From);

    private double Halo => Radius + (Measures.Shelf * 0.2);

    private Point InFrame(Point point) => Corner.Moved(point.X - _extent.X, point.Y - _extent.Y);

    private SceneNode.Text Name(int space) => new(default, Board.Spaces[space].Name, Measures.SmallSize, Tones.BackInk);

    private double TagHeight => Measures.SmallSize * 1.42;

    private double TagWidth(int space) => Name(space).Width + (Measures.SmallSize * 0.7) + (Numbers(space).Length * NumberStep);

    // On a tag, the numbers of a space stand behind its name.
    private double NumberStep => NumberRadius * 2.3;

    private long[] Numbers(int space) => IsTagged ? [.. Board.Spaces[space].Numbers.OfType<long>()] : [];

    private bool IsTagged => !_grid.IsGrid && Names != SpaceNames.None;

    private double TagTop => Radius * 0.94;

    // What a space takes round its middle: its disc and its name.
    private Box Print(int space)
    {
        double half = Math.Max(Radius, IsTagged ? TagWidth(space) / 2 : 0);
        return new Box(-half, -Radius, 2 * half, IsTagged ? Radius + TagTop + TagHeight : 2 * Radius);
    }

    private IEnumerable<SceneNode> NameTag(int space)
    {
        Point centre = Centre(space);
        Box tag = new(centre.X - (TagWidth(space) / 2), centre.Y + TagTop, TagWidth(space), TagHeight);
        yield return new SceneNode.Rectangle(tag, new Paint(Tones.Back, Tones.Frame, Math.Max(1, Measures.Shelf * 0.035)), TagHeight * 0.3);
        Point at = new(tag.X + (Measures.SmallSize * 0.35), tag.Y + (TagHeight * 0.5) + (Measures.SmallSize * 0.34));
        yield return Name(space) with { At = at };
        foreach (SceneNode node in NumberMarks.Paint(Numbers(space), new Point(tag.Right - (Numbers(space).Length * NumberStep / 2) - (Measures.SmallSize * 0.1), tag.Centre.Y), Measures))
        {
            yield return node;
        }
    }

    // The ground round the places of an area and along the ways between them, with a line round it.
    private IEnumerable<SceneNode> Contours()
    {
        double line = Math.Max(1.2, Measures.Shelf * 0.04);
        foreach ((AreaPicture each, int area) in Board.Areas.Select((each, area) => (each, area)))
        {
            PathData[] ways = [.. MapLayout.Joins(Board).Select((join, at) => (join, at)).Where(joined => each.Spaces.Contains(joined.join.From) && each.Spaces.Contains(joined.join.To)).Select(joined => _ways[joined.at].Mapped(InFrame))];
            foreach ((Tone tone, double by) in new[] { (Tones.Frame, 0.0), (Areas.TintOfArea(area), line) })
            {
                foreach (PathData way in ways)
                {
                    yield return new SceneNode.Path(way, Paint.Line(tone, (Measures.Shelf * 0.62) - (2 * by)));
                }

                foreach (int space in each.Spaces)
                {
                    yield return new SceneNode.Circle(Centre(space), Halo - by, new Paint(tone));
                }
            }
        }
    }

    private IEnumerable<SceneNode> GridLabels()
    {
        double size = Measures.LabelSize;
        foreach ((string label, int space) in _grid.Letters)
        {
            yield return new SceneNode.Text(new Point(Centre(space).X, Framed.Bottom + (Measures.Shelf * 0.14) + size), label, size, Tones.Ink, TextAnchor.Middle, FontWeight.Bold);
        }

        foreach ((string label, int space) in _grid.Numbers)
        {
            yield return new SceneNode.Text(new Point(Framed.X - (size * 0.45), Centre(space).Y + (size * 0.35)), label, size, Tones.Ink, TextAnchor.End, FontWeight.Bold);
        }
    }
}
