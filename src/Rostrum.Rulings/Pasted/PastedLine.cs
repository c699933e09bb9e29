using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Pasted;

/// <summary>A line of a pasted text and what it is.</summary>
/// <param name="Span">Its words, blanks around them left out; never empty.</param>
internal abstract record PastedLine(SourceSpan Span)
{
    /// <summary>Every line with words, in order; fences around a quoted text are left out.</summary>
    public static IEnumerable<PastedLine> Of(Sheet sheet, SourceText text)
    {
        var seats = new SeatWords(sheet);
        HashSet<string> labels = [.. sheet.Boards.SelectMany(b => b.Rows), "|"];
        for (int i = 0; i < text.LineCount; i++)
        {
            SourceSpan span = Words(text, i);
            if (span.Length > 0 && !span.Text.StartsWith("```", StringComparison.Ordinal))
            {
                yield return LineOf(sheet, seats, labels, span);
            }
        }
    }

    // A byte order sign is no word.
    private static SourceSpan Words(SourceText text, int line)
    {
        string words = text.Line(line);
        int start = words.Length - words.TrimStart().TrimStart('\uFEFF').TrimStart().Length;
        return text.Span(text.LineStart(line) + start, words.TrimEnd().Length - start);
    }

    private static PastedLine LineOf(Sheet sheet, SeatWords seats, HashSet<string> labels, SourceSpan span)
    {
        string words = span.Text;
        string[] parts = Prose.WordsOf(words);
        return words[0] == '/' ? new Ruler(span)
            : Heading.Read(sheet, seats, span) is { } heading ? heading
            : words.Contains(':', StringComparison.Ordinal) || (parts.Length == 1 && !labels.Contains(words)) ? new Note(span)
            : new Row(span, parts[0], parts.Length - 1) { IsKnown = labels.Contains(parts[0]) && parts.Length > 1 };
    }

    /// <summary>A row of a drawing.</summary>
    /// <param name="Span">Its words.</param>
    /// <param name="Label">Its first word, which is <c>|</c> where the row has no label.</param>
    /// <param name="Cells">How many words follow.</param>
    internal sealed record Row(SourceSpan Span, string Label, int Cells) : PastedLine(Span)
    {
        /// <summary>True where some board has a row of this label.</summary>
        public required bool IsKnown { get; init; }
    }

    /// <summary>The line of column labels, which ends a drawing.</summary>
    internal sealed record Ruler(SourceSpan Span) : PastedLine(Span);

    /// <summary>Something else, such as <c>sticks: 4</c> or a name that nobody knows.</summary>
    internal sealed record Note(SourceSpan Span) : PastedLine(Span)
    {
        /// <summary>What stands before the colon.</summary>
        public SourceSpan Key => Span.Part(0, Span.Text.IndexOf(':', StringComparison.Ordinal) is var at and >= 0 ? at : Span.Length);
    }

    /// <summary>The name of a board, of a seat or of both, such as <c>seat 2, pond</c>.</summary>
    /// <param name="Span">The line.</param>
    /// <param name="Seat">From 1, perhaps beyond the table; null where none is named.</param>
    /// <param name="Board">The index of the board; null where none is named.</param>
    internal sealed record Heading(SourceSpan Span, int? Seat, int? Board) : PastedLine(Span)
    {
        private const int MostWords = 12;

        public static Heading? Read(Sheet sheet, SeatWords seats, SourceSpan span)
        {
            string[] words = Prose.WordsOf(span.Text.TrimEnd('|', ' ', '\t').TrimEnd(':').Replace(',', ' ').Replace(':', ' '));
            for (int cut = 0; cut <= words.Length && words.Length <= MostWords; cut++)
            {
                (string before, string behind) = (string.Join(' ', words[..cut]), string.Join(' ', words[cut..]));
                if ((Named(sheet, seats, before, behind, span) ?? Named(sheet, seats, behind, Without(before), span)) is { } heading)
                {
                    return heading;
                }
            }

            return null;
        }

        private static Heading? Named(Sheet sheet, SeatWords seats, string seat, string board, SourceSpan span)
        {
            int? number = seats.NumberOf(seat);
            int index = sheet.Boards.Select(b => b.Place.Name).ToList().FindIndex(n => n.Equals(board, StringComparison.OrdinalIgnoreCase));
            bool isSaid = (number is not null || seat.Length == 0) && (index >= 0 || board.Length == 0) && seat.Length + board.Length > 0;
            return isSaid ? new Heading(span, number, index < 0 ? null : index) : null;
        }

        // `pond of seat 2`
        private static string Without(string board) => board.EndsWith(" of", StringComparison.Ordinal) ? board[..^3] : board;
    }
}
