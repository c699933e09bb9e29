using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Pictures;

/// <summary>Where everything of a table picture goes: boards side by side, racks beside them, the slip below.</summary>
internal sealed class TableLayout
{
    // Titles and slips need this many label heights of width, however narrow the boards are.
    private const double LeastWidthInLabels = 17;

    private readonly TablePicture _picture;
    private readonly ImmutableArray<BoardPlace> _places;
    private readonly double _content;
    private readonly double _top;
    private readonly double _foot;

    public TableLayout(TablePicture picture, TableMeasures measures)
    {
        _picture = picture;
        Measures = measures;
        _places = [.. picture.Boards.Select(board => BoardPlace.Of(board, measures, picture.Names, picture.View))];
        Strip[] strips = [.. Strips()];
        double side = strips.Sum(strip => strip.Width) + ((strips.Length - 1) * measures.Gap);
        _content = Math.Max(side, LeastWidthInLabels * measures.LabelSize);
        Slip = new SlipPainter(SlipText(), _content, measures);
        ImmutableArray<string> title = !picture.ShowsTitle ? [] : TextFlow.Lines(picture.Title, _content, measures.TitleSize, FontWeight.Bold);
        double top = measures.Margin + (title.Length * TableMeasures.LineHeight(measures.TitleSize)) + (measures.Shelf * 0.2);
        _top = top + BoardTitleHeight;
        _foot = top + strips.Max(strip => strip.Rack is { } rack ? rack.Height + (IsFlat ? BoardTitleHeight : 0) : BoardHeight(strip.Place!));
        (Boards, Racks) = Places(strips);
        SlipCorner = new Point(measures.Margin, _foot + Labels + (measures.Shelf * 0.3));
        Titles = [.. TitleNodes(title), .. Boards.SelectMany(BoardTitle)];
    }

    public TableMeasures Measures { get; }

    public ImmutableArray<(RackPainter Rack, Point Corner)> Racks { get; }

    public SlipPainter Slip { get; }

    public ImmutableArray<BoardPlace> Boards { get; }

    public ImmutableArray<SceneNode> Titles { get; }

    public Point SlipCorner { get; }

    public double Width => _content + (2 * Measures.Margin);

    public double Height => SlipCorner.Y + Slip.Height + (Slip.Height > 0 ? Measures.Margin : Measures.Margin * 0.4);

    /// <summary>Seen from the front, the table begins a little behind the feet of the boards and leaves the picture on three sides;
    /// seen from above it is whole and under everything but the title.</summary>
    public Box TableTop => _picture.View == TableView.Front
        ? Below(_foot - (Measures.Shelf * 0.42))
        : Below(Boards.Min(place => place.Framed.Y - place.Outside.Above) - (Measures.Shelf * 0.3) - BoardTitleHeight).Grown(-Measures.Margin * 0.35);

    // What stands has its feet on one line; what lies has its far edges on one.
    private bool IsFlat => _picture.View == TableView.Above;

    private Box Below(double top) => new(0, top, Width, Height - top);

    private double Labels => Math.Max(Measures.Shelf * 0.2, _places.Max(place => place.Outside.Below));

    private double BoardTitleHeight =>
        _picture.Boards.Any(board => board.Title is not null) ? TableMeasures.LineHeight(Measures.LabelSize) + (Measures.Shelf * 0.1) : 0;

    private double BoardHeight(BoardPlace place) => BoardTitleHeight + place.Outside.Above + place.Size.Height;

    // What stands side by side: each board with the rack of its own heaps, at the end the rack of what belongs to no board that is shown.
    private IEnumerable<Strip> Strips()
    {
        int heaps = 0;
        foreach (BoardPlace? place in _places.Append(null))
        {
            if (place is not null)
            {
                yield return new Strip(place, null, place.Outside.Left + place.Size.Width + place.Outside.Right);
            }

            Heap[] own = [.. _picture.Heaps.Where(heap => BoardOf(heap) == place?.Board)];
            if (own.Length > 0)
            {
                var rack = new RackPainter([.. own], heaps, Measures);
                heaps += own.Length;
                yield return new Strip(null, rack, rack.Width);
            }
        }
    }

    // Beside the last board stands one rack for everything.
    private BoardPicture? BoardOf(Heap heap) =>
        _picture.Boards.FirstOrDefault(board => board.Name == heap.Board) is { } board && board != _picture.Boards[^1] ? board : null;

    private (ImmutableArray<BoardPlace> Boards, ImmutableArray<(RackPainter Rack, Point Corner)> Racks) Places(Strip[] strips)
    {
        var boards = ImmutableArray.CreateBuilder<BoardPlace>();
        var racks = ImmutableArray.CreateBuilder<(RackPainter Rack, Point Corner)>();
        double x = Measures.Margin;
        foreach (Strip strip in strips)
        {
            if (strip.Place is { } place)
            {
                boards.Add(place with { Corner = new Point(x + place.Outside.Left, IsFlat ? _top + place.Outside.Above : _foot - place.Size.Height) });
            }
            else
            {
                racks.Add((strip.Rack!, new Point(x, IsFlat ? _top + strip.Rack!.Height : _foot)));
            }

            x += strip.Width + Measures.Gap;
        }

        return (boards.ToImmutable(), racks.ToImmutable());
    }

    private IEnumerable<SceneNode> TitleNodes(ImmutableArray<string> lines) => lines.Select((line, index) => new SceneNode.Text(
        new Point(Measures.Margin, Measures.Margin + (index * TableMeasures.LineHeight(Measures.TitleSize)) + (TableMeasures.BaseLine(Measures.TitleSize) * 0.8)),
        line,
        Measures.TitleSize,
        Tones.Ink,
        TextAnchor.Start,
        FontWeight.Bold));

    private IEnumerable<SceneNode> BoardTitle(BoardPlace place)
    {
        if (place.Board.Title is { } title)
        {
            Point at = new(place.Framed.X, place.Framed.Y - place.Outside.Above - (Measures.Shelf * 0.14));
            yield return new SceneNode.Text(at, title, Measures.LabelSize, Tones.Ink);
        }
    }

    private IEnumerable<string> SlipText()
    {
        MarkPainter marks = new(_ => throw new InvalidOperationException("No board has a place yet."), Measures);
        return [
            .. _picture.Caption is { } caption ? [caption] : Array.Empty<string>(),
            .. _picture.Marks.Where(mark => mark.Label.Length > 0 && !marks.Fits(mark)).Select(mark => TableWords.MarkLine(mark, _picture)),
            .. _places.SelectMany(place => place.Notes.Select(note => _places.Length > 1 && place.Board.Title is { } title ? $"{title}, {note}" : Prose.Sentence(note))),
        ];
    }

    // A board or a rack.
    private sealed record Strip(BoardPlace? Place, RackPainter? Rack, double Width);
}
