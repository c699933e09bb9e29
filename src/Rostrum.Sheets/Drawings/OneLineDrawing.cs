using System.Collections.Immutable;

namespace Rostrum.Sheets.Drawings;

/// <summary>Reads a drawing on one line: <c>~ j . / p b</c>.</summary>
internal static class OneLineDrawing
{
    /// <summary>Cuts it into rows.</summary>
    public static DrawingText Read(DrawingInput input)
    {
        DrawnWord[] words = [.. input.Words(0, input.Text.Length)];
        if (words.Length == 0)
        {
            input.Problems.Add(DrawingProblems.Empty(input.Whole));
            return new DrawingText(input.Whole, [], []);
        }

        var rows = ImmutableArray.CreateBuilder<DrawnRow>();
        var row = new List<DrawnWord>();
        foreach (DrawnWord word in words)
        {
            if (word.Text != "/")
            {
                row.Add(word);
                continue;
            }

            AddRow(input, row, word, rows);
            row.Clear();
        }

        AddRow(input, row, words[^1], rows);
        int least = rows.Count == 0 ? 0 : rows.Min(r => r.HalfSteps);
        return new DrawingText(input.Whole, [.. rows.Select(r => r with { HalfSteps = r.HalfSteps - least })], []);
    }

    private static void AddRow(DrawingInput input, List<DrawnWord> words, DrawnWord end, ImmutableArray<DrawnRow>.Builder rows)
    {
        DrawnWord[] steps = [.. words.TakeWhile(w => w.Text.All(c => c == '~'))];
        DrawnWord[] cells = [.. words.Skip(steps.Length)];
        if (cells.Length == 0)
        {
            input.Problems.Add(DrawingProblems.EmptyRow(end.Span));
            return;
        }

        ImmutableArray<DrawnCell> drawn = [.. cells.Select((c, i) => new DrawnCell(c.Text, c.Span, i))];
        rows.Add(new DrawnRow(null, words[0].Span.Part(0, 0), steps.Sum(s => s.Text.Length), drawn));
    }
}
