using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>A track of squares. A long one is folded like a ribbon: the second row runs back under the first. Names are cut into the rail below each row.</summary>
internal sealed record TrackPlace(BoardPicture Board, TableMeasures Measures, SpaceNames Names) : LatticePlace(Board, Measures, Names)
{
    private const int MostInOneRow = 12;

    private int Across => Board.Spaces.Count <= MostInOneRow ? Board.Spaces.Count : (Board.Spaces.Count + Rows - 1) / Rows;

    private int Rows => (Board.Spaces.Count + MostInOneRow - 1) / MostInOneRow;

    private double Rail => Names == SpaceNames.None ? 0 : TableMeasures.LineHeight(Measures.LabelSize) * 0.94;

    private double RowGap => Measures.FrameWidth * 3.2;

    private double Pitch => Measures.Shelf + Rail + RowGap;

    public override (double Width, double Height) Size => (
        (Across * Measures.Shelf) + (2 * Measures.FrameWidth),
        (Rows * Pitch) - RowGap + (2 * Measures.FrameWidth));

    public override bool NamesFreeSpaces => false;

    public override IEnumerable<string> Notes => WayNumbers.Notes(Board, Measures).Concat(base.Notes);

    public override IEnumerable<SceneNode> Labels
    {
        get
        {
            double size = Measures.LabelSize;
            ValueList<string> labels = Names == SpaceNames.None ? [] : WayNumbers.Of(Board, Measures);
            return labels.Select((label, at) => new SceneNode.Text(
                new Point(Niche(at).Centre.X, Niche(at).Bottom + Measures.PlankHeight + (size * 0.98)), label, size, Tones.TagInk, TextAnchor.Middle, FontWeight.Bold));
        }
    }

    protected override double EndToFrame => Measures.FrameWidth / 2;

    // Two rows are joined where the track turns.
    protected override IEnumerable<ImmutableArray<GridCorner>> Bridges
    {
        get
        {
            for (int row = 0; row + 1 < Rows; row++)
            {
                int column = row % 2 == 0 ? Across - 1 : 0;
                yield return Square(column, (-2 * row) - 2);
            }
        }
    }

    public override Box Niche(int space)
    {
        Point upper = At(new GridCorner(ColumnOf(space), -2 * RowOf(space)));
        double above = (Post - Measures.PostWidth) / 2;
        return new Box(upper.X + (Post / 2), upper.Y + above, Measures.Shelf - Post, Measures.Shelf - Measures.PlankHeight - above);
    }

    public override Box Room(int space) => BearsNumbers(space) ? SquareNumbers.Room(Niche(space), Measures) : RoomIn(space, Measures.PieceSide, Measures.PieceSide);

    public override Point NumbersAt(int space) => SquareNumbers.At(Niche(space), Board.Spaces[space].Numbers.OfType<long>().Count(), Measures);

    public override SceneNode Shape(int space, Paint paint, double grown = 0) => new SceneNode.Rectangle(Niche(space).Grown(grown), paint, Measures.Shelf * 0.06);

    public override IEnumerable<SceneNode> Ground(int space, Tone tone) =>
        [new SceneNode.Rectangle(Niche(space).Moved(0, Measures.PlankHeight / 2), new Paint(Tones.Plank), Measures.Shelf * 0.06), Shape(space, new Paint(tone))];

    protected override ImmutableArray<GridCorner> Cell(int space) => Square(ColumnOf(space), (-2 * RowOf(space)) - 1);

    // Odd lines of the grid are the lower edges of rows, with their rail.
    protected override Point At(GridCorner corner)
    {
        int line = -corner.Y;
        double down = (line / 2 * Pitch) + (line % 2 * (Measures.Shelf + Rail));
        return Corner.Moved(Measures.FrameWidth + (corner.X * Measures.Shelf), Measures.FrameWidth + down);
    }

    protected override (Point End, ImmutableArray<int> Beyond) EndOf(int space, bool upper)
    {
        Box niche = Niche(space);
        return (new Point(niche.Centre.X, upper ? niche.Y : niche.Bottom + Measures.PlankHeight + Rail), []);
    }

    public override IEnumerable<int> Sides(int space) => new[] { space - 1, space + 1 }.Where(side => side >= 0 && side < Board.Spaces.Count && RowOf(side) == RowOf(space));

    private static ImmutableArray<GridCorner> Square(int column, int low) => [new(column, low + 1), new(column + 1, low + 1), new(column + 1, low), new(column, low)];

    private int RowOf(int space) => space / Across;

    private int ColumnOf(int space) => RowOf(space) % 2 == 0 ? space % Across : Across - 1 - (space % Across);
}
