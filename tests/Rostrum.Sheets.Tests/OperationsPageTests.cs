using Rostrum.Sheets.Model;
using Rostrum.Sheets.Tests.Formulas;
using Rostrum.Testing;

namespace Rostrum.Sheets.Tests;

/// <summary>The reference page and the examples in the table of operations.</summary>
public sealed class OperationsPageTests
{
    public static TheoryData<Op> All => [.. Operations.All.Select(o => o.Id)];

    [Fact]
    public void Page_says_what_the_table_says()
    {
        string made = OperationsPage.Make();

        Assert.Equal(made, TestFiles.Made("docs/operations.md", made));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Example_reads_without_a_message(Op id) =>
        Assert.Empty(BenchSheet.ProblemsOf(Operations.Of(id).Example.Formula).Select(p => $"{p.Id} {p.Message}"));

    [Theory]
    [MemberData(nameof(All))]
    public void Refused_example_gives_its_message(Op id) =>
        Assert.Contains(Operations.Of(id).Refused.Result, BenchSheet.ProblemsOf(Operations.Of(id).Refused.Formula).Select(p => p.Id));
}
