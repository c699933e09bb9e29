using System.Globalization;

namespace Rostrum.Pictures;

/// <summary>Draws the pieces of one space, the lowest first, and how many they are where that is not seen at once.</summary>
internal sealed class StackPainter(Box niche, Box room, TableMeasures measures, TableView view)
{
    private const int MostDrawn = 4;

    // Of a piece that another one covers, this share of its height stays visible: of few, enough to see their emblems.
    private double Step(int drawn) => view == TableView.Front ? 0.5 : drawn == 2 ? 0.4 : drawn == 3 ? 0.32 : 0.24;

    public IEnumerable<SceneNode> Paint(ValueList<PieceLook> pieces)
    {
        List<PieceLook> drawn = [.. pieces.TakeLast(MostDrawn)];
        double step = Step(drawn.Count);
        double spread = 1 + (step * (drawn.Count - 1));
        double side = Math.Min(room.Width, room.Height / spread);
        SceneNode.Text? count = Count(pieces.Count);
        double left = count is null || view == TableView.Front ? room.Centre.X - (side / 2) : Math.Max(niche.X + (measures.Shelf * 0.03), room.Centre.X - ((side + Gap + count.Width) / 2));
        double foot = view == TableView.Front ? room.Bottom : room.Centre.Y + (side * spread / 2);
        for (int i = 0; i < drawn.Count; i++)
        {
            Box box = new(left, foot - side - (i * step * side), side, side);
            foreach (SceneNode node in PieceWithShade(drawn[i], box, lowest: i == 0))
            {
                yield return node;
            }
        }

        if (count is not null)
        {
            yield return count with { At = view == TableView.Front ? new Point(niche.X + 1, niche.Bottom - 2) : new Point(left + side + Gap, room.Centre.Y + (count.Size * 0.36)) };
        }
    }

    private double Gap => measures.Shelf * 0.04;

    // Lying on each other, things are hard to count; standing on a shelf, only those that are not drawn are.
    private SceneNode.Text? Count(int pieces) => pieces > (view == TableView.Front ? MostDrawn : 1)
        ? new SceneNode.Text(default, pieces.ToString(CultureInfo.InvariantCulture), measures.SmallSize, Tones.BackInk, TextAnchor.Start, FontWeight.Bold)
        : null;

    private IEnumerable<SceneNode> PieceWithShade(PieceLook look, Box box, bool lowest) =>
        lowest ? PiecePainter.Paint(look, box).Prepend(Shade(look, box)) : PiecePainter.Paint(look, box);

    private SceneNode.Path Shade(PieceLook look, Box box)
    {
        double height = measures.Shelf * 0.05;
        PathData shape = view == TableView.Front
            ? PathData.Ellipse(new Point(box.Centre.X, box.Bottom - (height / 2)), box.Width * 0.52, height)
            : look.Outline.Shape.Into(box.Moved(height * 0.7, height));
        return new SceneNode.Path(shape, new Paint(Tones.Shade));
    }
}
