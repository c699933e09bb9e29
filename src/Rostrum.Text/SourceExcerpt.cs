using System.Text;

namespace Rostrum.Text;

/// <summary>A line of a text as a terminal shows it, with the columns to underline.</summary>
/// <param name="Line">The line, tabs spread, cut with <c>…</c> around the words where it is too long.</param>
/// <param name="Start">0-based column of the first underlined character.</param>
/// <param name="Width">Columns to underline, at least 1.</param>
internal sealed record SourceExcerpt(string Line, int Start, int Width)
{
    private const int ColumnsBefore = 16;

    /// <summary>The first line of a span.</summary>
    /// <param name="at">What to underline; of several lines, the first.</param>
    /// <param name="columns">Columns that the line may take.</param>
    public static SourceExcerpt Of(SourceSpan at, int columns)
    {
        int index = at.Source.LineIndexOf(at.Start);
        (int lineStart, int lineEnd) = (at.Source.LineStart(index), at.Source.LineEnd(index));
        int start = Math.Min(at.Start, lineEnd);
        int end = Math.Clamp(at.End, start, lineEnd);

        // A file may be one line of megabytes: look only at what can be shown.
        int from = WholeCharacter(at.Source.Content, Math.Max(lineStart, start - (4 * columns)));
        int to = Math.Min(lineEnd, Math.Max(start, Math.Min(end, start + columns)) + (4 * columns));
        return Cut(new Spread(at.Source.Content[from..to], start - from, end - from), columns, from > lineStart, to < lineEnd);
    }

    private static int WholeCharacter(string content, int at) => at > 0 && at < content.Length && char.IsLowSurrogate(content[at]) ? at - 1 : at;

    private static SourceExcerpt Cut(Spread line, int columns, bool cutBefore, bool cutBehind)
    {
        int width = Math.Max(1, line.EndColumn - line.StartColumn);
        if (!cutBefore && !cutBehind && line.TotalColumns <= columns)
        {
            return new SourceExcerpt(line.Text(0, line.TotalColumns), line.StartColumn, width);
        }

        int left = line.StartColumn + width + 1 <= columns && !cutBefore ? 0 : Math.Max(0, line.StartColumn - ColumnsBefore);
        bool dotsBefore = left > 0 || cutBefore;
        int room = columns - (dotsBefore ? 1 : 0);
        bool dotsBehind = cutBehind || line.TotalColumns - left > room;
        string shown = line.Text(left, left + room - (dotsBehind ? 1 : 0));
        int start = line.StartColumn - left + (dotsBefore ? 1 : 0);
        string whole = $"{(dotsBefore ? "…" : "")}{shown}{(dotsBehind ? "…" : "")}";
        return new SourceExcerpt(whole, start, Math.Max(1, Math.Min(width, columns - start - 1)));
    }

    /// <summary>A line spread over columns.</summary>
    private sealed class Spread
    {
        private readonly List<(int Column, int Width, string Shown)> _characters = [];

        public Spread(string line, int start, int end)
        {
            int at = 0;
            foreach (Rune rune in line.EnumerateRunes())
            {
                StartColumn = at <= start ? TotalColumns : StartColumn;
                EndColumn = at < end ? EndColumn : Math.Min(EndColumn, TotalColumns);
                int tab = DisplayText.ToTabStop(TotalColumns);
                int width = rune.Value == '\t' ? tab : DisplayText.WidthOf(rune);
                var shown = new StringBuilder();
                DisplayText.AppendSafe(shown, rune, tab);
                _characters.Add((TotalColumns, width, shown.ToString()));
                TotalColumns += width;
                at += rune.Utf16SequenceLength;
            }

            StartColumn = at <= start ? TotalColumns : StartColumn;
            EndColumn = Math.Min(EndColumn, TotalColumns);
        }

        public int StartColumn { get; }

        public int EndColumn { get; } = int.MaxValue;

        public int TotalColumns { get; }

        public string Text(int from, int to) =>
            string.Concat(_characters.Where(c => c.Column >= from && c.Column + c.Width <= to).Select(c => c.Shown));
    }
}
