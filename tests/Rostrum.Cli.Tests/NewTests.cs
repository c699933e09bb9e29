using System.Text.Json;

namespace Rostrum.Cli.Tests;

/// <summary><c>rostrum new</c>: what it leaves already answers.</summary>
public class NewTests
{
    private const int Sweeps = 60;

    private static readonly string[] Plain =
    [
        "coin", "coins", "lamp", "lily/lilies", "red cube", "Münze/Münzen", "épée", "石", "камень/камни", "fox", "dice", "sheep/sheep", "d20", "player's token", "chess", "glass bead",
        "ship", "bus", "meeple", "wood", "pan-pipe", "İnci", "ξύλο", "20 sided die", "way", "tree", "board", "row", "line", "worth",
    ];

    private static readonly string[] Hostile =
    [
        "../up", "a/b/c", "co{in", "co: in", "#", "- coin", "[x]", "my coin", "if", "of", "is not", "supply", "box", "space", "count", "three", "what", "spot", "place", "\u0007bell", "\u202Eback",
        "a\tb", "coin\ncoin", "'", "''", "\"", "|", ">", "*", "&a", "!x", "%", "@", "`", "nothing", "empty", "full", "it", "me", "player", "neighbours", "top", "1", "01", "-", "�", "😀", "\0",
        "seat 1", "turn of", "says", "expect", "players", "yes", "no", "not modelled", "removed", "worth", "book", "first", "last", "sets", "total", "points", "each player",
    ];

    private static readonly string[] Boards = ["none", "squares 4 across 3 up", "5x4", "1x1", "3 x 1", "1 across 6 up", "30x2", "hexes rows of 3 4 5 4 3", "hexes radius 2", "hexes radius 1", "hexes 4 across 3 up", "hexes rows of 1"];

    private static readonly string[] Scores = ["each", "table", "sets", "rows", "neighbours"];

    [Fact]
    public void Folder_alone_is_enough()
    {
        using var game = new TempGame();

        Told told = Told.By("new", game.Folder);

        Assert.Equal(0, told.Code);
        Assert.Contains($"rostrum tally {game.Folder} first\n", told.Talk);
        Assert.Equal(["positions/first.yaml", "sheet.yaml"], FilesIn(game.Folder));
        AssertAnswers(game.Folder);
        Assert.Equal(0, Told.By("draw", game.Folder, "first", "-o", game.PathOf("first.svg")).Code);
    }

    [Fact]
    public void Options_say_what_the_game_is()
    {
        using var game = new TempGame();

        Told told = Told.By("new", game.Folder, "--game", "Pond: the \"wet\" one", "--players", "2-3", "--pieces", "12 frogs, lily/lilies 20", "--board", "5x4", "--heaps", "no", "--score", "neighbours");

        string sheet = File.ReadAllText(game.PathOf("sheet.yaml"));
        Assert.Equal(0, told.Code);
        Assert.Contains("game: \"Pond: the \\\"wet\\\" one\"\nplayers: 2 to 3\n", sheet);
        Assert.Contains("  frog: {count: 12, plural: frogs}\n  lily: {count: 20, plural: lilies}\n", sheet);
        Assert.Contains("    each: s in my board where s shows a frog\n    points: count(n in neighbours of s where n shows a lily)\n", sheet);
        AssertAnswers(game.Folder);
        Assert.Equal(0, Told.By("draw", game.Folder, "first", "-o", game.PathOf("first.svg")).Code);
    }

    [Theory]
    [InlineData("none", "turn: collect\n", "    if: no(coins in supply)\n")]
    [InlineData("3x2", "turn: place\n", "    if: my board is full or no(supply)\n")]
    public void Sheet_has_a_turn_and_an_end_and_is_played(string board, string turn, string end)
    {
        using var game = new TempGame();

        Assert.Equal(0, Told.By("new", game.Folder, "--board", board).Code);

        string sheet = File.ReadAllText(game.PathOf("sheet.yaml"));
        Assert.Contains(turn, sheet);
        Assert.Contains(end, sheet);
        AssertIsPlayed(game.Folder);
    }

    [Fact]
    public void Sheet_without_a_turn_says_what_is_missing()
    {
        using var game = new TempGame();

        Told told = Told.By("new", game.Folder, "--turn", "no");

        Assert.DoesNotContain("rostrum play", told.Talk);
        AssertAnswers(game.Folder);
        Assert.Contains("ROS0901", Told.By("play", game.Folder).Talk);
    }

    [Fact]
    public void Somebody_at_a_terminal_is_asked()
    {
        using var game = new TempGame();

        Told told = Told.Typed("Lamp Market\n\n\nhexes rows of 3 4 3\n\nrow\nrows\n\n", "new", game.Folder);

        Assert.Equal(0, told.Code);
        Assert.Equal(0, Told.By("draw", game.Folder, "first", "-o", game.PathOf("first.svg")).Code);
        Assert.StartsWith("What is the game called? [Game] How many play? [2 to 4] Which pieces", told.Talk);
        Assert.Contains("'row' is no idea of scoring here. Did you mean 'rows'?", told.Talk);
        Assert.Contains("game: Lamp Market\n", File.ReadAllText(game.PathOf("sheet.yaml")));
        AssertAnswers(game.Folder);
    }

    [Fact]
    public void Answers_that_end_leave_nothing()
    {
        using var game = new TempGame();

        Told told = Told.Typed("Lamp Market\n", "new", game.Folder);

        Assert.Equal((2, false), (told.Code, Directory.Exists(game.Folder)));
        Assert.Contains("Nothing was made", told.Talk);
    }

    [Fact]
    public void Answers_that_are_never_understood_end_too() => Assert.Contains("'--players' says it as well.", Told.Typed("x\n" + string.Concat(Enumerable.Repeat("many\n", 9)), "new", "never-made").Talk);

    [Fact]
    public void Json_names_the_files()
    {
        using var game = new TempGame();

        JsonElement report = Told.By("new", game.Folder, "--json").Json;

        Assert.Equal(["positions/first.yaml", "sheet.yaml"], report.GetProperty("files").EnumerateArray().Select(f => f.GetProperty("name").GetString()));
        Assert.Equal(new FileInfo(game.PathOf("sheet.yaml")).Length, report.GetProperty("files")[1].GetProperty("bytes").GetInt64());
        Assert.Equal(5, report.GetProperty("next").GetArrayLength());
    }

    [Fact]
    public void Commands_to_try_next_work()
    {
        using var game = new TempGame();

        JsonElement next = Told.By("new", game.Folder, "--json").Json.GetProperty("next");

        Assert.All(next.EnumerateArray(), c => Assert.Equal(0, Told.By([.. System.CommandLine.Parsing.CommandLineParser.SplitCommandLine(c.GetString()!).Skip(1)]).Code));
    }

    [Theory]
    [InlineData("sheet.yaml", "holds a sheet.yaml already")]
    [InlineData("positions/first.yaml", "positions/first.yaml' already")]
    public void Nothing_is_ever_overwritten(string file, string told)
    {
        using var game = new TempGame((file, "mine"));

        Told refused = Told.By("new", game.Folder);

        Assert.Equal((2, true), (refused.Code, refused.Talk.Contains(told, StringComparison.Ordinal)));
        Assert.Equal([file], FilesIn(game.Folder));
        Assert.Equal("mine", File.ReadAllText(game.PathOf(file)));
    }

    [Fact]
    public void Folder_with_other_files_is_taken_and_they_stay()
    {
        using var game = new TempGame(("notes.txt", "mine"));

        Assert.Equal(0, Told.By("new", game.Folder).Code);
        Assert.Equal(["notes.txt", "positions/first.yaml", "sheet.yaml"], FilesIn(game.Folder));
    }

    [Fact]
    public void File_in_place_of_the_folder_is_refused()
    {
        using var game = new TempGame(("taken", ""));

        Assert.Contains("is a file. Name a folder", Told.By("new", game.PathOf("taken")).Talk);
    }

    [Fact]
    public void What_cannot_be_written_whole_leaves_nothing()
    {
        using var game = new TempGame(("positions", "a file where a folder should be"));

        Told told = Told.By("new", game.Folder);

        Assert.Equal(2, told.Code);
        Assert.Equal(["positions"], FilesIn(game.Folder));
    }

    [Theory]
    [InlineData("--pieces", "coin", "does not say how many there are")]
    [InlineData("--pieces", "", "A game needs pieces")]
    [InlineData("--pieces", "coin 0", "from 1 to 9999")]
    [InlineData("--pieces", "coin 3, coins 4", "stands there twice")]
    [InlineData("--pieces", "my coin 3", "holds the word 'my'")]
    [InlineData("--pieces", "../coin 3", "is no name of a piece")]
    [InlineData("--players", "4 to 2", "does not say how many play")]
    [InlineData("--players", "0", "does not say how many play")]
    [InlineData("--board", "big", "is no board")]
    [InlineData("--board", "0x3", "is no board")]
    [InlineData("--score", "rowz", "Did you mean 'rows'?")]
    [InlineData("--heaps", "perhaps", "is neither yes nor no")]
    [InlineData("--turn", "lay", "is neither yes nor no")]
    [InlineData("--game", "", "The game needs a name.")]
    [InlineData("--game", "a\u202Eb", "holds a sign that nobody sees")]
    public void Answer_that_makes_no_sheet_gets_a_sentence(string option, string answer, string sentence)
    {
        using var game = new TempGame();

        Told told = Told.By("new", game.Folder, option, answer);

        Assert.Equal((2, false), (told.Code, Directory.Exists(game.Folder)));
        Assert.Contains(sentence, told.Talk);
    }

    [Theory]
    [InlineData("--board", "none", "--heaps", "no", "Pieces have to lie somewhere")]
    [InlineData("--board", "none", "--score", "rows", "are those of a board")]
    [InlineData("--pieces", "coin 3", "--score", "sets", "A set needs two kinds")]
    public void Answers_that_do_not_go_together_get_a_sentence(string option, string answer, string other, string another, string sentence) =>
        Assert.Contains(sentence, Told.By("new", "never-made", option, answer, other, another).Talk);

    public static TheoryData<int> Seeds() => [.. Enumerable.Range(0, Sweeps)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Ordinary_answers_always_make_a_game_that_answers(int seed)
    {
        using var game = new TempGame();
        string[] answers = RandomAnswers(seed, Plain);

        Told told = Told.By(["new", game.Folder, .. answers]);

        Assert.True(told.Code == 0, $"{string.Join(' ', answers)}: {told.Talk}");
        AssertAnswers(game.Folder);
        AssertIsPlayed(game.Folder);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Hostile_answers_make_a_game_or_a_sentence_and_nothing_else(int seed)
    {
        using var game = new TempGame();
        string[] answers = RandomAnswers(seed, [.. Plain, .. Hostile, .. Hostile]);

        Told told = Told.By(["new", game.Folder, .. answers]);
        Told check = Told.By("check", game.Folder);

        string all = $"{string.Join(' ', answers)}: {told.Talk}";
        Assert.True(told.Code is 0 or 2, all);
        Assert.True(check.Code == told.Code, all + check.Output + check.Talk);
        Assert.Equal(told.Code == 0 ? ["positions/first.yaml", "sheet.yaml"] : [], FilesIn(game.Folder));
        Assert.DoesNotContain("warning", check.Output);
    }

    private static string[] RandomAnswers(int seed, string[] names)
    {
        var random = new Random(seed);
        int Roll(int sides) => random.Next(sides);
        int kinds = 2 + Roll(3);
        string pieces = string.Join(", ", Enumerable.Range(0, names.Length).OrderBy(_ => Roll(10_000)).Take(kinds).Select(i => $"{names[i]} {1 + Roll(12)}"));
        string board = Boards[Roll(Boards.Length)];
        string score = Scores[Roll(board == "none" ? 3 : 5)];
        return ["--pieces", pieces, "--board", board, "--score", score, "--players", $"{1 + Roll(3)} to {4 + Roll(3)}", .. board != "none" && Roll(2) == 0 ? (string[])["--heaps", "no"] : []];
    }

    private static void AssertAnswers(string folder)
    {
        Told check = Told.By("check", folder);
        Assert.Equal((0, ""), (check.Code, check.Output));
        Assert.Contains("expectations hold; 0 errors, 0 warnings", check.Talk);
        Assert.Equal(0, Told.By("tally", folder, "first").Code);
        Assert.Equal(0, Told.By("read", folder).Code);
    }

    private static void AssertIsPlayed(string folder)
    {
        JsonElement plies = Told.By("count", folder, "--plies", "1", "--json").Json.GetProperty("plies");
        Assert.InRange(plies[1].GetProperty("lines").GetInt64(), 1, 10_000);
        JsonElement result = Told.By("play", folder, "--json").Json.GetProperty("result");
        Assert.InRange(result.GetProperty("turns").GetInt32(), 1, 10_000);
        Assert.NotEqual(JsonValueKind.Null, result.GetProperty("end").ValueKind);
    }

    private static IEnumerable<string> FilesIn(string folder) => Directory.Exists(folder)
        ? Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f)).Order(StringComparer.Ordinal)
        : [];
}
