using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>A tray of hexes with a corner on top; a hex is as wide as a square would be.</summary>
/// <remarks>Its grid counts half steps to the right, and upwards half of the distance from the middle of a hex to a corner: three such are a row.</remarks>
internal sealed record HexPlace : LatticePlace
{
    private static readonly ImmutableArray<(int Columns, int Rows)> SideSteps = [(1, 1), (2, 0), (1, -1), (-1, -1), (-2, 0), (-1, 1)];

    private readonly ImmutableDictionary<(int Column, int Row), int> _spaces;
    private readonly int _left;
    private readonly int _right;
    private readonly int _lowest;
    private readonly int _highest;

    public HexPlace(BoardPicture board, TableMeasures measures, SpaceNames names)
        : base(board, measures, names)
    {
        _spaces = board.Spaces.Select((space, at) => ((space.Column, space.Row), at)).ToImmutableDictionary(each => each.Item1, each => each.at);
        _left = board.Spaces.Min(space => space.Column);
        _right = board.Spaces.Max(space => space.Column) + 2;
        _lowest = board.Spaces.Min(space => space.Row);
        _highest = board.Spaces.Max(space => space.Row);
    }

    public override (double Width, double Height) Size => (
        ((_right - _left) * Measures.Shelf / 2) + (2 * Measures.FrameWidth),
        ((_highest - _lowest) * 1.5 * Radius) + (2 * (Radius + FrameAtCorner)));

    public override Surroundings Outside => new(Names == SpaceNames.None ? 0 : RowLabelWidth, 0, 0, 0);

    public override bool NamesFreeSpaces => Names != SpaceNames.None;

    public override IEnumerable<SceneNode> Labels => Names == SpaceNames.None ? [] : [.. RowLabels(), .. HoleNames()];

    protected override double EndToFrame => FrameAtCorner * 0.35;

    // From the middle to a corner.
    private double Radius => Measures.Shelf / HexShape.WidthByRadius;

    private double FrameAtCorner => Measures.FrameWidth * 2 / HexShape.WidthByRadius;

    public override Box Niche(int space)
    {
        double side = Measures.Shelf - Post;
        Point centre = CentreOf(Board.Spaces[space].Column, Board.Spaces[space].Row);
        return new Box(centre.X - (side / 2), centre.Y - (side / 2), side, side);
    }

    public override Box Room(int space) => RoomIn(space, Measures.Shelf * 0.62, Measures.Shelf * 0.74);

    public override Point NumbersAt(int space) => Niche(space).Centre.Moved(0, Measures.Shelf * 0.32);

    public override SceneNode Shape(int space, Paint paint, double grown = 0)
    {
        double inset = (Post / HexShape.WidthByRadius) - (grown * 2 / HexShape.WidthByRadius);
        return new SceneNode.Path(HexShape.Of(Niche(space).Centre, Radius - inset), paint);
    }

    public override IEnumerable<SceneNode> Ground(int space, Tone tone)
    {
        var shape = (SceneNode.Path)Shape(space, new Paint(tone));
        return [new SceneNode.Path(shape.Data.Mapped(point => point.Moved(0, Measures.PlankHeight / 2)), new Paint(Tones.Plank)), shape];
    }

    public override Point TagCorner(int space) => Niche(space).Centre.Moved(-Measures.Shelf * 0.4, -Radius * 0.62);

    protected override ImmutableArray<GridCorner> Cell(int space)
    {
        (int x, int y) = (Board.Spaces[space].Column + 1, 3 * Board.Spaces[space].Row);
        return [new(x, y + 2), new(x + 1, y + 1), new(x + 1, y - 1), new(x, y - 2), new(x - 1, y - 1), new(x - 1, y + 1)];
    }

    protected override Point At(GridCorner corner) => new(
        Corner.X + Measures.FrameWidth + ((corner.X - _left) * Measures.Shelf / 2),
        Corner.Y + FrameAtCorner + Radius + (((3 * _highest) - corner.Y) * Radius / 2));

    protected override (Point End, ImmutableArray<int> Beyond) EndOf(int space, bool upper)
    {
        SpacePicture at = Board.Spaces[space];
        int step = upper ? 1 : -1;
        ImmutableArray<int> beyond = [.. new[] { -1, 1 }.Select(side => SpaceAt(at.Column + side, at.Row + step)).OfType<int>()];
        return (At(new GridCorner(at.Column + 1, (3 * at.Row) + (2 * step))), beyond);
    }

    public override IEnumerable<int> Sides(int space) =>
        SideSteps.Select(step => SpaceAt(Board.Spaces[space].Column + step.Columns, Board.Spaces[space].Row + step.Rows)).OfType<int>();

    private Point CentreOf(int column, int row) => At(new GridCorner(column + 1, 3 * row));

    private int? SpaceAt(int column, int row) => _spaces.TryGetValue((column, row), out int space) ? space : null;

    // Only what the board encloses is seen as a hole; what is missing at its rim is not part of it.
    private IEnumerable<SceneNode> HoleNames()
    {
        double size = Measures.SmallSize;
        return from hole in Board.Holes
               where IsEnclosed(hole)
               select new SceneNode.Text(CentreOf(hole.Column, hole.Row).Moved(0, size * 0.34), hole.Name, size, Tones.QuietInk, TextAnchor.Middle);
    }

    private bool IsEnclosed(HolePicture hole)
    {
        var holes = Board.Holes.Select(each => (each.Column, each.Row)).ToHashSet();
        HashSet<(int Column, int Row)> seen = [(hole.Column, hole.Row)];
        var open = new Queue<(int Column, int Row)>(seen);
        while (open.TryDequeue(out (int Column, int Row) at))
        {
            foreach ((int Column, int Row) next in SideSteps.Select(step => (at.Column + step.Columns, at.Row + step.Rows)).Where(next => SpaceAt(next.Item1, next.Item2) is null && seen.Add(next)))
            {
                if (!holes.Contains(next))
                {
                    return false;
                }

                open.Enqueue(next);
            }
        }

        return true;
    }
}
