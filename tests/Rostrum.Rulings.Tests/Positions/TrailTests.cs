using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Verdicts;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Positions;

/// <summary>Positions on hexes and on a map, over the trail game of the test kit.</summary>
public sealed class TrailTests
{
    private const string Marsh = """
        marsh:
          a  r c1 .
          b . # r+c2 2r
          c  . c1 .
        roads:
          inn: Ann's camp
          mill: [2 reeds]
        turn of: Ann
        """;

    private static readonly string Text = Marsh.Replace("marsh:", "marsh: |", StringComparison.Ordinal).Replace("Ann's camp", "camp of Ann", StringComparison.Ordinal);

    [Fact]
    public void The_sheet_of_the_trail_has_no_problem() => Assert.Empty(TrailGame.Reading.Problems.Where(p => p.Id != "ROS0503").Select(p => p.Message));

    [Theory]
    [InlineData("height of b3", "2")]
    [InlineData("depth of a1", "1")]
    [InlineData("count(s in marsh where depth of s is nothing)", "5")]
    [InlineData("count(bank a of marsh)", "3")]
    [InlineData("count(slopes of marsh)", "4")]
    [InlineData("count(shores of marsh)", "2")]
    [InlineData("count(camps in shore near of marsh)", "1")]
    [InlineData("count(reeds in roads)", "2")]
    [InlineData("count(my land)", "2")]
    [InlineData("toll of ferry", "2")]
    [InlineData("distance(inn, tower)", "4")]
    [InlineData("distance(a1, c2)", "3")]
    [InlineData("distance(a1, c2, joined by joined)", "3")]
    [InlineData("count(neighbours of mill)", "3")]
    [InlineData("longest way(s in marsh where s is not empty, joined by joined, counted as group)", "5")]
    public void A_number_is_worked_out(string formula, string expected) => Assert.Equal("yes", Ask($"{formula} is {expected}"));

    [Theory]
    [InlineData("tunnel of my home is tower", "yes")]
    [InlineData("home of Ben is tower", "yes")]
    [InlineData("shore of b1 is nothing", "yes")]
    [InlineData("shore of a1 is shore far of marsh", "yes")]
    [InlineData("b1 is next to c1", "yes")]
    [InlineData("a1 is next to c1", "no")]
    [InlineData("mill is in land of Ann", "no")]
    [InlineData("northeast of b1 is a1", "yes")]
    [InlineData("across(inn, hill) is nothing", "yes")]
    [InlineData("distance(c1, b4, joined by joined) is nothing", "no")]
    public void A_truth_is_worked_out(string question, string verdict) => Assert.Equal(verdict, Ask(question));

    [Fact]
    public void Hexes_are_printed_as_they_are_set_off_and_read_back_the_same()
    {
        Position read = Read(Text);

        string printed = PositionPrinter.Print(read);

        Assert.Contains("marsh: |\n  a    r     c1    .\n  b .     #     r+c2  2r\n  c    .     c1    .\n", printed, StringComparison.Ordinal);
        Assert.Equal(printed, PositionPrinter.Print(Read(printed)));
    }

    [Theory]
    [InlineData("marsh: |\n  a . .\n  b . # . .\n  c . . .\n", "ROS0135", "This row draws 2 cells, and bank a has 3 places, holes included.")]
    [InlineData("marsh: |\n  a . . .\n  b . # . .\n", "ROS0134", "This drawing leaves out bank c of 'marsh'.")]
    [InlineData("marsh: |\n  a . . .\n  b . r . .\n  c . . .\n", "ROS0136", "'marsh' has no space b2, so nothing can be drawn there.")]
    [InlineData("marsh: |\n  a . . .\n  b # . . .\n  c . . .\n", "ROS0137", "The hole of 'marsh' in this row is b2, and it is drawn elsewhere.")]
    [InlineData("marsh: |\n  a . # .\n  b . # . .\n  c . . .\n", "ROS0137", "'#' says that there is no a2, but 'marsh' has it.")]
    [InlineData("marsh: |\n  a . . .\n  b . # . .\n  d . . .\n", "ROS0225", "'marsh' has no row 'd'.")]
    [InlineData("roads: {inn: 2 reeds, bridge: reed}\n", "ROS0224", "'roads' has no space 'bridge'.")]
    public void A_wrong_drawing_gets_one_message(string text, string id, string message)
    {
        Diagnostic problem = Assert.Single(Open(text).Problems);

        Assert.Equal((id, message), (problem.Id, problem.Message));
    }

    [Theory]
    [InlineData("marsh: |\n  a . r .\n  b . . .\n  c . . .\n")]
    [InlineData("marsh: |\n  | . r .\n  | . # . .\n  | . . .\n")]
    [InlineData("marsh: |\n  a - . r . -\n  b . - . .\n  c   . . .\n")]
    public void How_far_a_row_is_set_off_does_not_matter(string text) =>
        Assert.Equal(text.Contains("b . . .", StringComparison.Ordinal) ? 1 : 0, Open(text).Problems.Length);

    private static string? Ask(string question) => Ruling.On(Read(Text), question).Ruling?.Verdict;

    private static OpenedPosition Open(string text) => TrailGame.Game(text).Open(new SourceText("positions/bench.yaml", text));

    private static Position Read(string text)
    {
        OpenedPosition opened = Open(text);
        Assert.Empty(opened.Problems.Select(p => $"{p.At}: {p.Message}"));
        return opened.Position!;
    }
}
