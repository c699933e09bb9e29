using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Telling;

/// <content>Facts that are not given.</content>
internal sealed partial class Naming
{
    private const int MostSpaces = 6;

    /// <summary>Everything that the position does not say: facts that somebody could look at, and what positions never hold.</summary>
    public ImmutableArray<string> NotGiven(Blame blame) =>
        [.. Facts(blame.Blanks).Concat(blame.Gaps.Where(g => g.Kind == GapKind.NotGiven).Select(g => g.What)).Distinct()];

    /// <summary>Facts that are not given, each once, as things that a person could go and look at: <c>shelf B2</c>, <c>your sticks</c>. A board of which
    /// nothing is given is one of them, and so are more than six spaces of one board.</summary>
    public ImmutableArray<string> Facts(IEnumerable<Blank> blanks)
    {
        var told = ImmutableArray.CreateBuilder<string>();
        foreach (IGrouping<object, Blank> group in blanks.Distinct().GroupBy(BoardOf))
        {
            told.AddRange(group.Key is (int board, int seat) && group.Count() > MostSpaces ? [Spaces(board, seat, [.. group.Select(b => b.Spot.Part)])] : group.Select(Fact));
        }

        return [.. told.Distinct()];
    }

    // The board whose space is not given, or the fact itself.
    private static object BoardOf(Blank blank) => blank is { Aspect: Aspect.Content, Spot.Kind: SpotKind.Space } ? (blank.Spot.Place, blank.Spot.Seat) : blank;

    private string Spaces(int board, int seat, int[] spaces)
    {
        BoardFacts facts = sheet.Boards[board];
        return spaces.Length == facts.Spaces.Length
            ? Place(facts.Place, seat)
            : $"{facts.Noun.Plural} {Prose.And(facts.Spaces.Where(s => spaces.Contains(s.Name.Index)).OrderBy(s => s.Column).ThenBy(s => s.Row).Select(s => Space(board, seat, s.Name.Index)))}";
    }

    /// <summary>A fact that is not given, as something that a person could go and look at.</summary>
    private string Fact(Blank blank)
    {
        string spot = SpotName(blank.Spot);
        return blank.Aspect switch
        {
            Aspect.Content or Aspect.Mark => spot,
            Aspect.Kind => $"what the thing {Where(blank.Spot)} is",
            Aspect.Value => $"the {blank.Attribute!.Name} of the {blank.Attribute.Kind.Name} {Where(blank.Spot)}",
            Aspect.Card => $"which card lies {Where(blank.Spot)}",
            Aspect.Owner => $"whose the thing {Where(blank.Spot)} is",
            _ => $"whether the card {Where(blank.Spot)} lies face up",
        };
    }

    /// <summary>Where a thing lies: <c>B2</c>, <c>your sticks</c>, <c>the display</c> for each of its slots, <c>the supply</c>.</summary>
    /// <param name="spot">A space, a slot or heap, the supply or the box.</param>
    public string PlaceOf(Spot spot) => spot.Kind switch
    {
        SpotKind.Space => Space(spot.Place, spot.Seat, spot.Part),
        SpotKind.Slot => Place(sheet.Places[spot.Place].Place, spot.Seat),
        _ => spot.IsBox ? "the box" : "the supply",
    };

    private string SpotName(Spot spot) => spot.Kind switch
    {
        SpotKind.Space => $"{sheet.Boards[spot.Place].Noun.Name} {PlaceOf(spot)}",
        SpotKind.Slot when sheet.Places[spot.Place].Slots > 0 => Slot(spot.Place, spot.Part),
        SpotKind.Slot or SpotKind.Outside => PlaceOf(spot),
        SpotKind.Mark => MarkName(spot),
        _ => "the thing that is spoken of",
    };

    private string MarkName(Spot spot)
    {
        Mark mark = sheet.Marks[spot.Place];
        (int seat, int space) = MarkLayout.At(sheet, mark, spot.Seat);
        return mark.EachSpaceOf is { } board
            ? $"the {mark.Name} of {Space(sheet.Boards.IndexOf(sheet.Board(board)), seat, space)}"
            : _words.Owned(mark.Name, mark.EachPlayer ? seat : null);
    }

    private string Where(Spot spot) => spot.Kind == SpotKind.Space
        ? $"on {PlaceOf(spot)}"
        : spot.Kind == SpotKind.Nowhere ? "at hand" : $"in {SpotName(spot)}";
}
