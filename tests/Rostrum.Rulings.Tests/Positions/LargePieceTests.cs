using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Verdicts;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Positions;

/// <summary>Pieces that lie on several spaces, over the small field of the trail game: bars of two in line, hooks of four.</summary>
public sealed class LargePieceTests
{
    private const string Two = "field: |\n  2 b . .\n  1 b b b\n  / K L M\nturn of: Ann\n";
    private const string Hook = "field: |\n  2 h h h\n  1 h b b\n  / K L M\nturn of: Ann\n";

    [Theory]
    [InlineData(Two, "count(bars in field)", "2")]
    [InlineData(Two, "count(bars in step 1 of field)", "2")]
    [InlineData(Two, "count(bars in lane L of field)", "1")]
    [InlineData(Two, "count(bars in (K1, K2))", "1")]
    [InlineData(Two, "count(s in field where s shows a bar)", "4")]
    [InlineData(Two, "count(spaces of top of L1)", "2")]
    [InlineData(Two, "count(edge of spaces of top of K1)", "2")]
    [InlineData(Two, "height of M1", "1")]
    [InlineData(Hook, "count(hooks in field)", "1")]
    [InlineData(Hook, "count(spaces of top of M2)", "4")]
    public void A_piece_on_several_spaces_is_one(string position, string formula, string expected) => Assert.Equal("yes", Ask(position, $"{formula} is {expected}"));

    [Theory]
    [InlineData("top of K1 is top of K2", "yes")]
    [InlineData("top of K1 is top of L1", "no")]
    [InlineData("top of L1 is in lane M of field", "yes")]
    [InlineData("place of top of M1 is L1", "yes")]
    [InlineData("K1 is in spaces of top of K2", "yes")]
    public void It_is_the_same_piece_on_each_of_its_spaces(string question, string verdict) => Assert.Equal(verdict, Ask(Two, question));

    [Theory]
    [InlineData("field: |\n  2 . . .\n  1 b b .\n  / K L M\n", "lay bar on K2 and L2", "illegal")]
    [InlineData("field: |\n  2 . . .\n  1 b b .\n  / K L M\n", "lay bar on L1 and M1", "illegal")]
    [InlineData("field: |\n  2 . . .\n  1 . . .\n  / K L M\n", "lay bar on K1 and K2", "legal")]
    [InlineData("field: |\n  2 . . .\n  1 b b .\n  / K L M\n", "lay bar on M1 and M2", "illegal")]
    public void Laying_it_is_judged_on_all_its_spaces(string position, string action, string verdict) => Assert.Equal(verdict, Ask(position + "turn of: Ann\n", action));

    [Fact]
    public void A_refusal_names_every_law_that_is_broken()
    {
        var ruling = Assert.IsType<Ruling.Illegal>(Ruling.On(Read("field: |\n  2 . . .\n  1 b b .\n  / K L M\nturn of: Ann\n"), "lay bar on L1 and L2").Ruling);

        Assert.Equal(["free", "beside"], ruling.Breaches.Select(b => b.Clause));
    }

    [Fact]
    public void Words_that_are_no_way_to_lay_it_are_answered()
    {
        Diagnostic problem = Assert.Single(Ruling.On(Read(Two), "lay bar on K1 and M1").Problems);

        Assert.Contains("K1", problem.Message + problem.Hint, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Two, 2)]
    [InlineData(Hook, 2)]
    [InlineData("field:\n  K1 K2: bar\n  L1 L2: bar\nturn of: Ann\n", 2)]
    [InlineData("field:\n  K1: [reed, bar, camp of Ben]\n  L1: bar\nturn of: Ann\n", 3)]
    public void It_is_counted_once_and_read_back_as_printed(string text, int things)
    {
        Position read = Read(text);
        string printed = PositionPrinter.Print(read);

        Assert.Equal(things, read.Things.Count());
        Assert.Equal(printed, PositionPrinter.Print(Read(printed)));
    }

    [Fact]
    public void There_are_only_so_many()
    {
        OpenedPosition opened = Open("field:\n  K1 K2: hook\n");

        Assert.Equal("ROS0159", Assert.Single(opened.Problems).Id);
        Assert.Empty(Open("field: |\n  2 h h h\n  1 h b b\n  / K L M\nmarsh: |\n  a . . .\n  b . # . .\n  c . . .\n").Problems);
    }

    private static string? Ask(string position, string question) => Ruling.On(Read(position), question).Ruling?.Verdict;

    private static OpenedPosition Open(string text) => TrailGame.Game(text).Open(new SourceText("positions/bench.yaml", text));

    private static Position Read(string text)
    {
        OpenedPosition opened = Open(text);
        Assert.Empty(opened.Problems.Select(p => $"{p.At}: {p.Message}"));
        return opened.Position!;
    }

    // A part that is not given may belong to a piece whose other spaces are given.
    [Theory]
    [InlineData("field: |\n  2 . . .\n  1 . ? ?\n  / K L M\n", "count(bars in field) is 0")]
    [InlineData("field:\n  K1 L1: \"?\"\n", "count(bars in field) is 0")]
    [InlineData("field:\n  K1 L1: \"?\"\n", "K1 is empty")]
    [InlineData("field: |\n  2 ? . .\n  1 ? . .\n  / K L M\n", "any(v in bars in field where any(fits(v, field)))")]
    public void What_is_not_given_stays_open(string position, string question) => Assert.Equal("unsettled", Ask(position + "turn of: Ann\n", question));

    [Fact]
    public void One_space_named_twice_is_no_piece() => Assert.Equal("ROS0224", Assert.Single(Open("field:\n  K1 L1 L1: bar\n").Problems).Id);

    [Theory]
    [InlineData("sweep", "legal")]
    [InlineData("gather", "legal")]
    [InlineData("drop on K2", "unsettled")]
    [InlineData("fetch to K2", "unsettled")]
    [InlineData("trade L1 and K2", "unsettled")]
    [InlineData("plant reed on K1 and K2", "unsettled")]
    public void Steps_that_move_it_do_so_as_a_whole_or_not_at_all(string action, string verdict)
    {
        const string actions = """
            actions:
              sweep: {phrase: sweep, do: move all bars from field to supply}
              gather: {phrase: gather, do: move all bars from field to pile}
              drop: {phrase: drop on (spot), choose: {spot: a space in field}, do: move all bars from field to spot}
              fetch: {phrase: fetch to (spot), choose: {spot: a space in field}, do: move a bar from supply to spot}
              trade: {phrase: trade (near) and (far), choose: {near: a space in field, far: a space in field}, do: swap near and far}
              plant: {phrase: plant (what) on (spots), choose: {what: a reed in supply, spots: "one of fits(the bar in pile, field)"}, do: move what to spots}
            laws:
              bare: {says: No bar is left., binds: [sweep, gather], must leave: no(bars in field)}
              still: {says: Bars stay whole., binds: [drop, fetch, trade, plant], must leave: count(bars in field) is at least 1}
            """;
        string sheet = TrailGame.SheetText[..TrailGame.SheetText.IndexOf("actions:", StringComparison.Ordinal)] + "places: {pile: {heap of: bar}}\n" + actions + "\n";
        const string text = "field: |\n  2 . . .\n  1 . b b\n  / K L M\npile: 1\n";
        var game = new Game(GameFolder.InMemory("bars", (Rostrum.Sheets.Loading.SheetReader.FileName, sheet)), BenchGame.Idioms);

        RulingAnswer answer = Ruling.On(game.Open(new SourceText("positions/bench.yaml", text + "turn of: Ann\n")).Position!, action);

        Assert.Empty(answer.Problems.Select(p => p.Message));
        Assert.Equal(verdict, answer.Ruling!.Verdict);
    }
}
