using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>Draws a board with what lies on it.</summary>
internal sealed class BoardPainter(BoardPlace place, TableView view)
{
    private readonly TableMeasures _measures = place.Measures;
    private readonly PathData _frame = place.Frame;
    private readonly AreaPlates _areas = place.Areas;

    public IEnumerable<SceneNode> Paint()
    {
        ImmutableArray<string> ids = SpaceIds.Of(place.Board);
        return
        [
            .. Shadow(),
            new SceneNode.Path(_frame, new Paint(Tones.Frame, Tones.FrameEdge, Math.Max(1, _measures.Shelf * 0.035))),
            .. place.Below,
            .. place.Board.Spaces.Select((space, at) => new SceneNode.Group(ids[at], [.. Space(space, at)])),
            .. place.Board.Bodies.SelectMany(place.Body),
            .. place.Above,
            .. place.Labels,
            .. _areas.Paint(),
        ];
    }

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

    private IEnumerable<SceneNode> Space(SpacePicture space, int at) =>
    [
        .. place.Ground(at, _areas.TintOf(at)),
        .. place.BearsNumbers(at) ? NumberMarks.Paint([.. space.Numbers.OfType<long>()], place.NumbersAt(at), _measures) : [],
        .. IsCovered(at) ? [] : space.Content is CellPicture.Stack stack ? new StackPainter(place.Niche(at), place.Room(at), _measures, place.View).Paint(stack.Pieces) : FreeName(space, at),
    ];

    private bool IsCovered(int space) => place.DrawsBodies && place.Board.Bodies.Any(body => body.Spaces.Contains(space));

    private IEnumerable<SceneNode> FreeName(SpacePicture space, int at)
    {
        double size = _measures.SmallSize;
        SceneNode.Text text = new(default, space.Name, size, Tones.BackInk, TextAnchor.Middle);
        Point centre = place.BearsNumbers(at) ? place.Room(at).Centre : place.Niche(at).Centre;
        return place.NamesFreeSpaces && text.Width <= place.Niche(at).Width * 0.9 ? [text with { At = centre.Moved(0, size * 0.34) }] : [];
    }
}
