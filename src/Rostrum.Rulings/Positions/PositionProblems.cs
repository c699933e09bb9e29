using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <summary>Messages about the shape of a position (ROS0131 to ROS0149). One method per id; each has a page in <c>docs/diagnostics</c>.</summary>
internal static partial class PositionProblems
{
    public static Diagnostic WantedEntries(SourceSpan at, string what, string example) => new(
        "ROS0131", Severity.Error, at, $"Here should stand {what}, each with its name and a colon.", $"Write one a line, a little further in: '{example}'.");

    public static Diagnostic EmptyFile(SourceSpan at) => new(
        "ROS0131", Severity.Warning, at, "This position says nothing: no place of it is given.", "Write what lies where, such as 'seat 1:' with the places of that seat below; or take the file away.");

    public static Diagnostic WantedDrawing(SourceSpan at, string board, string? blank) => new(
        "ROS0131", Severity.Error, at, $"Here should stand a drawing of {board}, or its spaces, each with its name and a colon.",
        blank is null ? "Write one space a line, a little further in." : $"Draw it like this, with signs in place of the dots:\n{blank}");

    public static Diagnostic WantedContent(SourceSpan at, string place) => new(
        "ROS0132", Severity.Error, at, $"This does not say what lies in {place}.", "Write a number, a list such as '[iron jug, 2 ash bowls]', 'nothing', or '?' where it is not given.");

    public static Diagnostic LineTwice(SourceSpan label, string line, SourceSpan first) => new(
        "ROS0133", Severity.Error, label, $"{Prose.Sentence(line)} is drawn here a second time; only the first counts.", "Give each line of the drawing its own label.")
    {
        Related = [new RelatedPlace(first, "first drawn here")],
    };

    public static Diagnostic LinesMissing(SourceSpan drawing, IReadOnlyCollection<string> lines, string board) => new(
        "ROS0134", Severity.Error, drawing, $"This drawing leaves out {Prose.And(lines)} of {board}.", "Draw every line of the board; '?' stands where a space is not given.");

    public static Diagnostic WrongCellCount(SourceSpan row, int cells, int wanted, string board) => new(
        "ROS0135", Severity.Error, row, $"This row draws {Prose.Count(cells, "cell", "cells")}, and {board} is {Prose.Count(wanted, "column", "columns")} wide.",
        "Draw one cell a column: '.' where it is free, '-' where there is no space, '?' where it is not given.");

    public static Diagnostic WrongRowCount(SourceSpan drawing, int rows, int wanted, string board) => new(
        "ROS0135", Severity.Error, drawing, $"This drawing has {Prose.Count(rows, "row", "rows")}, and {board} has {wanted}.",
        "Begin each row with its label, or draw as many rows as the board has.");

    public static Diagnostic WrongHexCount(SourceSpan row, int cells, string line, int wanted) => new(
        "ROS0135", Severity.Error, row, $"This row draws {Prose.Count(cells, "cell", "cells")}, and {line} has {Prose.Count(wanted, "place", "places")}, holes included.",
        "Draw one cell a hex: '.' where it is free, '#' for a hole, '?' where it is not given.");

    public static Diagnostic RulerOnHexes(SourceSpan ruler, string board) => new(
        "ROS0157", Severity.Error, ruler, $"{Prose.Sentence(board)} is made of hexes, which have no columns, so this line of labels means nothing.", "Take the line that begins with '/' away; each row begins with its label.");

    public static Diagnostic CannotBeDrawn(SourceSpan at, string board, string space) => new(
        "ROS0158", Severity.Error, at, $"{Prose.Sentence(board)} is a map, which has no rows to draw.", $"List its spaces, each with what lies there, as in '{space}: …'; what is left out is empty.");

    public static Diagnostic OwnedByNobody(SourceSpan at, Kind kind) => new(
        "ROS0160", Severity.Warning, at, $"This says whose the {kind.Name} is, and in the sheet {kind.Plural} belong to nobody.",
        $"Where each player has some, write 'each player:' in place of 'count:' at '{kind.Name}', under 'pieces'; until then one that is taken from the supply is nobody's.");

    public static Diagnostic NoParts(SourceSpan at, Kind kind, int cells, int size, string example) => new(
        "ROS0159", Severity.Error, at, $"{Prose.Count(cells, "space shows", "spaces show")} {Prose.A(kind.Name)}, and they cannot be parted into {kind.Plural}, each of which lies on {size}.",
        $"Draw it on every space on which it lies, or list the spaces: '{example}'.");

    public static Diagnostic SeveralParts(SourceSpan at, Kind kind, string example) => new(
        "ROS0159", Severity.Error, at, $"The spaces that show {Prose.A(kind.Name)} can be parted into {kind.Plural} in several ways.", $"List the board, with all spaces of a piece in one line: '{example}'.");

    public static Diagnostic NotOfThatShape(SourceSpan at, string spaces, string thing) => new(
        "ROS0159", Severity.Error, at, $"{Prose.Sentence(thing)} does not lie on {spaces}: that is not its shape.", "Name the spaces of one way to lay it, or a single space for a piece without a shape.");

    public static Diagnostic NoSpaceThere(SourceSpan cell, string space, string board, FixGrade grade) => new(
        "ROS0136", Severity.Error, cell, $"{Prose.Sentence(board)} has no space {space}, so nothing can be drawn there.",
        "Write '-'; if another form of the board is meant, name it under 'variants'.")
    {
        Fix = Fix.Replace(cell, "-", grade),
    };

    public static Diagnostic SpaceIsThere(SourceSpan cell, string space, string board) => new(
        "ROS0137", Severity.Error, cell, $"'{cell.Text}' says that there is no {space}, but {board} has it.",
        "Write '.' where it is free or '?' where it is not given; if another form of the board is meant, name it under 'variants'.")
    {
        Fix = Fix.Replace(cell, ".", FixGrade.Choice),
    };

    public static Diagnostic HoleElsewhere(SourceSpan cells, IReadOnlyCollection<string> holes, string board) => new(
        "ROS0137", Severity.Error, cells, $"The hole of {board} in this row is {Prose.And(holes)}, and it is drawn elsewhere.", "Draw one cell a hex from the left, with '#' at the hole.");

    public static Diagnostic TooManyInSpace(SourceSpan at, string space, int things, int most) => new(
        "ROS0138", Severity.Warning, at, $"{Prose.Count(things, "thing lies", "things lie")} on {space}, which holds at most {most}.", "No law allows such a stack; the answers hold for it all the same.");

    public static Diagnostic SpaceTwice(SourceSpan at, string space, SourceSpan first) => new(
        "ROS0139", Severity.Error, at, $"{space} stands here a second time; only the first counts.", "Put both together as a list, lowest first, or correct one of the two.")
    {
        Related = [new RelatedPlace(first, "first written here")],
    };

    public static Diagnostic DoNotGoTogether(SourceSpan at, string one, string other) => new(
        "ROS0140", Severity.Error, at, $"No single thing is both {one} and {other}.", "Keep one of the two; for two things join them with '+' in a drawing or with a comma in a list.");

    public static Diagnostic MoreThanThereAre(SourceSpan at, string what, long here, long most, string whose) => new(
        "ROS0141", Severity.Warning, at, $"This position holds {here} {what}, and {(most == 0 ? "there are none" : $"there {(most == 1 ? "is" : "are")} only {most}")}{whose}.",
        "Such a position cannot be laid with one copy of the game; the answers hold all the same.");

    public static Diagnostic CardTwice(SourceSpan at, string card, int count, SourceSpan first) => new(
        "ROS0142", Severity.Warning, at, $"'{card}' lies here once more, and there {(count == 1 ? "is only one" : $"are only {count}")}.",
        "Take one of them away; the answers hold all the same.")
    {
        Related = [new RelatedPlace(first, "it lies here already")],
    };

    public static Diagnostic SeatBeyond(SourceSpan at, int seat, int most, string because) => new(
        "ROS0143", Severity.Error, at, $"There is no seat {seat}: {because}.", most == 1 ? "There is only seat 1." : $"Name a seat from 1 to {most}.");

    public static Diagnostic PlayersOutside(SourceSpan at, int players, string allowed) => new(
        "ROS0143", Severity.Warning, at, $"This position seats {Prose.Count(players, "player", "players")}, and the game is for {allowed}.", "Mend 'players', or take it as a hypothetical.");

    public static Diagnostic SlotCount(SourceSpan at, string row, int slots, int found, string noun) => new(
        "ROS0144", Severity.Error, at, $"{Prose.Sentence(row)} has {Prose.Count(slots, noun, noun + "s")}, and this gives {found}.",
        "Give one entry for each, from left to right; 'nothing' where it is empty, '?' where it is not given.");

    public static Diagnostic MarkValue(SourceSpan at, string found, string mark, string wanted) => new(
        "ROS0145", Severity.Error, at, $"'{Prose.Clip(found)}' cannot be the value of '{mark}', which holds {wanted}.", $"Write {wanted}, or '?' where it is not given.");

    public static Diagnostic TooMany(SourceSpan at, int most) => new(
        "ROS0146", Severity.Error, at, $"More than {most} things are more than a position can hold.", "Check the number.");

    public static Diagnostic WantedNumber(SourceSpan at, string found, string what) => new(
        "ROS0146", Severity.Error, at, $"'{Prose.Clip(found)}' is not a number that {what} can be.", "Write it in digits, such as 2.");

    public static Diagnostic NotHeldHere(SourceSpan at, string thing, string place, IEnumerable<Kind> holds) => new(
        "ROS0147", Severity.Error, at, $"{Prose.Sentence(place)} holds {Prose.And(holds.Select(k => k.Plural))}, and this is {Prose.A(thing)}.", "Name it where it lies.");

    public static Diagnostic ExpectationShape(SourceSpan at, string what, string example) => new(
        "ROS0148", Severity.Error, at, $"This does not say {what}.", $"Write it like '{example}'.");

    public static Diagnostic KindNotSaid(SourceSpan at, string number, string place, IEnumerable<Kind> may) => new(
        "ROS0149", Severity.Warning, at, $"'{number}' does not say of what, and {place} may hold {Prose.Or(may.Select(k => k.Plural))}.",
        $"Write '{number} {may.First().Plural}'; where it is not known, write '{number} things'.");
}
