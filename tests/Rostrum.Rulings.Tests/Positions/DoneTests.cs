using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Positions;

/// <summary>What a position says was done before. Two frogs hop on a pond of four cells; every frog's answer is worked out by hand.</summary>
public sealed class DoneTests
{
    private const string Words = """
        rule sheet: 1
        game: Pond
        players: 2
        pieces: {frog: {count: 4, attributes: {colour: [green, brown]}}}
        boards: {pond: {squares: 2 across 2 up, spaces: cell}}
        places: {basket: {heap of: frog, of: each player}, logs: {row of: 3, slots: log, holds: frog}}
        actions:
          hop: {phrase: hop (frog) to (goal), choose: {frog: a frog in pond, goal: a cell in pond where it is empty}, do: move frog to goal}
          croak: {phrase: croak (loudness) times, choose: {loudness: a number from 1 to 3}, do: nothing}
          rest: {phrase: rest on (spots), choose: {spots: 2 cells in pond}, do: nothing}
          sit: {phrase: sit on (trunk), choose: {trunk: a log in logs where it is empty}, do: nothing}
        """;

    private const string Table = """
        players: 2
        pond: {A1: green frog}
        turn of: seat 2

        """;

    [Theory]
    [InlineData("the turn before: croak 2 times", "croak was done the turn before", "yes")]
    [InlineData("the turn before: croak 2 times", "croak was done the turn before by opponent", "yes")]
    [InlineData("the turn before: croak 2 times", "croak was done the turn before by me", "no")]
    [InlineData("the turn before: croak 2 times", "croak was done this turn", "no")]
    [InlineData("the turn before: croak 2 times", "croak was done this round", "yes")]
    [InlineData("the turn before: croak 2 times", "croak was done the round before", "no")]
    [InlineData("the turn before: croak 2 times", "croak was done before", "yes")]
    [InlineData("the turn before: croak 2 times", "sit was done before", "no")]
    [InlineData("this turn: croak 2 times", "croak was done this turn by me", "yes")]
    [InlineData("this turn: croak 2 times", "croak was done this round", "yes")]
    [InlineData("the round before: {seat 2: croak 1 times}", "croak was done the round before by me", "yes")]
    [InlineData("the round before: {seat 2: croak 1 times}", "croak was done this round", "no")]
    [InlineData("before: {seat 1: [croak 1 times, sit on log 2]}", "sit was done before by opponent", "yes")]
    [InlineData("before: {seat 1: [croak 1 times, sit on log 2]}", "sit was done the round before", "no")]
    public void Whether_it_was_done_is_known(string done, string formula, string told) => Assert.Equal(told, Told(formula, done));

    [Theory]
    [InlineData("loudness of last croak is 3", "this turn: [croak 1 times, croak 3 times]", "yes")]
    [InlineData("loudness of last croak is 1", "{the turn before: croak 1 times, this round: [seat 2: croak 2 times]}", "yes")]
    [InlineData("loudness of my last croak is 2", "{the turn before: croak 1 times, this round: [seat 2: croak 2 times]}", "yes")]
    [InlineData("loudness of my last croak is nothing", "the turn before: croak 1 times", "yes")]
    [InlineData("goal of last hop is A1", "the turn before: hop green frog to A1", "yes")]
    [InlineData("goal of last hop is B2", "the turn before: hop green frog to A1", "no")]
    [InlineData("goal of last hop is B2", "the turn before: hop green frog to ?", "unknown")]
    [InlineData("frog of last hop is top of A1", "the turn before: hop A1 to A1", "yes")]
    [InlineData("frog of last hop is top of A1", "the turn before: hop green frog on A1 to A1", "yes")]
    [InlineData("frog of last hop is top of A1", "the turn before: hop green frog to A1", "unknown")]
    [InlineData("count(spots of last rest) is 2", "this turn: rest on A1 and B2", "yes")]
    [InlineData("A1 is in spots of last rest", "this turn: rest on A1 and B2", "yes")]
    [InlineData("order of trunk of last sit is 2", "this turn: sit on log 2", "yes")]
    public void What_was_chosen_is_known_where_it_can_be_told(string formula, string done, string told) => Assert.Equal(told, Told(formula, done));

    [Theory]
    [InlineData("the turn befor: croak 2 times", "ROS0175", "the turn befor")]
    [InlineData("this round: croak 2 times", "ROS0176", "croak 2 times")]
    [InlineData("this turn: croka 2 times", "ROS0241", "croka 2 times")]
    [InlineData("this turn: hop green frog to C9", "ROS0242", "C9")]
    [InlineData("this turn: hop green forg to A1", "ROS0242", "forg")]
    [InlineData("this turn: sit on log 4", "ROS0242", "log 4")]
    [InlineData("this turn: {seat 3: croak 2 times}", "ROS0143", "seat 3")]
    [InlineData("this turn: {Frog: croak 2 times}", "ROS0226", "Frog")]
    [InlineData("croak 2 times", "ROS0131", "croak 2 times")]
    public void A_slip_is_told_at_its_place(string done, string id, string at)
    {
        var problems = new DiagnosticBag();
        Position(done, problems);

        Diagnostic only = Assert.Single(problems.InOrder());
        Assert.Equal((id, at), (only.Id, only.At.Text));
    }

    [Fact]
    public void What_nothing_is_said_of_is_not_given_and_an_empty_record_says_that_nothing_was_done()
    {
        Assert.Equal("unknown", Told("croak was done before", null));
        Assert.Equal("no", Told("croak was done before", ""));
    }

    [Fact]
    public void Who_starts_the_round_decides_whether_the_turn_before_belongs_to_it()
    {
        const string Done = "the turn before: {seat 1: croak 2 times}";

        Assert.Equal("unknown", Told("croak was done this round", Done, "turn: set start player to left of start player\n"));
        Assert.Equal("yes", Told("croak was done this round", Done, "next to play: opponent\n"));
    }

    [Fact]
    public void A_record_is_printed_as_it_is_read()
    {
        const string Done = """
            done:
              this turn:
                - seat 2: hop green frog on A1 to B2
                - seat 1: croak 2 times
              the round before:
                - seat 1: sit on log 2

            """;
        var problems = new DiagnosticBag();
        Position position = PositionReader.Read(Sheet(""), new SourceText("p.yaml", Table + Done), problems).Position!;

        Assert.EndsWith(Done.ReplaceLineEndings("\n"), PositionPrinter.Print(position), StringComparison.Ordinal);
    }

    private static string Told(string formula, string? done, string more = "")
    {
        var problems = new DiagnosticBag();
        Position position = Position(done, problems, more);
        Assert.Empty(problems.InOrder().Select(p => p.Message));
        (Term term, int size) = Bench.Bind(formula, position.Sheet);
        return new Evaluator(position, position.Me, Setting.First, new SortedSet<int>()).Ask(term, Evaluator.Frame(size)).Is switch { Kleene.Yes => "yes", Kleene.No => "no", _ => "unknown" };
    }

    private static Position Position(string? done, DiagnosticBag problems, string more = "")
    {
        string text = done is null ? "" : done.Contains(':', StringComparison.Ordinal) && !done.StartsWith('{') ? $"done:\n  {done}\n" : $"done: {done}\n";
        PositionFile file = PositionReader.Read(Sheet(more), new SourceText("p.yaml", Table + text), problems);
        return file.Position ?? Rostrum.Rulings.Positions.Position.Blank(file.Sheet, "none", 2);
    }

    private static Sheet Sheet(string more)
    {
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("test", ("sheet.yaml", $"{Words}\n{more}")), IdiomLibrary.Empty, []);
        Assert.Empty(reading.Problems.Where(p => p.Severity == Severity.Error).Select(p => p.Message));
        return reading.Sheet!;
    }
}
