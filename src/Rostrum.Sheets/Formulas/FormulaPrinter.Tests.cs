using System.Collections.Immutable;

namespace Rostrum.Sheets.Formulas;

/// <content>Truths: tests and what joins them.</content>
internal static partial class FormulaPrinter
{
    private static string Said(Syntax syntax) => syntax switch
    {
        Syntax.If i => $"{At(Truth, i.Then)} if {At(Truth, i.Condition)} otherwise {At(Loosest, i.Otherwise)}",
        Syntax.Logic l => Logic(l),
        Syntax.Not n => $"not {At(Negation, n.Operand)}",
        Syntax.Test t => Test(t),
        Syntax.Shows s => $"{At(Added, s.Subject)} shows {(s.IsNegated ? "not " : "")}{Choices(s.Choices)}",
        Syntax.Can c => $"{At(Added, c.Subject)} can {string.Join(' ', Call(c))}",
        Syntax.Done d => $"{d.Action.Words} was {(d.IsNegated ? "not " : "")}done {d.When}{(d.By is null ? "" : $" by {At(Added, d.By)}")}",
        _ => syntax.Span.Text,
    };

    // Cut off before a gap, the words between the last formula and that gap are left out too.
    private static IEnumerable<string> Call(Syntax.Can can)
    {
        int gap = 0;
        bool isWhole = can.Phrase.Parts.Count(p => p.IsGap) == can.Given.Length;
        return can.Phrase.Parts.TakeWhile((p, i) => i == 0 || isWhole || gap < can.Given.Length).Select(p => p.IsGap ? At(Added, can.Given[gap++]) : p.Words);
    }

    private static string Test(Syntax.Test test)
    {
        string start = $"{At(Added, test.Subject)} is {(test.IsNegated ? "not " : "")}";
        return start + test.Tail switch
        {
            "nothing" => "nothing",
            "is" => Choices(test.Operands),
            "between" => $"between {At(Added, test.Operands[0])} and {At(Added, test.Operands[1])}",
            _ => $"{test.Tail} {At(Added, test.Operands[0])}",
        };
    }

    private static string Choices(ImmutableArray<Syntax> choices) => string.Join(" or ", choices.Select(Choice));

    // A word of a look alone would be read as a look here; in brackets it stays the formula that it was.
    private static string Choice(Syntax choice) => choice is Syntax.Name name && FormulaParser.TellsLook(name.Senses) ? $"({name.Words})" : At(Added, choice);

    private static string Logic(Syntax.Logic logic)
    {
        var words = ImmutableArray.CreateBuilder<string>(logic.Operands.Length);
        Syntax? before = null;
        foreach (Syntax operand in logic.Operands)
        {
            // Behind `is jug or …` a bare name would join the list.
            bool joinsList = !logic.IsAnd && before is not null && EndsInChoices(before) && LevelOf(operand) > Tested;
            words.Add(joinsList && StartsBare(operand) ? $"({Inner(operand)})" : At(Negation, operand));
            before = operand;
        }

        return string.Join(logic.IsAnd ? " and " : " or ", words);
    }

    private static bool EndsInChoices(Syntax syntax) => syntax switch
    {
        Syntax.Test { Tail: "is" } or Syntax.Shows => true,
        Syntax.Not { Operand: var operand } => EndsInChoices(operand),
        _ => false,
    };

    private static bool StartsBare(Syntax syntax) => syntax is not (Syntax.Listed or Syntax.Filtered or Syntax.Range);
}
