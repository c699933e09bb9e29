using System.Collections.Immutable;
using Rostrum.Lessons.Page;
using Rostrum.Pictures;
using Rostrum.Text;

namespace Rostrum.Lessons.HandOuts;

/// <summary>What stands above and below the columns of a hand-out.</summary>
internal static class HandOutEdges
{
    private const double Title = 19;
    private const double Small = 8.5;

    /// <summary>The name of the game, and at the right which printing and day the aid follows.</summary>
    public static IEnumerable<SceneNode> Head(PlayerAid aid, PaperSize paper, int page)
    {
        double width = paper.Width - (2 * HandOutLayout.Margin);
        string dated = string.Join(' ', new[] { aid.Printing, aid.CorrectAsOf.Length > 0 ? $"Correct as of {aid.CorrectAsOf}" : "" }.Where(w => w.Length > 0).Select(Prose.Ended));
        ImmutableArray<InkLine> right = [.. InkLine.Break(InkWord.Of(dated, Tones.QuietInk), width * 0.4, Small).Take(2)];
        string name = page == 0 ? aid.Game : $"{aid.Game}, continued";
        double size = Math.Clamp(Title * width * 0.56 / Math.Max(1, ShippedFonts.Width(name, Title, FontWeight.Bold)), Small, Title);
        InkLine title = InkLine.Break(InkWord.Of(name, Tones.Ink, FontWeight.Bold), width * 0.58, size).FirstOrDefault();
        double baseLine = HandOutLayout.Margin + (Title * 0.85);
        return
        [
            .. title.Words.IsDefaultOrEmpty ? [] : title.At(new Point(HandOutLayout.Margin, baseLine), size),
            .. right.SelectMany((l, i) => AtRight(l, paper.Width - HandOutLayout.Margin, baseLine - ((right.Length - 1 - i) * Small * 1.25))),
            new SceneNode.Line(new Point(HandOutLayout.Margin, baseLine + 8), new Point(paper.Width - HandOutLayout.Margin, baseLine + 8), Paint.Line(Tones.Ink, 1.4)),
        ];
    }

    /// <summary>That the aid is unofficial, and whether it goes on.</summary>
    public static IEnumerable<SceneNode> Foot(PlayerAid aid, PaperSize paper, int page, int pages)
    {
        double width = paper.Width - (2 * HandOutLayout.Margin);
        string goesOn = page + 1 < pages ? (pages == 2 ? "Goes on overleaf." : $"Page {page + 1} of {pages}; goes on.") : pages > 1 ? $"Page {page + 1} of {pages}." : "";
        double room = goesOn.Length > 0 ? ShippedFonts.Width(goesOn, Small, FontWeight.Bold) + 14 : 0;
        double baseLine = paper.Height - HandOutLayout.Margin;
        ImmutableArray<InkLine> note = [.. InkLine.Break(InkWord.Of(aid.UnofficialNote, Tones.QuietInk), width - room, Small).Take(2)];
        return
        [
            .. note.SelectMany((l, i) => l.At(new Point(HandOutLayout.Margin, baseLine - ((note.Length - 1 - i) * Small * 1.25)), Small)),
            .. goesOn.Length > 0 ? [new SceneNode.Text(new Point(paper.Width - HandOutLayout.Margin, baseLine), goesOn, Small, Tones.Ink, TextAnchor.End, FontWeight.Bold)] : Array.Empty<SceneNode>(),
        ];
    }

    private static IEnumerable<SceneNode> AtRight(InkLine line, double right, double baseLine)
    {
        string words = string.Join(' ', line.Words.Select(w => w.Text));
        yield return new SceneNode.Text(new Point(right, baseLine), words, Small, Tones.QuietInk, TextAnchor.End);
    }
}
