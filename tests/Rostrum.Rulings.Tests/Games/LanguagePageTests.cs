using System.Text.RegularExpressions;
using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Games;

/// <summary>Every example of <c>docs/language.md</c> is read: whole sheets with their positions, and pieces of sheets over the bench game.</summary>
public sealed partial class LanguagePageTests
{
    private const string Sheet = "sheet";
    private const string Position = "position of the sheet";

    private static readonly string Page = TestFiles.Read("docs/language.md").ReplaceLineEndings("\n");

    private static readonly (string Kind, string Content)[] Blocks = [.. Fence().Matches(Page).Select(m => (m.Groups["kind"].Value, m.Groups["content"].Value))];

    public static TheoryData<string, string> Sheets =>
        [.. Blocks.Zip(Blocks.Skip(1)).Where(pair => pair.First.Kind == Sheet).Select(pair => (pair.First.Content, pair.Second.Kind == Position ? pair.Second.Content : "")).ToArray()];

    public static TheoryData<string> Clauses =>
        [.. Blocks.Where(b => b.Kind == "clauses").Select(b => b.Content).Concat(Blocks.Where(b => b.Kind == "steps").Select(b => $"actions:\n  tried:\n    phrase: try it\n    do:\n{Indented(b.Content, 6)}"))];

    public static TheoryData<string> Positions => [.. Blocks.Where(b => b.Kind == "position").Select(b => b.Content)];

    public static TheoryData<string> Numbers => [.. NumberInLine().Matches(Page).Select(m => m.Groups[1].Value)];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void A_whole_sheet_is_read_and_counts_as_its_position_expects(string sheet, string position)
    {
        var game = new Rostrum.Rulings.Games.Game(GameFolder.InMemory("shown", (SheetReader.FileName, sheet)), ShippedGames.Idioms);
        OpenedPosition opened = game.Open(new SourceText("positions/end.yaml", position));

        Assert.Empty(Told(game.Sheet().Problems.Concat(opened.Problems)));
        Assert.Empty(Told(ExpectationCheck.Of(opened.Position!, opened.File!.Expectations)));
        Assert.NotEmpty(opened.File.Expectations);
    }

    [Theory]
    [MemberData(nameof(Clauses))]
    public void A_piece_of_a_sheet_is_read_over_the_bench_game(string clauses)
    {
        string sheet = BenchGame.SheetText.Replace("\nvariants:\n", $"\nvariants:\n  Tried:\n    cite: book 1\n{Indented(clauses, 4)}\n", StringComparison.Ordinal);
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("shown", (SheetReader.FileName, sheet)), BenchGame.Idioms, ["Tried"]);

        Assert.Empty(Told(reading.Problems));
        Assert.NotEqual(BenchGame.SheetText, sheet);
    }

    [Theory]
    [MemberData(nameof(Positions))]
    public void A_position_of_the_bench_game_is_read_and_counts_as_it_expects(string position)
    {
        OpenedPosition opened = BenchGame.Read(position);

        Assert.Empty(Told(opened.Problems));
        Assert.Empty(Told(ExpectationCheck.Of(opened.Position!, opened.File!.Expectations)));
    }

    [Fact]
    public void A_map_is_read_from_a_table()
    {
        const string sheet = "rule sheet: 1\nboards: {map: {file: map.csv}}\nscore: {hills: {cite: book 1, points: \"sum(s in land hills of map, toll of s)\"}}\nsources: {book: {title: Rulebook}}\n";
        string map = Blocks.Single(b => b.Kind == "map").Content;

        SheetReading reading = SheetReader.Read(GameFolder.InMemory("shown", (SheetReader.FileName, sheet), ("map.csv", map)), BenchGame.Idioms, []);

        Assert.Empty(Told(reading.Problems));
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_number_within_a_line_is_worked_out_over_the_bench_game(string formula) =>
        Assert.Equal("yes", Ruling.On(BenchGame.Position, $"{formula} is {formula}").Ruling?.Verdict);

    [Fact]
    public void Examples_stand_in_fences_of_a_kind_that_is_read()
    {
        Assert.Empty(Blocks.Select(b => b.Kind).Except([Sheet, Position, "clauses", "steps", "position", "map", "grammar"]));
        Assert.DoesNotMatch(IndentedExample(), Page);
    }

    private static IEnumerable<string> Told(IEnumerable<Diagnostic> problems) => problems.Select(p => $"{p.At}: {p.Id} {p.Message} {p.Hint}");

    private static string Indented(string text, int by) => string.Join('\n', text.Split('\n').Select(line => new string(' ', by) + line));

    [GeneratedRegex(@"^```(?<kind>[\w ]+)\n(?<content>.*?)\n```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();

    [GeneratedRegex(@"\n\n    \S")]
    private static partial Regex IndentedExample();

    [GeneratedRegex(@"`((?:count|smallest|largest|different|down|up|nearest)\([^`…]+\))`")]
    private static partial Regex NumberInLine();
}
