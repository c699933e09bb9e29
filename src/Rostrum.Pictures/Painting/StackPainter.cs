using System.Globalization;

namespace Rostrum.Pictures;

/// <summary>Draws the pieces of one space, the lowest first.</summary>
internal sealed class StackPainter(Box niche, TableMeasures measures, TableView view)
{
    private const int MostDrawn = 4;

    // Of a piece that another one covers, this share of its height stays visible.
    private double Step => view == TableView.Front ? 0.5 : 0.24;

    public IEnumerable<SceneNode> Paint(ValueList<PieceLook> pieces)
    {
        List<PieceLook> drawn = [.. pieces.TakeLast(MostDrawn)];
        double spread = 1 + (Step * (drawn.Count - 1));
        double side = measures.PieceSide / spread;
        double foot = view == TableView.Front ? niche.Bottom : niche.Centre.Y + (side * spread / 2);
        for (int i = 0; i < drawn.Count; i++)
        {
            Box box = new(niche.Centre.X - (side / 2), foot - side - (i * Step * side), side, side);
            foreach (SceneNode node in PieceWithShade(drawn[i], box, lowest: i == 0))
            {
                yield return node;
            }
        }

        if (pieces.Count > MostDrawn)
        {
            string count = pieces.Count.ToString(CultureInfo.InvariantCulture);
            yield return new SceneNode.Text(new Point(niche.X + 1, niche.Bottom - 2), count, measures.SmallSize, Tones.BackInk, TextAnchor.Start, FontWeight.Bold);
        }
    }

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
