namespace Rostrum.Pictures;

/// <summary>An oval ring of discs, in order clockwise: the first follows at the upper left, the last lies at the left end, so that for an even number those
/// above and those below lie opposite.</summary>
internal sealed record RingPlace : DiscPlace
{
    // A small ring is a circle.
    private const int MostInCircle = 6;

    private const double AcrossToUp = 2.5;

    private const double Step = 1.04;

    private readonly ValueList<string> _labels;
    private readonly double _radius;
    private readonly double _straight;

    public RingPlace(BoardPicture board, TableMeasures measures, SpaceNames names)
        : base(board, measures, names)
    {
        _labels = names == SpaceNames.None ? [] : WayNumbers.Of(board, measures);
        int count = board.Spaces.Count;
        double around = count * Step * measures.Shelf;
        bool isCircle = count <= MostInCircle;
        _radius = isCircle
            ? measures.Shelf * (count == 1 ? 0.001 : Math.Max(0.6, Step / (2 * Math.Sin(Math.PI / count))))
            : Math.Max(0.86 * measures.Shelf, ((around / 2) - (1.5 * measures.Shelf)) / ((2 * AcrossToUp) + Math.PI - 2));
        _straight = isCircle ? 0 : Math.Max(0, (around / 2) - (Math.PI * _radius));
    }

    public override (double Width, double Height) Size => (_straight + (2 * Outer), 2 * Outer);

    public override Surroundings Outside
    {
        get
        {
            double line = TableMeasures.LineHeight(Measures.LabelSize) + (Measures.Shelf * 0.06);
            double side = _labels.Select(label => ShippedFonts.Width(label, Measures.LabelSize, FontWeight.Bold)).DefaultIfEmpty(0).Max() + (Measures.LabelSize * 0.5);
            return _labels.Count == 0 ? default : new Surroundings(side, side, line, line);
        }
    }

    /// <summary>The band on which the discs lie.</summary>
    public override PathData Frame => Inner > Measures.Shelf * 0.3 ? Oval(Outer).And(Oval(Inner)) : Oval(Outer);

    public override bool NamesFreeSpaces => false;

    public override IEnumerable<string> Notes => WayNumbers.Notes(Board, Measures).Concat(base.Notes);

    public override IEnumerable<SceneNode> Labels
    {
        get
        {
            double size = Measures.LabelSize;
            return _labels.Select((label, at) => Label(new SceneNode.Text(default, label, size, Tones.Ink, TextAnchor.Middle, FontWeight.Bold), On(at)));
        }
    }

    // So far out that the whole label is beyond the band.
    private SceneNode.Text Label(SceneNode.Text label, (Point At, double OutX, double OutY) on)
    {
        double size = label.Size;
        double beyond = Outer - _radius + (size * 0.3) + (Math.Abs(on.OutX) * label.Width / 2) + (Math.Abs(on.OutY) * size * 0.42);
        return label with { At = on.At.Moved(on.OutX * beyond, (on.OutY * beyond) + (size * 0.35)) };
    }

    private double Outer => _radius + Radius + (Measures.Shelf * 0.06) + Measures.FrameWidth;

    private double Inner => _radius - Radius - (Measures.Shelf * 0.06) - Measures.FrameWidth;

    public override Point Centre(int space) => On(space).At;

    public override IEnumerable<int> Sides(int space) => [(space + Board.Spaces.Count - 1) % Board.Spaces.Count, (space + 1) % Board.Spaces.Count];

    // Along the middle of the band from its left end, with the direction that leads outwards.
    private (Point At, double OutX, double OutY) On(int space)
    {
        double quarter = Math.PI * _radius / 2;
        double around = (4 * quarter) + (2 * _straight);
        double way = (space + 1) * around / Board.Spaces.Count % around;
        return way switch
        {
            _ when way < quarter => Bend(0, Math.PI + (way / _radius)),
            _ when way < quarter + _straight => Edge(way - quarter, -1),
            _ when way < (3 * quarter) + _straight => Bend(_straight, -(Math.PI / 2) + ((way - quarter - _straight) / _radius)),
            _ when way < (3 * quarter) + (2 * _straight) => Edge(_straight - (way - (3 * quarter) - _straight), 1),
            _ => Bend(0, (Math.PI / 2) + ((way - (3 * quarter) - (2 * _straight)) / _radius)),
        };
    }

    private (Point At, double OutX, double OutY) Bend(double middle, double angle) =>
        (Corner.Moved(Outer + middle + (_radius * Math.Cos(angle)), Outer + (_radius * Math.Sin(angle))), Math.Cos(angle), Math.Sin(angle));

    private (Point At, double OutX, double OutY) Edge(double along, int side) => (Corner.Moved(Outer + along, Outer + (side * _radius)), 0, side);

    // Two half circles joined by straight edges.
    private PathData Oval(double radius)
    {
        (double left, double right, double middle) = (Corner.X + Outer, Corner.X + Outer + _straight, Corner.Y + Outer);
        double k = radius * PathData.QuarterCircle;
        return PathData.Empty.From(left, middle - radius).To(right, middle - radius)
            .Curve(right + k, middle - radius, right + radius, middle - k, right + radius, middle)
            .Curve(right + radius, middle + k, right + k, middle + radius, right, middle + radius)
            .To(left, middle + radius)
            .Curve(left - k, middle + radius, left - radius, middle + k, left - radius, middle)
            .Curve(left - radius, middle - k, left - k, middle - radius, left, middle - radius)
            .Closed();
    }
}
