using System.Text.RegularExpressions;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Steps;
using Rostrum.Sheets.Tests.Steps;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Tests.Formulas;

/// <summary>The pages in <c>docs/diagnostics</c> about formulas and steps: the wrong example gives the message, the right one none.</summary>
public sealed partial class DiagnosticPageTests
{
    private static readonly string[] Ids =
    [
        .. Id().Matches(RepositoryFolder.Read("src/Rostrum.Sheets/Formulas/FormulaProblems.cs") + RepositoryFolder.Read("src/Rostrum.Sheets/Steps/StepProblems.cs"))
            .Select(m => m.Groups[1].Value).Distinct().Order(StringComparer.Ordinal),
    ];

    /// <summary>Words are read with their sheet, so their page is run where sheets are.</summary>
    public static TheoryData<string> Pages => [.. Ids.Except(["ROS0210"])];

    public static TheoryData<string> AllPages => [.. Ids];

    [Theory]
    [MemberData(nameof(AllPages))]
    public void Page_has_its_title_and_two_examples(string id)
    {
        string page = RepositoryFolder.Read($"docs/diagnostics/{id}.md");

        Assert.Matches($"^# {id}: \\S", page);
        Assert.Equal(2, Block().Count(page));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Wrong_example_gives_the_message_and_the_right_one_none(string id)
    {
        MatchCollection blocks = Block().Matches(RepositoryFolder.Read($"docs/diagnostics/{id}.md"));

        Diagnostic[] wrong = [.. ProblemsOf(blocks[0])];
        Diagnostic[] right = [.. ProblemsOf(blocks[1])];

        Assert.Equal([id], wrong.Select(p => p.Id).Distinct());
        Assert.Empty(right);
        Assert.Empty(wrong.SelectMany(PlainWords.ForbiddenIn));
    }

    private static IEnumerable<Diagnostic> ProblemsOf(Match block) => (block.Groups[1].Value, block.Groups[2].Value) switch
    {
        ("formula", var text) => BenchSheet.ProblemsOf(text),
        ("formula for 3 players", var text) => BenchSheet.ProblemsOf(text, players: 3),
        ("step", var text) => StepBench.Of(text).Problems,
        ("phrase", var text) => PhraseProblems(text),
        (_, var text) => ActionProblems(text),
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

    [GeneratedRegex("\"(ROS[0-9]{4})\"")]
    private static partial Regex Id();

    [GeneratedRegex("```(\\w[^\n]*)\n(.*?)\n```", RegexOptions.Singleline)]
    private static partial Regex Block();
}
