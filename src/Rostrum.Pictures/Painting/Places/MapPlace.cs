using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>A board of wood with discs joined by lines.</summary>
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
        _extent = new Box(x, y, all.Max(point => point.X) - x, all.Max(point => point.Y) - y).Grown(measures.Shelf * (board.Areas.Count > 0 ? 0.55 : 0.34));
    }

    public override (double Width, double Height) Size => (_extent.Width, _extent.Height);

    public override Surroundings Outside => !_grid.IsGrid || Names == SpaceNames.None
        ? default
        : new Surroundings(_grid.Numbers.Max(label => ShippedFonts.Width(label.Label, Measures.LabelSize, FontWeight.Bold)) + (Measures.LabelSize * 0.45), 0, 0, (Measures.Shelf * 0.14) + TableMeasures.LineHeight(Measures.LabelSize));

    public override PathData Frame => PathData.Polygon(
        new Point(Framed.X, Framed.Y), new Point(Framed.Right, Framed.Y), new Point(Framed.Right, Framed.Bottom), new Point(Framed.X, Framed.Bottom));

    public override bool NamesFreeSpaces => _grid.IsGrid && Names != SpaceNames.None;

    public override IEnumerable<SceneNode> Below => [.. Contours(), .. _ways.Select(way => new SceneNode.Path(way.Mapped(InFrame), Paint.Line(Tones.Back, Math.Max(1.6, Measures.Shelf * 0.055))))];

    public override IEnumerable<SceneNode> Labels => Names == SpaceNames.None ? [] : _grid.IsGrid ? GridLabels() : Board.Spaces.Select((_, at) => at).SelectMany(NameTag);

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

    private double Halo => Radius + (Measures.Shelf * 0.2);

    private Point InFrame(Point point) => Corner.Moved(point.X - _extent.X, point.Y - _extent.Y);

    private SceneNode.Text Name(int space) => new(default, Board.Spaces[space].Name, Measures.SmallSize, Tones.BackInk, TextAnchor.Middle);

    private double TagHeight => Measures.SmallSize * 1.36;

    private double TagWidth(int space) => Name(space).Width + (Measures.SmallSize * 0.7);

    private double TagTop => Radius * 0.86;

    // What a space takes round its middle: its disc and its name.
    private Box Print(int space)
    {
        bool isTagged = !_grid.IsGrid && Names != SpaceNames.None;
        double half = Math.Max(Radius, isTagged ? TagWidth(space) / 2 : 0);
        return new Box(-half, -Radius, 2 * half, isTagged ? Radius + TagTop + TagHeight : 2 * Radius);
    }

    private IEnumerable<SceneNode> NameTag(int space)
    {
        Point centre = Centre(space);
        Box tag = new(centre.X - (TagWidth(space) / 2), centre.Y + TagTop, TagWidth(space), TagHeight);
        yield return new SceneNode.Rectangle(tag, new Paint(Tones.Back, Tones.Frame, Math.Max(1, Measures.Shelf * 0.035)), TagHeight * 0.3);
        yield return Name(space) with { At = new Point(centre.X, tag.Y + (TagHeight * 0.5) + (Measures.SmallSize * 0.34)) };
    }

    // A line of light round the places of an area and along the ways between them.
    private IEnumerable<SceneNode> Contours()
    {
        double line = Math.Max(1.2, Measures.Shelf * 0.04);
        foreach (AreaPicture area in Board.Areas)
        {
            (PathData Way, int)[] ways = [.. MapLayout.Joins(Board).Select((join, at) => (join, at)).Where(each => area.Spaces.Contains(each.join.From) && area.Spaces.Contains(each.join.To)).Select(each => (_ways[each.at].Mapped(InFrame), 0))];
            foreach ((Tone tone, double by) in new[] { (Tones.Back, 0.0), (Tones.Frame, line) })
            {
                foreach ((PathData way, _) in ways)
                {
                    yield return new SceneNode.Path(way, Paint.Line(tone, (Measures.Shelf * 0.62) - (2 * by)));
                }

                foreach (int space in area.Spaces)
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
