using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Formulas;

/// <summary>Messages about formulas: shape (ROS018x), names (ROS02xx) and sorts (ROS03xx).</summary>
internal static class FormulaProblems
{
    public static Diagnostic Unexpected(SourceSpan at, string found, string? before) => new(
        "ROS0180", Severity.Error, at,
        before is null ? $"'{found}' cannot begin a formula." : $"After '{before}' the formula cannot go on with '{found}'.",
        found == "if" ? "Say first what it is then: '5 if count(my apples) is more than 3 otherwise 0'."
            : before is not null && Model.Operations.All.Any(o => o.Name == before && o.FormInWords.StartsWith($"{before}(", StringComparison.Ordinal)) ? $"Write '{before}(…)', with brackets."
            : "Finish the part before it, or join the two with a word such as 'and', 'times' or a comma in brackets.");

    /// <param name="at">From the article, if there is one, to the place.</param>
    /// <param name="word">The word for anything.</param>
    /// <param name="place">The place, in words.</param>
    /// <param name="isOne">Whether one of them is meant.</param>
    public static Diagnostic ThingIn(SourceSpan at, string word, string place, bool isOne) => new(
        "ROS0201", Severity.Error, at, $"Nothing is called '{Prose.Clip(word)}': what lies in a place needs no word.",
        isOne ? $"Write 'one of {Prose.Clip(place)}'." : $"Write '{Prose.Clip(place)}' by itself, as in 'count({Prose.Clip(place)})'.")
    {
        Fix = Fix.Replace(at, isOne ? $"one of {place}" : place, FixGrade.Choice),
    };

    public static Diagnostic OtherWord(SourceSpan at, string written, string instead) => new(
        "ROS0201", Severity.Error, at, $"Nothing is called '{written}'.", $"Write {instead}.");

    /// <param name="at">The word for a number.</param>
    /// <param name="what">What stands behind 'of'.</param>
    public static Diagnostic NumberOf(SourceSpan at, string what) => new(
        "ROS0201", Severity.Error, at, $"Nothing is called '{Prose.Clip(at.Text)}'.", OrderOrCount(what));

    /// <param name="at">What was written for it.</param>
    /// <param name="counter">The name of the number.</param>
    /// <param name="of">What it numbers.</param>
    public static Diagnostic CounterMeant(SourceSpan at, string counter, string of) => new(
        "ROS0201", Severity.Error, at, $"Nothing is called '{Prose.Clip(at.Text)}'.", $"Write '{counter}' for the number of the {of} at hand, from 1.")
    {
        Fix = Fix.Replace(at, counter, FixGrade.Choice),
    };

    private static string OrderOrCount(string what) =>
        $"Write 'order of {Prose.Clip(what)}' for its number, from 1; or 'count({Prose.Clip(what)})' for how many spaces it has.";

    public static Diagnostic EachIsAKey(SourceSpan at) => new(
        "ROS0180", Severity.Error, at, "A formula does not begin with 'each'.",
        "Give the clause a key 'each' beside its 'points', as in '{each: s in my field where s is empty, points: 1}'; or count, as in '2 times count(my apples)'.");

    public static Diagnostic LineNeedsBoard(SourceSpan at, string line, Place board) => new(
        "ROS0180", Severity.Error, at, $"'{line}' does not say of which board.", $"Write '{line} of {WholeName(board)}'.")
    {
        Fix = new Fix("name the board", FixGrade.Choice, [new TextEdit(at.Part(at.Length, 0), $" of {WholeName(board)}")]),
    };

    private static string WholeName(Place board) => board.EachPlayer ? $"my {board.Name}" : board.Name;

    public static Diagnostic Expected(SourceSpan at, string found, string wanted) => new(
        "ROS0180", Severity.Error, at,
        found.Length == 0 ? $"The formula ends where {wanted} should stand." : $"'{found}' stands where {wanted} should stand.",
        $"Write {wanted} here.");

    public static Diagnostic OfWhat(SourceSpan at, string written, Named symbol) => new(
        "ROS0180", Severity.Error, at, $"'{written}' is {symbol.Role}, and the formula does not say of what.",
        symbol switch
        {
            LineFamily => $"Write '{written} of' and a board or a space.",
            Table => $"Write '{written} of' and what is looked up, such as '{written} of 3'.",
            _ => $"Write '{written} of it' for what is gone through, or '{written} of' and what you mean.",
        });

    public static Diagnostic EndsEarly(SourceSpan at, string? after) => new(
        "ROS0180", Severity.Error, at,
        after is null ? "There is no formula here." : $"The formula ends after '{after}', and something is missing.",
        "Say what comes next, or take the last word out.");

    /// <param name="at">The bracket.</param>
    /// <param name="behind">The word before the one with which the formula cannot go on, where that is certain.</param>
    public static Diagnostic Unclosed(SourceSpan at, SourceSpan? behind) => new(
        "ROS0181", Severity.Error, at, "This bracket is never closed.",
        behind is { } word ? $"Put ')' where the part in brackets ends, most likely behind '{Prose.Clip(word.Text)}'." : "Put ')' where the part in brackets ends.")
    {
        Fix = behind is { } last ? new Fix($"put ')' behind '{Prose.Clip(last.Text)}'", FixGrade.Choice, [new TextEdit(last.Part(last.Length, 0), ")")]) : null,
    };

    public static Diagnostic MinusSign(SourceSpan at) => new(
        "ROS0180", Severity.Error, at, "A number below nothing does not begin with '-'.", "Write 'minus' before it, as in 'minus 2'.")
    {
        Fix = new Fix("write 'minus'", FixGrade.Safe, [new TextEdit(at, "minus ")]),
    };

    public static Diagnostic NotWhole(SourceSpan at) => new(
        "ROS0182", Severity.Error, at, $"'{Prose.Clip(at.Text)}' is not a whole number, and formulas know no others.",
        "Count first and divide then: 'down(count(my apples), by 2)' is one for every two, 'up(count(my apples), by 2)' rounds up.");

    public static Diagnostic ThenForThan(SourceSpan at, string word) => new(
        "ROS0201", Severity.Error, at, $"Nothing is called '{Prose.Clip(at.Text)}'.", $"Write '{word} than'.")
    {
        Fix = Fix.Replace(at, $"{word} than"),
    };

    public static Diagnostic StraySign(SourceSpan at, string sign) => new(
        "ROS0182", Severity.Error, at, $"Formulas do not use the sign '{sign}'.",
        sign switch
        {
            "*" => "Write 'times'.",
            "=" => "Write 'is'.",
            "<" or ">" => "Write 'is less than', 'is at most', 'is more than' or 'is at least'.",
            "/" => "Write 'down(number, by 2)' or 'up(number, by 2)'.",
            _ => "Say it in words.",
        });

    public static Diagnostic MixedLogic(SourceSpan at) => new(
        "ROS0183", Severity.Error, at, "'and' beside 'or' can be read in two ways.", "Put brackets round the part that belongs together.");

    public static Diagnostic TooLong(SourceSpan at) => new(
        "ROS0184", Severity.Error, at, "This formula joins more than 256 parts in one row.", "Give a part of it a name under 'words'.");

    public static Diagnostic TooDeep(SourceSpan at) => new(
        "ROS0184", Severity.Error, at, "This formula has more than 64 parts inside each other.", "Give a part of it a name under 'words'.");

    public static Diagnostic TooManyWords(SourceSpan at, string word, int most) => new(
        "ROS0210", Severity.Error, at, $"'{word}' is explained by words that are explained by words, more than {most} times.", "Say some of them without the others.");

    public static Diagnostic UnknownName(SourceSpan at, string written, string? near, Named? symbol) => new(
        "ROS0201", Severity.Error, at, $"Nothing is called '{Prose.Clip(written)}'.",
        near is null ? "Check its spelling, or declare it: things and what tells them apart under 'pieces', where they lie under 'boards' or 'places', anything else under 'words'." : $"Did you mean '{near}'?")
    {
        Fix = near is null ? null : Fix.Replace(at, near, FixGrade.Safe),
        Related = symbol?.DeclaredAt is { } declared ? [new RelatedPlace(declared, $"'{symbol.Name}' is declared here")] : [],
    };

    public static Diagnostic NotANoun(SourceSpan at, string written, Named symbol) => new(
        "ROS0202", Severity.Error, at, $"'{written}' is {symbol.Role} and has no 'of'.",
        symbol is OperationName ? $"Write '{written}(…)'." : "Use an attribute, a line, a table, a place of each player or a word of one subject before 'of'.");

    public static Diagnostic UnusedLetter(SourceSpan at, string letter, string? near) => new(
        "ROS0203", Severity.Error, at, $"The letter '{letter}' is named and never used.",
        near is null ? $"Use '{letter}' in what follows, or leave out '{letter} in'." : $"Did you mean '{near}'?")
    {
        Fix = near is null ? null : Fix.Replace(at, near, FixGrade.Choice),
    };

    public static Diagnostic DoubtfulIt(SourceSpan at) => new(
        "ROS0204", Severity.Error, at, "'it' could be the inner or the outer of two things that are gone through.",
        "Give the outer one a letter, as in 's in my chamber'.");

    public static Diagnostic NoThisAction(SourceSpan at) => new(
        "ROS0205", Severity.Error, at, "There is nothing that 'this action' could be.", "Say it under 'laws' or inside an action, or name the action.");

    public static Diagnostic NoSuchAction(SourceSpan at, string written, string[] actions)
    {
        string? near = NearSpelling.Find(written, actions);
        string known = actions.Length == 0 ? "This sheet has no actions." : $"The {(actions.Length == 1 ? "only action is" : "actions are")} {KnownWords.Few(written, actions)}.";
        return new("ROS0201", Severity.Error, at, $"There is no action '{Prose.Clip(written)}'.", near is null ? known : $"Did you mean '{near}'? {known}")
        {
            Fix = near is null ? null : Fix.Replace(at, near),
        };
    }

    public static Diagnostic ChoiceBySelf(SourceSpan at, string choice, string action) => new(
        "ROS0210", Severity.Error, at, $"What '{choice}' of '{action}' may be is explained by itself.", "Say what may be chosen without what was chosen the last time.");

    public static Diagnostic NoIt(SourceSpan at) => new(
        "ROS0205", Severity.Error, at, "There is nothing that 'it' could be.", "Use 'it' only behind 'where' or after the comma of a call that goes through something.");

    public static Diagnostic WhoseIs(SourceSpan at, string place) => new(
        "ROS0206", Severity.Error, at, $"Every player has '{place}', and the formula does not say whose is meant.", $"Write 'my {place}', or '{place} of p' for a player p.")
    {
        Fix = new Fix($"write 'my {place}'", FixGrade.Choice, [new TextEdit(at, $"my {place}")]),
    };

    public static Diagnostic NotOwned(SourceSpan at, string written) => new(
        "ROS0207", Severity.Error, at, $"'{written}' belongs to the whole table, so it is nobody's.", "Leave out 'my' or 'their', or say 'of: each player' where it is declared.");

    public static Diagnostic TheirNeedsTwo(SourceSpan at, string written) => new(
        "ROS0208", Severity.Error, at, $"'{written}' is only clear in a game of exactly two players.", "Name the player: 'chamber of p', with p in players.");

    public static Diagnostic NoSuchLabel(SourceSpan at, string family, string label, string[] known, bool areAreas) => new(
        "ROS0209", Severity.Error, at, $"There is no {family} {label}.",
        known.Length == 0 ? $"No {family} is listed yet." : areAreas ? KnownWords.Sentence(label, known) : $"They are named {known[0]} to {known[^1]}.")
    {
        Fix = areAreas && NearSpelling.Find(label, known) is { } near ? Fix.Replace(at, near) : null,
    };

    public static Diagnostic NotOnThisBoard(SourceSpan at, string what, string board, string hint) => new(
        "ROS0312", Severity.Error, at, $"'{what}' has no meaning on {board}.", hint);

    public static Diagnostic Circle(SourceSpan at, string word, string through) => new(
        "ROS0210", Severity.Error, at, $"'{word}' is explained by itself: {through}.", "Say one of these words without the others.");

    public static Diagnostic WantedTruth(SourceSpan at, Sort found) => new(
        "ROS0301", Severity.Error, at, $"Something that is yes or no should stand here, but this is {found.InWords}.",
        found.Kind is SortKind.Thing or SortKind.Space ? "Ask something of it, such as 'is empty', 'is a jug' or 'shows a jug'." : "Compare it, as in 'is at least 3', or ask 'any(…)'.");

    public static Diagnostic WrongSort(SourceSpan at, Sort found, Sort wanted) => new(
        "ROS0302", Severity.Error, at, $"{Prose.Sentence(wanted.InWords)} should stand here, but this is {found.InWords}.",
        wanted.Kind == SortKind.Number && found.Kind == SortKind.Line ? OrderOrCount(at.Text)
            : wanted.Kind == SortKind.Number && (found.IsMany || found.Kind == SortKind.Place) ? "Write 'count(…)' round it."
            : wanted.Kind is SortKind.Space or SortKind.Thing && (found.IsMany || found.Kind is SortKind.Line or SortKind.Place)
                ? $"Name one of them, or go through them with a letter, as in 's in {Prose.Clip(at.Text)} where …'."
                : "Ask it for what is wanted, or name something else.")
    {
        Fix = wanted.Kind == SortKind.Number && (found.IsMany || found.Kind is SortKind.Line or SortKind.Place)
            ? found.Kind == SortKind.Line ? new Fix("take its number", FixGrade.Choice, [new TextEdit(at.Part(0, 0), "order of ")])
            : new Fix("count it", FixGrade.Choice, [new TextEdit(at.Part(0, 0), "count("), new TextEdit(at.Part(at.Length, 0), ")")])
            : null,
    };

    public static Diagnostic LookWithoutPlace(SourceSpan at, string look, string many, Kind kind, string? place, bool hasPlaces) => new(
        "ROS0311", Severity.Error, at, $"'{Prose.Clip(look)}' tells what is meant, but not where it lies.",
        place is not null ? $"Write where, as in '{many} in {place}'." : $"Add a place for it{(hasPlaces ? " under 'places', such as:" : ", such as:\nplaces:")}\n  {kind.Plural}: {{heap of: {kind.Name}, of: each player}}\nThen write '{(many == kind.Plural ? "" : $"{many} in ")}my {kind.Plural}'.");

    public static Diagnostic LineWithoutName(SourceSpan at, string word, string key, string name) => new(
        "ROS0201", Severity.Error, at, $"Nothing is called '{word}': the lines of a board have no name until it gives them one.", $"Add '{key}: {name}' to the board, under 'boards'.");

    public static Diagnostic SpaceAgainstLook(SourceSpan at, SourceSpan isAt) => new(
        "ROS0303", Severity.Error, at, "A space is not a thing; only the thing that lies on it can be that.", "Write 'shows' to ask the top thing of the space.")
    {
        Fix = isAt.Length == 0 ? null : new Fix("write 'shows'", FixGrade.Safe, [new TextEdit(isAt, "shows")]),
    };

    public static Diagnostic NeverThat(SourceSpan at, string attribute, string value) => new(
        "ROS0304", Severity.Error, at, $"A {attribute} is never '{value}'.", $"Name one of the values of {attribute}.");

    public static Diagnostic WrongSubjects(SourceSpan at, string word, int wanted, int found) => new(
        "ROS0305", Severity.Error, at, $"'{word}' is said of {Prose.Count(wanted, "subject", "subjects")}, but here are {found}.",
        wanted == 1 ? $"Write 's is {word}' or '{word} of s'." : $"Write '{word}(a, b)' with {Prose.Word(wanted)} subjects.");

    public static Diagnostic WrongParts(SourceSpan at, string name, string form) => new(
        "ROS0306", Severity.Error, at, $"'{name}' lacks a part, or has one too many.", $"Write it as {form}.");

    public static Diagnostic NotJoining(SourceSpan at, string word, Sort element) => new(
        "ROS0310", Severity.Error, at, $"'{word}' is not a truth about two of these ({element.InWords}).", "Name a word of two such subjects that is yes or no.");

    public static Diagnostic NotAWorth(SourceSpan at, string word, Sort element) => new(
        "ROS0313", Severity.Error, at, $"'{word}' is not a number about a set of these ({element.InWords}).", "Name a word of one subject, a set of these, that gives a number.");

    public static Diagnostic Contradiction(SourceSpan at, string first, string second) => new(
        "ROS0307", Severity.Warning, at, $"Nothing is both '{first}' and '{second}'.", "Keep one of the two words.");

    public static Diagnostic NotALook(SourceSpan at, string written, Named symbol) => new(
        "ROS0308", Severity.Error, at, $"'{written}' is {symbol.Role} and does not tell a thing.", "Use a kind, a value, a card or an adjective here.");

    public static Diagnostic BranchesDiffer(SourceSpan at, Sort first, Sort second) => new(
        "ROS0309", Severity.Error, at, $"One side is {first.InWords}, the other {second.InWords}.", "Both sides must be of one sort.");
}
