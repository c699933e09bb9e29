using System.Collections.Immutable;
using Rostrum.Sheets.Loading.Sections;

namespace Rostrum.Sheets.Loading.Keys;

/// <summary>What every key of <see cref="SheetDialect"/> is for. A key without help, and help without a key, fails a test.</summary>
public static partial class SheetHelp
{
    /// <summary>The keys of the sheet itself.</summary>
    public static ImmutableArray<KeyHelp> Top { get; } =
    [
        new("rule sheet", "The format of the sheet: 1.", KeyForm.Number) { Words = ["1"] },
        new("game", "The name of the game.", KeyForm.Text),
        new("says", "What the game is about, in your words.", KeyForm.Prose),
        new("cite", "Source and page of the game as a whole, such as 'book 1'.", KeyForm.Texts),
        new("players", "How many play: '2', or '2 to 4'.", KeyForm.Text),
        new("seats", "The names of the seats, clockwise: [Black, White].", KeyForm.Texts),
        new("sources", "Where rules stand: rulebook, aid, note of the publisher. Citations name them.", KeyForm.Entries),
        new("facts", "Numbers and names that a teacher says, such as 'starting coins: {is: 3, cite: book 2}'.", KeyForm.Entries),
        new("numbers", "Numbers with a name that formulas use and a variant may set.", KeyForm.NamesOfNumbers),
        new("pieces", "Kinds of pieces, each with how many there are and what tells them apart.", KeyForm.Entries),
        new("dice", "Kinds of dice, each with its faces.", KeyForm.Entries),
        new("cards", "Kinds of cards, from a table, from the sheet, or both.", KeyForm.Entries),
        new("signs", "What the letters of drawings stand for: one letter, then a kind, a value, a card or a seat.", KeyForm.NamesOfText),
        new("boards", "Boards and their spaces; with 'of: each player' everybody has one.", KeyForm.Entries),
        new("places", "Everything else that holds things: rows, bags, decks, heaps, hands.", KeyForm.Entries),
        new("marks", "What the table or a player remembers: a number, yes or no, a player, a space, a value.", KeyForm.Entries),
        new("words", "Your own words for formulas: 'free (space s): s is empty'.", KeyForm.Entries),
        new("tables", "Numbers or values that are looked up: 'worth: {1: 1, 2: 3, 3: 6}'.", KeyForm.Entries),
        new("set-up", "The steps before the first turn.", KeyForm.Steps),
        new("turn", "The steps of a turn.", KeyForm.Steps),
        new("course", "The steps of the whole game, where it has no ordinary turns.", KeyForm.Steps),
        new("closing", "The steps after the last turn, before the count.", KeyForm.Steps),
        new("next to play", "Whose turn is next, where it is not the next seat's: a formula that gives a player.", KeyForm.Formula),
        new("teams", "Players who win together: '{Sun: [North, South], Moon: [East, West]}'.", KeyForm.Anything),
        new("actions", "What players do, each with the phrase that asks for it.", KeyForm.Entries),
        new("laws", "What is allowed: an action is legal where it keeps every law that binds it.", KeyForm.Entries),
        new("powers", "What lets a player break a law, and its price.", KeyForm.Entries),
        new("end", "When the game ends, and what follows.", KeyForm.Entries),
        new("score", "What scores: points, or an idiom with what it asks for.", KeyForm.Entries),
        new("ties", "What decides between equal totals, in order: [fewer my shards, more my sticks, shared].", KeyForm.Texts),
        new("rating", "Names for totals of a game alone.", KeyForm.Keys),
        new("aim", "What wins: the highest total, the lowest total, or at least so many points.", KeyForm.Text),
        new("variants", "What changes in a variant, as a part of a sheet; 'removed' takes a key out.", KeyForm.Variants),
        new("not modelled", "What you left out on purpose, one a line.", KeyForm.Texts),
        new("open questions", "What you ask the publisher.", KeyForm.Entries),
        new("before …", "Steps that come before an action or a block: 'before lay'.", KeyForm.Steps),
        new("after …", "Steps that come after an action or a block: 'after set-up'.", KeyForm.Steps),
        new("instead of …", "Steps that take the place of an action or a block.", KeyForm.Steps),
    ];

    /// <summary>The keys that every clause may have.</summary>
    public static ImmutableArray<KeyHelp> Clause { get; } =
    [
        new("says", "The rule in your words: the sentence that every answer shows.", KeyForm.Prose),
        new("cite", "Source and page, such as 'book 8'.", KeyForm.Texts),
        new("readings", "The ways in which the words can be read, each with a name and what it changes.", KeyForm.Names),
        new("follow", "The reading or the source that you follow.", KeyForm.Text),
        new("why", "Why you follow it.", KeyForm.Prose),
        new("conflict", "What several sources say: the source with its page, then what it says.", KeyForm.Names),
        new("called", "Other names that may be said; of cards, the pattern of their names.", KeyForm.Texts),
        new("never", "Names that may not be said.", KeyForm.Texts),
        new("how to say", "How it is spoken.", KeyForm.Texts),
    ];

    /// <summary>Fixed words with which steps begin that hold other steps, and the keys that may stand beside steps.</summary>
    public static ImmutableArray<KeyHelp> Steps { get; } =
    [
        new("one of", "One of the steps below is chosen.", KeyForm.Steps),
        new("first possible of", "The first of the steps below that can be done.", KeyForm.Steps),
        new("in any order", "All steps below, each once, in an order of choice.", KeyForm.Steps),
        new("all at once", "Everybody chooses unseen, then all is carried out.", KeyForm.Steps),
        new("must", "Within 'in any order': what has to be done.", KeyForm.Steps),
        new("may", "Within 'in any order': what can be left.", KeyForm.Steps),
        new("each player", "The steps below for everybody, clockwise; inside, 'me' is that player.", KeyForm.Steps),
        new("each other player", "The steps below for everybody else, clockwise.", KeyForm.Steps),
        new("otherwise", "Behind 'if': the steps where it does not hold.", KeyForm.Steps),
        new("do", "The steps, where something else stands beside them.", KeyForm.Steps),
        new("cite", "Source and page of the steps.", KeyForm.Texts),
        new("says", "The steps in your words.", KeyForm.Prose),
    ];

    private static KeyHelp Plural => new("plural", "The name for several, where an 's' is not enough.", KeyForm.Text);

    private static KeyHelp Count => new("count", "How many there are in the box.", KeyForm.Number);

    private static KeyHelp OfEachPlayer =>
        new("of", "Whose it is: 'each player' has one, or there is one for the table.", KeyForm.OneOf) { Words = ["each player", "table"], AlsoRight = ["the table"] };

    internal static KeyHelp Idiom => new("idiom", "A rule that many games have, by its name; what it asks for stands beside it.", KeyForm.Text);

    private static KeyHelp Condition(string says) => new("if", says, KeyForm.Formula);

    /// <summary>The help for one of several keys; null where there is none.</summary>
    /// <param name="helps">The keys that may stand there.</param>
    /// <param name="key">A key.</param>
    public static KeyHelp? Find(ImmutableArray<KeyHelp> helps, string key) => helps.FirstOrDefault(h => h.Key == key);

    private static KeyHelp Then => new("then", "What follows when it is so; without it, the game ends at once.", KeyForm.OneOfInList) { Words = EndSection.FollowWords };

    private static KeyHelp Winner => new("winner", "Who wins: a word, or a formula that gives players; without it, whoever has most points.", KeyForm.Formula) { Words = EndSection.WinnerWords };
}
