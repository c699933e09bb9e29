using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Pictures.Positions;

/// <summary>Turns a board of a position into the values that the painter draws.</summary>
internal static class BoardDrawer
{
    /// <summary>The board of a seat, or of the table.</summary>
    /// <param name="position">The position.</param>
    /// <param name="board">Its index in the sheet.</param>
    /// <param name="seat">The 0-based seat; 0 for the table.</param>
    /// <param name="title">Written above it; null for nothing.</param>
    /// <param name="looks">How things look.</param>
    public static BoardPicture Draw(Position position, int board, int seat, string? title, ThingLooks looks)
    {
        BoardFacts facts = position.Sheet.Boards[board];
        BoardForm form = FormOf(facts);

        // Things are drawn from the back to the front, so that those before cover those behind; a tray is told from its lowest row.
        ImmutableArray<BoardSpace> order = form == BoardForm.Squares ? [.. facts.Spaces.OrderBy(s => s.Row).ThenBy(s => s.Column)] : facts.Spaces;
        var places = order.Select((s, i) => (s.Name.Index, i)).ToDictionary(s => s.Index, s => s.i);
        return new BoardPicture($"board{board}-{seat}", title, form, [.. order.Select(s => Space(facts, s) with { Content = Cell(position.At(board, seat, s.Name.Index), looks) })])
        {
            Columns = [.. facts.Columns],
            Rows = [.. facts.Rows],
            Holes = form == BoardForm.Hexes ? [.. facts.Holes.Select(h => new HolePicture(h.Name, h.Column, h.Row))] : [],
            Ways = [.. facts.Ways.Select(w => (ValueList<int>)[.. w.Select(s => places[s])])],
            Areas = [.. Areas(facts, places)],
            Bodies = [.. Bodies(position.Boards[board][seat], places, looks)],
            NumberNames = [.. facts.Values.Select(v => v.Name)],
        };
    }

    // A ring and a track are one row of spaces that are called by their columns alone.
    private static BoardForm FormOf(BoardFacts facts) => facts.Layout switch
    {
        BoardLayout.Hexes => BoardForm.Hexes,
        BoardLayout.Points => BoardForm.Map,
        _ when facts.Rows.Length == 1 && !facts.IsUpright && facts.Spaces.All(s => s.Name.Name == facts.Columns[s.Column]) => facts.Wraps ? BoardForm.Ring : BoardForm.Track,
        _ => BoardForm.Squares,
    };

    private static SpacePicture Space(BoardFacts facts, BoardSpace space) => new(space.Name.Name, space.Column, space.Row, CellPicture.Empty)
    {
        Numbers = [.. facts.Values.Select(v => v.On[space.Name.Index])],
        Spot = facts.Spots.IsEmpty ? null : (facts.Spots[space.Name.Index].Across, facts.Spots[space.Name.Index].Up),
    };

    // Of pieces larger than a space, those that lie alone.
    private static IEnumerable<BodyPicture> Bodies(ImmutableArray<Stack> stacks, Dictionary<int, int> places, ThingLooks looks) =>
        from space in Enumerable.Range(0, stacks.Length)
        where stacks[space].Things is [{ Covers: [var first, ..] }] && first == space
        let piece = stacks[space].Things[0]
        where piece.Covers.All(c => stacks[c].Things.Length == 1)
        select new BodyPicture(looks.Of(piece), [.. piece.Covers.Select(c => places[c])]);

    // With several families of areas a label says which of them it means.
    private static IEnumerable<AreaPicture> Areas(BoardFacts facts, Dictionary<int, int> places)
    {
        LineFamily[] families = [.. facts.Families.Where(f => f.Form == LineForm.Areas)];
        return from family in families
               from area in family.Lines
               let says = $"{family.Name} {area.Label}"
               select new AreaPicture(families.Length > 1 ? says : area.Label, says, [.. area.Spaces.Select(s => places[s])]);
    }

    private static CellPicture Cell(Stack stack, ThingLooks looks) => stack switch
    {
        { IsGiven: false } => CellPicture.Holding(ThingLooks.NotGiven("not given")),
        { Things.IsEmpty: true } => CellPicture.Empty,
        _ => CellPicture.Holding([.. stack.Things.Select(looks.Of)]),
    };
}
