using Rostrum.Rulings.Evaluation;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Telling;

/// <content>Tests with <c>is</c>, and what formulas are called.</content>
internal sealed partial class Teller
{
    private Tale TellTest(Term.Apply test, Value[] frame)
    {
        Value[] values = [.. test.Arguments.Select(a => evaluator.Evaluate(a!, frame))];
        Kleene holds = evaluator.Ask(test, frame).Is;
        if (holds == Kleene.Unknown)
        {
            return TellOther(test, frame);
        }

        string not = holds == Kleene.Yes ? "" : "not ";
        Term first = test.Argument(0);
        Tale? found = test.Operation.Id is Op.Same or (>= Op.AtLeast and <= Op.Between) ? Found(first, frame) : null;
        string text = test.Operation.Id switch
        {
            _ when found is not null => TellTestOf(found, test, values, holds == Kleene.Yes, frame),
            Op.IsNothing => holds == Kleene.Yes ? TellAbsent(first, frame) : TellPresent(first, values[0], frame),
            Op.NextTo => $"{naming.Of(values[0])} and {naming.Of(values[1])} are {not}neighbours",
            Op.In when test.Argument(1) is Term.Apply { Operation.Id: Op.Most or Op.Least, Pick: not null } best => TellBest(best, values[0], holds == Kleene.Yes, frame),
            Op.In => $"{naming.Of(values[0])} {(IsYou(values[0]) ? "are" : "is")} {not}in {Container(test.Argument(1), frame)}",
            Op.Same => TellSame(test, values, holds == Kleene.Yes, frame),
            Op.Between => $"{Measured(first, values[0], frame)} {not}between {naming.Of(values[1])} and {naming.Of(values[2])}",
            _ => TellCompared(test, values, not, frame),
        };
        IEnumerable<Value> counted = test.Arguments.Select(a => a is Term.Apply { Operation.Id: Op.Count, Pick: { } pick } ? evaluator.Through(pick, frame) : Value.None);
        return new Tale(text, [.. values.Concat(counted).SelectMany(v => naming.SpacesOf(v)).Concat(found?.Spaces ?? []).Distinct()]);
    }

    // 'the longest walk is A1, A2: 2 spaces, not at least 3'
    private string TellTestOf(Tale found, Term.Apply test, Value[] values, bool holds, Value[] frame)
    {
        string not = holds ? "" : "not ";
        return test.Operation.Id switch
        {
            Op.Same => holds ? found.Text : $"{found.Text}, not {naming.Of(values[1])}",
            Op.Between => $"{found.Text}, {not}between {naming.Of(values[1])} and {naming.Of(values[2])}",
            _ => $"{found.Text}, {not}{test.Operation.Name[3..]} {Amount(test.Argument(1), values[1], frame)}",
        };
    }

    // 'you have 5 crabs, the most', 'you have 2 crabs, not the most'
    private string TellBest(Term.Apply best, Value subject, bool isBest, Value[] frame)
    {
        string amount = Evaluator.With(best.Pick!, subject, frame, best.Argument(0), (term, inner) => Amount(term, evaluator.Evaluate(term, inner), inner));
        return $"{naming.Of(subject)} {(IsYou(subject) ? "have" : "has")} {amount}, {(isBest ? "" : "not ")}the {best.Operation.Name}";
    }

    private string TellCompared(Term.Apply test, Value[] values, string not, Value[] frame)
    {
        string how = $"{not}{test.Operation.Name[3..]}";
        string second = Amount(test.Argument(1), values[1], frame);
        return IsCount(test.Argument(0)) && !second.Contains(' ', StringComparison.Ordinal)
            ? $"there {Verb(values[0])} {Amount(test.Argument(0), values[0], frame)}, {how} {second}"
            : $"{Measured(test.Argument(0), values[0], frame)} {how} {second}";
    }

    private static bool IsCount(Term term) => term is Term.Apply { Operation.Id: Op.Count };

    private static string Verb(Value value) => value is Value.Number { IsKnown: true, Low: 1 } ? "is" : "are";

    private string TellAbsent(Term term, Value[] frame) => term switch
    {
        Term.Apply { Operation.Id: Op.TopOf } top => $"{Phrase(top.Argument(0), frame)} is empty",
        Term.Apply { Operation.Id: Op.Step } step => $"there is nothing {Phrase(step, frame)}",
        _ => $"{Called(term, frame)} is nothing",
    };

    private string TellPresent(Term term, Value value, Value[] frame) =>
        Called(term, frame) is var name && name != naming.Of(value) ? $"{name} is {naming.Of(value)}" : $"there is {naming.Of(value)}";

    // A choice or a letter by its own name, where what it stands for is said beside it.
    private string Called(Term term, Value[] frame) => term is Term.Variable { Name: not "it" } letter ? letter.Name : Phrase(term, frame);

    private string TellSame(Term.Apply test, Value[] values, bool holds, Value[] frame)
    {
        if (test.Argument(0) is Term.Apply { Operation.Id: Op.Count, Pick: { } pick } count)
        {
            string where = pick.Domain is Term.Within within ? $" in {Phrase(within.Container, frame)}" : "";
            return $"there {Verb(values[0])} {Amount(count, values[0], frame)}{where}{(holds ? "" : $", not {naming.Of(values[1])}")}";
        }

        if (test.Argument(0) is Term.Apply { Operation.Id: Op.Different })
        {
            return $"there {Verb(values[0])} {Amount(test.Argument(0), values[0], frame)}{(holds ? "" : $", not {naming.Of(values[1])}")}";
        }

        (string value, string other) = (naming.Of(values[0]), naming.Of(values[1]));
        (string first, string second) = (Phrase(test.Argument(0), frame), Phrase(test.Argument(1), frame));
        if (second == other || second.StartsWith('\''))
        {
            return TellSameAs(test.Argument(0), first, value, other, holds, frame);
        }

        return (first == value, holds) switch
        {
            (true, true) => $"{value} is {second}",
            (true, false) => $"{value} is not {second}",
            (false, true) => $"{first} is {value}, like {second}",
            _ => $"{first} is {value}, and {second} is {other}",
        };
    }

    // What it is compared with has no name but what it is.
    private string TellSameAs(Term term, string first, string value, string other, bool holds, Value[] frame) =>
        first != value ? (holds ? $"{first} is {value}" : $"{first} is {value}, not {other}")
        : !holds ? $"{first} is not {other}"
        : first == other ? $"{Called(term, frame)} is {other}" : $"{first} is {other}";

    /// <summary>A number with what it counts and its verb: <c>3 plates are</c>.</summary>
    private string Measured(Term term, Value value, Value[] frame)
    {
        if (IsNamedNumber(term, value))
        {
            return $"{Phrase(term, frame)} {(term is Term.Call { Word.Name: [.., not ('s' or 'u'), 's'] } ? "are" : "is")} {naming.Of(value)},";
        }

        string amount = Amount(term, value, frame);
        bool isMany = value is Value.Number { IsKnown: true, Low: not 1 } && amount.Contains(' ', StringComparison.Ordinal);
        return $"{amount} {(isMany ? "are" : "is")}";
    }

    // A number that has a name of its own, such as the level of a space: nothing is counted.
    private static bool IsNamedNumber(Term term, Value value) =>
        value is Value.Number { IsKnown: true } && term is Term.Call or Term.CardCell or Term.Property or Term.LookUp or Term.PrintedOn or Term.MarkOf or Term.Constant or Term.Counter
            or Term.Apply { Operation.Id: Op.OrderOf or Op.HeightOf or Op.AdvanceOf };

    /// <summary>A number with what it counts: <c>3 plates</c>.</summary>
    public string Amount(Term term, Value value, Value[] frame)
    {
        if (value is Value.Number { IsKnown: true, Low: { } number } && term is Term.Apply { Operation.Id: Op.Count, Pick: { } pick })
        {
            return pick.Domain is Term.LinesOf lines ? $"{number} {(number == 1 ? lines.Family.Name : lines.Family.Plural)}"
                : Nouns.Of(pick) is { } look ? Nouns.Count(number, look)
                : Nouns.KindOf(pick) is { } kind ? Nouns.Count(number, kind)
                : pick is { Domain: Term.Variable, Where: null, Element.Kind: SortKind.Space } && Counted is not null ? Nouns.Count(number, Counted)
                : pick.Element.Kind == SortKind.Space ? $"{number} {(number == 1 ? "space" : "spaces")}" : $"{number}";
        }

        if (value is Value.Number { IsKnown: true, Low: { } kinds } && term is Term.Apply { Operation.Id: Op.Different } different && different.Argument(0) is Term.Property property)
        {
            return $"{kinds} different {(kinds == 1 ? property.Attribute.Name : Prose.Plural(property.Attribute.Name))}";
        }

        return value is Value.Nothing ? "nothing" : IsNamedNumber(term, value) ? $"{naming.Of(value)}, {Phrase(term, frame)}" : term is Term.Number or Term.Apply ? naming.Of(value) : $"{Phrase(term, frame)} {naming.Of(value)}";
    }

    /// <summary>What a formula is called, in a few words.</summary>
    public string Phrase(Term term, Value[] frame) => term switch
    {
        Term.Variable or Term.CardNamed or Term.SpaceNamed or Term.PlaceOf or Term.LineOf or Term.RegionOf or Term.LinkOf or Term.Me or Term.Number or Term.Value or Term.Seat =>
            naming.Of(evaluator.Evaluate(term, frame)),
        Term.Property property => $"the {property.Attribute.Name} of {Phrase(property.Subject, frame)}",
        Term.CardCell cell => $"the {cell.Column.Name} of {Phrase(cell.Subject, frame)}",
        Term.PrintedOn printed => $"the {printed.Which.Name} of {Phrase(printed.Space, frame)}",
        Term.LookUp lookUp => $"the {lookUp.Table.Name} of {Phrase(lookUp.Key, frame)}",
        Term.MarkOf { Mark.EachSpaceOf: not null } mark => $"the {mark.Mark.Name} of {Phrase(mark.Owner!, frame)}",
        Term.MarkOf mark => mark.Mark.EachPlayer ? $"your {mark.Mark.Name}" : $"the {mark.Mark.Name}",
        Term.LastChoice last => $"the {evaluator.Position.Sheet.Actions[last.Action.Index].Choices[last.Choice].Name} of {(last.Mine ? "your" : "the")} last {last.Action.Name}",
        Term.Constant constant => constant.Which.Name,
        Term.Apply { Operation.Id: Op.TopOf } top when evaluator.Evaluate(top, frame) is Value.ThingAt thing => naming.Of(thing),
        Term.Apply { Operation.Id: Op.Step } step => $"{Direction(step)} {Phrase(step.Argument(0), frame)}",
        Term.Apply { Operation.Id: Op.SeatBeside } beside => naming.Of(evaluator.Evaluate(beside, frame)),
        Term.StartPlayer => "the start player",
        Term.Counter counter => $"the number of the {counter.Kind.ToString().ToLowerInvariant()}",
        Term.Apply { Operation.Form: OperationForm.Noun } noun => $"the {noun.Operation.Name} of {Phrase(noun.Argument(0), frame)}",
        Term.Apply { Operation.Id: Op.Opponent } => naming.Of(evaluator.Evaluate(term, frame)),
        Term.Call { Subjects: [var subject] } call => IsYou(evaluator.Evaluate(subject, frame)) ? $"your {call.Word.Name}" : $"the {call.Word.Name} of {Phrase(subject, frame)}",
        Term.Call { Subjects.IsEmpty: true } call => $"the {call.Word.Name}",
        _ => $"'{Rostrum.Text.Prose.Clip(term.Origin.At.Text, 60)}'",
    };

    private string Container(Term term, Value[] frame) => term switch
    {
        Term.Apply { Operation.Id: Op.SpacesOf or Op.ThingsIn or Op.SlotsOf } held => Phrase(held.Argument(0), frame),
        _ => Phrase(term, frame),
    };

    private static string Direction(Term.Apply step) =>
        step.Arguments[1] is Term.DirectionNamed { Direction.Name: var name } ? name is "above" or "below" ? name : $"{name} of" : "beside";
}
