using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Formulas;

/// <content>What has no meaning on the boards of this game.</content>
internal sealed partial class Binder
{
    private Term.DirectionNamed Towards(Direction direction, Syntax at)
    {
        if (declared.Boards.Count > 0 && declared.Boards.Values.All(b => !Leads(b.Layout, direction)))
        {
            bool hasHexes = declared.Boards.Values.Any(b => b.Layout == BoardLayout.Hexes);
            problems.Add(Placed(FormulaProblems.NotOnThisBoard(at.Span, direction.Name, hasHexes ? "a board of hexes" : "a map of points",
                hasHexes ? "Hexes have an east and a west, a northeast, a northwest, a southeast and a southwest." : "Say with 'is next to' or 'across(…)' what is meant, or link the spaces under 'links'.")));
        }

        return new Term.DirectionNamed(direction, From(at));
    }

    // The hole that a name means by itself.
    private static HoleName? HoleIn(Syntax syntax) => syntax is Syntax.Name name ? name.Senses.Select(s => s.Symbol).OfType<HoleName>().FirstOrDefault() : null;

    // Nothing lies in a hole, so all that can be asked of it is what lies round it: on a board of each player, round mine.
    private Term.Listed Round(HoleName hole, Syntax at) => Round(hole, [hole.Board.EachPlayer ? new Term.Me(From(at)) : null], at);

    // A space of anyone's board may be next to the hole of that board.
    private Term.Listed RoundAnyones(HoleName hole, Syntax at) =>
        Round(hole, hole.Board.EachPlayer ? Enumerable.Range(0, declared.Players.Most ?? 1).Select(Term? (seat) => new Term.Seat(seat, From(at))) : [null], at);

    private Term.Listed Round(HoleName hole, IEnumerable<Term?> owners, Syntax at) =>
        new([.. owners.SelectMany(owner => hole.Round.Select(s => new Term.SpaceNamed(declared.Boards[hole.Board].Spaces[s].Name, owner, From(at))))], Sort.SetOf(Sort.Space), From(at));

    private static bool Leads(BoardLayout layout, Direction direction) => layout switch
    {
        BoardLayout.Squares => true,
        BoardLayout.Hexes => direction.Columns != 0,
        _ => false,
    };

    private void ReportOnPoints(Term? board, Syntax at, string what, string hint)
    {
        if (board is Term.PlaceOf { Place: var place } && declared.Boards.TryGetValue(place, out BoardFacts? facts) && facts.Layout == BoardLayout.Points)
        {
            problems.Add(Placed(FormulaProblems.NotOnThisBoard(at.Span, what, $"the map '{place.Name}'", hint)));
        }
    }
}
