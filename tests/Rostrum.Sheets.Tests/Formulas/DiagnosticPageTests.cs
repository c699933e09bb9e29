using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Steps;
using Rostrum.Sheets.Tests.Loading;
using Rostrum.Sheets.Tests.Steps;
using Rostrum.Testing;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Tests.Formulas;

/// <summary>The pages of <c>docs/diagnostics</c> whose examples are formulas, steps, phrases, actions and whole sheets.</summary>
public sealed class DiagnosticPageTests
{
    private static readonly string[] Kinds = ["formula", "trio", "step", "phrase", "action", "sheet"];

    public static TheoryData<string, string, bool, string> Examples =>
        [.. Kinds.SelectMany(DiagnosticPage.ExamplesIn).Select(e => (e.Kind, e.Id, e.IsRight, e.Content))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_gives_what_its_page_says(string kind, string id, bool isRight, string content)
    {
        var example = new PageExample(id, kind, isRight, content);

        Diagnostic[] problems = [.. ProblemsOf(kind, content)];

        Assert.Equal(example.Expected, problems.Select(p => p.Id).Distinct());
        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In).Select(w => $"{p.Id}: {w}")));
    }

    private static IEnumerable<Diagnostic> ProblemsOf(string kind, string content) => kind switch
    {
        "formula" => BenchSheet.ProblemsOf(content),
        "trio" => BenchSheet.ProblemsOf(content, players: 3),
        "step" => StepBench.Of(content).Problems,
        "phrase" => PhraseProblems(content),
        "action" => ActionProblems(content),
        _ => Loaded.WithEveryVariant(content).Reading.Problems,
    };

    private static IEnumerable<Diagnostic> PhraseProblems(string phrase)
    {
        var problems = new DiagnosticBag();
        new PhraseReader(problems).Read(BenchSheet.Text(phrase));
        return problems.InOrder();
    }

    private static IEnumerable<Diagnostic> ActionProblems(string text)
    {
        var problems = new DiagnosticBag();
        OutlineMapping action = StepBench.Outline(text, problems);
        StepBench bench = StepBench.OfAction(BenchSheet.Declare(), action, problems);
        foreach (OutlineScalar phrase in action.Entries.Where(e => e.Key.Text == "phrase").Select(e => e.Value).OfType<OutlineScalar>())
        {
            var reader = new PhraseReader(problems);
            reader.CheckGaps(reader.Read(phrase), phrase.Span, bench.Choices);
        }

        return problems.InOrder();
    }
}
