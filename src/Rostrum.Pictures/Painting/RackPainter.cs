using System.Collections.Immutable;
using System.Globalization;

namespace Rostrum.Pictures;

/// <summary>Draws the heaps beside the boards as a narrow rack, one compartment a heap.</summary>
/// <param name="heaps">What it holds, from the top.</param>
/// <param name="first">How many heaps the racks before it hold, so that every compartment has a name of its own.</param>
/// <param name="measures">All lengths.</param>
internal sealed class RackPainter(ValueList<Heap> heaps, int first, TableMeasures measures)
{
    private const int PiecesInRow = 4;

    private double PieceSide => measures.Shelf * 0.62;

    private double Padding => measures.Shelf * 0.12;

    private double LineHeight => TableMeasures.LineHeight(measures.SmallSize);

    private double InnerWidth => (2 * Padding) + heaps.Max(heap => Math.Max(Rows(heap).Max(RowWidth), TextWidth(heap)));

    /// <summary>Width with the frame; 0 without heaps.</summary>
    public double Width => heaps.Count == 0 ? 0 : InnerWidth + (2 * measures.FrameWidth);

    /// <summary>Height with the frame; 0 without heaps.</summary>
    public double Height => heaps.Count == 0 ? 0 : heaps.Sum(CompartmentHeight) + ((heaps.Count - 1) * measures.PlankHeight) + (2 * measures.FrameWidth);

    public IEnumerable<SceneNode> Paint(Point lowerLeft)
    {
        if (heaps.Count == 0)
        {
            yield break;
        }

        Box outer = new(lowerLeft.X, lowerLeft.Y - Height, Width, Height);
        double shade = measures.Shelf * 0.1;
        yield return new SceneNode.Rectangle(new Box(outer.X - shade, outer.Bottom - shade, outer.Width + (2 * shade), 2 * shade), new Paint(Tones.TableEdge), shade);
        yield return new SceneNode.Rectangle(outer, new Paint(Tones.Frame, Tones.FrameEdge, Math.Max(1, measures.Shelf * 0.03)), measures.Shelf * 0.08);
        double top = outer.Y + measures.FrameWidth;
        for (int i = 0; i < heaps.Count; i++)
        {
            double height = CompartmentHeight(heaps[i]);
            yield return new SceneNode.Group(
                string.Create(CultureInfo.InvariantCulture, $"heap-{first + i}"),
                [.. Compartment(heaps[i], new Box(outer.X + measures.FrameWidth, top, InnerWidth, height))]);
            top += height + measures.PlankHeight;
        }
    }

    private IEnumerable<SceneNode> Compartment(Heap heap, Box box)
    {
        double lip = measures.Shelf * 0.045;
        yield return new SceneNode.Rectangle(box, new Paint(Tones.Back));
        yield return new SceneNode.Rectangle(box with { Height = lip }, new Paint(Tones.Shade));
        yield return new SceneNode.Rectangle(new Box(box.X, box.Bottom, box.Width, lip), new Paint(Tones.Plank));
        double baseLine = box.Y + Padding + TableMeasures.BaseLine(measures.SmallSize);
        foreach ((string line, FontWeight weight) in TextLines(heap))
        {
            yield return new SceneNode.Text(new Point(box.X + Padding, baseLine), line, measures.SmallSize, Tones.BackInk, TextAnchor.Start, weight);
            baseLine += LineHeight;
        }

        ImmutableArray<HeapPieces[]> rows = Rows(heap);
        for (int row = 0; row < rows.Length && heap.Pieces.Count > 0; row++)
        {
            double foot = box.Bottom - ((rows.Length - 1 - row) * PieceSide * 1.12);
            foreach (SceneNode node in PieceRow(rows[row], new Point(box.X + Padding, foot)))
            {
                yield return node;
            }
        }
    }

    private IEnumerable<SceneNode> PieceRow(HeapPieces[] row, Point foot)
    {
        double x = foot.X;
        foreach (HeapPieces pieces in row)
        {
            Box box = new(x, foot.Y - PieceSide, PieceSide, PieceSide);
            foreach (SceneNode node in PiecePainter.Paint(pieces.Look, box))
            {
                yield return node;
            }

            if (pieces.Count != 1)
            {
                yield return Count(pieces) with { At = new Point(box.Right + (PieceSide * 0.08), box.Bottom - (measures.LabelSize * 0.3)) };
            }

            x += PieceWidth(pieces);
        }
    }

    private double CompartmentHeight(Heap heap) =>
        (1.6 * Padding) + (TextLines(heap).Length * LineHeight) + (heap.Pieces.Count > 0 ? Rows(heap).Length * PieceSide * 1.12 : 0);

    private double TextWidth(Heap heap) => TextLines(heap).Max(line => ShippedFonts.Width(line.Line, measures.SmallSize, line.Weight));

    private double RowWidth(HeapPieces[] row) => row.Sum(PieceWidth);

    private double PieceWidth(HeapPieces pieces) =>
        (PieceSide * 1.14) + (pieces.Count == 1 ? 0 : Count(pieces).Width + (PieceSide * 0.16));

    private SceneNode.Text Count(HeapPieces pieces) => new(
        default, "×" + pieces.Count.ToString(CultureInfo.InvariantCulture), measures.LabelSize, Tones.BackInk, TextAnchor.Start, FontWeight.Bold);

    private ImmutableArray<(string Line, FontWeight Weight)> TextLines(Heap heap)
    {
        double width = measures.Shelf * 3;
        return
        [
            .. TextFlow.Lines(heap.Name, width, measures.SmallSize, FontWeight.Bold).Select(line => (line, FontWeight.Bold)),
            .. TextFlow.Lines(heap.Text ?? "", width, measures.SmallSize).Select(line => (line, FontWeight.Regular)),
        ];
    }

    // Never empty, so that a heap without pieces has one row of width 0.
    private static ImmutableArray<HeapPieces[]> Rows(Heap heap) =>
        heap.Pieces.Count == 0 ? [[]] : [.. heap.Pieces.Chunk(PiecesInRow)];
}
