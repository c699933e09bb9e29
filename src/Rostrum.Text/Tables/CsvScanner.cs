using System.Collections.Immutable;
using System.Text;

namespace Rostrum.Text.Tables;

/// <summary>Cuts a CSV file into rows and cells.</summary>
internal sealed class CsvScanner
{
    private readonly SourceText _source;
    private readonly DiagnosticBag _problems;
    private readonly string _content;
    private readonly char _separator;
    private int _at;

    /// <summary>Stands before the first row.</summary>
    public CsvScanner(SourceText source, DiagnosticBag problems)
    {
        _source = source;
        _problems = problems;
        _content = source.Content;
        _at = _content.StartsWith('\uFEFF') ? 1 : 0;
        SkipBlankLines();
        _separator = SeparatorOf(_content.AsSpan(_at, LineEnd(_at) - _at));
    }

    private bool AtEnd => _at >= _content.Length;

    /// <summary>True where a quote of the last row was never closed, so that its number of cells says nothing.</summary>
    public bool IsRowBroken { get; private set; }

    /// <summary>The next row, or null at the end.</summary>
    public CsvRow? ReadRow()
    {
        IsRowBroken = false;
        SkipBlankLines();
        if (AtEnd)
        {
            return null;
        }

        var cells = ImmutableArray.CreateBuilder<CsvCell>();
        cells.Add(ReadCell());
        while (!AtEnd && _content[_at] == _separator)
        {
            _at++;
            cells.Add(ReadCell());
        }

        return new CsvRow(cells[0].Span.To(cells[^1].Span), cells.ToImmutable());
    }

    // The one that stands more often outside quotes; a comma where both are missing.
    private static char SeparatorOf(ReadOnlySpan<char> header)
    {
        bool quoted = false;
        int commas = 0;
        int semicolons = 0;
        foreach (char c in header)
        {
            quoted ^= c == '"';
            commas += !quoted && c == ',' ? 1 : 0;
            semicolons += !quoted && c == ';' ? 1 : 0;
        }

        return semicolons > commas ? ';' : ',';
    }

    private void SkipBlankLines()
    {
        int at = _at;
        while (at < _content.Length && char.IsWhiteSpace(_content[at]))
        {
            at++;
            _at = _content[at - 1] is '\n' or '\r' || at == _content.Length ? at : _at;
        }
    }

    private int LineEnd(int at) => _source.LineEnd(_source.LineIndexOf(at));

    private CsvCell ReadCell()
    {
        int end = LineEnd(_at);
        while (_at < end && _content[_at] == ' ')
        {
            _at++;
        }

        return _at < end && _content[_at] == '"' ? ReadQuoted(end) : ReadBare(_at, end);
    }

    private CsvCell ReadBare(int from, int lineEnd)
    {
        int separator = _content.IndexOf(_separator, from, lineEnd - from);
        _at = separator >= 0 ? separator : lineEnd;
        int end = _at;
        while (end > from && char.IsWhiteSpace(_content[end - 1]))
        {
            end--;
        }

        SourceSpan span = _source.Span(from, end - from);
        return new CsvCell(span.Text, span);
    }

    private CsvCell ReadQuoted(int lineEnd)
    {
        int open = _at;
        var text = new StringBuilder();
        var offsets = ImmutableArray.CreateBuilder<int>();
        int close = Collect(open + 1, text, offsets);
        int after = close < 0 ? lineEnd : AfterBlanks(close + 1);
        bool complete = close >= 0 && (after >= _content.Length || _content[after] == _separator || _content[after] is '\n' or '\r');

        // A quote that "closes" lines further on, with words behind it, is the opening quote of another cell.
        if (close < 0 || (!complete && close > lineEnd))
        {
            IsRowBroken = true;
            _problems.Add(CsvProblems.UnclosedQuote(_source.Span(open, 1)));
            CsvCell rest = ReadBare(open + 1, lineEnd);
            return new CsvCell(rest.Text, _source.Span(open, rest.Span.End - open), [.. Enumerable.Range(open + 1, rest.Text.Length + 1)]);
        }

        _at = after;
        if (!complete)
        {
            CsvCell rest = ReadBare(after, lineEnd);
            _problems.Add(CsvProblems.TextBehindQuote(rest.Span));
        }

        offsets.Add(close);
        return new CsvCell(text.ToString(), _source.Span(open, close + 1 - open), offsets.ToImmutable());
    }

    // Gives the offset of the closing quote, or -1.
    private int Collect(int from, StringBuilder text, ImmutableArray<int>.Builder offsets)
    {
        for (int i = from; i < _content.Length; i++)
        {
            bool doubled = _content[i] == '"' && i + 1 < _content.Length && _content[i + 1] == '"';
            if (_content[i] == '"' && !doubled)
            {
                return i;
            }

            text.Append(_content[i]);
            offsets.Add(i);
            i += doubled ? 1 : 0;
        }

        return -1;
    }

    private int AfterBlanks(int at)
    {
        while (at < _content.Length && _content[at] == ' ')
        {
            at++;
        }

        return at;
    }
}
