using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>Where everything of a pattern card goes: title and value on top, the drawing in the middle, the sentence below.</summary>
internal sealed class CardLayout
{
    private const double LeastWidthInLabels = 10.5;

    private readonly DrawingPicture _picture;
    private readonly ImmutableArray<string> _title;
    private readonly ImmutableArray<string> _sentence;
    private readonly double _inner;
    private readonly CardGrid _grid;

    public CardLayout(DrawingPicture picture, TableMeasures measures)
    {
        _picture = picture;
        Measures = measures;
        _grid = new CardGrid(picture, measures.Shelf);
        _inner = Math.Max(_grid.Width, LeastWidthInLabels * measures.LabelSize);
        _title = TextFlow.Lines(picture.Title, _inner - ValueRoom, measures.LabelSize, FontWeight.Bold);
        _sentence = TextFlow.Lines(picture.Sentence ?? "", _inner, measures.LabelSize);
    }

    public TableMeasures Measures { get; }

    public double Width => Card.Width + (2 * Measures.Margin);

    public double Height => Card.Height + (2 * Measures.Margin);

    public Box Card => new(Measures.Margin, Measures.Margin, _inner + (2 * Padding), Head + GridHeight + Foot + Padding);

    /// <summary>The square of a space, for a hex the one round its middle; rows count from the lowest.</summary>
    public Box Cell(int column, int row) => _grid.Cell(column, row).Moved(Card.Centre.X - (_grid.Width / 2), Card.Y + Head);

    public IEnumerable<SceneNode> Texts =>
    [
        .. _title.Select((line, index) => Text(line, Card.X + Padding, Card.Y + Padding + (index * LineHeight), FontWeight.Bold)),
        .. _picture.Value is { } value ? Value(value) : [],
        .. _sentence.Select((line, index) => Text(line, Card.X + Padding, Card.Y + Head + GridHeight + (Padding * 0.6) + (index * LineHeight), FontWeight.Regular)),
    ];

    private double Padding => Math.Max(10, Measures.Shelf * 0.26);

    private double LineHeight => TableMeasures.LineHeight(Measures.LabelSize);

    private double ValueRadius => Measures.LabelSize * 0.95;

    private double ValueRoom => _picture.Value is null ? 0 : (2 * ValueRadius) + (Measures.LabelSize * 0.4);

    private double Head => Padding + Math.Max(_title.Length * LineHeight, _picture.Value is null ? 0 : 2 * ValueRadius) + (Padding * 0.7);

    private double GridHeight => _grid.Height;

    private double Foot => _sentence.IsEmpty ? 0 : (_sentence.Length * LineHeight) + (Padding * 0.3);

    // What a card is worth stands in a ring at its upper right corner.
    private IEnumerable<SceneNode> Value(string value)
    {
        double size = Measures.LabelSize * 1.1;
        Point centre = new(Card.Right - Padding - ValueRadius, Card.Y + Padding + ValueRadius - (Padding * 0.2));
        yield return new SceneNode.Circle(centre, ValueRadius, Paint.Line(Tones.PaperInk, Math.Max(1.2, size * 0.1)));
        yield return new SceneNode.Text(centre.Moved(0, size * 0.34), value, size, Tones.PaperInk, TextAnchor.Middle, FontWeight.Bold);
    }

    private SceneNode.Text Text(string line, double x, double top, FontWeight weight) =>
        new(new Point(x, top + TableMeasures.BaseLine(Measures.LabelSize)), line, Measures.LabelSize, Tones.PaperInk, TextAnchor.Start, weight);
}
