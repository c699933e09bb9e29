using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.Steps;
using Rostrum.Sheets.Tests.Formulas;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Tests.Steps;

/// <summary>One reading of steps, or of whole actions, over the names of a bench.</summary>
internal sealed record StepBench(ImmutableArray<Step> Steps, ImmutableArray<Diagnostic> Problems, ImmutableArray<ActionChoice> Choices)
{
    private static readonly OutlineDialect Dialect = new(["says", "why"], ["says", "why", "cite", "do", "choose", "phrase", "joins"]);

    public string[] Told => [.. Problems.Select(p => $"{p.Id} {p.At.StartPosition} {p.At.Text}")];

    /// <summary>Steps under <c>do:</c>, with the letters of the bench.</summary>
    public static StepBench Of(string steps)
    {
        (Declarations declared, Vocabulary names, Scope scope) = BenchSheet.WithLetters();
        var problems = new DiagnosticBag();
        OutlineMapping tree = Outline("do:\n" + Indent(steps), problems);
        ImmutableArray<Step> read = new StepReader(declared, names, scope, problems).Read(tree.Find("do")!.Value);
        return new StepBench(read, problems.InOrder(), []);
    }

    /// <summary>One action with its keys.</summary>
    public static StepBench OfAction(Declarations declared, OutlineMapping action, DiagnosticBag problems)
    {
        Vocabulary names = declared.Names.Inner();
        var scope = new Scope();
        ImmutableArray<ActionChoice> choices = action.Find("choose") is { } choose ? new ChoiceReader(declared, names, scope, problems).Read(choose.Value) : [];
        ImmutableArray<Step> steps = new StepReader(declared, names, scope, problems).Read(action);
        return new StepBench(steps, problems.InOrder(), choices);
    }

    /// <summary>The choices under <c>choose:</c>.</summary>
    public static StepBench OfChoices(string choices)
    {
        Declarations declared = BenchSheet.Declare();
        var problems = new DiagnosticBag();
        OutlineMapping tree = Outline("choose:\n" + Indent(choices), problems);
        ImmutableArray<ActionChoice> read = new ChoiceReader(declared, declared.Names.Inner(), new Scope(), problems).Read(tree.Find("choose")!.Value);
        return new StepBench([], problems.InOrder(), read);
    }

    public static OutlineMapping Outline(string text, DiagnosticBag problems) =>
        OutlineReader.Read(new SourceText("sheet.yaml", text), Dialect, problems);

    /// <summary>The sentences of the steps, two blanks a level.</summary>
    public string Tell() => Tell(Steps, "");

    private static string Tell(ImmutableArray<Step> steps, string margin) => string.Concat(steps.Select(s =>
        $"{margin}{s.Sentence}\n{Tell(s.Inner, margin + "  ")}{(s.Otherwise.IsEmpty ? "" : $"{margin}Otherwise:\n{Tell(s.Otherwise, margin + "  ")}")}"));

    private static string Indent(string text) => string.Concat(text.Split('\n').Select(l => $"  {l}\n"));
}
