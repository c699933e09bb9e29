using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Loading;

/// <summary>Messages about boards beyond squares, and about what a board says of its spaces.</summary>
internal static class BoardProblems
{
    public static Diagnostic SizeOfHexes(SourceSpan at, string found, string? near) => new(
        "ROS0834", Severity.Error, at, $"'{Prose.Clip(found)}' is not a size of a board of hexes.",
        near is null ? "Write 'rows of 3 4 5 4 3', 'radius 2' or '6 across 4 up', with at most 60 rows and 60 in a row." : $"Write '{near}'.")
    {
        Fix = near is null ? null : Fix.Replace(at, near, FixGrade.Choice),
    };

    public static Diagnostic LinesWithoutBrackets(SourceSpan at, string near) => new(
        "ROS0844", Severity.Error, at, "Several lines of points stand here without brackets.", $"Write '{Prose.Clip(near)}', or one line each behind '- '.")
    {
        Fix = Fix.Replace(at, near, FixGrade.Choice),
    };

    public static Diagnostic NearlyOnePoint(SourceSpan at, string name, string other) => new(
        "ROS0845", Severity.Warning, at, $"'{Prose.Clip(name)}' is named once only, and '{Prose.Clip(other)}' is another point.", $"If they are one, write '{Prose.Clip(other)}'; if not, all is well, and a second line or a table says so too.");

    public static Diagnostic RowsDoNotInterlock(SourceSpan at, int first, int second) => new(
        "ROS0835", Severity.Error, at, $"A row of {first} and a row of {second} do not interlock, for rows are centred and set off by half a step.",
        "Let each row have one hex more or less than the one before, or draw the board under 'drawn'.");

    public static Diagnostic RowNotSetOff(SourceSpan row) => new(
        "ROS0835", Severity.Error, row, "This row is not set off by half a step from the row above, so its hexes touch nothing there.", "Begin it one blank further in or further out.");

    public static Diagnostic PatternNotSetOff(SourceSpan row) => new(
        "ROS0842", Severity.Error, row, "The boards of this game are made of hexes, and this row of the drawing is not set off by half a step from the row above.",
        "Begin it one blank further in or out; on one line begin it with '~', as in 'r . / ~ r'.");

    public static Diagnostic PatternSetOff(SourceSpan row) => new(
        "ROS0842", Severity.Error, row, "This row of the drawing is set off by half a step, which only rows of hexes are; the boards of this game are made of squares.",
        "Let all rows begin in one place; '.' stands for a space with anything on it, '-' for one that does not belong to the drawing.");

    public static Diagnostic UnknownShapeSign(SourceSpan at, string found) => new(
        "ROS0843", Severity.Error, at, $"'{Prose.Clip(found)}' means nothing in the shape of a piece.", "Draw '.' for each space that the piece covers and '-' for the gaps, as in '. . / . -'.");

    public static Diagnostic SizeOfShape(SourceSpan at, int cells, int most) => new(
        "ROS0843", Severity.Error, at, $"This shape covers {Prose.Count(cells, "space", "spaces")}.", cells < 2 ? "A piece on one space needs no shape: take the line away." : $"At most {most} spaces are possible.");

    public static Diagnostic CannotWrap(SourceSpan at, BoardLayout layout) => new(
        "ROS0836", Severity.Error, at,
        layout == BoardLayout.Points ? "A map of points cannot come round by itself." : "These rows of hexes do not come round: they must be equally long, without gaps, set off half a step by turns, and their number even.",
        layout == BoardLayout.Points ? "End a line with the point where it began." : "Take a size such as '6 across 4 up', or leave out 'wraps'.");

    public static Diagnostic SpaceInTwoAreas(SourceSpan at, string space, string first, string second) => new(
        "ROS0837", Severity.Error, at, $"'{space}' lies in '{first}' already, so it cannot lie in '{second}' too.", "Take it out of one of the two, or make two kinds of areas.");

    public static Diagnostic SpaceTwice(SourceSpan at, string name, SourceSpan first) => new(
        "ROS0838", Severity.Error, at, $"The board has two spaces called '{Prose.Clip(name)}'.", "Give one of the two another name.")
    {
        Related = first == at ? [] : [new RelatedPlace(first, "the first of them")],
    };

    public static Diagnostic LabelTwice(SourceSpan at, string label, string line) => new(
        "ROS0838", Severity.Error, at, $"Two {line}s are labelled '{Prose.Clip(label)}', so two spaces would have one name.", "Give each its own label.");

    public static Diagnostic SpaceWithoutName(SourceSpan at) => new(
        "ROS0838", Severity.Error, at, "This row of the map has no name, so nothing can speak of its space.", "Write a name into the column 'name', or take the row out.");

    public static Diagnostic ValueTwice(SourceSpan at, string space, long first, long second) => new(
        "ROS0841", Severity.Error, at, $"'{Prose.Clip(space)}' bears {first} already, so it cannot bear {second} too.", "Keep one of the two, or give the other numbers a name of their own.");

    public static Diagnostic HardlyANumber(SourceSpan at, string found, string column) => new(
        "ROS0847", Severity.Warning, at, $"'{Prose.Clip(found)}' is no number, so the column '{Prose.Clip(column)}' names areas, although most of it is numbers.",
        "Write a number, or leave the cell empty; if these are areas, call them by words.");

    public static Diagnostic PointTwiceInLine(SourceSpan at, string name) => new(
        "ROS0838", Severity.Error, at, $"'{Prose.Clip(name)}' stands twice in this line.", "Only a closed line names a point twice, as its first and as its last.");

    public static Diagnostic NextToItself(SourceSpan at, string name) => new(
        "ROS0839", Severity.Error, at, $"'{Prose.Clip(name)}' is said to lie next to itself.", "Take its own name out of 'next to'.");

    public static Diagnostic NoLink(SourceSpan at, string found, string board) => new(
        "ROS0840", Severity.Error, at, $"'{Prose.Clip(found)}' does not join two spaces of '{board}'.", "Write two names with a dash between them, as in 'a1-b6'.");

    public static Diagnostic LinkedTwice(SourceSpan at, string space, string first, string second) => new(
        "ROS0840", Severity.Error, at, $"'{space}' is linked with '{first}' already, so it cannot be linked with '{second}' too.", "Keep one of the two, or give the other link another name.");

    public static Diagnostic RegionsOfEachPlayer(SourceSpan at, string board) => new(
        "ROS0846", Severity.Error, at, $"Each player has a '{Prose.Clip(board)}' of his own, so no part of it is a region of one player.",
        $"Say 'my {Prose.Clip(board)}' and 'their {Prose.Clip(board)}', call parts of it 'areas', or take 'of: each player' away where all share one board.");

    public static Diagnostic RowsOfValues(SourceSpan at, int drawn, int rows) => new(
        "ROS0841", Severity.Error, at, $"This drawing has {Prose.Count(drawn, "row", "rows")} of numbers, and the board has {Prose.Count(rows, "row", "rows")}.", "Draw every row of the board, with '.' for a space without a number.");

    public static Diagnostic ValuesDoNotFit(SourceSpan row, int cells, int spaces) => new(
        "ROS0841", Severity.Error, row, $"This row shows {Prose.Count(cells, "number", "numbers")} for {Prose.Count(spaces, "space", "spaces")}.", "Draw one cell a space: its number, or '.' where it has none.");
}
