using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <content>Edits that leave every other byte alone.</content>
public sealed partial record PositionFile
{
    /// <summary>The text with other content on one space.</summary>
    /// <param name="board">Index in <see cref="Sheet.Boards"/>.</param>
    /// <param name="seat">0-based; 0 for a board of the table.</param>
    /// <param name="space">0-based.</param>
    /// <param name="content">What lies there afterwards.</param>
    /// <returns>Null where the file does not write that space, or where its legend has no sign for the content.</returns>
    public string? WithSpace(int board, int seat, int space, Stack content) =>
        Applied(EditOfSpace(board, seat, space, content));

    /// <summary>The text with other content in one slot or heap.</summary>
    /// <param name="place">Index in <see cref="Sheet.Places"/>.</param>
    /// <param name="seat">0-based; 0 for a place of the table.</param>
    /// <param name="slot">0-based; 0 for a place without slots.</param>
    /// <param name="content">What lies there afterwards.</param>
    /// <returns>Null where the file does not write that place.</returns>
    public string? WithPlace(int place, int seat, int slot, Stack content) =>
        Applied(EditOfPlace(place, seat, slot, content));

    /// <summary>The edit behind <see cref="WithSpace"/>: the cell, and as many blanks behind it as keep the columns aligned.</summary>
    public TextEdit? EditOfSpace(int board, int seat, int space, Stack content)
    {
        if (!Spots.TryGetValue(new PositionSpot(true, board, seat, space), out SourceSpan at))
        {
            return null;
        }

        int? owner = Sheet.Boards[board].Place.EachPlayer ? seat : null;
        if (IsInDrawing(Sheet.Boards[board].Place.Name, at))
        {
            return new CellPrinter(Sheet, owner).Print(content) is { } cell ? CellEdit(at, cell) : null;
        }

        return new TextEdit(at, new ThingPrinter(Sheet).Print(content, new ThingSpot(PlaceForm.Board, [], owner, "")));
    }

    /// <summary>The edit behind <see cref="WithPlace"/>.</summary>
    public TextEdit? EditOfPlace(int place, int seat, int slot, Stack content)
    {
        PlaceFacts facts = Sheet.Places[place];
        var spot = new ThingSpot(facts.Place.Form, facts.Holds, facts.Place.EachPlayer ? seat : null, "");
        return Spots.TryGetValue(new PositionSpot(false, place, seat, slot), out SourceSpan at)
            ? new TextEdit(at, new ThingPrinter(Sheet).Print(content, spot))
            : null;
    }

    private string? Applied(TextEdit? edit) => edit is { } known ? TextEdit.Apply(Source.Content, [known]) : null;

    // A cell of a drawing is bare words between blanks on a line of its own kind; a space of a list stands behind its name and a colon.
    private bool IsInDrawing(string board, SourceSpan at) =>
        Drawings().Any(d => d.Board.Equals(board, StringComparison.OrdinalIgnoreCase) && d.Text.Contains(at));

    private IEnumerable<(string Board, SourceSpan Text)> Drawings() =>
        Tree.Entries.Concat(Tree.Entries.Select(e => e.Value).OfType<Text.Outline.OutlineMapping>().SelectMany(m => m.Entries))
            .Where(e => e.Value is Text.Outline.OutlineScalar)
            .Select(e => (Prose.Fold(e.Key.Text), e.Value.Span));

    private TextEdit CellEdit(SourceSpan at, string cell)
    {
        string content = Source.Content;
        int next = at.End;
        while (next < content.Length && content[next] == ' ')
        {
            next++;
        }

        bool isLast = next >= content.Length || content[next] is '\n' or '\r';
        int room = next - at.Start;
        int taken = isLast ? at.Length : Math.Clamp(cell.Length + 1, at.Length, room);
        return new TextEdit(Source.Span(at.Start, taken), isLast ? cell : cell.PadRight(Math.Max(at.Length, cell.Length + (taken > at.Length ? 1 : 0))));
    }
}
