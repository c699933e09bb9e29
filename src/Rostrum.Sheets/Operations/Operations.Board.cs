namespace Rostrum.Sheets.Model;

/// <content>Properties of things and places, the geometry of boards.</content>
public static partial class Operations
{
    private static Operation[] Properties() =>
    [
        new(Op.TopOf, "top", OperationForm.Noun, [Value("space", Sort.Space)], "a thing", "The topmost thing on a space; nothing where it is empty.")
        {
            Reads = Reads.Contents, Example = Ex("top of A1 is a plate", "yes"), Refused = Ex("top of 3", "ROS0302"),
        },
        new(Op.HeightOf, "height", OperationForm.Noun, [Value("space", Sort.Space)], "a number", "How many things lie on a space.")
        {
            Reads = Reads.Contents, Example = Ex("height of A1", "1"), Refused = Ex("height of 3", "ROS0302"),
        },
        new(Op.OwnerOf, "owner", OperationForm.Noun, [Value("thing", Sort.Any)], "a player", "Whose thing, space or place it is; nothing where it is nobody's.")
        {
            Reads = Reads.Contents, Example = Ex("owner of A1 is me", "yes"), Refused = Ex("owner of 3", "ROS0302"),
        },
        new(Op.PlaceOfThing, "place", OperationForm.Noun, [Value("thing", Sort.Thing)], "a space, slot or place", "Where a thing is.")
        {
            Reads = Reads.Contents, Example = Ex("place of top of A1 is A1", "yes"), Refused = Ex("place of 3", "ROS0302"),
        },
        new(Op.FaceOf, "face", OperationForm.Noun, [Value("die", Sort.Thing)], "a value", "What a die shows.")
        {
            Reads = Reads.Contents, Example = Ex("count(d in fire dice where face of d is crescent)", "not given"), Refused = Ex("face of 3", "ROS0302"),
        },
        new(Op.AnchorOf, "anchor", OperationForm.Noun, [Value("fit", Sort.Fit)], "a space", "The space in brackets of a drawing that fits.")
        {
            Reads = Reads.Geometry, Example = Ex("any(f in fits(picture of First order, my field) where anchor of f is A2)", "yes"), Refused = Ex("anchor of A1", "ROS0302"),
        },
    ];

    private static Operation[] Geometry() =>
    [
        Near(Op.NeighboursOf, "neighbours", "The spaces that touch it, in the way that the board says.", "count(neighbours of B2)", "4"),
        Near(Op.SidesOf, "sides", "The spaces that share a side with it.", "count(sides of A1)", "2"),
        Near(Op.CornersOf, "corners", "The spaces that share only a corner with it.", "count(corners of A1)", "1"),
        new(Op.EdgeOf, "edge", OperationForm.Noun, [Value("set", Spaces)], "a set of spaces", "The spaces outside a set that touch it.")
        {
            Reads = Reads.Geometry, Mask = MaskForm.Shift, Telling = Telling.Elements, Example = Ex("count(edge of (A1, A2))", "3"), Refused = Ex("edge of 3", "ROS0302"),
        },
        new(Op.RimOf, "rim", OperationForm.Noun, [Value("board", Sort.Place)], "a set of spaces", "The spaces of a board that lack a neighbour on the outside, where an inner space has one; a hole inside the board is not outside.")
        {
            Reads = Reads.Geometry, Mask = MaskForm.Constant, Telling = Telling.Elements, Example = Ex("count(rim of my field)", "8"), Refused = Ex("rim of 3", "ROS0302"),
        },
        new(Op.Step, "below", OperationForm.Noun, [Value("space", Sort.Space)], "a space", "The space one step away: above, below, left of, right of on an upright board; north, south, east, west, northeast … of on a flat one; nothing past the edge.")
        {
            Reads = Reads.Geometry, Mask = MaskForm.Shift, Example = Ex("left of B1 is A1", "yes"), Refused = Ex("below 3", "ROS0302"),
        },
        new(Op.AdvanceOf, "advance", OperationForm.Noun, [Value("space", Sort.Space)], "a number", "How many rows it lies from the lowest row, which is 1.")
        {
            Reads = Reads.Geometry, Mask = MaskForm.Constant, Example = Ex("advance of A3", "3"), Refused = Ex("advance of 3", "ROS0302"),
        },
        Pair(Op.Across, "across", "a space", "The space as far on the other side of t as s is on this side; nothing where there is none.", "across(A1, B1) is C1", "yes"),
        Pair(Op.BetweenSpaces, "between", "a list of spaces", "The spaces strictly between two in one straight line; none where they are not in line.", "count(between(A1, A3))", "1"),
        new(Op.Distance, "distance", OperationForm.Function, [Value("s", Sort.Space), Value("t", Sort.Space), new("near", ParameterKind.Joining, Sort.Truth, "joined by", true)], "a number",
            "The fewest steps from neighbour to neighbour, or between spaces that the word joins; nothing where there is no way. With a word refused on boards of more than 400 spaces.")
        {
            Reads = Reads.Geometry, Example = Ex("distance(A1, C3)", "4"), Refused = Ex("distance(A1, 3)", "ROS0302"),
        },
        new(Op.Straights, "straights", OperationForm.Function, [Value("board", Sort.Place), Value("length", Sort.Number)], "a set of lists of spaces", "All straight lines of so many spaces, along rows, columns and (where corners touch) diagonals.")
        {
            Reads = Reads.Geometry, Mask = MaskForm.Constant, Telling = Telling.Elements, Example = Ex("count(straights(my field, 3))", "6"), Refused = Ex("straights(3, 3)", "ROS0302"),
        },
        new(Op.Run, "run", OperationForm.Function, [Value("from", Sort.Space, "from"), Value("going", Sort.Direction, "going"), Each("while", Sort.Truth, "while")], "a list of spaces", "The spaces from beside s on, one after the other, while the truth holds.")
        {
            Reads = Reads.Geometry, Mask = MaskForm.Flood, Telling = Telling.Elements,
            Example = Ex("count(run(x from A1 going right while x is not empty))", "2"), Refused = Ex("run(x from 3 going right while x is empty)", "ROS0302"),
        },
        new(Op.BeyondRun, "beyond", OperationForm.Function, [Value("space", Sort.Space), Value("run", Sort.ListOf(Sort.Space)), Value("direction", Sort.Direction)], "a space", "The space after a run that starts beside s; nothing past the edge.")
        {
            Reads = Reads.Geometry, Example = Ex("beyond(A1, between(A1, C1), right) is C1", "yes"), Refused = Ex("beyond(A1, 3, right)", "ROS0302"),
        },
        new(Op.Following, "following", OperationForm.Function, [Value("space", Sort.Space), Value("number", Sort.Number), Value("left out", Sort.Any, "leaving out", optional: true)], "a list of spaces", "The next so many spaces of a board in reading order, round and round, some left out.")
        {
            Reads = Reads.Geometry, Telling = Telling.Elements, Example = Ex("count(following(A3, 4))", "4"), Refused = Ex("following(3, 4)", "ROS0302"),
        },
    ];

    private static Operation Near(Op id, string name, string summary, string formula, string result) =>
        new(id, name, OperationForm.Noun, [Value("space", Sort.Space)], "a set of spaces", summary)
        {
            Reads = Reads.Geometry, Mask = MaskForm.Shift, Telling = Telling.Elements, Example = Ex(formula, result), Refused = Ex($"{name} of 3", "ROS0302"),
        };

    private static Operation Pair(Op id, string name, string gives, string summary, string formula, string result) =>
        new(id, name, OperationForm.Function, [Value("s", Sort.Space), Value("t", Sort.Space)], gives, summary)
        {
            Reads = Reads.Geometry, Example = Ex(formula, result), Refused = Ex($"{name}(A1, 3)", "ROS0302"),
        };
}
