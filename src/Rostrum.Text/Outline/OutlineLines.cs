namespace Rostrum.Text.Outline;

/// <summary>The lines of an outline, up to the end of its one document.</summary>
internal sealed class OutlineLines
{
    private const int ColumnsPerTab = 2;

    private readonly List<OutlineLine> _lines = [];

    private OutlineLines()
    {
    }

    /// <summary>How many lines are to be read.</summary>
    public int Count => _lines.Count;

    /// <summary>A line by its 0-based index.</summary>
    public OutlineLine this[int index] => _lines[index];

    /// <summary>Sorts the lines of a text; tells tabs in the indentation, directives and further documents.</summary>
    public static OutlineLines Of(SourceText text, DiagnosticBag problems)
    {
        var result = new OutlineLines();
        for (int i = 0; i < text.LineCount; i++)
        {
            result._lines.Add(LineAt(text, i));
        }

        result.ReportTabs(text, problems);
        result.KeepOneDocument(text, problems);
        return result;
    }

    /// <summary>The index of the first line with content from <paramref name="index"/> on, or <see cref="Count"/>.</summary>
    public int NextContent(int index)
    {
        while (index < Count && _lines[index].Kind != LineKind.Content)
        {
            index++;
        }

        return index;
    }

    /// <summary>The index behind the last line that lies deeper than a column, from <paramref name="index"/> on; blank lines and comments
    /// between deeper lines belong to them.</summary>
    public int EndOfDeeper(int index, int column)
    {
        int end = index;
        for (int i = index; i < Count && (_lines[i].Kind != LineKind.Content || _lines[i].Column > column); i++)
        {
            end = _lines[i].Kind == LineKind.Content ? i + 1 : end;
        }

        return end;
    }

    private static OutlineLine LineAt(SourceText text, int index)
    {
        int start = text.LineStart(index);
        int end = text.LineEnd(index);
        string content = text.Content;
        start += index == 0 && end > start && content[start] == '\uFEFF' ? 1 : 0;
        int at = start;
        int column = 0;
        for (; at < end && (char.IsWhiteSpace(content[at]) || UnreadableCharacters.IsUnreadable(content, at)); at++)
        {
            column += ColumnsOf(content, at);
        }

        while (end > at && OutlineInput.IsBlank(content[end - 1]))
        {
            end--;
        }

        LineKind kind = at == end ? LineKind.Blank : content[at] == '#' ? LineKind.Comment : LineKind.Content;
        return new OutlineLine(start, at, end, column, kind);
    }

    private static int ColumnsOf(string content, int at) =>
        content[at] == '\t' ? ColumnsPerTab : UnreadableCharacters.IsUnreadable(content, at) ? 0 : 1;

    // One slip of the editor indents many lines: one message, whose fix mends them all.
    private void ReportTabs(SourceText text, DiagnosticBag problems)
    {
        var edits = new List<TextEdit>();
        foreach (OutlineLine line in _lines)
        {
            SourceSpan indentation = text.Span(line.Start, line.ContentStart - line.Start);
            if (line.Kind != LineKind.Blank && indentation.Text.Any(c => c != ' ' && char.IsWhiteSpace(c)))
            {
                edits.Add(new TextEdit(indentation, new string(' ', line.Column)));
            }
        }

        if (edits.Count > 0)
        {
            problems.Add(OutlineProblems.TabIndentation(edits[0].At, edits.Count, [.. edits]));
        }
    }

    private void KeepOneDocument(SourceText text, DiagnosticBag problems)
    {
        bool begun = false;
        for (int i = 0; i < _lines.Count; i++)
        {
            if (_lines[i].Kind != LineKind.Content)
            {
                continue;
            }

            SourceSpan words = text.Span(_lines[i].ContentStart, _lines[i].End - _lines[i].ContentStart);
            if (_lines[i].Column > 0 || !IsMarkOfDocument(words.Text, begun))
            {
                begun = true;
                continue;
            }

            if (begun)
            {
                EndDocumentAt(i, words, problems);
                return;
            }

            bool directive = words.Text[0] == '%';
            if (directive)
            {
                problems.Add(OutlineProblems.Directive(words));
            }

            begun = !directive;
            _lines[i] = _lines[i] with { Kind = LineKind.Blank };
        }
    }

    private static bool IsMarkOfDocument(string words, bool begun) =>
        words is "---" or "..." || words.StartsWith("--- #", StringComparison.Ordinal) || (!begun && words[0] == '%');

    private void EndDocumentAt(int index, SourceSpan sign, DiagnosticBag problems)
    {
        bool goesOn = NextContent(index + 1) < Count;
        _lines.RemoveRange(index, _lines.Count - index);
        if (goesOn)
        {
            problems.Add(OutlineProblems.SecondDocument(sign));
        }
    }
}
