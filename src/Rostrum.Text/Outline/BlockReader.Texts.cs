using System.Collections.Immutable;
using System.Text;

namespace Rostrum.Text.Outline;

/// <summary>Bare texts, prose and drawings, which may go over several lines.</summary>
internal sealed partial class BlockReader
{
    private OutlineScalar ReadCheckedBare(int parent)
    {
        (int start, int end) = (_at, Line.End);
        OutlineScalar text = ReadBare(parent);
        OwnedSigns.Check(text, _input.Problems);
        if (_keys.ColonOnLine(start, end) is var colon and >= 0)
        {
            Fix fix = OutlineQuotes.QuoteFix(text.Span, FixGrade.Choice);
            _input.Problems.Add(OutlineProblems.SecondColon(_input.Between(colon, colon + 1), text.Text, fix));
        }

        return text;
    }

    // Deeper lines go on with the text, unless they begin something of their own; comments are cut out.
    private OutlineScalar ReadBare(int parent)
    {
        var pieces = new TextPieces(_input);
        int from = _at;
        int line = _line;
        while (true)
        {
            pieces.AddLine(from, _input.Lines[line].End);
            int next = _input.Lines.NextContent(line + 1);
            if (next >= _input.Lines.Count || _input.Lines[next].Column <= parent || BeginsEntry(next))
            {
                break;
            }

            pieces.HasGap |= next > line + 1 && HasComment(line + 1, next);
            (line, from) = (next, _input.Lines[next].ContentStart);
        }

        MoveTo(line + 1);
        return pieces.ToScalar();
    }

    private bool HasComment(int from, int to)
    {
        for (int i = from; i < to; i++)
        {
            if (_input.Lines[i].Kind == LineKind.Comment)
            {
                return true;
            }
        }

        return false;
    }

    private OutlineNode ReadProse(int colonEnd, int column)
    {
        int first = _line;
        int last = EndOfText(_line + 1, column) - 1;
        int start = IsBlockSign() ? StartBelow(last) : _at;
        int end = _input.Lines[last].End;
        ReportKeysInside(first, last, column, start);
        MoveTo(last + 1);
        return start >= end ? new OutlineEmpty(_input.Text.Span(colonEnd, 0)) : ProseText.Read(_input, start, end);
    }

    // Prose and drawings keep every deeper line, '#' included; blank lines at the end do not count.
    private int EndOfText(int line, int column)
    {
        int end = line;
        for (int i = line; i < _input.Lines.Count && (_input.Lines[i].Kind == LineKind.Blank || _input.Lines[i].Column > column); i++)
        {
            end = _input.Lines[i].Kind == LineKind.Blank ? end : i + 1;
        }

        return end;
    }

    private bool IsBlockSign() => _at < Line.End && _input.Between(_at, Line.End).Text is "|" or ">" or "|-" or ">-" or "|+" or ">+";

    private int StartBelow(int last)
    {
        int i = _line + 1;
        while (i < last && _input.Lines[i].Kind == LineKind.Blank)
        {
            i++;
        }

        return i <= last ? _input.Lines[i].ContentStart : Line.End;
    }

    private void ReportKeysInside(int first, int last, int column, int start)
    {
        for (int i = first + 1; i <= last; i++)
        {
            OutlineLine line = _input.Lines[i];
            int colon = line.Kind == LineKind.Content && line.ContentStart > start ? _input.KnownKeyColon(line.ContentStart, line.End) : -1;
            if (colon >= 0 && line.Column > column && _input.EndsKey(colon, line.End))
            {
                _input.Problems.Add(OutlineProblems.KeyInsideProse(_input.Between(line.ContentStart, colon), _input.Between(start, _input.Lines[first].End)));
            }
        }
    }

    private OutlineScalar ReadLines(int parent)
    {
        int sign = _at;
        int first = _line + 1;
        int last = EndOfText(first, parent) - 1;
        while (first < last && _input.Lines[first].Kind == LineKind.Blank)
        {
            first++;
        }

        OutlineScalar drawing = CutMargin(sign, first, last);
        MoveTo(last + 1);
        return drawing;
    }

    private OutlineScalar CutMargin(int sign, int first, int last)
    {
        int margin = int.MaxValue;
        for (int i = first; i <= last; i++)
        {
            OutlineLine line = _input.Lines[i];
            margin = line.Kind == LineKind.Blank ? margin : Math.Min(margin, line.ContentStart - line.Start);
        }

        var text = new StringBuilder();
        var offsets = ImmutableArray.CreateBuilder<int>();
        for (int i = first; i <= last; i++)
        {
            OutlineLine line = _input.Lines[i];
            for (int at = Math.Min(line.Start + margin, line.End); at < line.End; at++)
            {
                text.Append(_input.Content[at]);
                offsets.Add(at);
            }

            offsets.Add(line.End);
            text.Append('\n');
        }

        int end = first <= last ? _input.Lines[last].End : sign + 1;
        string drawing = text.Length == 0 ? "" : text.ToString(0, text.Length - 1);
        int start = offsets.Count == 0 ? end : offsets[0];
        return new OutlineScalar(_input.Between(sign, end), drawing, OutlineStyle.Lines, start) { Offsets = offsets.ToImmutable() };
    }
}
