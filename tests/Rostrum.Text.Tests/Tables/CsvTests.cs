using CsCheck;
using Rostrum.Testing;
using Rostrum.Text.Tables;

namespace Rostrum.Text.Tests.Tables;

/// <summary>Tables: what reads, and where each cell stands.</summary>
public sealed class CsvTests
{
    private static readonly Gen<string> Cell = Gen.OneOf("a", "", "x y", "é石", "a, b", "a; b", "say \"x\"", "two\nlines", "3", " b ", "'", "\"");

    public static TheoryData<string, string, string> Cases => new()
    {
        { "commas", "name,worth\nJug,2\n", "name|worth; Jug|2" },
        { "semicolons", "name;worth\nJug;2,5\n", "name|worth; Jug|2,5" },
        { "a comma inside quotes of a header", "\"a,b\";c\n1;2", "a,b|c; 1|2" },
        { "quotes", "a,b\n\"x, y\",\"say \"\"z\"\"\"", "a|b; x, y|say \"z\"" },
        { "a cell over two lines", "a,b\n\"x\ny\",2", "a|b; x\ny|2" },
        { "empty cells", "a,b,c\n,,\n\"\",x,", "a|b|c; ||; |x|" },
        { "blanks around cells", "a , b\n x , \"y\" ", "a|b; x|y" },
        { "blank lines", "\n\na,b\n\n  \nx,y\n\n", "a|b; x|y" },
        { "a byte order sign", "\uFEFFa,b\nx,y", "a|b; x|y" },
        { "windows line ends", "a,b\r\nx,y\r\n", "a|b; x|y" },
        { "letters of any script", "nöme,石\né,ж", "nöme|石; é|ж" },
        { "one column", "a\nx\ny", "a; x; y" },
        { "only a header", "a,b", "a|b" },
        { "a quote inside a cell", "a,b\n5\" wide,x", "a|b; 5\" wide|x" },
    };

    public static TheoryData<string, string, string, string> Slips => new()
    {
        { "a cell made a date", "name,range\nJug,2024-03-05\nLamp,5-Mar\nBowl,1.2", "ROS0154 2,5; ROS0154 3,6", "name|range; Jug|2024-03-05; Lamp|5-Mar; Bowl|1.2" },
        { "a column of dates", "name,date\nJug,2024-03-05", "", "name|date; Jug|2024-03-05" },
        { "rows too short and too long", "a,b\nx\ny,2,3\nz,4", "ROS0151 2,1; ROS0151 3,1", "a|b; x|; y|2; z|4" },
        { "names twice and none", "a,a,\n1,2,3", "ROS0152 1,3; ROS0153 1,5", "a|a|; 1|2|3" },
        { "a quote never closed", "a,b\n\"x,1\ny,2", "ROS0150 2,1", "a|b; x|1; y|2" },
        { "words behind a quote", "a,b\n\"x\" y,1", "ROS0156 2,5", "a|b; x|1" },
        { "nothing", "\n \n", "ROS0155 1,1", "" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Table_reads_as_its_cells(string name, string content, string told)
    {
        var problems = new DiagnosticBag();

        CsvTable? table = CsvReader.Read(new SourceText("t.csv", content), problems);

        Assert.Equal((name, told), (name, Tell(table)));
        Assert.Empty(problems.InOrder());
    }

    [Theory]
    [MemberData(nameof(Slips))]
    public void Slips_are_all_told_and_the_rest_is_read(string name, string content, string told, string cells)
    {
        var problems = new DiagnosticBag();

        CsvTable? table = CsvReader.Read(new SourceText("t.csv", content), problems);

        Assert.Equal((name, told), (name, string.Join("; ", problems.InOrder().Select(p => $"{p.Id} {p.At.StartPosition}"))));
        Assert.Equal(cells, Tell(table));
    }

    [Fact]
    public void Printed_cells_are_read_back() =>
        Gen.Select(Cell.Array[2].Array[1, 5], Gen.Bool).Hold((rows, semicolon) =>
        {
            string separator = semicolon ? ";" : ",";
            string content = $"left{separator}right\n" + string.Join('\n', rows.Select(r => string.Join(separator, r.Select(c => $"\"{c.Replace("\"", "\"\"", StringComparison.Ordinal)}\""))));

            CsvTable table = CsvReader.Read(new SourceText("t.csv", content), new DiagnosticBag())!;

            Assert.Equal(rows.SelectMany(r => r), table.Rows.SelectMany(r => r.Cells).Select(c => c.Text));
            Assert.All(table.Rows.SelectMany(r => r.Cells), c => Assert.Equal(c.Text, string.Concat(c.Text.Select((_, i) => c.SpanOf(i, 1).Text[..1]))));
        });

    [Fact]
    public void Column_is_found_by_its_exact_name()
    {
        CsvTable table = CsvReader.Read(new SourceText("t.csv", "name,worth,worth"), new DiagnosticBag())!;

        Assert.Equal((0, 1, null), (table.ColumnOf("name"), table.ColumnOf("worth"), table.ColumnOf("Name")));
    }

    [Fact]
    public void Sample_reads_without_a_problem()
    {
        var problems = new DiagnosticBag();

        CsvTable table = CsvReader.Read(new SourceText("commissions.csv", TestFiles.Read("tests/Rostrum.Text.Tests/Samples/commissions.csv")), problems)!;

        Assert.Empty(problems.InOrder());
        Assert.Equal(20, table.Rows.Length);
    }

    private static string Tell(CsvTable? table) => table is null
        ? ""
        : string.Join("; ", table.Rows.Select(r => r.Cells).Prepend(table.Header).Select(c => string.Join('|', c.Select(x => x.Text))));
}
