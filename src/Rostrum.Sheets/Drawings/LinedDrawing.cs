using System.Collections.Immutable;

namespace Rostrum.Sheets.Drawings;

/// <summary>Reads a drawing on several lines, each of which begins with a row label, <c>|</c> or <c>/</c>.</summary>
internal static class LinedDrawing
{
    /// <summary>Cuts it into rows and the ruler.</summary>
    public static DrawingText Read(DrawingInput input)
    {
        DrawnLine[] lines = [.. LinesOf(input)];
        DrawnLine[] rows = [.. lines.Where(l => !l.IsRuler)];
        if (rows.Length == 0)
        {
            input.Problems.Add(DrawingProblems.Empty(input.Whole));
            return new DrawingText(input.Whole, [], []);
        }

        DrawnLine? ruler = lines.LastOrDefault(l => l.IsRuler);
        ReportMisplacedRulers(lines, input);
        if (ruler is not null && IsRulerAlone(rows, ruler))
        {
            input.Problems.Add(DrawingProblems.RulerOtherwise(ruler.First.Span.To(ruler.Words.LastOrDefault(ruler.First).Span), ruler.Words.Length, rows[0].Words.Length));
            return new DrawingText(input.Whole, [.. rows.Select(r => r.ToRow(0, Cells(r.Words)))], []);
        }

        return ruler is null
            ? new DrawingText(input.Whole, HexRows(rows), [])
            : new DrawingText(input.Whole, UnderRuler(rows, ruler, input), Cells(ruler.Words)) { HasRuler = true };
    }

    // All rows are equally long, and one label of a column is missing or too many: the slip is in the line of labels.
    private static bool IsRulerAlone(DrawnLine[] rows, DrawnLine ruler) =>
        rows.Length > 1 && rows.All(r => r.Words.Length == rows[0].Words.Length) && Math.Abs(rows[0].Words.Length - ruler.Words.Length) == 1;

    private static ImmutableArray<DrawnRow> UnderRuler(DrawnLine[] rows, DrawnLine ruler, DrawingInput input)
    {
        var columns = ruler.Words.Select((w, i) => (Place: w.Start - ruler.Start, Column: i)).ToDictionary(p => p.Place, p => p.Column);
        return [.. rows.Select(r => UnderRuler(r, columns, input))];
    }

    private static IEnumerable<DrawnLine> LinesOf(DrawingInput input)
    {
        (int Start, DrawnWord[] Words)[] lines = [.. Stretches(input.Text).Select(s => (s.Start, (DrawnWord[])[.. input.Words(s.Start, s.End)]))];
        int margin = input.KeepsMargin ? 0 : MarginOf([.. lines.Select(l => l.Words[0].Start - l.Start)]);
        for (int i = 0; i < lines.Length; i++)
        {
            (int start, DrawnWord[] words) = lines[i];
            int indent = input.KeepsMargin ? margin : words[0].Start - start;
            if (indent < margin)
            {
                input.Problems.Add(DrawingProblems.LineBeginsEarly(words[0].Span, margin - indent));
            }
            else if (indent > margin)
            {
                input.Problems.Add(DrawingProblems.LineBeginsWithBlank(words[0].Span, i == 0));
            }

            yield return LineOf(input, words, fits: indent <= margin);
        }
    }

    // Where most lines begin; the least place where no two of three agree.
    private static int MarginOf(int[] indents)
    {
        int usual = indents.GroupBy(i => i).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).Select(g => g.Key).FirstOrDefault();
        return 2 * indents.Count(i => i == usual) > indents.Length ? usual : indents.DefaultIfEmpty(0).Min();
    }

    private static IEnumerable<(int Start, int End)> Stretches(string text)
    {
        int start = 0;
        while (start <= text.Length)
        {
            int end = text.AsSpan(start).IndexOfAny('\n', '\r');
            end = end < 0 ? text.Length : start + end;
            if (!string.IsNullOrWhiteSpace(text[start..end]))
            {
                yield return (start, end);
            }

            start = end + 1;
        }
    }

    // A line that begins too far in is read like the others where a label or a sign stands first; else its row has no label.
    private static DrawnLine LineOf(DrawingInput input, DrawnWord[] words, bool fits)
    {
        int start = words[0].Start;
        char sign = input.Text[start];
        if (sign is '/' or '|')
        {
            return new DrawnLine(start, null, words[0], [.. input.Words(start + 1, words[^1].Start + words[^1].Text.Length)], IsRuler: sign == '/');
        }

        return fits || words[0].Text.All(char.IsLetterOrDigit)
            ? new DrawnLine(start, words[0].Text, words[0], words[1..], IsRuler: false)
            : new DrawnLine(start, null, words[0], words, IsRuler: false);
    }

    private static void ReportMisplacedRulers(DrawnLine[] lines, DrawingInput input)
    {
        foreach (DrawnLine line in lines[..^1])
        {
            if (line.IsRuler)
            {
                input.Problems.Add(DrawingProblems.RulerNotLast(line.First.Span));
            }
        }
    }

    private static ImmutableArray<DrawnCell> Cells(IEnumerable<DrawnWord> words) =>
        [.. words.Select((w, i) => new DrawnCell(w.Text, w.Span, i))];

    // A full row goes by order, so that cells may be wider than their labels; a shorter one goes by place.
    private static DrawnRow UnderRuler(DrawnLine line, Dictionary<int, int> columns, DrawingInput input)
    {
        if (line.Words.Length == columns.Count)
        {
            return line.ToRow(0, Cells(line.Words));
        }

        ImmutableArray<DrawnCell> byPlace =
            [.. line.Words.Select(w => new DrawnCell(w.Text, w.Span, columns.GetValueOrDefault(w.Start - line.Start, -1)))];
        if (line.Words.Length < columns.Count && byPlace.All(c => c.Column >= 0))
        {
            return line.ToRow(0, byPlace);
        }

        input.Problems.Add(DrawingProblems.Ragged(line.First.Span.To(line.Words.LastOrDefault(line.First).Span), line.Words.Length, columns.Count));
        return line.ToRow(0, Cells(line.Words));
    }

    // Half a step is half of the least distance between two cells of one row.
    private static ImmutableArray<DrawnRow> HexRows(DrawnLine[] lines)
    {
        int pitch = lines.SelectMany(l => l.Words.Zip(l.Words.Skip(1), (a, b) => b.Start - a.Start)).DefaultIfEmpty(2).Min();
        int left = lines.Where(l => l.Words.Length > 0).Select(l => l.Indent).DefaultIfEmpty(0).Min();
        return [.. lines.Select(l => l.ToRow(l.Words.Length == 0 ? 0 : ((2 * (l.Indent - left)) + (pitch / 2)) / pitch, Cells(l.Words)))];
    }

    private sealed record DrawnLine(int Start, string? Label, DrawnWord First, DrawnWord[] Words, bool IsRuler)
    {
        public int Indent => Words[0].Start - Start;

        public DrawnRow ToRow(int halfSteps, ImmutableArray<DrawnCell> cells) =>
            new(Label, Label is null ? First.Span.Part(0, 0) : First.Span, halfSteps, cells);
    }
}
