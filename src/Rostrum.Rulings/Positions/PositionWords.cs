using System.Globalization;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <summary>How what lies on a table is said in English, for derivations and slips.</summary>
/// <param name="sheet">Gives the words.</param>
/// <param name="me">The 0-based seat that is spoken to, so that its places are <c>your …</c>.</param>
public sealed class PositionWords(Sheet sheet, int me)
{
    private readonly SeatWords _seats = new(sheet);

    /// <summary>Words for the player whose turn it is.</summary>
    public PositionWords(Position position)
        : this(position?.Sheet ?? throw new ArgumentNullException(nameof(position)), position.Me)
    {
    }

    /// <summary>Words for whoever looks on and is no player: every seat is called by its name, nothing is <c>yours</c>.</summary>
    public static PositionWords ForAudience(Sheet sheet) => new(sheet, -1);

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

    /// <summary>A space by its name, with its board where another board has a space of that name or where it is another player's: <c>B2</c>,
    /// <c>B2 of seat 2's chamber</c>.</summary>
    /// <param name="board">Index in <see cref="Sheet.Boards"/>.</param>
    /// <param name="seat">0-based; 0 for a board of the table.</param>
    /// <param name="space">0-based.</param>
    public string Space(int board, int seat, int space)
    {
        BoardFacts facts = sheet.Boards[board];
        string name = facts.Spaces[space].Name.Name;
        bool isShared = sheet.Boards.Length > 1 && sheet.Boards.Any(b => !ReferenceEquals(b, facts) && b.Spaces.Any(s => s.Name.Name == name));
        bool isPlain = !isShared && (!facts.Place.EachPlayer || seat == me);
        return isPlain ? name : $"{name} of {Place(facts.Place, seat)}";
    }

    /// <summary>A place: <c>your sticks</c>, <c>seat 2's sticks</c>, <c>Black's sticks</c>, <c>the display</c>.</summary>
    /// <param name="place">A board or another place.</param>
    /// <param name="seat">0-based; any number for a place of the table.</param>
    public string Place(Place place, int seat)
    {
        ArgumentNullException.ThrowIfNull(place);
        return Owned(place.Name, place.EachPlayer ? seat : null);
    }

    /// <summary>Something of a seat or of the table: <c>your wood</c>, <c>seat 2's wood</c>, <c>the round</c>.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="seat">0-based; null for something of the table.</param>
    public string Owned(string name, int? seat) => seat is { } owner ? $"{Whose(owner)} {name}" : $"the {name}";

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
    public string Seat(int seat) => seat == me ? "you" : _seats.NameOf(seat);

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
        KindFacts kind = sheet.KindOf(thing.Kind!);
        if (thing.Card is { } card)
        {
            return card.Name;
        }

        string noun = plural ? kind.Kind.Plural : kind.Kind.Name;
        return kind.Kind.Family == KindFamily.Card ? $"{noun} whose face is not given" : ThingWords.Look(kind, thing, plural);
    }

    private string Whose(int seat) => seat == me ? "your" : $"{_seats.NameOf(seat)}'s";
}
