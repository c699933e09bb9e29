namespace Rostrum.Pictures;

/// <summary>Draws a board with what stands on it.</summary>
internal sealed class BoardPainter(BoardPlace place, SpaceNames names, TableView view)
{
    private readonly TableMeasures _measures = place.Measures;

    // The frame follows the spaces, so that a board with missing spaces has steps instead of holes.
    private readonly PathData _frame = FrameTracer.Trace(place);

    public IEnumerable<SceneNode> Paint() =>
    [
        .. Shadow(),
        new SceneNode.Path(_frame, new Paint(Tones.Frame, Tones.FrameEdge, Math.Max(1, _measures.Shelf * 0.035))),
        .. place.Spaces.Select(space => Space(space.Column, space.Row, space.Cell)),
        .. names == SpaceNames.None ? [] : Labels(),
    ];

    // Where the board touches the table it takes away light, so that it does not float.
    private IEnumerable<SceneNode> Shadow()
    {
        double depth = _measures.Shelf * 0.1;
        if (view == TableView.Above)
        {
            yield return new SceneNode.Path(_frame.Mapped(point => point.Moved(depth * 0.8, depth * 1.2)), new Paint(Tones.TableEdge));
            yield break;
        }

        Box foot = place.Framed;
        yield return new SceneNode.Rectangle(new Box(foot.X - depth, foot.Bottom - depth, foot.Width + (2 * depth), 2 * depth), new Paint(Tones.TableEdge), depth);
    }

    private SceneNode.Group Space(int column, int row, CellPicture cell) => new(
        $"{place.Board.Name}-{column}-{row}",
        [
            .. view == TableView.Front ? Niche(place.Niche(column, row)) : Tile(place.Niche(column, row)),
            .. cell is CellPicture.Stack stack ? new StackPainter(place.Niche(column, row), _measures, view).Paint(stack.Pieces) : FreeName(column, row),
        ]);

    private IEnumerable<SceneNode> Niche(Box niche)
    {
        double lip = _measures.Shelf * 0.045;
        yield return new SceneNode.Rectangle(niche, new Paint(Tones.Back));
        yield return new SceneNode.Rectangle(niche with { Height = lip }, new Paint(Tones.Shade));
        yield return new SceneNode.Rectangle(new Box(niche.X, niche.Bottom, niche.Width, lip), new Paint(Tones.Plank));
    }

    private IEnumerable<SceneNode> Tile(Box niche)
    {
        double round = _measures.Shelf * 0.06;
        yield return new SceneNode.Rectangle(niche.Moved(0, _measures.PlankHeight / 2), new Paint(Tones.Plank), round);
        yield return new SceneNode.Rectangle(niche, new Paint(Tones.Back), round);
    }

    private IEnumerable<SceneNode> FreeName(int column, int row)
    {
        double size = _measures.SmallSize;
        SceneNode.Text text = new(default, place.Board.NameOf(column, row), size, Tones.BackInk, TextAnchor.Middle);
        Box niche = place.Niche(column, row);
        return names == SpaceNames.Everywhere && text.Width <= niche.Width * 0.9
            ? [text with { At = niche.Centre.Moved(0, size * 0.34) }]
            : [];
    }

    private IEnumerable<SceneNode> Labels()
    {
        double size = _measures.LabelSize;
        Box frame = place.Framed;
        for (int column = 0; column < place.Board.Columns.Count; column++)
        {
            Point at = new(place.Cell(column, 0).Centre.X, frame.Bottom + (_measures.Shelf * 0.14) + size);
            yield return new SceneNode.Text(at, place.Board.Columns[column], size, Tones.Ink, TextAnchor.Middle, FontWeight.Bold);
        }

        for (int row = 0; row < place.Board.Rows.Count; row++)
        {
            int first = Enumerable.Range(0, place.Board.Columns.Count).FirstOrDefault(column => place.Has(column, row));
            Point at = new(place.Cell(first, row).X - _measures.FrameWidth - (size * 0.45), place.Niche(first, row).Centre.Y + (size * 0.35));
            yield return new SceneNode.Text(at, place.Board.Rows[row].Label, size, Tones.Ink, TextAnchor.End, FontWeight.Bold);
        }
    }
}
