namespace Rostrum.Sheets.Model;

/// <content>Truths, tests and signs.</content>
public static partial class Operations
{
    private static Operation[] Logic() =>
    [
        new(Op.And, "and", OperationForm.Logic, [Value("a", Sort.Truth), Value("b", Sort.Truth)], "a truth", "Yes where both are yes; no as soon as one is no, whatever the other.")
        {
            Mask = MaskForm.Algebra, Telling = Telling.Witness,
            Example = Ex("A1 is empty and B1 shows a jug", "no"), Refused = Ex("A1 is empty and B1", "ROS0301"),
        },
        new(Op.Or, "or", OperationForm.Logic, [Value("a", Sort.Truth), Value("b", Sort.Truth)], "a truth", "Yes as soon as one is yes, whatever the other; no where both are no.")
        {
            Mask = MaskForm.Algebra, Telling = Telling.Witness,
            Example = Ex("A1 is empty or B1 shows a jug", "yes"), Refused = Ex("A1 is empty or (3)", "ROS0301"),
        },
        new(Op.Not, "not", OperationForm.Logic, [Value("a", Sort.Truth)], "a truth", "The other way round; unknown stays unknown.")
        {
            Mask = MaskForm.Algebra, Telling = Telling.Witness,
            Example = Ex("not (A1 is empty)", "yes"), Refused = Ex("not 3", "ROS0301"),
        },
    ];

    private static Operation[] Tests() =>
    [
        new(Op.Same, "is", OperationForm.Test, [Value("a", Sort.Any), Value("b", Sort.Any)], "a truth", "Yes where both are the same. A test of nothing is no.")
        {
            Telling = Telling.Value, Example = Ex("glaze of top of A1 is glaze of top of B1", "no"), Refused = Ex("glaze of top of A1 is 3", "ROS0302"),
        },
        new(Op.IsNothing, "is nothing", OperationForm.Test, [Value("a", Sort.Any)], "a truth", "Yes where there is none.")
        {
            Example = Ex("below A1 is nothing", "yes"), Refused = Ex("below is nothing", "ROS0180"),
        },
        new(Op.In, "is in", OperationForm.Test, [Value("a", Sort.Any), Value("b", Sort.Any)], "a truth", "Yes where the element belongs to the set, or lies in the place.")
        {
            Mask = MaskForm.Algebra, Telling = Telling.Value,
            Example = Ex("A1 is in bay of A2", "yes"), Refused = Ex("A1 is in 3", "ROS0302"),
        },
        new(Op.NextTo, "is next to", OperationForm.Test, [Value("a", Sort.Space), Value("b", Sort.Space)], "a truth", "Yes where the two spaces are neighbours.")
        {
            Reads = Reads.Geometry, Mask = MaskForm.Shift, Example = Ex("A1 is next to B1", "yes"), Refused = Ex("A1 is next to 3", "ROS0302"),
        },
        Comparison(Op.AtLeast, "is at least", "Yes where the first number is not below the second.", "count(jugs in my field) is at least 2", "yes"),
        Comparison(Op.AtMost, "is at most", "Yes where the first number is not above the second.", "count(jugs in my field) is at most 2", "yes"),
        Comparison(Op.MoreThan, "is more than", "Yes where the first number is above the second.", "count(jugs in my field) is more than 2", "no"),
        Comparison(Op.LessThan, "is less than", "Yes where the first number is below the second.", "count(jugs in my field) is less than 2", "no"),
        new(Op.Between, "is between", OperationForm.Test, [Value("a", Sort.Number), Value("low", Sort.Number), Value("high", Sort.Number)], "a truth", "Yes from the low to the high number, both included.")
        {
            Example = Ex("count(jugs in my field) is between 1 and 2", "yes"), Refused = Ex("A1 is between 1 and 2", "ROS0302"),
        },
        new(Op.WasDone, "was done", OperationForm.Test, [Value("action", Sort.Text)], "a truth", "Yes where the action was done then: this turn, the turn before, this round, the round before or before. A position says so under 'done'; where it does not, nobody knows.")
        {
            Reads = Reads.Memory, Example = Ex("lay was done this turn", "not given"), Refused = Ex("lya was done this turn", "ROS0201"),
        },
        new(Op.Can, "can", OperationForm.Test, [Value("player", Sort.Player), Value("action", Sort.Text)], "a truth", "Yes where the player has a legal way to do the action, with what is given for its first gaps. Found by going through the choices and asking the laws.")
        {
            Reads = Reads.Contents, Example = Ex("me can lay", "yes"), Refused = Ex("me can lya", "ROS0201"),
        },
    ];

    private static Operation[] Signs() =>
    [
        Arithmetic(Op.Plus, "+", "The sum.", "2 + 3", "5"),
        Arithmetic(Op.Minus, "-", "The first number less the second; it may fall below 0.", "2 - 3", "minus 1"),
        Arithmetic(Op.Times, "times", "The product.", "2 times 3", "6"),
        new(Op.Negative, "minus", OperationForm.Sign, [Value("a", Sort.Number)], "a number", "The number with the other sign.")
        {
            Telling = Telling.Parts, Example = Ex("minus 2", "minus 2"), Refused = Ex("minus A1", "ROS0302"),
        },
        Sets(Op.Except, "except", "The elements of the first that are not in the second.", "count((neighbours of B2 except (A2, B1)))", "2"),
        Sets(Op.TogetherWith, "together with", "The elements of either.", "count((neighbours of A1 together with (A1, C3)))", "4"),
        new(Op.Range, "to", OperationForm.Sign, [Value("low", Sort.Number), Value("high", Sort.Number)], "a list of numbers", "All numbers from low to high, in brackets.")
        {
            Telling = Telling.Elements, Example = Ex("sum(n in (1 to 4), n)", "10"), Refused = Ex("(A1 to 4)", "ROS0302"),
        },
        new(Op.Players, "players", OperationForm.Name, [], "a list of players", "Everybody at the table, clockwise from the first start player.")
        {
            Reads = Reads.Seats, Telling = Telling.Elements, Example = Ex("count(players)", "2"), Refused = Ex("players + 1", "ROS0302"),
        },
        new(Op.Opponent, "opponent", OperationForm.Name, [], "a player", "The other player of a game of exactly two.")
        {
            Reads = Reads.Seats, Example = Ex("opponent is me", "no"), Refused = Ex("opponent + 1", "ROS0302"),
        },
        new(Op.SeatBeside, "left", OperationForm.Noun, [Value("player", Sort.Player)], "a player", "The next player clockwise; `right of` a player is the one before.")
        {
            Reads = Reads.Seats, Example = Ex("left of me is opponent", "yes"), Refused = Ex("left of 3", "ROS0302"),
        },
    ];

    private static Operation Comparison(Op id, string name, string summary, string formula, string result) =>
        new(id, name, OperationForm.Test, [Value("a", Sort.Number), Value("b", Sort.Number)], "a truth", summary + " A test of nothing is no.")
        {
            Example = Ex(formula, result), Refused = Ex(formula.Replace("count(jugs in my field)", "my field", StringComparison.Ordinal), "ROS0302"),
        };

    private static Operation Arithmetic(Op id, string name, string summary, string formula, string result) =>
        new(id, name, OperationForm.Sign, [Value("a", Sort.Number), Value("b", Sort.Number)], "a number", summary + " Nothing stays nothing.")
        {
            Telling = Telling.Parts, Example = Ex(formula, result), Refused = Ex(formula.Replace("3", "A1", StringComparison.Ordinal), "ROS0302"),
        };

    private static Operation Sets(Op id, string name, string summary, string formula, string result) =>
        new(id, name, OperationForm.Sign, [Value("a", Sort.SetOf(Sort.Any)), Value("b", Sort.SetOf(Sort.Any))], "a set", summary)
        {
            Mask = MaskForm.Algebra, Telling = Telling.Elements, Example = Ex(formula, result), Refused = Ex($"3 {name} 4", "ROS0302"),
        };
}
