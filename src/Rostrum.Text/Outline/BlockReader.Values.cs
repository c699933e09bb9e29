namespace Rostrum.Text.Outline;

/// <summary>What stands behind a colon or a dash.</summary>
internal sealed partial class BlockReader
{
    // The cursor stands behind the colon; the owner's column bounds what belongs to it.
    private OutlineNode ReadValue(string key, int column, int depth)
    {
        int colonEnd = _at;
        _at = _input.SkipBlanks(_at, Line.End);
        if (_input.Dialect.ProseKeys.Contains(key) && !OpensKeys(column))
        {
            return ReadProse(colonEnd, column);
        }

        if (_at >= Line.End || _input.StartsComment(_at))
        {
            return ReadNested(colonEnd, column, depth);
        }

        if (!AtDash())
        {
            return ReadText(column, depth);
        }

        OutlineScalar text = ReadBare(column);
        _input.Problems.Add(OutlineProblems.ItemOnKeyLine(text.Span));
        return text;
    }

    // A prose key may also be the name of something (a source called 'note'): then its value opens with a known key.
    private bool OpensKeys(int column)
    {
        if (_at < Line.End)
        {
            return BracesOpenKeys(_input, _at, Line.End);
        }

        int next = _input.Lines.NextContent(_line + 1);
        return next < _input.Lines.Count && _input.Lines[next].Column > column
            && _input.KnownKeyColon(_input.Lines[next].ContentStart, _input.Lines[next].End) is var colon and >= 0
            && _input.EndsKey(colon, _input.Lines[next].End);
    }

    /// <summary>True where a brace opens at an offset and a known key stands behind it.</summary>
    internal static bool BracesOpenKeys(OutlineInput input, int at, int end) =>
        input.Content[at] == '{' && input.KnownKeyColon(input.SkipBlanks(at + 1, end), end) >= 0;

    private OutlineNode ReadNested(int colonEnd, int column, int depth)
    {
        MoveTo(_line + 1);
        if (HasLine && Column > column)
        {
            return ReadBlock(column, depth + 1);
        }

        bool list = HasLine && Column == column && AtDash();
        return list ? ReadSequence(column, column - 1, besideKey: true, depth + 1) : new OutlineEmpty(_input.Text.Span(colonEnd, 0));
    }

    // A text in place of a list item or on the line below its key; it may turn out to be a key that lacks its colon.
    private OutlineNode ReadItemText(int parent, int depth)
    {
        (int line, int at, int column) = (_line, _at, Column);
        OutlineNode node = ReadText(parent, depth);
        bool deeperEntries = node is OutlineScalar { Style: OutlineStyle.Plain or OutlineStyle.Quoted } && HasLine && Column > column
            && _line == _input.Lines.NextContent(line + 1) && BeginsEntry(_line);
        if (!deeperEntries)
        {
            return node;
        }

        _input.Problems.Add(OutlineProblems.MissingColon(node.Span, FixGrade.Choice));
        var entries = new EntryCollector(_input.Problems);
        entries.Add((OutlineScalar)node, ReadBlock(column, depth + 1));
        return entries.ToMapping(_input.Text, at);
    }

    private OutlineNode ReadText(int parent, int depth) => _input.Content[_at] switch
    {
        '{' or '[' => ReadFlow(parent, depth),
        '"' or '\'' => ReadQuoted(parent),
        '|' when IsBlockSign() => ReadLines(parent),
        '>' when IsBlockSign() => ReadProse(_at, parent),
        _ => ReadCheckedBare(parent),
    };

    private OutlineNode ReadFlow(int parent, int depth)
    {
        int first = _line;
        int last = _input.Lines.EndOfDeeper(_line + 1, parent);
        last = ClosesAt(last, parent) ? last + 1 : last;
        var flow = new FlowReader(_input, _at, Math.Max(Line.End, _input.Lines[last - 1].End));
        OutlineNode node = flow.Read(depth);
        int line = _input.Text.LineIndexOf(flow.Position);
        CheckNothingBehind(flow.Position, line, node.Span);
        MoveTo(Math.Max(line, first) + 1);
        return node;
    }

    // The closing bracket of several lines may stand at the column of their key.
    private bool ClosesAt(int line, int column)
    {
        int next = _input.Lines.NextContent(line);
        return next == line && next < _input.Lines.Count && _input.Lines[next].Column == column
            && _input.Content[_input.Lines[next].ContentStart] is '}' or ']';
    }

    private void CheckNothingBehind(int position, int line, SourceSpan closed)
    {
        int end = _input.Lines[line].End;
        int rest = _input.SkipBlanks(position, end);
        if (rest < end && !_input.StartsComment(rest))
        {
            _input.Problems.Add(OutlineProblems.TextAfterClosing(_input.Between(rest, end), closed));
        }
    }

    private OutlineScalar ReadQuoted(int parent)
    {
        int open = _at;
        int last = _input.Lines.EndOfDeeper(_line + 1, parent) - 1;
        QuotedText? quoted = QuotedText.Read(_input.Content, open, Math.Max(Line.End, _input.Lines[last].End));
        if (quoted is null)
        {
            _input.Problems.Add(OutlineProblems.MissingQuote(_input.Between(open, open + 1)));
            return ReadBare(parent);
        }

        OutlineScalar text = quoted.ToScalar(_input.Text, open);
        ReportEscapes(_input, quoted);
        int line = _input.Text.LineIndexOf(quoted.End - 1);
        CheckNothingBehind(quoted.End, line, text.Span);
        MoveTo(line + 1);
        return text;
    }

    /// <summary>Tells backslashes that mean nothing.</summary>
    internal static void ReportEscapes(OutlineInput input, QuotedText quoted)
    {
        foreach (int at in quoted.BadEscapes)
        {
            input.Problems.Add(OutlineProblems.BadEscape(input.Text.Span(at, 2)));
        }
    }
}
