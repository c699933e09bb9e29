using Rostrum.Rulings.Tests.Games;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.OperationTable;

/// <summary>The examples of the table of operations, over the bench game as it is read from its text.</summary>
public sealed class OperationExampleTests
{
    public static TheoryData<Op> All => [.. Operations.All.Select(o => o.Id)];

    [Fact]
    public void The_bench_game_is_sound()
    {
        Assert.Empty(BenchGame.Reading.Problems.Select(p => $"{p.Id} {p.At}: {p.Message}"));
        Assert.Empty(BenchGame.Read(BenchGame.PositionText).Problems.Select(p => $"{p.Id} {p.At}: {p.Message}"));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Each_example_gives_what_the_table_says(Op id)
    {
        OperationExample example = Operations.Of(id).Example;

        Assert.Equal(example.Result, Bench.Say(Bench.Ask(example.Formula, BenchGame.Position)));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Each_refused_example_gives_the_message_that_the_table_names(Op id)
    {
        OperationExample refused = Operations.Of(id).Refused;
        var problems = new DiagnosticBag();

        var bound = OutsideFormula.Bind(BenchGame.Sheet, FormulaText.Of(refused.Formula, "question"), Sort.Any, problems);

        Assert.Null(bound);
        Assert.Equal([refused.Result], problems.InOrder().Select(p => p.Id).Distinct());
        Assert.Empty(problems.InOrder().SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In)));
    }
}
