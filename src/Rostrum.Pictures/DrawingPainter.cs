using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>Turns a pattern card into a scene: a card of paper lying on the table.</summary>
public static class DrawingPainter
{
    /// <summary>Draws the card.</summary>
    /// <param name="picture">What it asks for.</param>
    /// <param name="shelf">Side of one space in scene units, 12 to 400.</param>
    /// <exception cref="ArgumentOutOfRangeException">The side is outside its range.</exception>
    /// <exception cref="ArgumentException">There is no row, rows of squares differ in length, or rows of hexes do not interlock.</exception>
    public static Scene Paint(DrawingPicture picture, double shelf = 48)
    {
        if (shelf is not (>= 12 and <= 400))
        {
            throw new ArgumentOutOfRangeException(nameof(shelf), shelf, "A space measures 12 to 400 units.");
        }

        if (picture.Rows.Count == 0 || picture.Rows.Any(row => row.Count == 0 || (!picture.IsHex && row.Count != picture.Rows[0].Count)))
        {
            throw new ArgumentException("A drawing has at least one row, and its rows are equally long.", nameof(picture));
        }

        if (picture.IsHex && (picture.HalfSteps.Count != picture.Rows.Count || picture.HalfSteps.Zip(picture.HalfSteps.Skip(1)).Any(pair => (pair.First - pair.Second) % 2 == 0)))
        {
            throw new ArgumentException("Each row of hexes is set off from the next by an odd number of half steps.", nameof(picture));
        }

        CardLayout layout = new(picture, new TableMeasures(shelf));
        return new Scene(layout.Width, layout.Height, picture.Title, DrawingWords.Describe(picture), [.. Nodes(picture, layout)]);
    }

    private static IEnumerable<SceneNode> Nodes(DrawingPicture picture, CardLayout layout)
    {
        CardCellPainter cells = new(layout.Measures, picture.IsHex);
        double shade = layout.Measures.Shelf * 0.06;
        yield return new SceneNode.Rectangle(new Box(0, 0, layout.Width, layout.Height), new Paint(Tones.Table));
        yield return new SceneNode.Rectangle(layout.Card.Moved(shade, shade * 1.5), new Paint(Tones.TableEdge), shade * 2);
        yield return new SceneNode.Rectangle(layout.Card, new Paint(Tones.Paper), shade * 2);
        foreach (SceneNode text in layout.Texts)
        {
            yield return text;
        }

        for (int row = 0; row < picture.Rows.Count; row++)
        {
            for (int column = 0; column < picture.Rows[row].Count; column++)
            {
                ImmutableArray<SceneNode> nodes = [.. cells.Paint(picture.Rows[row][column], layout.Cell(column, row))];
                yield return new SceneNode.Group($"cell-{column}-{row}", ValueList.Create(nodes.AsSpan()));
            }
        }
    }
}
