using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Rulings.Tallies;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Cli.Screen;

/// <summary>Shows a tally as a slip: parts add up to their line in an inner column, lines to the total in an outer one, pages at the right.</summary>
internal sealed class TallyScreen
{
    private const int Indent = 4;
    private const int WidestPage = 26;

    private readonly Paper _paper = new();
    private readonly Tally _tally;
    private readonly int _innerWidth;
    private readonly int _outerWidth;
    private readonly int _pageWidth;

    private TallyScreen(Tally tally)
    {
        _tally = tally;
        _innerWidth = Widest(tally.Lines.SelectMany(l => l.Because).Select(p => Amount(p.Points)));
        _outerWidth = Widest(tally.Lines.Select(l => Amount(l.Points)).Append(Amount(tally.Total)));
        _pageWidth = Math.Min(WidestPage, Widest(tally.Lines.Select(l => l.CiteInWords)));
    }

    private int TextWidth => Paper.Width - _innerWidth - _outerWidth - _pageWidth - 6;

    /// <summary>The slip of one seat.</summary>
    /// <param name="heading">The first line.</param>
    /// <param name="tally">The tally.</param>
    public static string Of(string heading, Tally tally)
    {
        var screen = new TallyScreen(tally);
        screen._paper.Wrapped(heading, 0);
        screen._paper.Line();
        screen.Lines();
        screen.Readings();
        screen.Listed("The position does not say", tally.NotGiven);
        screen.Listed("Not modelled, or not worked out yet", tally.NotModelled);
        return screen._paper.ToString();
    }

    private void Lines()
    {
        foreach (TallyLine line in _tally.Lines)
        {
            Row(0, line.Clause, "", Amount(line.Points), Prose.Clip(line.CiteInWords, WidestPage));
            foreach (TallyPart part in line.Because)
            {
                Row(Indent, part.Text, Amount(part.Points), "", "");
            }
        }

        _paper.Line(new string(' ', TextWidth + _innerWidth + 2) + "  " + new string('-', _outerWidth));
        Row(0, "total", "", Amount(_tally.Total), "");
        if (_tally.Rating is { } rating)
        {
            string credit = rating.Credit == 0 ? "" : $" (with {Math.Abs(rating.Credit).ToString(CultureInfo.InvariantCulture)} {(rating.Credit < 0 ? "taken off" : "added")})";
            _paper.Edges($"rating: {rating.Step}{credit}", Citation.Tell(rating.Cite));
        }

        string?[] notes = [_tally.Without.IsEmpty ? null : $"The total is without {Prose.And(_tally.Without)}.", _tally.TogetherInWords];
        foreach (string note in notes.OfType<string>())
        {
            _paper.Wrapped(note, 0);
        }
    }

    private void Readings()
    {
        foreach (IGrouping<string, TallyReading> clause in _tally.Readings.GroupBy(r => r.Clause))
        {
            _paper.Line();
            _paper.Line($"{clause.Key} can be read in {Prose.Word(clause.Count())} ways; above it is read as '{clause.First().Name}':");
            int nameWidth = Widest(clause.Select(r => r.Name));
            int pointsWidth = Widest(clause.Select(r => Amount(r.Points)));
            int totalWidth = Widest(clause.Select(r => Amount(r.Total)));
            foreach (TallyReading reading in clause)
            {
                _paper.Line($"    {Paper.Padded(reading.Name, nameWidth)}  {Amount(reading.Points).PadLeft(pointsWidth)}   total {Amount(reading.Total).PadLeft(totalWidth)}");
            }
        }
    }

    private void Listed(string heading, ImmutableArray<string> words)
    {
        if (words.IsEmpty)
        {
            return;
        }

        _paper.Line();
        _paper.Line($"{heading}:");
        foreach (string word in words)
        {
            _paper.Wrapped(word, Indent);
        }
    }

    private void Row(int indent, string text, string inner, string outer, string page)
    {
        string[] lines = [.. Paper.Cut(text, TextWidth - indent)];
        string blanks = new(' ', indent);
        _paper.Line($"{Paper.Padded(blanks + lines[0], TextWidth)}  {inner.PadLeft(_innerWidth)}  {outer.PadLeft(_outerWidth)}  {page}");
        foreach (string line in lines.Skip(1))
        {
            _paper.Line($"{blanks}  {line}");
        }
    }

    private static string Amount(Points points) => points.Certain is { } certain ? certain.ToString(CultureInfo.InvariantCulture) : points.InWords;

    private static int Widest(IEnumerable<string> texts) => texts.Select(DisplayText.WidthOf).Append(0).Max();
}
