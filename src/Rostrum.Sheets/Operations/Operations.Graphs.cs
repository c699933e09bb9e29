namespace Rostrum.Sheets.Model;

/// <content>Groups, ways, pairs, partitions, fits, rounding.</content>
public static partial class Operations
{
    private static Operation[] Graphs() =>
    [
        new(Op.Groups, "groups", OperationForm.Function,
            [PickOne, new("near", ParameterKind.Joining, Sort.Truth, "joined by", true), Each("value", Sort.Any, "alike in") with { IsOptional = true }],
            "a set of sets",
            "The connected parts: two elements belong together where the word holds for them, or where they are neighbours and alike in the value.")
        {
            Mask = MaskForm.Flood, Telling = Telling.Elements,
            Example = Ex("count(groups(s in my field where s is not empty, joined by touching))", "1"), Refused = Ex("groups(my field, joined by clash)", "ROS0310"),
        },
        new(Op.LongestWay, "longest way", OperationForm.Function,
            [PickOne, new("near", ParameterKind.Joining, Sort.Truth, "joined by"), new("measure", ParameterKind.Measure, Sort.Text, "counted as")],
            "a number",
            "The length in spaces: walk (comes to none twice), span (the greatest shortest way), bare (no short cut), group (all of the largest part). Two spaces are joined where the word holds either way round. A span or a group is refused above 400 spaces; a walk or a bare way above 64 spaces that hang together, or where a search of 3,000,000 steps does not end.")
        {
            Mask = MaskForm.Flood, Telling = Telling.Extreme,
            Example = Ex("longest way(s in my field where s is not empty, joined by touching, counted as span)", "5"),
            Refused = Ex("longest way(my field, joined by touching, counted as stroll)", "ROS0180"),
        },
        new(Op.MostPairs, "most pairs", OperationForm.Function,
            [PickOne, Value("others", Sort.SetOf(Sort.Any)), new("joined", ParameterKind.Joining, Sort.Truth, "joined by")],
            "a number",
            "How many pairs can be made at the most, each of one and one other that the word joins, none used twice. Refused above 200 by 200.")
        {
            Telling = Telling.Elements,
            Example = Ex("most pairs((A1, B1), (A2, B2), joined by touching)", "2"), Refused = Ex("most pairs(my field, 3, joined by touching)", "ROS0302"),
        },
        new(Op.BestSplit, "best split", OperationForm.Function,
            [PickOne, new("worth", ParameterKind.WorthWord, Sort.Number, "worth")],
            "a number",
            "The greatest sum of worths over all ways to part the elements into sets, each element in exactly one; a set of one has a worth too. Refused above 24 elements, above 40,000 different sets whose worth must be asked (elements that are alike in all that the worth looks at count once), or where a search of 12,000,000 steps does not end.")
        {
            Telling = Telling.Elements,
            Example = Ex("best split(ware in my field, worth set worth)", "10"), Refused = Ex("best split(my field, worth touching)", "ROS0313"),
        },
    ];

    private static Operation[] Figures() =>
    [
        new(Op.Fits, "fits", OperationForm.Function,
            [Value("drawing", Sort.Drawing), Value("board", Sort.Place), new("rotated", ParameterKind.Flag, Sort.Truth, "rotated", true),
             new("mirrored", ParameterKind.Flag, Sort.Truth, "mirrored", true), new("with", ParameterKind.Look, Sort.Look, "with", true)],
            "a set of fits",
            "All ways in which a drawing lies on a board: as drawn, and where allowed rotated or mirrored; `with whole` asks more of every thing that the drawing sees. Of a piece that is larger than a space, all ways in which it lies there, whatever lies there already.")
        {
            Reads = Reads.Contents, Mask = MaskForm.Constant, Telling = Telling.Elements,
            Example = Ex("count(fits(picture of First order, my field))", "1"), Refused = Ex("fits(3, my field)", "ROS0302"),
        },
        new(Op.Difference, "difference", OperationForm.Function, [Value("m", Sort.Number), Value("n", Sort.Number)], "a number", "How far two numbers are apart; never below 0.")
        {
            Telling = Telling.Parts, Example = Ex("difference(2, 5)", "3"), Refused = Ex("difference(A1, 5)", "ROS0302"),
        },
        Rounding(Op.Down, "down", "The number divided by n, rounded down (towards minus without end).", "down(7, by 3)", "2"),
        Rounding(Op.Up, "up", "The number divided by n, rounded up.", "up(7, by 3)", "3"),
        Rounding(Op.Nearest, "nearest", "The number divided by n, rounded to the nearest; a half goes up.", "nearest(7, by 2)", "4"),
    ];

    private static Operation[] Inner() =>
    [
        Holding(Op.SpacesOf, "spaces", "The spaces of a board, a line or a fit, or those on which a thing lies, in reading order. Also meant where a board or a line stands for its spaces.", "count(spaces of my field)", "9"),
        Holding(Op.ThingsIn, "things", "Everything that lies in a place, on a space or in a slot, lowest first. Also meant where a place stands for its things.", "count(things of my sticks)", "4"),
        Holding(Op.SlotsOf, "slots", "The slots of a row. Also meant where a row stands for its slots.", "count(slots of market)", "3"),
    ];

    private static Operation Rounding(Op id, string name, string summary, string formula, string result) =>
        new(id, name, OperationForm.Function, [Value("m", Sort.Number), Value("n", Sort.Number, "by")], "a number", summary + " Not by 0 or less.")
        {
            Telling = Telling.Parts, Example = Ex(formula, result), Refused = Ex($"{name}(A1, by 2)", "ROS0302"),
        };

    private static Operation Holding(Op id, string name, string summary, string formula, string result) =>
        new(id, name, OperationForm.Noun, [Value("x", Sort.Any)], "a list", summary)
        {
            Reads = Reads.Contents, Mask = MaskForm.Constant, Telling = Telling.Elements, Example = Ex(formula, result), Refused = Ex($"{name} of 3", "ROS0302"),
        };
}
