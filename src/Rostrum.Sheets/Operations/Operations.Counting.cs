namespace Rostrum.Sheets.Model;

/// <content>Counting, truths about many, greatest and least, and the elements of sets and lists.</content>
public static partial class Operations
{
    private static Operation[] Counting() =>
    [
        new(Op.Count, "count", OperationForm.Function, [PickOne], "a number", "How many there are.")
        {
            Mask = MaskForm.Count, Telling = Telling.Elements, Example = Ex("count(s in my field where s is empty)", "3"), Refused = Ex("count(3)", "ROS0302"),
        },
        new(Op.Any, "any", OperationForm.Function, [PickOne], "a truth", "Yes where there is at least one.")
        {
            Mask = MaskForm.Count, Telling = Telling.Witness, Example = Ex("any(lamps in my field)", "yes"), Refused = Ex("any(3)", "ROS0302"),
        },
        new(Op.No, "no", OperationForm.Function, [PickOne], "a truth", "Yes where there is none.")
        {
            Mask = MaskForm.Count, Telling = Telling.Witness, Example = Ex("no(lamps in my field)", "no"), Refused = Ex("no(3)", "ROS0302"),
        },
        new(Op.All, "all", OperationForm.Function, [PickOne, Each("truth", Sort.Truth)], "a truth", "Yes where the truth holds for each of them; yes where there are none.")
        {
            Mask = MaskForm.Count, Telling = Telling.Witness,
            Example = Ex("all(s in my field, s is not empty)", "no"), Refused = Ex("all(s in my field, top of s)", "ROS0301"),
        },
        new(Op.Sum, "sum", OperationForm.Function, [PickOne, Each("number", Sort.Number)], "a number", "The numbers of all of them, added up; nothing is skipped.")
        {
            Mask = MaskForm.Count, Telling = Telling.Parts,
            Example = Ex("sum(b in bays of my field, 2 times count(ware in b))", "12"), Refused = Ex("sum(s in my field, top of s)", "ROS0302"),
        },
        Extreme(Op.Largest, "largest", "The greatest of the numbers; 0 where there are none.", "largest(b in bays of my field, count(ware in b))", "3"),
        Extreme(Op.Smallest, "smallest", "The least of the numbers; 0 where there are none.", "smallest(b in bays of my field, count(ware in b))", "1"),
        new(Op.Different, "different", OperationForm.Function, [PickOne, Each("value", Sort.Any)], "a number", "How many different values they have; nothing is skipped.")
        {
            Telling = Telling.Elements,
            Example = Ex("different(s in my field, glaze of top of s)", "3"), Refused = Ex("different(3, glaze of it)", "ROS0302"),
        },
        Chooser(Op.Most, "most", "a set", "Those with the greatest number; all of them where several share it. Of a list they keep their order.", "count(most(b in bays of my field, count(ware in b)))", "1"),
        Chooser(Op.Least, "least", "a set", "Those with the least number; all of them where several share it. Of a list they keep their order.", "count(least(b in bays of my field, count(ware in b)))", "1"),
        Chooser(Op.Ranked, "ranked", "a list", "All of them, greatest number first; equal ones keep their order.", "first of ranked(b in bays of my field, count(ware in b)) is bay of A1", "yes"),
        new(Op.Together, "together", OperationForm.Function, [PickOne, Each("set", Sort.SetOf(Sort.Any))], "a set", "Everything that is in the set of at least one of them.")
        {
            Mask = MaskForm.Shift, Telling = Telling.Elements,
            Example = Ex("count(together(s in (A1, C3), neighbours of s))", "4"), Refused = Ex("together(s in my field, height of s)", "ROS0302"),
        },
    ];

    private static Operation[] Elements() =>
    [
        new(Op.First, "first", OperationForm.Noun, [Value("list", Sort.ListOf(Sort.Any))], "an element", "The first of a list; nothing where it is empty.")
        {
            Example = Ex("first of bays of my field is bay of A1", "yes"), Refused = Ex("first of neighbours of A1", "ROS0302"),
        },
        new(Op.Last, "last", OperationForm.Noun, [Value("list", Sort.ListOf(Sort.Any))], "an element", "The last of a list; nothing where it is empty. Of the things in a line it is the farthest: in an upright bay the topmost.")
        {
            Example = Ex("last of bays of my field is bay of C1", "yes"), Refused = Ex("last of neighbours of A1", "ROS0302"),
        },
        new(Op.Item, "item", OperationForm.Function, [Value("number", Sort.Number), Value("list", Sort.ListOf(Sort.Any))], "an element", "The element with this number, counted from 1; nothing where there is none.")
        {
            Example = Ex("item(2, bays of my field) is bay of B1", "yes"), Refused = Ex("item(A1, bays of my field)", "ROS0302"),
        },
        new(Op.OrderOf, "order", OperationForm.Noun, [Value("x", Sort.Any)], "a number", "The number of a line, slot, seat, space or value among its kind; the first is 1.")
        {
            Example = Ex("order of bay of B1", "2"), Refused = Ex("order of 3", "ROS0302"),
        },
    ];

    private static Operation Extreme(Op id, string name, string summary, string formula, string result) =>
        new(id, name, OperationForm.Function, [PickOne, Each("number", Sort.Number)], "a number", summary)
        {
            Telling = Telling.Extreme, Example = Ex(formula, result), Refused = Ex($"{name}(s in my field, top of s)", "ROS0302"),
        };

    private static Operation Chooser(Op id, string name, string gives, string summary, string formula, string result) =>
        new(id, name, OperationForm.Function, [PickOne, Each("number", Sort.Number)], gives, summary)
        {
            Telling = Telling.Elements, Example = Ex(formula, result), Refused = Ex($"{name}(s in my field, top of s)", "ROS0302"),
        };
}
