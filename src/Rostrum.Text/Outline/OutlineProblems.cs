using System.Collections.Immutable;

namespace Rostrum.Text.Outline;

/// <summary>What can be wrong with the outline of a file. One method per id; each has a page in <c>docs/diagnostics</c>.</summary>
internal static class OutlineProblems
{
    public static Diagnostic TabIndentation(SourceSpan at, int lines, ImmutableArray<TextEdit> edits) => new(
        "ROS0101",
        Severity.Error,
        at,
        $"{(lines == 1 ? "This line is" : $"This line and {Prose.Count(lines - 1, "more line", "more lines")} are")} indented with {(at.Text.Contains('\t', StringComparison.Ordinal) ? "tabs" : "blanks that are not the plain one")}.",
        "Indent with plain blanks, two for each level.")
    {
        Fix = new Fix("indent with blanks", FixGrade.Safe, edits),
    };

    public static Diagnostic MisfitIndentation(SourceSpan words, int blanks, SourceSpan? above, Fix? fix) => new(
        "ROS0102",
        Severity.Error,
        words,
        $"'{Prose.Clip(words.Text)}' is indented by {Prose.Count(blanks, "blank", "blanks")}, like no line above it that it could belong to.",
        "Indent it like the lines beside it, or deeper than the line that it belongs to.")
    {
        Fix = fix,
        Related = above is { } place ? [new RelatedPlace(place, "the lines beside it begin like this one")] : [],
    };

    public static Diagnostic LineWithoutKey(SourceSpan words) => new(
        "ROS0103",
        Severity.Error,
        words,
        $"'{Prose.Clip(words.Text)}' stands alone: a line here is a name, a colon and what belongs to it.",
        "Write 'name: …'; if it goes on from the line above, indent it deeper than that line.");

    public static Diagnostic StrayItem(SourceSpan words) => new(
        "ROS0103",
        Severity.Error,
        words,
        $"'{Prose.Clip(words.Text)}' is a list item, but the lines around it are names with a colon.",
        "Indent it below the name that the list belongs to, or write 'name: …'.");

    public static Diagnostic LineBesideItems(SourceSpan words) => new(
        "ROS0103",
        Severity.Error,
        words,
        $"'{Prose.Clip(words.Text)}' stands in a list but does not begin with '- '.",
        "Begin it with '- '; if it belongs to the item above, indent it deeper.")
    {
        Fix = new Fix("begin it with '- '", FixGrade.Choice, [new TextEdit(words.Part(0, 0), "- ")]),
    };

    public static Diagnostic MissingCloser(SourceSpan opener, char closer, Fix? fix) => new(
        "ROS0104",
        Severity.Error,
        opener,
        $"The '{opener.Text}' that opens here is never closed.",
        $"Write '{closer}' where it ends.")
    {
        Fix = fix,
    };

    public static Diagnostic WrongCloser(SourceSpan at, SourceSpan opener, char closer) => new(
        "ROS0104",
        Severity.Error,
        at,
        $"'{at.Text}' closes something that was opened with '{opener.Text}'.",
        $"Write '{closer}'.")
    {
        Fix = Fix.Replace(at, closer.ToString(), FixGrade.Choice),
        Related = [new RelatedPlace(opener, "opened here")],
    };

    public static Diagnostic MissingQuote(SourceSpan opener) => new(
        "ROS0105",
        Severity.Error,
        opener,
        $"The quote {opener.Text} that opens here is never closed.",
        $"Write {opener.Text} where the quoted words end.");

    public static Diagnostic OwnedSign(SourceSpan words, Fix fix) => new(
        "ROS0106",
        Severity.Error,
        words,
        $"'{Prose.Clip(words.Text)}' begins with '{words.Text[0]}', which has a meaning of its own at the beginning of a text.",
        "Put it in double quotes.")
    {
        Fix = fix,
    };

    public static Diagnostic MergeKey(SourceSpan key) => new(
        "ROS0107",
        Severity.Error,
        key,
        "'<<' cannot bring in other lines here.",
        "Write the lines out; what differs between two forms of a game is a variant.");

    public static Diagnostic DuplicateKey(SourceSpan second, SourceSpan first, Fix? removal) => new(
        "ROS0108",
        Severity.Error,
        second,
        $"'{Prose.Clip(second.Text)}' stands here a second time; only the first counts.",
        "Put both together, or give one of them another name.")
    {
        Fix = removal,
        Related = [new RelatedPlace(first, "first written here")],
    };

    public static Diagnostic TooDeep(SourceSpan at) => new(
        "ROS0109",
        Severity.Error,
        at,
        $"More than {OutlineReader.DeepestLevel} levels stand inside each other here; what lies deeper is left out.",
        "Close what is open, or give a part a name and write it on its own.");

    public static Diagnostic OneBlankBeforeComment(SourceSpan sign) => new(
        "ROS0110",
        Severity.Warning,
        sign,
        "From this '#' on, the line is a comment.",
        "If that is meant, put two blanks before it; if not, put the whole text in double quotes.")
    {
        Fix = new Fix("put two blanks before the comment", FixGrade.Choice, [new TextEdit(sign.Part(0, 0), " ")]),
    };

    public static Diagnostic MissingBlank(SourceSpan colon, string key)
    {
        string content = colon.Source.Content;
        return colon.End < content.Length && char.IsWhiteSpace(content[colon.End]) ? OtherBlank(colon.Source.Span(colon.End, 1), key) : NoBlank(colon, key);
    }

    private static Diagnostic NoBlank(SourceSpan colon, string key) => new(
        "ROS0111",
        Severity.Error,
        colon,
        $"Behind '{Prose.Clip(key)}:' a blank is missing.",
        "Put a blank behind the colon.")
    {
        Fix = new Fix("put a blank behind the colon", MayBeMeant(colon) ? FixGrade.Choice : FixGrade.Safe, [new TextEdit(colon.Part(1, 0), " ")]),
    };

    private static Diagnostic OtherBlank(SourceSpan blank, string key) => new(
        "ROS0111",
        Severity.Error,
        blank,
        $"Behind '{Prose.Clip(key)}:' stands a blank that is not the plain one ({(blank.Text == "\u00A0" ? "a no-break space" : $"number {(int)blank.Text[0]:X4}")}).",
        "Put a plain blank in its place.")
    {
        Fix = new Fix("put a plain blank in its place", FixGrade.Safe, [new TextEdit(blank, " ")]),
    };

    public static Diagnostic UnreadableCharacter(SourceSpan at, Fix removal) => new(
        "ROS0112",
        Severity.Error,
        at,
        $"A character that nobody can see stands here (number {(int)at.Text[0]:X4}).",
        "Delete it.")
    {
        Fix = removal,
    };

    public static Diagnostic SecondDocument(SourceSpan sign) => new(
        "ROS0113",
        Severity.Error,
        sign,
        $"'{sign.Text}' ends the file here; what follows is not read.",
        "Keep one thing a file: move what follows into a file of its own, or delete this line.");

    public static Diagnostic Directive(SourceSpan words) => new(
        "ROS0114",
        Severity.Error,
        words,
        $"'{Prose.Clip(words.Text)}' says nothing to Rostrum.",
        "Delete the line.")
    {
        Fix = new Fix("delete the line", FixGrade.Safe, [new TextEdit(words, "")]),
    };

    public static Diagnostic PieceWithoutColon(SourceSpan words) => new(
        "ROS0115",
        Severity.Error,
        words,
        $"'{Prose.Clip(words.Text)}' stands in braces without a name and a colon.",
        "Write '{name: …}' for things with names, or '[…]' for a list.");

    public static Diagnostic TextAfterClosing(SourceSpan words, SourceSpan closed) => new(
        "ROS0116",
        Severity.Error,
        words,
        $"'{Prose.Clip(words.Text)}' stands behind {Prose.Clip(closed.Text, 20)}, which is already complete.",
        "Put the whole text in quotes, or delete what is too much.")
    {
        Related = [new RelatedPlace(closed, "this is complete")],
    };

    public static Diagnostic SecondColon(SourceSpan colon, string value, Fix fix) => new(
        "ROS0117",
        Severity.Error,
        colon,
        $"'{Prose.Clip(value)}' holds a second colon, so it could be read in two ways.",
        "Put what stands behind the first colon in double quotes, or write it on lines of its own.")
    {
        Fix = fix,
    };

    public static Diagnostic ItemOnKeyLine(SourceSpan words) => new(
        "ROS0118",
        Severity.Error,
        words,
        $"'{Prose.Clip(words.Text)}' looks like a list item, but a list begins on the line below its name.",
        "Write it on the next line, indented; if it is meant as a text, put it in double quotes.")
    {
        Fix = new Fix("put it in double quotes", FixGrade.Choice, [new TextEdit(words, OutlineQuotes.Quote(words.Text))]),
    };

    public static Diagnostic KeyInsideProse(SourceSpan key, SourceSpan prose) => new(
        "ROS0119",
        Severity.Warning,
        key,
        $"'{Prose.Clip(key.Text)}' is deeper than the sentence above it and therefore part of that sentence.",
        "If it is meant to stand by itself, indent it like the line above.")
    {
        Related = [new RelatedPlace(prose, "the sentence begins here")],
    };

    public static Diagnostic EmptyPiece(SourceSpan comma) => new(
        "ROS0120",
        Severity.Error,
        comma,
        "Nothing stands before this comma.",
        "Delete the comma, or write what is missing.")
    {
        Fix = new Fix("delete the comma", FixGrade.Choice, [new TextEdit(comma, "")]),
    };

    public static Diagnostic BadEscape(SourceSpan at) => new(
        "ROS0121",
        Severity.Error,
        at,
        $"'{at.Text}' means nothing inside double quotes.",
        "Write '\\\\' for a backslash, or use single quotes.")
    {
        Fix = new Fix("write a backslash", FixGrade.Safe, [new TextEdit(at.Part(0, 1), "\\\\")]),
    };

    public static Diagnostic MissingColon(SourceSpan words, FixGrade? grade) => new(
        "ROS0122",
        Severity.Error,
        words,
        $"Behind '{Prose.Clip(words.Text)}' a colon is missing: deeper lines belong to it.",
        "Put a colon at the end of the line.")
    {
        Fix = grade is { } known ? new Fix("put a colon at the end of the line", known, [new TextEdit(words.Part(words.Length, 0), ":")]) : null,
    };

    public static Diagnostic MissingComma(SourceSpan key, SourceSpan value) => new(
        "ROS0123",
        Severity.Error,
        key,
        $"Before '{Prose.Clip(key.Text)}:' a comma is missing.",
        $"Write '{Prose.Clip(value.Text)}, {Prose.Clip(key.Text)}: …'; if one text is meant, put it in double quotes.")
    {
        Fix = new Fix("put a comma before it", FixGrade.Choice, [new TextEdit(value.Part(value.Length, 0), ",")]),
    };

    /// <summary>A key, inside braces or at the beginning of a line, whose colon is lost.</summary>
    public static Diagnostic LostColon(SourceSpan words) => new(
        "ROS0122", Severity.Error, words, $"Behind '{Prose.Clip(words.Text)}' a colon is missing.", $"Write '{Prose.Clip(words.Text)}: …'.")
    {
        Fix = new Fix("put a colon behind it", FixGrade.Choice, [new TextEdit(words.Part(words.Length, 0), ":")]),
    };

    public static Diagnostic NoName(SourceSpan colon) => new(
        "ROS0126", Severity.Error, colon, "Before this colon a name is missing.", "Write the name of what stands behind the colon, as in 'says: …'.");

    public static Diagnostic LostName(SourceSpan colon, string name) => NoName(colon) with
    {
        Hint = $"Perhaps '{name}' belongs there: '{name}: …'.",
        Fix = new Fix($"write '{name}'", FixGrade.Choice, [new TextEdit(colon.Part(0, 0), name)]),
    };

    public static Diagnostic MisplacedComma(SourceSpan at, string meant) => new(
        "ROS0124", Severity.Error, at, $"In '{Prose.Clip(at.Text)}' the comma stands at the wrong place.", $"Write '{Prose.Clip(meant)}'.")
    {
        Fix = Fix.Replace(at, meant, FixGrade.Choice),
    };

    public static Diagnostic LostComma(SourceSpan words, SourceSpan blank) => new(
        "ROS0123", Severity.Error, words, $"Before '{Prose.Clip(words.Text)}' a comma is missing.", "Put a comma between the two parts.")
    {
        Fix = new Fix("put a comma before it", FixGrade.Choice, [new TextEdit(blank.Part(0, 0), ",")]),
    };

    public static Diagnostic WordTwice(SourceSpan at, string word) => new(
        "ROS0125", Severity.Error, at, $"'{Prose.Clip(word)}' stands here twice.", "Take one of the two out.")
    {
        Fix = Fix.Replace(at, word, FixGrade.Choice),
    };

    public static Diagnostic LostSign(SourceSpan spot, SourceSpan partner, char sign) => new(
        "ROS0104", Severity.Error, partner, $"This '{partner.Text}' has no '{sign}' that belongs to it.", $"Write '{sign}' {(sign is '(' or '[' or '{' ? "where the part begins" : "where the part ends")}.")
    {
        Fix = new Fix($"write '{sign}'", FixGrade.Choice, [new TextEdit(spot, $"{sign}")]),
    };

    public static Diagnostic WrongIndentation(SourceSpan words, SourceSpan blanks, int meant) => new(
        "ROS0102", Severity.Error, words, $"'{Prose.Clip(words.Text)}' is indented by {Prose.Count(blanks.Length, "blank", "blanks")}, and what stands around it asks for {meant}.",
        $"Indent it by {Prose.Count(meant, "blank", "blanks")}.")
    {
        Fix = new Fix($"indent it by {meant}", FixGrade.Choice, [new TextEdit(blanks, new string(' ', meant))]),
    };

    // Before a '#' the blank would make a comment of what follows; between digits the colon belongs to a time.
    private static bool MayBeMeant(SourceSpan colon)
    {
        string content = colon.Source.Content;
        bool betweenDigits = colon.Start > 0 && char.IsAsciiDigit(content[colon.Start - 1]) && colon.End < content.Length && char.IsAsciiDigit(content[colon.End]);
        return betweenDigits || (colon.End < content.Length && content[colon.End] == '#');
    }
}
