using System.Collections.Immutable;
using System.Globalization;

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
        .. Numbers(space, at),
        .. space.Content is CellPicture.Stack stack ? new StackPainter(place.Niche(at), place.Room(at), _measures, place.View).Paint(stack.Pieces) : FreeName(space, at),
    ];

    private IEnumerable<SceneNode> FreeName(SpacePicture space, int at)
    {
        double size = _measures.SmallSize;
        SceneNode.Text text = new(default, space.Name, size, Tones.BackInk, TextAnchor.Middle);
        Point centre = space.Numbers.Any(number => number is not null) ? place.Room(at).Centre : place.Niche(at).Centre;
        return place.NamesFreeSpaces && text.Width <= place.Niche(at).Width * 0.9 ? [text with { At = centre.Moved(0, size * 0.34) }] : [];
    }

    // Rings set printed numbers apart from how many things lie there; small ones do without.
    private IEnumerable<SceneNode> Numbers(SpacePicture space, int at)
    {
        long[] numbers = [.. space.Numbers.OfType<long>()];
        double size = _measures.SmallSize;
        double radius = place.NumberRadius;
        for (int i = 0; i < numbers.Length; i++)
        {
            Point centre = place.NumbersAt(at).Moved((i - ((numbers.Length - 1) / 2.0)) * radius * 2.2, 0);
            if (_measures.Shelf >= 36)
            {
                yield return new SceneNode.Circle(centre, radius, Pictures.Paint.Line(Tones.BackInk, Math.Max(1, size * 0.07)));
            }

            yield return new SceneNode.Text(centre.Moved(0, size * 0.35), numbers[i].ToString(CultureInfo.InvariantCulture), size, Tones.BackInk, TextAnchor.Middle, FontWeight.Bold);
        }
    }
}
