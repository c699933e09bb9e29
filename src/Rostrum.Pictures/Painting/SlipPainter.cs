using System.Collections.Immutable;

namespace Rostrum.Pictures;

/// <summary>A slip of paper with text, lying on the table.</summary>
internal sealed class SlipPainter
{
    private readonly ImmutableArray<string> _lines;
    private readonly TableMeasures _measures;

    /// <summary>Breaks the text into lines.</summary>
    /// <param name="paragraphs">Each begins on a new line.</param>
    /// <param name="width">The most that the slip may measure.</param>
    /// <param name="measures">Lengths of the picture.</param>
    public SlipPainter(IEnumerable<string> paragraphs, double width, TableMeasures measures)
    {
        _measures = measures;
        _lines = [.. paragraphs.SelectMany(paragraph => TextFlow.Lines(paragraph, width - (2 * Padding), Size))];
    }

    /// <summary>0 without text.</summary>
    public double Height => _lines.IsEmpty ? 0 : (2 * Padding * 0.8) + (_lines.Length * TableMeasures.LineHeight(Size));

    private double Size => _measures.LabelSize;

    private double Padding => Size * 0.9;

    public IEnumerable<SceneNode> Paint(Point upperLeft)
    {
        if (_lines.IsEmpty)
        {
            yield break;
        }

        double width = _lines.Max(line => ShippedFonts.Width(line, Size, FontWeight.Regular)) + (2 * Padding);
        Box paper = new(upperLeft.X, upperLeft.Y, width, Height);
        yield return new SceneNode.Rectangle(paper.Moved(Size * 0.12, Size * 0.18), new Paint(Tones.TableEdge), 1);
        yield return new SceneNode.Rectangle(paper, new Paint(Tones.Paper), 1);
        for (int i = 0; i < _lines.Length; i++)
        {
            double baseLine = paper.Y + (Padding * 0.8) + (i * TableMeasures.LineHeight(Size)) + TableMeasures.BaseLine(Size);
            yield return new SceneNode.Text(new Point(paper.X + Padding, baseLine), _lines[i], Size, Tones.PaperInk);
        }
    }
}
