using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>A board whose spaces are cells that lie side by side.</summary>
internal abstract record LatticePlace(BoardPicture Board, TableMeasures Measures, SpaceNames Names) : BoardPlace(Board, Measures, Names)
{
    private static readonly bool[] UpperFirst = [true, false];

    /// <summary>The frame follows the spaces, so that a board with missing spaces has steps and holes.</summary>
    public override PathData Frame => OutlineTracer.Grown(OutlineTracer.Trace(Enumerable.Range(0, Board.Spaces.Count).Select(Cell).Concat(Bridges)), At, Measures.FrameWidth);

    /// <summary>A line of light wood, let into the wood between spaces, goes round each area.</summary>
    public override IEnumerable<SceneNode> Above =>
        Board.Areas.Select(area => new SceneNode.Path(OutlineTracer.Grown(Contours(area), At, 0), Paint.Line(Tones.Back, Math.Max(1, Measures.Shelf * 0.03))));

    /// <summary>Width of the wood between two spaces; where there are areas it has room for their lines.</summary>
    protected double Post => Measures.PostWidth * (Board.Areas.Count > 0 ? 1.9 : 1);

    /// <summary>The corners of the cell of a space, clockwise.</summary>
    protected abstract ImmutableArray<GridCorner> Cell(int space);

    /// <summary>Where a corner lies in the scene.</summary>
    protected abstract Point At(GridCorner corner);

    /// <summary>Cells of the frame that are no spaces.</summary>
    protected virtual IEnumerable<ImmutableArray<GridCorner>> Bridges => [];

    /// <summary>The middle of the upper or the lower end of a cell, with the spaces that lie beyond it.</summary>
    protected abstract (Point End, ImmutableArray<int> Beyond) EndOf(int space, bool upper);

    /// <summary>How far the middle of the frame is from an end of a cell.</summary>
    protected abstract double EndToFrame { get; }

    /// <inheritdoc />
    /// <remarks>On the frame only, where nothing is hidden; that nearest to the middle of the part first.</remarks>
    public override IEnumerable<PlateSpot> PlateSpots(AreaPicture area)
    {
        HashSet<int> left = [.. area.Spaces];
        for (int part = 0; left.Count > 0; part++)
        {
            HashSet<int> spaces = Grow(left.Min(), left);
            left.ExceptWith(spaces);
            double west = spaces.Min(space => Niche(space).X);
            double east = spaces.Max(space => Niche(space).Right);
            var ends = from space in spaces.Order()
                       from upper in UpperFirst
                       let end = EndOf(space, upper)
                       where end.Beyond.IsEmpty
                       orderby Math.Round(Math.Abs(end.End.X - ((west + east) / 2)), 3), upper ? 0 : 1
                       select new PlateSpot(part, end.End.Moved(0, upper ? -EndToFrame : EndToFrame), east - west + (Measures.Shelf * 0.4));
            foreach (PlateSpot spot in ends)
            {
                yield return spot;
            }
        }
    }

    /// <inheritdoc />
    public override bool DrawsBodies => true;

    /// <inheritdoc />
    public override IEnumerable<SceneNode> Body(BodyPicture body)
    {
        PathData outline = OutlineTracer.Grown(OutlineTracer.Trace(body.Spaces.Select(Cell)), At, -Measures.Shelf * 0.13);
        double edge = Math.Max(1.2, Measures.Shelf * 0.04);
        yield return new SceneNode.Path(outline.Mapped(point => point.Moved(Measures.Shelf * 0.03, Measures.Shelf * 0.05)), new Paint(Tones.Shade));
        yield return new SceneNode.Path(outline, new Paint(body.Look.Colour.Body, Tones.PieceEdge, edge));
        Box first = Niche(body.Spaces[0]);
        double side = Math.Min(first.Width, first.Height) * 0.4;
        Box middle = new(first.Centre.X - (side / 2), first.Centre.Y - (side / 2), side, side);
        foreach (SceneNode node in PiecePainter.Mark(body.Look.Emblem, body.Look.Colour.Mark, new Box(0, 0, 1, 1), middle))
        {
            yield return node;
        }
    }

    /// <summary>The name of a row at the left of its first space.</summary>
    protected IEnumerable<SceneNode> RowLabels()
    {
        double size = Measures.LabelSize;
        foreach (IGrouping<int, (Box Niche, int Row)> row in Board.Spaces.Select((space, at) => (Niche: Niche(at), space.Row)).GroupBy(space => space.Row))
        {
            Box first = row.MinBy(space => space.Niche.X).Niche;
            Point at = new(first.X - (Post / 2) - Measures.FrameWidth - (size * 0.45), first.Centre.Y + (size * 0.35));
            yield return new SceneNode.Text(at, Board.Rows[row.Key], size, Tones.Ink, TextAnchor.End, FontWeight.Bold);
        }
    }

    /// <summary>What the names of the rows need at the left.</summary>
    protected double RowLabelWidth => Board.Rows.Max(label => ShippedFonts.Width(label, Measures.LabelSize, FontWeight.Bold)) + (Measures.LabelSize * 0.45);

    private ImmutableArray<ImmutableArray<GridCorner>> Contours(AreaPicture area) => OutlineTracer.Trace(area.Spaces.Select(Cell));

    private HashSet<int> Grow(int first, HashSet<int> among)
    {
        HashSet<int> part = [first];
        var open = new Queue<int>(part);
        while (open.TryDequeue(out int space))
        {
            foreach (int next in Sides(space).Where(side => among.Contains(side) && part.Add(side)))
            {
                open.Enqueue(next);
            }
        }

        return part;
    }
}
