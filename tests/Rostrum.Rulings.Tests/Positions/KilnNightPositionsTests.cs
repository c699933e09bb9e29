using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Positions;

/// <summary>The positions of the demo game: every one reads, and reads back from its canonical text.</summary>
public sealed class KilnNightPositionsTests
{
    public static TheoryData<string> Files => [.. TestFiles.In("games/kiln-night/positions", "*.yaml")];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_position_reads_without_an_error(string name)
    {
        (PositionFile file, ImmutableArray<Diagnostic> problems) = ReadFile(name);

        Assert.Empty(problems.Where(p => p.Severity == Severity.Error).Select(p => $"{p.At}: {p.Message}"));
        Assert.NotNull(file.Says);
        Assert.NotEmpty(file.Expectations);
        Assert.Contains(file.Position!.Boards[0][0], s => s.IsGiven);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_position_reads_back_from_its_canonical_text(string name)
    {
        Position position = ReadFile(name).File.Position!;

        Read again = Read.Of(PositionPrinter.Print(position), position.Sheet);

        Assert.Equal(PositionPrinter.Print(position), PositionPrinter.Print(again.Position));
        Assert.Equal(position.Boards[0][0].AsEnumerable(), again.Position.Boards[0][0].AsEnumerable());
    }

    [Fact]
    public void Only_the_fifth_copper_lamp_is_more_than_the_box_holds()
    {
        string[] told = [.. Files.SelectMany(f => ReadFile(f.Data).Problems).Select(p => $"{p.Id} {p.At.StartPosition} {p.Message}")];

        Assert.Equal(["ROS0141 7,19 This position holds 5 copper lamps, and there are only 4."], told);
    }

    private static (PositionFile File, ImmutableArray<Diagnostic> Problems) ReadFile(string name)
    {
        var problems = new DiagnosticBag();
        var source = new SourceText(name, TestFiles.Read(name));
        PositionFile file = PositionReader.Read(TestSheet.ForVariants(PositionReader.VariantsOf(source, problems)), source, problems);
        return (file, problems.InOrder());
    }
}
