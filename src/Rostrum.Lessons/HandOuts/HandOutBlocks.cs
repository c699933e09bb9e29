using System.Collections.Immutable;
using Rostrum.Lessons.Page;
using Rostrum.Pictures;

namespace Rostrum.Lessons.HandOuts;

/// <summary>Cuts a hand-out into blocks for columns of one width in one size of type.</summary>
/// <param name="width">Of a column, in points.</param>
/// <param name="size">Of the type, in points.</param>
internal sealed class HandOutBlocks(double width, double size)
{
    // A clause of so many lines is longer than any that was ever read back; what is longer still may be cut there.
    private const int MostLines = 12;

    // Of the two lines below a heading, in ems above its foot.
    private static readonly double[] RuleHeights = [0.28, 0.43];

    private readonly double _line = size * 1.27;

    /// <summary>The blocks, in the order of reading.</summary>
    /// <param name="handOut">What to show.</param>
    /// <param name="figures">How many of its drawings.</param>
    public IEnumerable<HandOutBlock> Of(HandOut handOut, int figures)
    {
        ImmutableArray<AidSection> sections = handOut.Aid.Sections;
        int first = Place(sections);
        for (int i = 0; i < sections.Length; i++)
        {
            IEnumerable<HandOutBlock> figure = i == first ? Figures(handOut, 0, Math.Min(1, figures)) : [];
            IEnumerable<HandOutBlock> tables = i == Scoring(sections) ? Tables(handOut.Aid.Tables) : [];
            foreach (HandOutBlock block in figure.Concat(Section(sections[i])).Concat(tables))
            {
                yield return block;
            }
        }

        foreach (HandOutBlock block in Figures(handOut, sections.IsEmpty ? 0 : 1, figures))
        {
            yield return block;
        }
    }

    // Tables say what lines score; a game that scores nothing has them at its end.
    private static int Scoring(ImmutableArray<AidSection> sections) =>
        sections.FirstOrDefault(s => s.Title == "Scoring") is { } scoring ? sections.IndexOf(scoring) : sections.Length - 1;

    // The table is seen before its laws are read; a game without laws shows it first.
    private static int Place(ImmutableArray<AidSection> sections) => Math.Max(0, sections.IndexOf(sections.FirstOrDefault(s => s.Title == "Laws")!));

    private IEnumerable<HandOutBlock> Section(AidSection section)
    {
        yield return Heading(section.Title);
        double names = NameWidth(section);
        foreach (HandOutBlock block in section.Clauses.SelectMany(c => Clause(c, names)))
        {
            yield return block;
        }
    }

    private HandOutBlock Heading(string title)
    {
        double letters = size * 1.12;
        ImmutableArray<InkLine> lines = InkLine.Break(InkWord.Of(title, Tones.Ink, FontWeight.Bold), width, letters);
        double height = (lines.Length * letters * 1.2) + (size * 0.45);
        return new HandOutBlock(size * 0.95, height, StaysWithNext: true, at => new Drawn(
        [
            .. lines.SelectMany((l, i) => l.At(at.Moved(0, letters * (0.95 + (i * 1.2))), letters)),
            // A double rule, as on the web pages.
            .. RuleHeights.Select(up => Rule(at.Moved(0, height - (size * (0.72 - up))), width, 0.6, Tones.Ink)),
        ]));
    }

    // Scoring reads as a table: the name of the line, what it scores, the page.
    private double NameWidth(AidSection section) => section.Clauses.All(c => c.Name.Length == 0)
        ? 0
        : Math.Min(width * 0.3, section.Clauses.Max(c => ShippedFonts.Width(c.Name, size, FontWeight.Bold))) + (size * 0.8);

    private IEnumerable<HandOutBlock> Clause(AidClause clause, double names)
    {
        ImmutableArray<InkLine> name = names > 0 ? InkLine.Break(InkWord.Of(clause.Name, Tones.Ink, FontWeight.Bold), names - (size * 0.8), size) : [];
        ImmutableArray<InkLine> said = InkLine.Break(Words(clause), width - names, size);
        int count = Math.Max(name.Length, said.Length);
        for (int from = 0; from < count; from += MostLines)
        {
            (int begin, int lines) = (from, Math.Min(MostLines, count - from));
            yield return new HandOutBlock(from == 0 ? size * 0.28 : 0, lines * _line, StaysWithNext: false, at => new Drawn(
                [.. Lines(name, begin, lines, at), .. Lines(said, begin, lines, at.Moved(names, 0))]));
        }
    }

    private IEnumerable<SceneNode> Lines(ImmutableArray<InkLine> lines, int from, int count, Point at) =>
        lines.Skip(from).Take(count).SelectMany((l, i) => l.At(at.Moved(0, size + (i * _line)), size));

    // The page is no part of the sentence, and 'p. 8' is never broken.
    private static IEnumerable<InkWord> Words(AidClause clause) =>
    [
        .. InkWord.Of(clause.Sentence, Tones.Ink),
        .. clause.Page.Length > 0 ? [new InkWord(clause.Page, Tones.QuietInk) { StaysWithLast = true }] : Array.Empty<InkWord>(),
        .. InkWord.Of(clause.Note, Tones.QuietInk),
    ];

    private IEnumerable<HandOutBlock> Tables(ImmutableArray<AidTable> tables) => tables.SelectMany(t => Grid(t) is { } grid ? [grid] : Clause(Sentence(t), 0));

    private static AidClause Sentence(AidTable table) => new($"{table.Title}: {string.Join(", ", table.Columns.Select(c => $"{c.Key}: {c.Value}"))}.", "");

    // Keys above, values below; null where that is too wide.
    private HandOutBlock? Grid(AidTable table)
    {
        double[] cells = [.. table.Columns.Select(c => Math.Max(ShippedFonts.Width(c.Key, size, FontWeight.Regular), ShippedFonts.Width(c.Value, size, FontWeight.Bold)) + (size * 1.1))];
        double title = ShippedFonts.Width(table.Title, size, FontWeight.Bold) + (size * 0.8);
        return title + cells.Sum() > width
            ? null
            : new HandOutBlock(size * 0.4, 2 * _line * 1.1, StaysWithNext: false, at => new Drawn(GridNodes(table, at, title, cells)));
    }

    private IEnumerable<SceneNode> GridNodes(AidTable table, Point at, double title, double[] cells)
    {
        yield return new SceneNode.Text(at.Moved(0, size), table.Title, size, Tones.Ink, TextAnchor.Start, FontWeight.Bold);
        double x = at.X + title;
        yield return Rule(new Point(x, at.Y + (_line * 1.08)), cells.Sum(), 0.6, Tones.PaperEdge);
        for (int i = 0; i < cells.Length; i++)
        {
            Point middle = new(x + (cells[i] / 2), at.Y + size);
            yield return new SceneNode.Text(middle, table.Columns[i].Key, size, Tones.QuietInk, TextAnchor.Middle);
            yield return new SceneNode.Text(middle.Moved(0, _line * 1.1), table.Columns[i].Value, size, Tones.Ink, TextAnchor.Middle, FontWeight.Bold);
            x += cells[i];
        }
    }

    private IEnumerable<HandOutBlock> Figures(HandOut handOut, int from, int to) =>
        handOut.Figures.Take(to).Skip(from).Select(f => HandOutDrawing.Of(f, width)).OfType<HandOutDrawing>().Select(Figure);

    private HandOutBlock Figure(HandOutDrawing drawing)
    {
        ImmutableArray<InkLine> caption = InkLine.Break(InkWord.Of(drawing.Caption, Tones.QuietInk), width, size);
        double high = drawing.Scene.Height * drawing.Scale;
        return new HandOutBlock(size, high + (caption.Length * _line), StaysWithNext: false, at => new Drawn(
            Lines(caption, 0, caption.Length, at.Moved(0, high)),
            new PlacedScene(drawing.Scene, at.Moved((width - (drawing.Scene.Width * drawing.Scale)) / 2, 0), drawing.Scale)))
        {
            MayWait = true,
        };
    }

    private static SceneNode.Line Rule(Point from, double length, double thick, Tone tone) => new(from, from.Moved(length, 0), Paint.Line(tone, thick));
}
