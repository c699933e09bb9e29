using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>A rack or a tray of squares.</summary>
internal sealed record SquarePlace : LatticePlace
{
    private readonly ImmutableDictionary<(int Column, int Row), int> _spaces;
    private readonly TableView _view;

    public SquarePlace(BoardPicture board, TableMeasures measures, SpaceNames names, TableView view)
        : base(board, measures, names)
    {
        _view = view;
        _spaces = board.Spaces.Select((space, at) => ((space.Column, space.Row), at)).ToImmutableDictionary(each => each.Item1, each => each.at);
    }

    public override TableView View => _view;

    public override (double Width, double Height) Size =>
        ((Board.Columns.Count * Measures.Shelf) + (2 * Measures.FrameWidth), (Board.Rows.Count * Measures.Shelf) + (2 * Measures.FrameWidth));

    public override Surroundings Outside => Names == SpaceNames.None ? default : new Surroundings(RowLabelWidth, 0, 0, (Measures.Shelf * 0.14) + TableMeasures.LineHeight(Measures.LabelSize));

    public override bool NamesFreeSpaces => Names == SpaceNames.Everywhere;

    protected override double EndToFrame => Measures.FrameWidth / 2;

    // Between the posts, above the plank.
    public override Box Niche(int space)
    {
        Point low = At(new GridCorner(Board.Spaces[space].Column, Board.Spaces[space].Row));
        double above = (Post - Measures.PostWidth) / 2;
        return new Box(low.X + (Post / 2), low.Y - Measures.Shelf + above, Measures.Shelf - Post, Measures.Shelf - Measures.PlankHeight - above);
    }

    public override Box Room(int space)
    {
        Box niche = Niche(space);
        return BearsNumbers(space) ? SquareNumbers.Room(niche, Measures)
            : View == TableView.Above ? RoomIn(space, Measures.PieceSide, Measures.PieceSide)
            : new Box(niche.Centre.X - (Measures.PieceSide / 2), niche.Bottom - Measures.PieceSide, Measures.PieceSide, Measures.PieceSide);
    }

    public override Point NumbersAt(int space) => SquareNumbers.At(Niche(space), Board.Spaces[space].Numbers.OfType<long>().Count(), Measures);

    public override SceneNode Shape(int space, Paint paint, double grown = 0) => new SceneNode.Rectangle(Niche(space).Grown(grown), paint, Measures.Shelf * 0.06);

    public override IEnumerable<SceneNode> Ground(int space, Tone tone)
    {
        Box niche = Niche(space);
        double lip = Measures.Shelf * 0.045;
        return View == TableView.Front
            ?
            [
                new SceneNode.Rectangle(niche, new Paint(tone)),
                new SceneNode.Rectangle(niche with { Height = lip }, new Paint(Tones.Shade)),
                new SceneNode.Rectangle(new Box(niche.X, niche.Bottom, niche.Width, lip), new Paint(Tones.Plank)),
            ]
            : [new SceneNode.Rectangle(niche.Moved(0, Measures.PlankHeight / 2), new Paint(Tones.Plank), Measures.Shelf * 0.06), Shape(space, new Paint(tone))];
    }

    public override IEnumerable<SceneNode> Labels => Names == SpaceNames.None ? [] : [.. ColumnLabels(), .. RowLabels()];

    protected override ImmutableArray<GridCorner> Cell(int space)
    {
        (int c, int r) = (Board.Spaces[space].Column, Board.Spaces[space].Row);
        return [new(c, r + 1), new(c + 1, r + 1), new(c + 1, r), new(c, r)];
    }

    protected override Point At(GridCorner corner) => new(
        Corner.X + Measures.FrameWidth + (corner.X * Measures.Shelf),
        Framed.Bottom - Measures.FrameWidth - (corner.Y * Measures.Shelf));

    protected override (Point End, ImmutableArray<int> Beyond) EndOf(int space, bool upper)
    {
        SpacePicture at = Board.Spaces[space];
        Point low = At(new GridCorner(at.Column, at.Row + (upper ? 1 : 0)));
        return (low.Moved(Measures.Shelf / 2, 0), _spaces.TryGetValue((at.Column, at.Row + (upper ? 1 : -1)), out int beyond) ? [beyond] : []);
    }

    public override IEnumerable<int> Sides(int space)
    {
        SpacePicture at = Board.Spaces[space];
        return new[] { (0, 1), (1, 0), (0, -1), (-1, 0) }
            .Select(step => _spaces.TryGetValue((at.Column + step.Item1, at.Row + step.Item2), out int side) ? side : -1)
            .Where(side => side >= 0);
    }

    private IEnumerable<SceneNode> ColumnLabels()
    {
        double size = Measures.LabelSize;
        for (int column = 0; column < Board.Columns.Count; column++)
        {
            Point at = At(new GridCorner(column, 0)).Moved(Measures.Shelf / 2, Measures.FrameWidth + (Measures.Shelf * 0.14) + size);
            yield return new SceneNode.Text(at, Board.Columns[column], size, Tones.Ink, TextAnchor.Middle, FontWeight.Bold);
        }
    }
}
