using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>Turns a table picture into a scene.</summary>
public static class TablePainter
{
    /// <summary>Draws the table.</summary>
    /// <param name="picture">What to show.</param>
    /// <param name="shelf">Side of one space in scene units; from 24 up everything is told apart.</param>
    /// <exception cref="ArgumentOutOfRangeException">The side is below 12 or above 400.</exception>
    /// <exception cref="ArgumentException">There is no board, a board has no space or one without a row or column,
    /// or a mark or an arrow points at no space.</exception>
    public static Scene Paint(TablePicture picture, double shelf = 48)
    {
        if (shelf is not (>= 12 and <= 400))
        {
            throw new ArgumentOutOfRangeException(nameof(shelf), shelf, "A space measures 12 to 400 units.");
        }

        TableCheck.Demand(picture);
        TableLayout layout = new(picture, new TableMeasures(shelf));
        return new Scene(layout.Width, layout.Height, picture.Title, TableWords.Describe(picture), [.. Nodes(picture, layout)]);
    }

    private static IEnumerable<SceneNode> Nodes(TablePicture picture, TableLayout layout)
    {
        ImmutableDictionary<string, BoardPlace> places = layout.Boards.ToImmutableDictionary(place => place.Board.Name);
        MarkPainter marks = new(name => places[name], layout.Measures);
        return
        [
            .. Ground(picture.View, layout),
            .. layout.Titles,
            .. layout.Boards.Select(place => new SceneNode.Group(place.Board.Name, [.. new BoardPainter(place, picture.View).Paint()])),
            .. layout.Racks.SelectMany(rack => rack.Rack.Paint(rack.Corner)),
            .. picture.Marks.SelectMany(marks.Ring),
            .. picture.Marks.SelectMany(marks.Tag),
            .. picture.Arrows.SelectMany(marks.Arrow),
            .. layout.Slip.Paint(layout.SlipCorner),
        ];
    }

    private static IEnumerable<SceneNode> Ground(TableView view, TableLayout layout)
    {
        double edge = layout.Measures.Shelf * 0.05;
        Box table = layout.TableTop;
        yield return new SceneNode.Rectangle(new Box(0, 0, layout.Width, layout.Height), new Paint(Tones.Surround));
        yield return new SceneNode.Rectangle(table, new Paint(Tones.Table), view == TableView.Above ? layout.Measures.FrameWidth : 0);
        if (view == TableView.Front)
        {
            yield return new SceneNode.Rectangle(table with { Height = edge }, new Paint(Tones.TableEdge));
        }
    }
}
