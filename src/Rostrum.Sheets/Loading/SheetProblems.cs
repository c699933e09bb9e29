using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Loading;

/// <summary>Messages about the sections of a sheet: the shape of sections (ROS08xx), names (ROS02xx), clauses that clash (ROS04xx), sources (ROS05xx).</summary>
internal static class SheetProblems
{
    public static Diagnostic UnknownKey(SourceSpan at, string key, string section, IEnumerable<string> known)
    {
        string? near = NearSpelling.Find(key, known);
        return new("ROS0201", Severity.Error, at, $"'{Prose.Clip(key)}' is not something that {Under(section)} can have.",
            near is null ? $"It can have: {KnownWords.Few(key, known.Where(k => !SheetDialect.ClauseKeys.Contains(k)), 8)}." : $"Did you mean '{near}'?")
        {
            Fix = near is null ? null : Fix.Replace(at, near),
        };
    }

    public static Diagnostic WantedEntries(SourceSpan at, string what, string? example = null) => new(
        "ROS0811", Severity.Error, at, $"Here should stand {what}, each with its name and a colon.", $"Write one a line, a little further in: '{example ?? "name: what it is"}'.");

    public static Diagnostic WantedKeys(SourceSpan at, string what, string example) => new(
        "ROS0811", Severity.Error, at, $"Here should stand {what}.", $"Write it like '{example}'.");

    public static Diagnostic WantedPlayers(SourceSpan at, string found) => new(
        "ROS0813", Severity.Error, at, $"'{Prose.Clip(found)}' does not say how many play.", "Write '2', or '2 to 4'.");

    public static Diagnostic WantedText(SourceSpan at, string what) => new(
        "ROS0812", Severity.Error, at, $"Here should stand {what}.", "Write it behind the colon, in one line.");

    public static Diagnostic WantedNumber(SourceSpan at, string found, string what) => new(
        "ROS0813", Severity.Error, at, $"'{Prose.Clip(found)}' is not a number, and {what} is one.", "Write it in digits, such as 12.");

    public static Diagnostic NumberTooSmall(SourceSpan at, string found, string what, long least) => new(
        "ROS0813", Severity.Error, at, $"'{Prose.Clip(found)}' is less than {least}, and {what} cannot be.", $"Write {least} or more, in digits.");

    public static Diagnostic NoTieBreak(SourceSpan at, string found, string? near, SourceSpan first) => new(
        "ROS0831", Severity.Error, at, $"'{Prose.Clip(found)}' does not say who comes first of equal players.",
        near is null ? "Write 'fewer', 'more', 'lower' or 'higher' and what is compared, as in 'fewer my shards'; or 'shared', or 'not modelled'." : $"Write '{near}' in place of '{first.Text}'.")
    {
        Fix = near is null ? null : Fix.Replace(first, near, FixGrade.Choice),
    };

    public static Diagnostic SeveralTieBreaks(SourceSpan at) => new(
        "ROS0831", Severity.Error, at, "Several tie-breaks stand here without brackets.", $"Write '[{Prose.Clip(at.Text)}]'.")
    {
        Fix = new Fix("put them in brackets", FixGrade.Safe, [new TextEdit(at.Part(0, 0), "["), new TextEdit(at.Part(at.Length, 0), "]")]),
    };

    public static Diagnostic NearlyRemoved(SourceSpan at, string found) => new(
        "ROS0201", Severity.Error, at, $"'{Prose.Clip(found)}' takes nothing out of the base.", "Write 'removed', or, if it is the value that is meant, put it in double quotes.")
    {
        Fix = Fix.Replace(at, "removed", FixGrade.Choice),
    };

    public static Diagnostic NeverHeld(SourceSpan at, Kind kind, string place) => new(
        "ROS0849", Severity.Error, at, $"'{Prose.Clip(place)}' never holds {kind.Plural}, so none of them can lie there at the start.", $"Name things that it holds, or let it hold {kind.Plural}.");

    public static Diagnostic SeatInTwoTeams(SourceSpan at, string seat, SourceSpan first) => new(
        "ROS0848", Severity.Error, at, $"'{Prose.Clip(seat)}' is in a team already.", "Name each seat in one team only.")
    {
        Related = [new RelatedPlace(first, "the first team that names it")],
    };

    public static Diagnostic SeatWithoutTeam(SourceSpan at, IEnumerable<string> seats) => new(
        "ROS0848", Severity.Error, at, $"{Prose.And(seats.Select(s => $"'{s}'"))} {(seats.Count() == 1 ? "is" : "are")} in no team.", "Name every seat in one team, as in 'Sun: [seat 1, seat 3]'.");

    public static Diagnostic NoDate(SourceSpan at, string found) => new(
        "ROS0505", Severity.Warning, at, $"'{Prose.Clip(found)}' is no date of the calendar.", "Write it like '3 March 2026', 'March 2026', '2026' or '2026-03-03'; it stays as it is until then.");

    public static Diagnostic OneNameTwice(SourceSpan at, string name, Named other) => new(
        "ROS0212", Severity.Error, at, $"'{name}' and '{other.Name}' are one name in singular and plural, so a slip of one letter would mean the other.", "Give one of the two another name.")
    {
        Related = other.DeclaredAt is { } first ? [new RelatedPlace(first, $"'{other.Name}' is declared here")] : [],
    };

    public static Diagnostic Missing(SourceSpan at, string owner, string key, string example) => new(
        "ROS0814", Severity.Error, at, $"'{owner}' does not say its '{key}'.", $"Add a line such as '{example}'.");

    public static Diagnostic NotReadable(SourceSpan at, string file, FolderRefusal refusal) => new(
        "ROS0815", Severity.Error, at, RefusalWords.Told(refusal, file), RefusalWords.WayOut(refusal));

    public static Diagnostic WrongFormat(SourceSpan at, string found) => new(
        "ROS0816", Severity.Error, at, $"This is rule sheet format '{Prose.Clip(found)}', and only 1 is known.", "Write 'rule sheet: 1'.")
    {
        Fix = Fix.Replace(at, "1", FixGrade.Choice),
    };

    public static Diagnostic UnknownWord(SourceSpan at, string found, string what, IEnumerable<string> known)
    {
        string? near = NearSpelling.Find(found, known);
        return new("ROS0201", Severity.Error, at, $"'{Prose.Clip(found)}' is not {what}.",
            near is not null ? $"Did you mean '{near}'?" : KnownWords.Sentence(found, known))
        {
            // What was asked for on a command line stands nowhere in the sheet.
            Fix = near is null || at.Length == 0 ? null : Fix.Replace(at, near),
        };
    }

    public static Diagnostic GrammarWordInName(SourceSpan at, string name, string word) => new(
        "ROS0211", Severity.Error, at, $"The name '{name}' holds the word '{word}', which formulas need for themselves.", "Give it a name without that word.");

    public static Diagnostic NameTaken(SourceSpan at, string name, string role, Named other) => new(
        "ROS0212", Severity.Error, at, $"'{name}' is {other.Role} already, so it cannot be {role} too.", "Give one of the two another name.")
    {
        Related = other.DeclaredAt is { } first ? [new RelatedPlace(first, $"'{other.Name}' is declared here")] : [],
    };

    public static Diagnostic BadHead(SourceSpan at, string head) => new(
        "ROS0817", Severity.Error, at, $"'{Prose.Clip(head)}' cannot be read as a name with its subjects.", "Write it like 'clash (ware v, ware w)'.");

    public static Diagnostic UnknownSubject(SourceSpan at, string sort, IEnumerable<string> known) =>
        UnknownWord(at, sort, "a kind of piece, a space, a line, 'number' or 'player'", known);

    public static Diagnostic SizeOfBoard(SourceSpan at, string found, string? near) => new(
        "ROS0818", Severity.Error, at, $"'{Prose.Clip(found)}' is not a size.",
        near is null ? "Write it like '5 across 4 up', each from 1 to 60." : $"Write '{near}'.")
    {
        Fix = near is null ? null : Fix.Replace(at, near, FixGrade.Choice),
    };

    public static Diagnostic LabelsDoNotFit(SourceSpan at, int labels, int lines, string what) => new(
        "ROS0819", Severity.Error, at, $"There {(labels == 1 ? "is" : "are")} {Prose.Count(labels, "label", "labels")} for {Prose.Count(lines, what, what + "s")}.", "Give each line one label, as in 'bay A to E'.");

    public static Diagnostic ValuesWithoutComma(SourceSpan at, string[] values) => new(
        "ROS0832", Severity.Error, at, $"'{Prose.Clip(at.Text)}' is read as one value, for no comma parts it.", $"Write '{Prose.Clip(string.Join(", ", values), 80)}'.")
    {
        Fix = Fix.Replace(at, string.Join(", ", values), FixGrade.Choice),
    };

    public static Diagnostic ValuesWithoutBrackets(SourceSpan at, string[] values) => new(
        "ROS0832", Severity.Error, at, "Several values stand here without square brackets round them.", $"Write '[{Prose.Clip(string.Join(", ", values), 80)}]'.")
    {
        Fix = Fix.Replace(at, $"[{string.Join(", ", values)}]", FixGrade.Choice),
    };

    public static Diagnostic SignsWait(SourceSpan first, string[] signs, int cells) => new(
        "ROS0213", Severity.Warning, first, $"{Prose.Count(cells, "sign", "signs")} of drawings cannot be read: nothing says yet what {Prose.And(signs)} {(signs.Length == 1 ? "means" : "mean")}.",
        "Mend the errors of the sheet first; what is still unknown then is told sign by sign.");

    public static Diagnostic LabelsWithDash(SourceSpan at, string found, string near) => new(
        "ROS0819", Severity.Error, at, $"'{Prose.Clip(found)}' does not say from which label to which.", $"Write '{near}'.")
    {
        Fix = Fix.Replace(at, near, FixGrade.Choice),
    };

    public static Diagnostic RowOfAnotherLength(SourceSpan at, int cells, int columns) => new(
        "ROS0833", Severity.Error, at, $"This row draws {Prose.Count(cells, "cell", "cells")}, and the line of labels below names {Prose.Count(columns, "column", "columns")}.",
        "Draw one cell a column: '.' for a space, '-' where there is none.");

    public static Diagnostic UnknownSign(SourceSpan at, char sign, string legend) => new(
        "ROS0213", Severity.Error, at, $"No sign '{sign}' is declared, so this cell cannot be read.", legend);

    public static Diagnostic WordInDrawing(SourceSpan at, string word, char? sign, string legend) => new(
        "ROS0213", Severity.Error, at, $"'{Prose.Clip(word)}' is a word, and in a drawing signs stand for what a piece is.", sign is null ? legend : $"Write '{sign}'. {legend}")
    {
        Fix = sign is null ? null : Fix.Replace(at, $"{sign}"),
    };

    public static Diagnostic LinesWithoutName(SourceSpan at, string found, string board, string key, string name) => new(
        "ROS0830", Severity.Error, at, $"The {found} of '{board}' have no name yet, so nothing can speak of them.", $"Add '{key}: {name}' to the board '{board}', under 'boards'.");

    public static Diagnostic EmptyPattern(SourceSpan at) => new(
        "ROS0820", Severity.Error, at, "This drawing marks nothing.", "Put at least one sign into it.");

    public static Diagnostic UnknownSource(SourceSpan at, string name, string? near, bool none) => new(
        "ROS0501", Severity.Error, at, $"No source is called '{Prose.Clip(name)}'.",
        near is not null ? $"Did you mean '{near}'?" : none ? "Declare it under 'sources', as in 'book: {title: Rulebook, pages: 12}'." : "Declare it under 'sources'.")
    {
        Fix = near is null ? null : new Fix($"write '{near}'", FixGrade.Safe, [new TextEdit(at.Part(0, name.Length), near)]),
    };

    public static Diagnostic PageInWords(SourceSpan at, string found, string near) => new(
        "ROS0501", Severity.Error, at, $"'{Prose.Clip(found)}' is more than a source and a number.", $"Write '{near}'.")
    {
        Fix = Fix.Replace(at, near),
    };

    public static Diagnostic NoSuchPage(SourceSpan at, string title, int page, int pages) => new(
        "ROS0502", Severity.Error, at, $"{title} has no page {page}; it has {Prose.Count(pages, "page", "pages")}.", $"Name a page from 1 to {pages}, or mend 'pages' of that source.");

    public static Diagnostic NoCitation(SourceSpan at, string clause, string example) => new(
        "ROS0503", Severity.Warning, at, $"'{clause}' names no page.",
        $"Add 'cite: {example}', with the source and page where the rule stands.");

    public static Diagnostic UnknownAlternative(SourceSpan at, string found, IEnumerable<string> known)
    {
        string? near = NearSpelling.Find(found, known);
        return new("ROS0504", Severity.Error, at, $"'follow' names '{Prose.Clip(found)}', which is none of the alternatives.",
            near is null ? $"They are {Prose.And(known.Select(k => $"'{k}'"))}." : $"Did you mean '{near}'?")
        {
            Fix = near is null ? null : Fix.Replace(at, near),
        };
    }

    public static Diagnostic UnknownVariant(SourceSpan at, string found, IEnumerable<string> known) =>
        UnknownWord(at, found, "a variant of this sheet", known);

    public static Diagnostic VariantsCollide(SourceSpan at, string key, string first, string second) => new(
        "ROS0401", Severity.Error, at, $"'{first}' and '{second}' both change '{key}', and the sheet does not say which comes last.",
        $"Add 'after: {first}' to '{second}', or the other way round.");

    public static Diagnostic NothingToRemove(SourceSpan at, string key) => new(
        "ROS0402", Severity.Warning, at, $"There is no '{key}' that could be removed.", "Check the spelling of the key, or leave the line out.");

    public static Diagnostic TableGap(SourceSpan at, string table, long from, long to) => new(
        "ROS0403", Severity.Warning, at, $"'{table}' says nothing for {(from == to ? $"{from}" : $"{from} to {to}")}.", "Add a row for it, or say 'beyond'.");

    public static Diagnostic LawBindsNothing(SourceSpan at, string law) => new(
        "ROS0404", Severity.Error, at, $"The law '{law}' demands nothing.", "Give it 'needs', 'forbids', 'must leave' or 'must not leave'.");

    public static Diagnostic NotYet(SourceSpan at, string what) => new(
        "ROS0405", Severity.Warning, at, $"{Prose.Sentence(what)} is understood but not used yet.", "It may stay; answers that need it say so.");

    public static Diagnostic UnknownIdiom(SourceSpan at, string name, IEnumerable<string> known, string? answering)
    {
        Diagnostic problem = UnknownWord(at, name, "an idiom of the library", known);
        return answering is null || problem.Fix is not null ? problem : problem with { Hint = $"Perhaps '{answering}' is what you want." };
    }

    public static Diagnostic IdiomTwice(SourceSpan at, string idiom, SourceSpan first) => new(
        "ROS0212", Severity.Error, at, $"'{Prose.Clip(idiom)}' is an idiom already, so this one is left out.", "Give one of the two another name.")
    {
        Related = [new RelatedPlace(first, $"'{Prose.Clip(idiom)}' is declared here")],
    };

    public static Diagnostic IdiomLacks(SourceSpan at, string idiom, string parameter, string wanted) => new(
        "ROS0821", Severity.Error, at, $"The idiom '{idiom}' needs '{parameter}', which is {wanted}.", $"Add a line '{parameter}: …'.");

    public static Diagnostic IdiomComparesAll(SourceSpan at, string idiom, string found, string bare) => new(
        "ROS0411", Severity.Error, at, $"'{Prose.Clip(found)}' says whose it is, and the idiom '{idiom}' compares what everybody has.", $"Write '{Prose.Clip(bare)}'.")
    {
        Fix = Fix.Replace(at, bare),
    };

    public static Diagnostic IdiomDoesNotTake(SourceSpan at, string idiom, string key, IEnumerable<string> known)
    {
        string? near = NearSpelling.Find(key, known);
        return new("ROS0201", Severity.Error, at, $"The idiom '{idiom}' has nothing called '{Prose.Clip(key)}'.",
            near is null ? $"It takes {Prose.And(known.Select(k => $"'{k}'"))}." : $"Did you mean '{near}'?")
        {
            Fix = near is null ? null : Fix.Replace(at, near),
        };
    }

    public static Diagnostic TwoMeanings(SourceSpan at, string clause) => new(
        "ROS0406", Severity.Error, at, $"'{clause}' has both an idiom and a formula of its own.", "Keep one of the two.");

    public static Diagnostic TwoValues(SourceSpan at, string found, string followed) => new(
        "ROS0406", Severity.Error, at, $"'is' says '{Prose.Clip(found)}', and by what the sources say it is '{Prose.Clip(followed)}'.", "Leave out 'is', or correct one of the two.");

    public static Diagnostic MoreRowsThanAllowed(SourceSpan at, string what, int limit) => new(
        "ROS0822", Severity.Error, at, $"There are more than {limit} {what}.", "Split the game, or leave some of them out.");

    public static Diagnostic NoShape(SourceSpan at, string board) => new(
        "ROS0823", Severity.Error, at, $"The board '{Prose.Clip(board)}' has no shape.", "Add 'squares: 5 across 4 up' or a drawing under 'drawn'.");

    public static Diagnostic TwoShapes(SourceSpan at, string board, string first, string second) => new(
        "ROS0823", Severity.Error, at, $"The board '{Prose.Clip(board)}' has two shapes, '{first}' and '{second}'.", $"Keep one of the two; a variant takes the other out with '{first}: removed'.");

    public static Diagnostic UnknownBoardSign(SourceSpan at, string sign) => new(
        "ROS0824", Severity.Error, at, $"'{Prose.Clip(sign)}' means nothing in the drawing of a board.", "Draw '.' for a space and '-' where there is none.");

    public static Diagnostic NoForm(SourceSpan at, string place) => new(
        "ROS0825", Severity.Error, at, $"The sheet does not say how '{Prose.Clip(place)}' holds things.", "Add 'heap of:', 'row of:', 'bag of:', 'deck of:' or 'hand of:' with what lies there.");

    public static Diagnostic BadSign(SourceSpan at, string sign, char? meant) => new(
        "ROS0826", Severity.Error, at, $"'{Prose.Clip(sign)}' cannot be a sign of drawings.",
        meant is null ? "Take one letter or mark other than a digit and . - # _ ? / | ~ + [ ]." : $"The sign stands first: '{meant}: {Prose.Clip(sign)}'.");

    public static Diagnostic NoNameColumn(SourceSpan at, string rows) => new(
        "ROS0827", Severity.Error, at, $"The table of {rows} has no column 'name'.", $"Call the column with the names of the {rows} 'name'.");

    public static Diagnostic NoPoints(SourceSpan at, string clause) => new(
        "ROS0828", Severity.Error, at, $"The clause '{Prose.Clip(clause)}' gives no points.", "Add 'points:', or an idiom.");

    public static Diagnostic BindsNothing(SourceSpan at, string law) => new(
        "ROS0829", Severity.Error, at, $"The law '{Prose.Clip(law)}' does not say which action it binds.", "Add 'binds:' with the name of an action.");

    public static Diagnostic IdiomDoesNotScore(SourceSpan at, string idiom, bool isLaw) => new(
        "ROS0407", Severity.Error, at, $"The idiom '{idiom}' gives no points.",
        isLaw ? "Use it under 'laws', or take an idiom that scores." : "Use it for a word or a condition, or take an idiom that scores.");

    public static Diagnostic IdiomGivesNoValue(SourceSpan at, string idiom, bool isLaw) => new(
        "ROS0408", Severity.Error, at, isLaw ? $"The idiom '{idiom}' is a law and gives no condition." : $"The idiom '{idiom}' scores and gives no condition.",
        $"Use it under '{(isLaw ? "laws" : "score")}', or take an idiom that gives a condition.");

    public static Diagnostic IdiomIsNoLaw(SourceSpan at, string idiom, bool scores) => new(
        "ROS0409", Severity.Error, at, scores ? $"The idiom '{idiom}' scores and forbids nothing." : $"The idiom '{idiom}' is a condition and does not say when it is asked.",
        scores ? "Use it under 'score', or take an idiom that is a law." : $"Write 'needs: {{idiom: {idiom}, …}}', or 'must leave' for what must hold afterwards.");

    public static Diagnostic ActionChoosesNone(SourceSpan at, string idiom, string action, string wanted) => new(
        "ROS0410", Severity.Error, at, $"The idiom '{idiom}' speaks of {wanted} that the action chooses, and '{action}' chooses none.",
        $"Give '{action}' such a choice, or bind an action that has one.");

    // `a sheet` stands for itself; the name of a section for what stands in it.
    private static string Under(string section) => section.Contains(' ', StringComparison.Ordinal) && section != "open questions" ? section : $"an entry under '{section}'";
}
