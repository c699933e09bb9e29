namespace Rostrum.Text;

/// <summary>One text file as the author wrote it, with the means to say where in it something stands.</summary>
/// <remarks>Offsets are 0-based, in UTF-16 code units. Lines and columns, as shown to people, are 1-based and counted in
/// characters (Unicode scalar values), as an editor shows them.</remarks>
public sealed class SourceText
{
    private readonly int[] _lineStarts;

    /// <summary>Takes the text as it is; line ends may be LF, CRLF or CR.</summary>
    /// <param name="name">The name to show in messages, such as <c>sheet.yaml</c>; relative to the game's folder.</param>
    /// <param name="content">The whole text; may be empty.</param>
    public SourceText(string name, string content)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(content);
        Name = name;
        Content = content;
        _lineStarts = FindLineStarts(content);
    }

    /// <summary>The name shown in messages.</summary>
    public string Name { get; }

    /// <summary>The text, unchanged.</summary>
    public string Content { get; }

    /// <summary>How many lines there are; an empty text has one.</summary>
    public int LineCount => _lineStarts.Length;

    /// <summary>The span from <paramref name="start"/> over <paramref name="length"/> code units, cut to the text.</summary>
    public SourceSpan Span(int start, int length)
    {
        int from = Math.Clamp(start, 0, Content.Length);
        return new SourceSpan(this, from, Math.Clamp(length, 0, Content.Length - from));
    }

    /// <summary>The span of the whole text.</summary>
    public SourceSpan Whole => new(this, 0, Content.Length);

    /// <summary>Line and column of an offset.</summary>
    /// <param name="offset">0 to the length of the text; anything beyond counts as the end.</param>
    public LinePosition PositionOf(int offset)
    {
        int at = Math.Clamp(offset, 0, Content.Length);
        int line = LineIndexOf(at);
        int column = 1;
        for (int i = _lineStarts[line]; i < at; i++)
        {
            if (!char.IsLowSurrogate(Content[i]))
            {
                column++;
            }
        }

        return new LinePosition(line + 1, column);
    }

    /// <summary>The 0-based index of the line in which an offset stands.</summary>
    public int LineIndexOf(int offset)
    {
        int found = Array.BinarySearch(_lineStarts, offset);
        return found >= 0 ? found : ~found - 1;
    }

    /// <summary>The offset at which a line begins.</summary>
    /// <param name="lineIndex">0-based, below <see cref="LineCount"/>.</param>
    public int LineStart(int lineIndex) => _lineStarts[lineIndex];

    /// <summary>The offset behind the last character of a line, its line end left out.</summary>
    /// <param name="lineIndex">0-based, below <see cref="LineCount"/>.</param>
    public int LineEnd(int lineIndex)
    {
        int end = lineIndex + 1 < _lineStarts.Length ? _lineStarts[lineIndex + 1] : Content.Length;
        while (end > _lineStarts[lineIndex] && Content[end - 1] is '\n' or '\r')
        {
            end--;
        }

        return end;
    }

    /// <summary>A line without its line end.</summary>
    /// <param name="lineIndex">0-based, below <see cref="LineCount"/>.</param>
    public string Line(int lineIndex) => Content[LineStart(lineIndex)..LineEnd(lineIndex)];

    private static int[] FindLineStarts(string content)
    {
        var starts = new List<int> { 0 };
        for (int i = 0; i < content.Length; i++)
        {
            bool loneReturn = content[i] == '\r' && (i + 1 == content.Length || content[i + 1] != '\n');
            if (content[i] == '\n' || loneReturn)
            {
                starts.Add(i + 1);
            }
        }

        return [.. starts];
    }
}
