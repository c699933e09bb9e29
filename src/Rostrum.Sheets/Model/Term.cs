using System.Collections.Immutable;

namespace Rostrum.Sheets.Model;

/// <summary>A node of the typed tree: the one meaning of a formula. Closed: the classes below and no more.</summary>
/// <remarks>Nobody after the sheet looks up a name; every node knows its sort and where its words stand.</remarks>
/// <param name="Sort">What it gives.</param>
/// <param name="Origin">Where its words stand.</param>
public abstract record Term(Sort Sort, Origin Origin)
{
    /// <summary>A number that stands in the formula.</summary>
    public sealed record Number(long Amount, Origin Origin) : Term(Sort.Number, Origin);

    /// <summary><c>yes</c> or <c>no</c> as words.</summary>
    public sealed record Truth(bool IsYes, Origin Origin) : Term(Sort.Truth, Origin);

    /// <summary>The word <c>nothing</c>.</summary>
    public sealed record Nothing(Origin Origin) : Term(Sort.Nothing, Origin);

    /// <summary>A value of an attribute, such as <c>copper</c> after <c>is</c> or as an argument.</summary>
    public sealed record Value(AttributeValue Which, Origin Origin) : Term(Sort.ValueOf(Which.Attribute), Origin);

    /// <summary>A look as a value of its own.</summary>
    public sealed record LookOf(Look Look, Origin Origin) : Term(Sort.Look, Origin);

    /// <summary>Words as a value.</summary>
    public sealed record Text(string Words, Origin Origin) : Term(Sort.Text, Origin)
    {
        /// <summary>The steps that the words say, in a column of steps; empty for other words.</summary>
        public ImmutableArray<Step> Steps { get; init; } = [];
    }

    /// <summary>A drawing as a value.</summary>
    public sealed record Drawn(Drawing Drawing, Origin Origin) : Term(Sort.Drawing, Origin);

    /// <summary>A single card by its name.</summary>
    public sealed record CardNamed(Card Card, Origin Origin) : Term(Sort.ThingOf(Card.Kind), Origin);

    /// <summary>A named space; of a board of each player, the acting player's.</summary>
    public sealed record SpaceNamed(SpaceName Space, Term? Owner, Origin Origin) : Term(Sort.Space, Origin);

    /// <summary>A direction by its name.</summary>
    public sealed record DirectionNamed(Direction Direction, Origin Origin) : Term(Sort.Direction, Origin);

    /// <summary>A settable constant of the sheet.</summary>
    public sealed record Constant(NumberConstant Which, Origin Origin) : Term(Sort.Number, Origin);

    /// <summary>The player who acts or is counted.</summary>
    public sealed record Me(Origin Origin) : Term(Sort.Player, Origin);

    /// <summary>A letter, <c>it</c>, a choice of an action or a subject of a word.</summary>
    /// <param name="Slot">0-based position in the frame.</param>
    /// <param name="Name">As written, for messages and derivations.</param>
    /// <param name="Sort">What it stands for.</param>
    /// <param name="Origin">Where it was written.</param>
    public sealed record Variable(int Slot, string Name, Sort Sort, Origin Origin) : Term(Sort, Origin);

    /// <summary>A place; of a place of each player, that of <paramref name="Owner"/>.</summary>
    public sealed record PlaceOf(Place Place, Term? Owner, Origin Origin) : Term(Sort.Place, Origin);

    /// <summary>A mark of the table, of a player or of a space.</summary>
    /// <param name="Mark">The mark.</param>
    /// <param name="Owner">A player for a mark of each player, a space for one of each space, see <see cref="Model.Mark.EachSpaceOf"/>; null for one of the table.</param>
    /// <param name="Origin">Where its words stand.</param>
    public sealed record MarkOf(Mark Mark, Term? Owner, Origin Origin) : Term(Mark.Sort, Origin);

    /// <summary>An operation of the table with its arguments.</summary>
    /// <param name="Operation">Which one.</param>
    /// <param name="Pick">What it goes through, for the operations that go through something.</param>
    /// <param name="Arguments">In the order of <see cref="Operation.Parameters"/>, the pick left out; an optional one not given is null.</param>
    /// <param name="Sort">What it gives here.</param>
    /// <param name="Origin">Where its words stand.</param>
    public sealed record Apply(Operation Operation, Pick? Pick, ImmutableArray<Term?> Arguments, Sort Sort, Origin Origin) : Term(Sort, Origin)
    {
        /// <summary>An argument that the operation requires.</summary>
        public Term Argument(int at) => Arguments[at] ?? throw new InvalidOperationException($"'{Operation.Name}' lacks argument {at}.");
    }

    /// <summary>A property of a thing: an attribute, a state, the face of a die.</summary>
    public sealed record Property(Attribute Attribute, Term Subject, Sort Sort, Origin Origin) : Term(Sort, Origin);

    /// <summary>A cell of a card.</summary>
    public sealed record CardCell(Column Column, Term Subject, Sort Sort, Origin Origin) : Term(Sort, Origin);

    /// <summary>A line of a family: of a space (the bay it stands in), or by its label.</summary>
    /// <param name="Family">Which family.</param>
    /// <param name="Label">The 0-based number of a labelled line; null for the line of a space.</param>
    /// <param name="Subject">A space, or for a labelled line a board.</param>
    /// <param name="Origin">Where its words stand.</param>
    public sealed record LineOf(LineFamily Family, int? Label, Term Subject, Origin Origin) : Term(Sort.Line, Origin);

    /// <summary>All lines of a family of a board, in order.</summary>
    public sealed record LinesOf(LineFamily Family, Term Board, Origin Origin) : Term(Sort.ListOf(Sort.Line), Origin);

    /// <summary>The region of a player: a space where it is always one, else a set of spaces.</summary>
    public sealed record RegionOf(Region Region, Term Player, Origin Origin) : Term(Region.IsSpace ? Sort.Space : Sort.SetOf(Sort.Space), Origin);

    /// <summary>The space that a link leads to.</summary>
    public sealed record LinkOf(Link Link, Term Space, Origin Origin) : Term(Sort.Space, Origin);

    /// <summary>The number printed on a space.</summary>
    public sealed record PrintedOn(PrintedValue Which, Term Space, Origin Origin) : Term(Sort.Number, Origin);

    /// <summary>Things or spaces of a look in something that holds them.</summary>
    /// <param name="Look">Which ones.</param>
    /// <param name="Container">A place, a line, a space, a slot or a set of them.</param>
    /// <param name="Sort">A set of things, spaces or slots.</param>
    /// <param name="Origin">Where its words stand.</param>
    public sealed record Within(Look Look, Term Container, Sort Sort, Origin Origin) : Term(Sort, Origin);

    /// <summary>The only thing of a look there.</summary>
    public sealed record TheOnly(Within All, Sort Sort, Origin Origin) : Term(Sort, Origin);

    /// <summary>A test of a thing, a space or a value against looks: yes where one of them fits.</summary>
    /// <param name="Subject">What is tested.</param>
    /// <param name="Looks">At least one.</param>
    /// <param name="AsksTop">True for <c>shows</c>: the top thing of a space is asked.</param>
    /// <param name="Origin">Where its words stand.</param>
    public sealed record Matches(Term Subject, ImmutableArray<Look> Looks, bool AsksTop, Origin Origin) : Term(Sort.Truth, Origin);

    /// <summary>A word of the sheet with its subjects.</summary>
    public sealed record Call(Word Word, ImmutableArray<Term> Subjects, Sort Sort, Origin Origin) : Term(Sort, Origin);

    /// <summary>A value of a table.</summary>
    public sealed record LookUp(Table Table, Term Key, Sort Sort, Origin Origin) : Term(Sort, Origin);

    /// <summary>Several formulas as a list.</summary>
    public sealed record Listed(ImmutableArray<Term> Items, Sort Sort, Origin Origin) : Term(Sort, Origin);

    /// <summary>One of two, by a truth.</summary>
    public sealed record If(Term Condition, Term Then, Term Otherwise, Sort Sort, Origin Origin) : Term(Sort, Origin);

    /// <summary>The elements of a set or list for which a truth holds.</summary>
    public sealed record Filtered(Pick Through, Sort Sort, Origin Origin) : Term(Sort, Origin);

    /// <summary>A truth about two elements, for operations that join them.</summary>
    /// <param name="First">The frame position of the first.</param>
    /// <param name="Second">The frame position of the second.</param>
    /// <param name="Holds">What must hold of the two.</param>
    /// <param name="Origin">Where its name stands.</param>
    public sealed record Joining(int First, int Second, Term Holds, Origin Origin) : Term(Sort.Truth, Origin);

    /// <summary>A seat by its number, 0-based.</summary>
    public sealed record Seat(int Index, Origin Origin) : Term(Sort.Player, Origin);

    /// <summary>The player who begins the game or round; the first seat, until a step sets another.</summary>
    public sealed record StartPlayer(Origin Origin) : Term(Sort.Player, Origin);

    /// <summary>The number of the round or turn at hand, from 1.</summary>
    public sealed record Counter(CounterKind Kind, Origin Origin) : Term(Sort.Number, Origin);

    /// <summary>Named alternatives: readings or a conflict.</summary>
    public sealed record Fork(Choice Choice, ImmutableArray<Term> Alternatives, Sort Sort, Origin Origin) : Term(Sort, Origin);

    /// <summary>A value that an idiom says: the meaning stays below its name, so that an answer can speak in the idiom's words.</summary>
    /// <param name="Inner">The meaning, in a frame of its own.</param>
    /// <param name="Use">The idiom and its sentence.</param>
    /// <param name="Sort">What it gives.</param>
    /// <param name="Origin">The clause that uses it.</param>
    public sealed record Idiomatic(Term Inner, IdiomUse Use, Sort Sort, Origin Origin) : Term(Sort, Origin)
    {
        /// <summary>How many frame positions the meaning needs; its frame begins empty.</summary>
        public int FrameSize { get; init; }
    }

    /// <summary>A part that the sheet leaves out.</summary>
    /// <param name="What">The author's name for it.</param>
    /// <param name="Low">Its stated lower bound; null where none is stated.</param>
    /// <param name="High">Its stated upper bound; null where none is stated.</param>
    /// <param name="Sort">What it would give.</param>
    /// <param name="Origin">Where the sheet says so.</param>
    public sealed record NotModelled(string What, long? Low, long? High, Sort Sort, Origin Origin) : Term(Sort, Origin);

    /// <summary>Whether an action was done at some time before: yes where the record of the game holds it.</summary>
    /// <param name="Action">The action.</param>
    /// <param name="When">How far back the record is looked through.</param>
    /// <param name="By">Who must have done it; null for anybody.</param>
    /// <param name="Origin">Where its words stand.</param>
    public sealed record Done(ActionName Action, DoneWhen When, Term? By, Origin Origin) : Term(Sort.Truth, Origin);

    /// <summary>What was chosen when an action was done last; nothing where it was never done.</summary>
    /// <param name="Action">The action.</param>
    /// <param name="Choice">Which choice: the position in <see cref="ActionFacts.Choices"/>.</param>
    /// <param name="Mine">True where only what <c>me</c> did counts.</param>
    /// <param name="Sort">The sort of that choice.</param>
    /// <param name="Origin">Where its words stand.</param>
    public sealed record LastChoice(ActionName Action, int Choice, bool Mine, Sort Sort, Origin Origin) : Term(Sort, Origin);

    /// <summary>Whether a player has a legal way to do an action.</summary>
    /// <param name="Player">Who would do it.</param>
    /// <param name="Action">The action.</param>
    /// <param name="Given">The values of its first gaps, in the order of the phrase; what is not given may be chosen freely.</param>
    /// <param name="Origin">Where its words stand.</param>
    public sealed record CanDo(Term Player, ActionName Action, ImmutableArray<Term> Given, Origin Origin) : Term(Sort.Truth, Origin);

    /// <summary>All things of a look, wherever they are, the supply included and the box left out, such as <c>fire dice</c>.</summary>
    /// <param name="Look">Which ones.</param>
    /// <param name="Sort">A set of things.</param>
    /// <param name="Origin">Where its words stand.</param>
    public sealed record AllOf(Look Look, Sort Sort, Origin Origin) : Term(Sort, Origin);

    /// <summary>A part that has no meaning, because there is a mistake in it that was told.</summary>
    /// <param name="What">What it is, for the answer.</param>
    /// <param name="Sort">What it would give.</param>
    /// <param name="Origin">Where it stands.</param>
    public sealed record NotYet(string What, Sort Sort, Origin Origin) : Term(Sort, Origin);
}

/// <summary>What an operation goes through: each element of a set, perhaps only some of them.</summary>
/// <param name="Slot">The frame position of the element.</param>
/// <param name="Letter">The letter it was given, or <c>it</c>.</param>
/// <param name="Domain">A set, a list or something that holds.</param>
/// <param name="Where">Which elements count; null for all.</param>
/// <param name="Element">The sort of an element.</param>
public sealed record Pick(int Slot, string Letter, Term Domain, Term? Where, Sort Element);

/// <summary>The words that tell a thing: all parts must fit.</summary>
/// <param name="Kind">The kind; null where the words leave it open.</param>
/// <param name="Values">Values of attributes and states; of several for one attribute none fits.</param>
/// <param name="Card">A single card; null otherwise.</param>
/// <param name="Owner">Whose it is.</param>
/// <param name="Traits">Words of one subject and the kernel's adjectives.</param>
/// <param name="Words">As written, for derivations.</param>
public sealed record Look(
    Kind? Kind,
    ImmutableArray<AttributeValue> Values,
    Card? Card,
    LookOwner Owner,
    ImmutableArray<Trait> Traits,
    string Words)
{
    /// <summary>The space or slot noun of a look that speaks of spaces; null for a look of things.</summary>
    public Named? SpotNoun { get; init; }
}

/// <summary>Whose a thing is, as a look says it.</summary>
public enum LookOwner
{
    /// <summary>The look does not say.</summary>
    Anyone,

    /// <summary><c>my</c> or <c>mine</c>.</summary>
    Mine,

    /// <summary><c>their</c> or <c>theirs</c>: owned by another player.</summary>
    Theirs,
}

/// <summary>An adjective inside a look: a word of one subject, or one of the kernel's own.</summary>
/// <param name="Adjective">Which of the kernel's; <see cref="Adjective.Word"/> where <paramref name="Word"/> says.</param>
/// <param name="Word">A truth word of one subject; null otherwise.</param>
public sealed record Trait(Adjective Adjective, Word? Word);

/// <summary>The adjectives of the kernel.</summary>
public enum Adjective
{
    /// <summary>A word of the sheet.</summary>
    Word,

    /// <summary>Holds nothing.</summary>
    Empty,

    /// <summary>Every part of it holds something; a space with a limit holds as much as it may.</summary>
    Full,

    /// <summary>A card whose face is seen.</summary>
    FaceUp,

    /// <summary>A card whose back is seen.</summary>
    FaceDown,
}

/// <summary>A direction on a board, as an offset in columns (to the right) and rows (upwards).</summary>
/// <param name="Name">As formulas say it.</param>
/// <param name="Columns">-1, 0 or 1.</param>
/// <param name="Rows">-1, 0 or 1.</param>
public sealed record Direction(string Name, int Columns, int Rows)
{
    /// <summary>Every direction of a square board; on an upright board the first four names are used, on a flat one the others.</summary>
    public static ImmutableArray<Direction> All { get; } =
    [
        new("above", 0, 1), new("below", 0, -1), new("left", -1, 0), new("right", 1, 0),
        new("north", 0, 1), new("south", 0, -1), new("west", -1, 0), new("east", 1, 0),
        new("northeast", 1, 1), new("northwest", -1, 1), new("southeast", 1, -1), new("southwest", -1, -1),
    ];
}
