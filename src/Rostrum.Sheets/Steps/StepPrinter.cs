using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Steps;

/// <summary>Writes steps and domains in their one canonical spelling; reading what it writes gives the same step again.</summary>
internal static class StepPrinter
{
    /// <summary>A step or the head of one, without the colon.</summary>
    public static string Print(StepSyntax step) => step.IsHead ? Head(step) : Alone(step) + Face(step.FaceUp);

    /// <summary>What may be chosen.</summary>
    public static string Print(DomainSyntax domain)
    {
        string amount = domain.Amount switch
        {
            ChoiceAmount.Exactly => domain.Number.ToString(CultureInfo.InvariantCulture) + " ",
            ChoiceAmount.UpTo => $"up to {domain.Number.ToString(CultureInfo.InvariantCulture)} ",
            ChoiceAmount.Some => "some ",
            ChoiceAmount.AnyNumber => "any ",
            _ => "",
        };
        string one = domain.Amount == ChoiceAmount.One ? "one of " : amount;
        string where = domain.Where is null ? "" : $" where {FormulaPrinter.PrintTruth(domain.Where)}";
        return domain.Form switch
        {
            DomainForm.Numbers => $"a number from {Sum(domain.From)} to {Sum(domain.Highest)}",
            DomainForm.YesOrNo => "yes or no",
            DomainForm.Value => FormulaPrinter.Print(domain.From!),
            DomainForm.Players => (amount.Length == 0 ? "a player" : amount + "players") + where,
            DomainForm.Directions => (amount.Length == 0 ? "a direction" : amount + "directions") + where,
            _ => one + Sum(domain.From) + where,
        };
    }

    private static string Alone(StepSyntax step) => step.Kind switch
    {
        StepKind.Call => Call(step),
        StepKind.Move => Move(step),
        StepKind.Deal => $"deal {Sum(step.Parts[0])} from {Sum(step.Parts[1])} to {Sum(step.Parts[2])}",
        StepKind.Change when step.Parts[1] is null => $"flip {Sum(step.Parts[0])}",
        StepKind.Change => $"change {Sum(step.Parts[0])} to {Sum(step.Parts[1])}",
        StepKind.Shuffle or StepKind.Roll or StepKind.Do => $"{Word(step.Kind)} {Sum(step.Parts[0])}",
        StepKind.Swap => $"swap {Sum(step.Parts[0])} and {Sum(step.Parts[1])}",
        StepKind.Push => $"push {Sum(step.Parts[0])} going {Sum(step.Parts[1])} {(step.Parts[2] is null ? "round" : $"off to {Sum(step.Parts[2])}")}",
        StepKind.Show => $"show {Sum(step.Parts[0])} to {Sum(step.Parts[1])}",
        StepKind.Set => $"set {Sum(step.Parts[0])} to {FormulaPrinter.Print(step.Parts[1]!)}",
        StepKind.Add => $"add {Sum(step.Parts[1])} to {Sum(step.Parts[0])}",
        StepKind.Take => $"take {Sum(step.Parts[1])} from {Sum(step.Parts[0])}",
        StepKind.Let => $"let {step.Named!.Name} be {FormulaPrinter.Print(step.Parts[0]!)}",
        StepKind.EndGame => $"end the game by {step.End}",
        _ => Word(step.Kind),
    };

    private static string Move(StepSyntax step)
    {
        (Syntax? amount, Syntax what, Syntax? from, Syntax to) = (step.Parts[0], step.Parts[1]!, step.Parts[2], step.Parts[3]!);
        if (from is null)
        {
            return $"move {Sum(what)} to {Sum(to)}";
        }

        string number = amount switch
        {
            null => "all",
            Syntax.Number { Amount: 1 } => "a",
            Syntax.Number => Sum(amount),
            Syntax.Name name when !FormulaParser.TellsLook(name.Senses) => name.Words,
            _ => $"({Sum(amount)})",
        };
        return $"move {number} {Sum(what)} from {Sum(from)} to {Sum(to)}";
    }

    private static string Call(StepSyntax step)
    {
        if (step.Block is not null || step.Parts.IsEmpty)
        {
            return step.Block ?? step.Action!.Name;
        }

        // Cut off before a gap, the words between the last formula and that gap are left out too.
        ImmutableArray<PhrasePart> parts = step.Action!.Phrase.Parts;
        bool isWhole = parts.Count(p => p.IsGap) == step.Parts.Length;
        int gap = 0;
        string[] words = [.. parts.TakeWhile(p => isWhole || gap < step.Parts.Length).Select(p => p.IsGap ? Sum(step.Parts[gap++]) : p.Words)];
        return string.Join(' ', words);
    }

    private static string Head(StepSyntax step) => step.Kind switch
    {
        StepKind.If when step.IsOther => step.Parts[0] is null ? "otherwise" : $"otherwise if {FormulaPrinter.PrintTruth(step.Parts[0]!)}",
        StepKind.If => $"if {FormulaPrinter.PrintTruth(step.Parts[0]!)}",
        StepKind.May when step.IsOther => "may any number of times",
        StepKind.May => step.Parts[0] is null ? "may" : $"may up to {FormulaPrinter.PrintFactor(step.Parts[0]!)} times",
        StepKind.Does => $"{Sum(step.Parts[0])} does",
        StepKind.ForEach => $"for each {FormulaPrinter.Print(step.Pick!)}{Order(step.Order)}",
        StepKind.EachPlayer => $"each {(step.IsOther ? "other " : "")}player{With(" from", step.Parts[0])}{Truth(" where", step.Parts[1])}{Order(step.Order)}",
        StepKind.Repeat => Repeat(step),
        StepKind.TakeTurns => $"take turns{With(" from", step.Parts[0])}{Truth(" among players where", step.Parts[1])}{Truth(" until", step.Parts[2])}",
        _ => Word(step.Kind),
    };

    private static string Repeat(StepSyntax step)
    {
        string times = step.Parts[0] is { } number ? $" {FormulaPrinter.PrintFactor(number)} times" : "";
        return $"repeat{times}{Truth(" until", step.Parts[1])}{Truth(" while", step.Parts[2])}";
    }

    private static string Order(StepOrder order)
    {
        string by = order.By is null ? "" : $", by {FormulaPrinter.PrintSum(order.By)}";
        return by + order.Kind switch
        {
            StepOrderKind.LowestFirst => ", lowest first",
            StepOrderKind.HighestFirst => ", highest first",
            StepOrderKind.AsChosen => ", in the order I choose",
            _ => "",
        };
    }

    private static string Face(bool? isUp) => isUp switch
    {
        true => " face up",
        false => " face down",
        _ => "",
    };

    private static string Word(StepKind kind) => StepWords.Verbs.Concat(StepWords.Heads).First(w => w.Kind == kind).Words;

    private static string Sum(Syntax? syntax) => FormulaPrinter.PrintSum(syntax!);

    private static string With(string lead, Syntax? syntax) => syntax is null ? "" : $"{lead} {Sum(syntax)}";

    private static string Truth(string lead, Syntax? syntax) => syntax is null ? "" : $"{lead} {FormulaPrinter.PrintTruth(syntax)}";
}
