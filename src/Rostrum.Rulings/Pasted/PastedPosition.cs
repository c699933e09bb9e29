using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Pasted;

/// <summary>A text that somebody pastes for a position: only drawings, perhaps below the names of their boards and seats, perhaps with lines such as <c>sticks: 4</c>.</summary>
/// <remarks>What it does not draw is not given. A margin, tabs and blanks at the end of lines mean nothing.</remarks>
public sealed class PastedPosition
{
    // Nobody pastes more by hand.
    private const int LongestText = 64 * 1024;
    private const int MostNotes = 100;

    private static readonly ImmutableArray<string> OfFiles = ["variants", "expect"];

    private readonly Sheet _sheet;
    private readonly SourceText _text;
    private readonly OutlineMapping? _outline;
    private readonly List<PastedDrawing> _drawings = [];
    private readonly List<(int? Seat, PastedLine.Note Note)> _notes = [];

    private PastedPosition(Sheet sheet, SourceText text, OutlineMapping? outline) => (_sheet, _text, _outline) = (sheet, text, outline);

    /// <summary>The text, where it has to be understood as a pasted one.</summary>
    /// <param name="sheet">Gives boards and seats.</param>
    /// <param name="text">The text.</param>
    /// <returns>Null where it is written as the file of a position is, and where it draws nothing.</returns>
    public static PastedPosition? Of(Sheet sheet, SourceText text)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(text);
        var problems = new DiagnosticBag();
        OutlineMapping outline = OutlineReader.Read(text, PositionDialect.Outline, problems);
        if (!problems.HasErrors && !PastedTree.Boards(sheet, outline).Any(IsLoose))
        {
            return IsWithoutSeat(sheet, outline) ? new PastedPosition(sheet, text, outline) : null;
        }

        PastedLine[] lines = text.Content.Length > LongestText || sheet.Boards.IsEmpty ? [] : [.. PastedLine.Of(sheet, text)];
        PastedLine.Note[] notes = [.. lines.OfType<PastedLine.Note>()];
        return lines.Any(l => l is PastedLine.Ruler or PastedLine.Row { IsKnown: true }) && notes.Length <= MostNotes && !notes.Any(n => OfFiles.Contains(Prose.Fold(n.Key.Text)))
            ? new PastedPosition(sheet, text, null).Sorted(lines)
            : null;
    }

    /// <summary>A drawing of which nobody can say which board it is, and the boards that it may be; null where there is none.</summary>
    /// <param name="board">The board that the user names for drawings without a name; null where he names none.</param>
    public (SourceSpan At, ImmutableArray<string> Boards)? Unclear(string? board) => board is null && _drawings.Find(d => d.Boards(_sheet).Length > 1) is { } drawing
        ? (drawing.At, [.. drawing.Boards(_sheet).Select(b => _sheet.Boards[b].Place.Name)])
        : null;

    /// <summary>Reads it.</summary>
    /// <param name="seat">The seat whose board is drawn where the text does not say; from 1.</param>
    /// <param name="board">The board that drawings without a name are; null where the text says enough (<see cref="Unclear"/>).</param>
    /// <param name="problems">Receives what is wrong.</param>
    public PositionFile Read(int seat, string? board, DiagnosticBag problems)
    {
        ArgumentNullException.ThrowIfNull(problems);
        var about = new DiagnosticBag();
        return PositionReader.ReadPart(_sheet, _text, new PastedTree(_sheet, _text, seat).Of(Parts(board), Outlines(about)), about, problems);
    }

    // `pond: |` at the margin: everything is there but the seat.
    private static bool IsWithoutSeat(Sheet sheet, OutlineMapping outline)
    {
        var seats = new SeatWords(sheet);
        return outline.Entries.All(e => seats.NumberOf(e.Key.Text) is null) && outline.Entries.Any(e => PastedTree.IsOfSeat(sheet, e));
    }

    // Several lines behind `pond:`, where a file has `pond: |`.
    private static bool IsLoose(OutlineNode board) => board is OutlineScalar { Style: not OutlineStyle.Lines } text && text.Text.Contains('\n', StringComparison.Ordinal);

    private PastedPosition Sorted(PastedLine[] lines)
    {
        (int? seat, int? board) = ((int?)null, (int?)null);
        var drawing = new List<PastedLine>();
        foreach (PastedLine line in lines)
        {
            if (line is PastedLine.Row or PastedLine.Ruler)
            {
                drawing.Add(line);
            }

            if (line is not PastedLine.Row && (line is not PastedLine.Ruler || drawing.Count > 1))
            {
                Close(drawing, seat, board);
            }

            (seat, board) = line is PastedLine.Heading heading ? (heading.Seat ?? (heading.Board is null ? null : seat), heading.Board) : (seat, board);
            if (line is PastedLine.Note note)
            {
                _notes.Add((seat, note));
            }
        }

        Close(drawing, seat, board);
        return this;
    }

    private void Close(List<PastedLine> drawing, int? seat, int? board)
    {
        if (drawing.Count > 0)
        {
            _drawings.Add(new PastedDrawing(seat, board, [.. drawing]));
            drawing.Clear();
        }
    }

    private IEnumerable<(int? Seat, OutlineEntry Entry)> Parts(string? board)
    {
        int wanted = _sheet.Boards.Select(b => b.Place.Name).ToList().FindIndex(n => n.Equals(board, StringComparison.OrdinalIgnoreCase));
        return _drawings.Select(d => (d.Seat, new OutlineEntry(PastedTree.Key(d.At.Part(0, 0), NameOf(d.Named is null && wanted >= 0 ? wanted : d.Boards(_sheet)[0])), d.ToField())));
    }

    private string NameOf(int board) => _sheet.Boards[board].Place.Name;

    // Everything but the notes of one seat is blanked out, so that they stand where they stood.
    private IEnumerable<(int? Seat, OutlineEntry Entry)> Outlines(DiagnosticBag about)
    {
        if (_outline is not null)
        {
            return _outline.Entries.Select(e => ((int?)null, e));
        }

        return _notes.SelectMany(n => Entries(n.Note, about).Select(e => (n.Seat, e)));
    }

    private IEnumerable<OutlineEntry> Entries(PastedLine.Note note, DiagnosticBag about)
    {
        if (note.Key.Length == note.Span.Length)
        {
            return [new OutlineEntry(PastedTree.Key(note.Span, note.Span.Text), new OutlineEmpty(note.Span.Part(note.Span.Length, 0)))];
        }

        string blank = new([.. _text.Content.Select((c, i) => (i >= note.Span.Start && i < note.Span.End) || c is '\n' or '\r' ? c : ' ')]);
        return OutlineReader.Read(new SourceText(_text.Name, blank), PositionDialect.Outline, about).Entries;
    }
}
