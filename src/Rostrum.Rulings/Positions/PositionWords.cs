using System.Globalization;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <summary>How what lies on a table is said in English, for derivations and slips.</summary>
/// <param name="position">Says whose turn it is, so that their places are <c>your …</c>.</param>
public sealed class PositionWords(Position position)
{
    private readonly Sheet _sheet = position.Sheet;
    private readonly SeatWords _seats = new(position.Sheet);

    /// <summary>A thing without article: <c>copper jug</c>, <c>cracked ash bowl</c>, <c>jug whose glaze is not given</c>, <c>Commission 12</c>,
    /// <c>commission whose face is not given</c>, <c>your king</c>; <c>thing of unknown kind</c> where not even the kind is given.</summary>
    public string Thing(Thing thing)
    {
        ArgumentNullException.ThrowIfNull(thing);
        if (thing.Kind is null)
        {
            return "thing of unknown kind";
        }

        string owner = thing.Owner is { } seat and not Positions.Thing.Nobody ? Whose(seat) + " " : "";
        return owner + Look(thing, plural: false);
    }

    /// <summary>A thing with its article where it has one: <c>a copper jug</c>, <c>an ash bowl</c>, <c>Commission 12</c>, <c>your king</c>.</summary>
    public string AThing(Thing thing)
    {
        string words = Thing(thing);
        bool isName = thing.Card is not null || thing.Owner is not (null or Positions.Thing.Nobody);
        return isName ? words : Prose.A(words);
    }

    /// <summary>A space by its name, with its board where the sheet has several or where it is another player's: <c>B2</c>,
    /// <c>B2 of seat 2's chamber</c>.</summary>
    /// <param name="board">Index in <see cref="Sheet.Boards"/>.</param>
    /// <param name="seat">0-based; 0 for a board of the table.</param>
    /// <param name="space">0-based.</param>
    public string Space(int board, int seat, int space)
    {
        BoardFacts facts = _sheet.Boards[board];
        string name = facts.Spaces[space].Name.Name;
        bool isPlain = _sheet.Boards.Length == 1 && (!facts.Place.EachPlayer || seat == position.Me);
        return isPlain ? name : $"{name} of {Place(facts.Place, seat)}";
    }

    /// <summary>A place: <c>your sticks</c>, <c>seat 2's sticks</c>, <c>Black's sticks</c>, <c>the display</c>.</summary>
    /// <param name="place">A board or another place.</param>
    /// <param name="seat">0-based; any number for a place of the table.</param>
    public string Place(Place place, int seat)
    {
        ArgumentNullException.ThrowIfNull(place);
        return place.EachPlayer ? $"{Whose(seat)} {place.Name}" : $"the {place.Name}";
    }

    /// <summary>What lies somewhere: <c>nothing</c>, <c>what is not given</c>, <c>4 sticks</c>, <c>an iron plate, 2 ash bowls and Commission 12</c>;
    /// equal things that follow each other are counted, lowest first.</summary>
    public string Content(Stack content)
    {
        ArgumentNullException.ThrowIfNull(content);
        if (!content.IsGiven)
        {
            return "what is not given";
        }

        return content.Things.IsEmpty ? "nothing" : Prose.And(ThingRun.Of(content.Things).Select(Told));
    }

    /// <summary>A seat: <c>you</c> for whose turn it is, else its name.</summary>
    public string Seat(int seat) => seat == position.Me ? "you" : _seats.NameOf(seat);

    private string Told(ThingRun run)
    {
        if (run.Count == 1)
        {
            return AThing(run.Thing);
        }

        string look = run.Thing.Kind is null ? "things of unknown kind" : Look(run.Thing, plural: true);
        string count = run.Count.ToString(CultureInfo.InvariantCulture);
        return run.Thing.Owner is { } seat and not Positions.Thing.Nobody ? $"{count} of {Whose(seat)} {look}" : $"{count} {look}";
    }

    private string Look(Thing thing, bool plural)
    {
        KindFacts kind = _sheet.KindOf(thing.Kind!);
        if (thing.Card is { } card)
        {
            return card.Name;
        }

        string noun = plural ? kind.Kind.Plural : kind.Kind.Name;
        return kind.Kind.Family == KindFamily.Card ? $"{noun} whose face is not given" : ThingWords.Look(kind, thing, plural);
    }

    private string Whose(int seat) => seat == position.Me ? "your" : $"{_seats.NameOf(seat)}'s";
}
