namespace Rostrum.Pictures;

/// <summary>Draws one piece standing on the bottom of a square box.</summary>
internal static class PiecePainter
{
    // A broken piece needs room for the parts that lean away, so both are drawn a little smaller.
    private const double BrokenShare = 0.84;

    public static IEnumerable<SceneNode> Paint(PieceLook look, Box box)
    {
        if (look.Flaw == Flaws.Cracked)
        {
            return Cracked(look, box);
        }

        if (look.Flaw == Flaws.Hidden)
        {
            return [new SceneNode.Path(look.Outline.Shape.Into(box), Edge(Tones.Blank, box) with { Dash = box.Width * 0.12 })];
        }

        IEnumerable<SceneNode> sound = [.. Body(look.Outline, look.Colour.Body, look.Colour.Mark, box), .. Mark(look.Emblem, look.Colour.Mark, look.Outline.EmblemBox, box)];
        return look.Flaw == Flaws.Spent ? sound.Concat(CrossedOut(box)) : sound;
    }

    /// <summary>The silhouette with its fine lines, without emblem.</summary>
    public static IEnumerable<SceneNode> Body(Outline outline, Tone body, Tone mark, Box box)
    {
        yield return new SceneNode.Path(outline.Shape.Into(box), Edge(body, box));
        if (outline.Lines.Steps.Count > 0)
        {
            yield return new SceneNode.Path(outline.Lines.Into(box), Pictures.Paint.Line(mark, EdgeWidth(box) * 0.6));
        }
    }

    /// <summary>An emblem in its place on a piece; nothing where the piece has none.</summary>
    public static IEnumerable<SceneNode> Mark(Emblem? emblem, Tone mark, Box place, Box box)
    {
        if (emblem is not null)
        {
            Box inside = new(box.X + (place.X * box.Width), box.Y + (place.Y * box.Height), place.Width * box.Width, place.Height * box.Height);
            yield return new SceneNode.Path(emblem.Shape.Into(inside), new Paint(mark));
        }
    }

    // The emblem breaks with the piece: it is part of its skin.
    private static IEnumerable<SceneNode> Cracked(PieceLook look, Box box)
    {
        double side = box.Width * BrokenShare;
        Box smaller = new(box.Centre.X - (side / 2), box.Bottom - side, side, side);
        (PathData left, PathData right) = Crack.Break(look.Outline.Shape);
        yield return new SceneNode.Path(left.Into(smaller), Edge(look.Colour.Body, box));
        yield return new SceneNode.Path(right.Into(smaller), Edge(look.Colour.Body, box));
        if (look.Emblem is { } emblem)
        {
            (PathData first, PathData second) = Crack.Break(emblem.Shape.Into(look.Outline.EmblemBox));
            yield return new SceneNode.Path(first.And(second).Into(smaller), new Paint(look.Colour.Mark));
        }

        double rim = smaller.Y + (look.Outline.Top * side);
        foreach (SceneNode node in Badge(new Point(box.Centre.X, rim - (box.Width * 0.1)), box))
        {
            yield return node;
        }
    }

    // A small disc with a jagged line, where the gap is widest; it touches the rim.
    private static IEnumerable<SceneNode> Badge(Point centre, Box box)
    {
        double radius = box.Width * 0.19;
        double step = radius * 0.5;
        yield return new SceneNode.Circle(centre, radius, new Paint(Tones.Flaw, Tones.FlawInk, EdgeWidth(box) * 0.5));
        yield return new SceneNode.Path(
            PathData.Polyline(centre.Moved(step * 0.5, -1.3 * step), centre.Moved(-0.6 * step, -0.1 * step), centre.Moved(0.6 * step, 0.1 * step), centre.Moved(-0.5 * step, 1.3 * step)),
            Pictures.Paint.Line(Tones.FlawInk, radius * 0.28));
    }

    private static IEnumerable<SceneNode> CrossedOut(Box box)
    {
        Box inner = box.Grown(-0.06 * box.Width);
        foreach ((Tone tone, double width) in new[] { (Tones.FlawInk, 0.2), (Tones.Flaw, 0.11) })
        {
            yield return new SceneNode.Line(new Point(inner.X, inner.Y), new Point(inner.Right, inner.Bottom), Pictures.Paint.Line(tone, width * box.Width));
            yield return new SceneNode.Line(new Point(inner.X, inner.Bottom), new Point(inner.Right, inner.Y), Pictures.Paint.Line(tone, width * box.Width));
        }
    }

    private static Paint Edge(Tone body, Box box) => new(body, Tones.PieceEdge, EdgeWidth(box));

    private static double EdgeWidth(Box box) => Math.Max(1.2, box.Width * 0.05);
}
