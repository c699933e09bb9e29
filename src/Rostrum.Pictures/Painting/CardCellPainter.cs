namespace Rostrum.Pictures;

/// <summary>Draws what a pattern card asks of one space.</summary>
internal sealed class CardCellPainter(TableMeasures measures, bool isHex)
{
    public IEnumerable<SceneNode> Paint(DrawingCell cell, Box square)
    {
        double gap = measures.Shelf * 0.03;
        Box niche = isHex ? square.Grown(-gap) : new(square.X + gap, square.Y + gap, square.Width - (2 * gap), square.Height - measures.PlankHeight);
        return cell switch
        {
            DrawingCell.Plain => [.. Shelf(niche, Pictures.Paint.Line(Tones.PaperInk, Line, Line * 2.6))],
            DrawingCell.MustBeFree => [.. Shelf(niche, new Paint(Tones.Back)), .. NothingHere(niche)],
            DrawingCell.Wanted wanted => [.. Shelf(niche, new Paint(Tones.Back)), .. Piece(wanted, niche)],
            _ => [],
        };
    }

    private double Line => Math.Max(1, measures.Shelf * 0.025);

    private IEnumerable<SceneNode> Shelf(Box niche, Paint paint)
    {
        if (isHex)
        {
            yield return new SceneNode.Path(HexShape.Of(niche.Centre, niche.Width / HexShape.WidthByRadius), paint with { Stroke = paint.Stroke ?? Tones.Frame, StrokeWidth = Line });
            yield break;
        }

        yield return new SceneNode.Rectangle(niche, paint);
        yield return new SceneNode.Rectangle(new Box(niche.X, niche.Bottom, niche.Width, measures.PlankHeight * 0.7), new Paint(Tones.Frame));
    }

    private IEnumerable<SceneNode> NothingHere(Box niche)
    {
        double radius = measures.Shelf * 0.2;
        double slant = radius * 0.707;
        Paint line = Pictures.Paint.Line(Tones.BackInk, Line * 2.4);
        yield return new SceneNode.Circle(niche.Centre, radius, line);
        yield return new SceneNode.Line(niche.Centre.Moved(-slant, slant), niche.Centre.Moved(slant, -slant), line);
    }

    // A piece without colour is blank paper; a colour without silhouette is a round patch with a dashed edge.
    private IEnumerable<SceneNode> Piece(DrawingCell.Wanted wanted, Box niche)
    {
        double side = isHex ? measures.Shelf * 0.62 : measures.PieceSide;
        Box box = new(niche.Centre.X - (side / 2), isHex ? niche.Centre.Y - (side / 2) : niche.Bottom - side, side, side);
        Tone body = wanted.Colour?.Body ?? Tones.Blank;
        Tone mark = wanted.Colour?.Mark ?? Tones.DarkMark;
        return
        [
            .. wanted.Outline is { } outline ? PiecePainter.Body(outline, body, mark, box) : [Patch(body, box)],
            .. PiecePainter.Mark(wanted.Emblem, mark, (wanted.Outline ?? Outlines.Anything).EmblemBox, box),
        ];
    }

    private SceneNode.Path Patch(Tone body, Box box) =>
        new(Outlines.Anything.Shape.Into(box), new Paint(body, Tones.PieceEdge, Line * 1.6, Line * 3));
}
