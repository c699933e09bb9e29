using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>Where everything of a table picture goes: boards side by side on one foot line, racks beside them, the slip below.</summary>
internal sealed class TableLayout
{
    // Titles and slips need this many label heights of width, however narrow the boards are.
    private const double LeastWidthInLabels = 17;

    private readonly TablePicture _picture;
    private readonly double _labelColumn;
    private readonly double _content;
    private readonly double _foot;

    public TableLayout(TablePicture picture, TableMeasures measures)
    {
        _picture = picture;
        Measures = measures;
        _labelColumn = picture.Names == SpaceNames.None ? 0 : picture.Boards.SelectMany(board => board.Rows).Max(row => LabelWidth(row.Label));
        Strip[] strips = [.. Strips()];
        double side = strips.Sum(strip => strip.Width) + ((strips.Length - 1) * measures.Gap);
        _content = Math.Max(side, LeastWidthInLabels * measures.LabelSize);
        Slip = new SlipPainter(SlipText(), _content, measures);
        ImmutableArray<string> title = !picture.ShowsTitle ? [] : TextFlow.Lines(picture.Title, _content, measures.TitleSize, FontWeight.Bold);
        double top = measures.Margin + (title.Length * TableMeasures.LineHeight(measures.TitleSize)) + (measures.Shelf * 0.2);
        _foot = top + strips.Max(strip => strip.Rack?.Height ?? BoardHeight(strip.Board!));
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
        : Below(Boards.Min(place => place.Framed.Y) - (Measures.Shelf * 0.3) - BoardTitleHeight).Grown(-Measures.Margin * 0.35);

    private Box Below(double top) => new(0, top, Width, Height - top);

    private double Labels => _picture.Names == SpaceNames.None
        ? Measures.Shelf * 0.2
        : (Measures.Shelf * 0.14) + TableMeasures.LineHeight(Measures.LabelSize);

    private double BoardTitleHeight =>
        _picture.Boards.Any(board => board.Title is not null) ? TableMeasures.LineHeight(Measures.LabelSize) + (Measures.Shelf * 0.1) : 0;

    private double LabelWidth(string label) =>
        ShippedFonts.Width(label, Measures.LabelSize, FontWeight.Bold) + (Measures.LabelSize * 0.45);

    private double BoardWidth(BoardPicture board) => _labelColumn + (board.Columns.Count * Measures.Shelf) + (2 * Measures.FrameWidth);

    private double BoardHeight(BoardPicture board) => BoardTitleHeight + (board.Rows.Count * Measures.Shelf) + (2 * Measures.FrameWidth);

    // What stands side by side: each board with the rack of its own heaps, at the end the rack of what belongs to no board that is shown.
    private IEnumerable<Strip> Strips()
    {
        int heaps = 0;
        foreach (BoardPicture? board in _picture.Boards.Append(null))
        {
            if (board is not null)
            {
                yield return new Strip(board, null, BoardWidth(board));
            }

            Heap[] own = [.. _picture.Heaps.Where(heap => BoardOf(heap) == board)];
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
            if (strip.Board is { } board)
            {
                boards.Add(PlaceOf(board, x));
            }
            else
            {
                racks.Add((strip.Rack!, new Point(x, _foot)));
            }

            x += strip.Width + Measures.Gap;
        }

        return (boards.ToImmutable(), racks.ToImmutable());
    }

    private BoardPlace PlaceOf(BoardPicture board, double x)
    {
        double height = board.Rows.Count * Measures.Shelf;
        Box grid = new(x + _labelColumn + Measures.FrameWidth, _foot - Measures.FrameWidth - height, board.Columns.Count * Measures.Shelf, height);
        return new BoardPlace(board, grid, Measures);
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
            Point at = new(place.Framed.X, place.Framed.Y - (Measures.Shelf * 0.14));
            yield return new SceneNode.Text(at, title, Measures.LabelSize, Tones.Ink);
        }
    }

    private IEnumerable<string> SlipText()
    {
        MarkPainter marks = new(_ => throw new InvalidOperationException("No board has a place yet."), Measures);
        return [
            .. _picture.Caption is { } caption ? [caption] : Array.Empty<string>(),
            .. _picture.Marks.Where(mark => mark.Label.Length > 0 && !marks.Fits(mark)).Select(mark => TableWords.MarkLine(mark, _picture)),
        ];
    }

    // A board or a rack.
    private sealed record Strip(BoardPicture? Board, RackPainter? Rack, double Width);
}
