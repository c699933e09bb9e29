using System.Collections.Immutable;

namespace Rostrum.Sheets.Loading.Keys;

/// <summary>The keys of each section's entries.</summary>
public static partial class SheetHelp
{
    /// <summary>The keys of each section's entries, clause keys left out.</summary>
    public static ImmutableDictionary<string, ImmutableArray<KeyHelp>> Entries { get; } = new Dictionary<string, ImmutableArray<KeyHelp>>
    {
        ["sources"] =
        [
            new("title", "What the source is called.", KeyForm.Prose),
            new("printing", "Which printing it is: first, second.", KeyForm.Text),
            new("pages", "How many pages it has; a citation beyond them is told.", KeyForm.Number),
            new("rank", "How much it weighs where sources disagree: 1 weighs most.", KeyForm.Number),
            new("date", "When it appeared: '3 March 2026', 'March 2026' or '2026'.", KeyForm.Text),
        ],
        ["facts"] =
        [
            new("is", "The number or the name.", KeyForm.Text),
            new("of", "What it is a number of.", KeyForm.Text),
        ],
        ["pieces"] =
        [
            Plural,
            new("attributes", "What never changes and tells pieces apart: '{colour: [red, blue]}'.", KeyForm.NamesOfTexts),
            new("states", "What may change about a piece; the first value holds at the start.", KeyForm.NamesOfTexts),
            Count,
            new("each player", "How many every player has.", KeyForm.Number),
            new("count of each …", "How many there are by value: 'count of each colour: {red: 8, blue: 6}'.", KeyForm.NumberOrNames),
            new("shape", "The spaces that a large piece covers, and how it may be laid: '. . / . -, rotated'.", KeyForm.Text),
            new("outlines", "The silhouette in pictures: one for all, or by value.", KeyForm.TextOrNames),
            new("colours", "The colour in pictures: one for all, or by value.", KeyForm.TextOrNames),
            new("emblems", "The sign on the piece that tells it apart without colour: one for all, or by value.", KeyForm.TextOrNames),
            new("flaws", "How damage is drawn, by value.", KeyForm.TextOrNames),
        ],
        ["dice"] =
        [
            Plural,
            Count,
            new("faces", "The faces: '1 to 6', or a list.", KeyForm.Texts),
            new("each player", "How many every player has.", KeyForm.Number),
        ],
        ["cards"] =
        [
            Plural,
            new("file", "A table beside the sheet, such as cards.csv, with a column 'name'.", KeyForm.Text),
            new("rows", "Cards in the sheet itself: name, then its cells by column.", KeyForm.Names),
            new("columns", "What each column holds: number, condition, drawing, formula, numbers, steps, source, text, or a list of words.", KeyForm.NamesOfTexts),
            new("names", "The names of cards that differ in nothing else.", KeyForm.Texts),
            new("attributes", "What tells cards apart; without other cards, there is one of each combination.", KeyForm.NamesOfTexts),
            new("states", "What may change about a card; the first value holds at the start.", KeyForm.NamesOfTexts),
            new("changes", "Cells that replace those of the file: name, then the cells by column.", KeyForm.Names),
            new("count", "How many cards there are, where nobody names them.", KeyForm.Number),
        ],
        ["boards"] = Boards,
        ["places"] =
        [
            new("row of", "A row of so many slots.", KeyForm.Number),
            new("bag of", "A bag from which things are dealt unseen: of which kinds.", KeyForm.Texts),
            new("deck of", "A deck of cards with an order: of which kinds.", KeyForm.Texts),
            new("heap of", "An open heap: of which kinds.", KeyForm.Texts),
            new("hand of", "A hand that only its owner sees: of which kinds.", KeyForm.Texts),
            new("slots", "What a slot of the row is called.", KeyForm.Text),
            new("holds", "Which kinds lie in the row; of a heap or hand, the most that it holds.", KeyForm.Texts),
            OfEachPlayer,
            new("when short", "The action that is done when it runs out.", KeyForm.Text),
            new("starts", "What lies there at the start: empty.", KeyForm.Text) { Words = ["empty"] },
        ],
        ["marks"] =
        [
            new("holds", "What it remembers: '0 to 20', number, 'yes or no', player, space, or an attribute.", KeyForm.Text) { Words = ["number", "yes or no", "player", "space", "0 to 20"] },
            new("of", "Whose it is: 'each player', or a space of a board such as 'each hex'; else there is one for the table.", KeyForm.Text) { Words = ["each player", "table"] },
            new("lasts", "How long it stays: turn, round, or the name of an action or block.", KeyForm.Text) { Words = ["turn", "round"] },
            new("starts", "What it is at the start.", KeyForm.Formula),
        ],
        ["words"] = [new("means", "The formula, where something else stands beside it.", KeyForm.Formula)],
        ["tables"] =
        [
            new("rows", "The rows: a number, '3 to 5', '7 or more' or a value, then what stands there.", KeyForm.Names),
            new("beyond", "What holds beyond the rows: last, nothing, or a formula; without it, nothing.", KeyForm.Formula) { Words = ["last", "nothing"] },
        ],
        ["actions"] =
        [
            new("phrase", "The words that ask for it, with a gap for each choice: 'place (what) on (spot)'.", KeyForm.Text),
            new("choose", "What is chosen, in order: 'spot: a space in my field'.", KeyForm.NamesOfText),
            new("do", "The steps.", KeyForm.Steps),
            new("joins", "The action whose free order it joins.", KeyForm.Text),
            new("final", "Whether it is final: neither it nor anything decided before it is taken back once it is done.", KeyForm.OneOf) { Words = ["no", "yes"] },
        ],
        ["laws"] =
        [
            new("binds", "The action that it binds, or a list of them.", KeyForm.Texts),
            new("needs", "What must hold before the action; one, or a list.", KeyForm.Formulas),
            new("forbids", "What must not hold before the action; one, or a list.", KeyForm.Formulas),
            new("must leave", "What must hold after the action; one, or a list.", KeyForm.Formulas),
            new("must not leave", "What must not hold after the action; one, or a list.", KeyForm.Formulas),
            new("unless", "Where the law does not bind.", KeyForm.Formula),
            Idiom,
        ],
        ["powers"] =
        [
            new("lifts", "The laws that it lifts, or 'any one law'.", KeyForm.Texts) { Words = ["any one law"] },
            new("for", "The action for which it lifts them.", KeyForm.Text),
            Condition("When it may be used."),
            new("price", "The steps that it costs.", KeyForm.Steps),
            new("limit", "How often it may be used: 'once a game'.", KeyForm.Text) { Words = ["once a game", "once a round", "once a turn"] },
        ],
        ["end"] =
        [
            Condition("What brings the end about."),
            Then,
            Winner,
            new("checked", "When it is asked: after each turn, unless this says otherwise.", KeyForm.Text) { Words = ["after each turn", "after each round", "after each action"] },
            new("do", "The last steps.", KeyForm.Steps),
        ],
        ["score"] =
        [
            new("each", "What is gone through, with a letter: 's in my field where s shows a lamp'.", KeyForm.Text),
            new("points", "The points: of each, or of all.", KeyForm.Formula),
            new("at least", "The fewest points of the clause.", KeyForm.Formula),
            new("at most", "The most points of the clause.", KeyForm.Formula),
            Idiom,
        ],
        ["variants"] =
        [
            new("when", "The variants with which it comes on by itself.", KeyForm.Texts),
            new("after", "The variant over which it is laid.", KeyForm.Text),
        ],
        ["rating"] =
        [
            new("credit", "Points that a variant counts before: its name, then the points.", KeyForm.NamesOfNumbers),
            new("steps", "The lowest total of each step, then its name: '{0: damp, 30: leather-hard}'.", KeyForm.Names),
        ],
        ["open questions"] = [new("about", "The clause whose readings or conflict the question is about.", KeyForm.Text)],
    }.ToImmutableDictionary();

    private static ImmutableArray<KeyHelp> Boards =>
    [
        OfEachPlayer,
        new("squares", "Columns and rows of squares: '5 across 4 up'.", KeyForm.Text),
        new("drawn", "A drawing: with a line of column labels squares, without hexes.", KeyForm.Text),
        new("hexes", "Hexes: 'rows of 3 4 5 4 3', 'radius 2' or '6 across 4 up'.", KeyForm.Text),
        new("ring", "Spaces one after the other that come round: '24', or their names.", KeyForm.Text),
        new("track", "Spaces one after the other: '24', or their names.", KeyForm.Text),
        new("points", "A map: a list of lines in which neighbours touch.", KeyForm.Texts),
        new("file", "A map from a table beside the sheet, with the columns 'name' and 'next to'.", KeyForm.Text),
        new("stands", "How the board stands; upright, things stand on what is below them.", KeyForm.OneOf) { Words = ["flat", "upright"] },
        new("columns", "The word for columns, their labels, or both: 'bay A to E'.", KeyForm.Text),
        new("rows", "The word for rows, their labels, or both: 'tier 1 to 4'.", KeyForm.Text),
        new("lines", "The words for slanting lines: '{rising: slope, falling: slant}'.", KeyForm.NamesOfText),
        new("neighbours", "What is beside a space; without it, sides.", KeyForm.OneOf) { Words = ["sides", "corners", "sides and corners"] },
        new("wraps", "Whether the last column touches the first, and the last row the first.", KeyForm.OneOf) { Words = ["no", "yes"] },
        new("regions", "Parts that belong to players: '{store: {South: A, North: B}}'.", KeyForm.Names),
        new("areas", "Parts of the board: '{field: {north: a1 to a6, south: b1 to b6}}'.", KeyForm.Names),
        new("links", "From space to space and back: '{opposite: a1-b6 a2-b5}'.", KeyForm.Names),
        new("values", "Numbers printed on spaces: '{reward: {a1: 3, b2 b3: 5}}', or a drawing of numbers.", KeyForm.Names),
        new("holes", "Names for holes: '{pool: c3}'.", KeyForm.NamesOfTexts),
        new("without", "Spaces that are not there: 'c3 d1'.", KeyForm.Texts),
        new("spaces", "What a space is called.", KeyForm.Text),
        new("plural", "What several spaces are called, where an 's' is not enough.", KeyForm.Text),
        new("holds", "The most that lies on a space, and what: '1 ware'.", KeyForm.Text),
    ];
}
