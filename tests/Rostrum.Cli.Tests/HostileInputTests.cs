using System.Diagnostics;
using System.Text.Json;

namespace Rostrum.Cli.Tests;

/// <summary>A folder may come from anyone.</summary>
public class HostileInputTests
{
    // Generous, because test machines are busy; what is guarded against takes minutes or all memory.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    [Fact]
    public void Path_that_leaves_the_folder_is_refused()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly + "\ncards:\n  secret: {file: ../secret.csv}\n"));
        File.WriteAllText(Path.Combine(game.Outside, "secret.csv"), "name\nTop Secret\n");

        Told told = Told.By("check", game.Folder);

        Assert.Equal(1, told.Code);
        Assert.Contains("'../secret.csv' leads out of the game's folder.", told.Output);
        Assert.DoesNotContain("Top Secret", told.Output);
    }

    [Fact]
    public void Link_that_leaves_the_folder_is_not_followed()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly + "\ncards:\n  secret: {file: inside.csv}\n"));
        File.WriteAllText(Path.Combine(game.Outside, "secret.csv"), "name\nTop Secret\n");
        File.CreateSymbolicLink(game.PathOf("inside.csv"), "../secret.csv");

        Told told = Told.By("read", game.Folder);

        Assert.Equal(1, told.Code);
        Assert.DoesNotContain("Top Secret", told.Output + told.Talk);
    }

    [Fact]
    public void Linked_folder_that_leaves_the_game_is_not_listed()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly));
        string outside = Directory.CreateDirectory(Path.Combine(game.Outside, "elsewhere")).FullName;
        File.WriteAllText(Path.Combine(outside, "few.yaml"), "seat 1:\n  heap: 3 pebbles\n");
        Directory.CreateSymbolicLink(game.PathOf("positions"), outside);

        Assert.Contains("0 positions", Told.By("check", game.Folder).Talk);
        Assert.Equal(2, Told.By("tally", game.Folder, "few").Code);
    }

    [Fact]
    public void Link_inside_the_folder_is_followed()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly), ("positions/few.yaml", "seat 1:\n  heap: 3 pebbles\n"));
        File.CreateSymbolicLink(game.PathOf("positions/same.yaml"), "few.yaml");

        Assert.Equal(0, Told.By("tally", game.Folder, "same").Code);
    }

    [Fact]
    public void Links_in_a_circle_are_no_file()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly), ("positions/few.yaml", "seat 1:\n  heap: 3 pebbles\n"));
        File.CreateSymbolicLink(game.PathOf("positions/round.yaml"), "about.yaml");
        File.CreateSymbolicLink(game.PathOf("positions/about.yaml"), "round.yaml");

        Assert.Equal(2, Told.By("tally", game.Folder, "round").Code);
    }

    [Fact]
    public void Sheet_of_more_than_4_MB_is_refused()
    {
        using var game = new TempGame(("sheet.yaml", "# " + new string('x', (4 * 1024 * 1024) + 1)));

        Assert.Contains("'sheet.yaml' is larger than 4 MB.", Told.By("check", game.Folder).Output);
    }

    [Fact]
    public void Sheet_that_is_no_text_is_refused()
    {
        using var game = new TempGame(("sheet.yaml", ""));
        File.WriteAllBytes(game.PathOf("sheet.yaml"), [0x72, 0xFF, 0xFE, 0x80]);

        Assert.Contains("'sheet.yaml' is not a text in UTF-8.", Told.By("check", game.Folder).Output);
    }

    [Theory]
    [InlineData("pipe")]
    [InlineData("link")]
    public void Pipe_is_refused_instead_of_waited_for(string position)
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly), ("positions/few.yaml", "seat 1:\n  heap: 3 pebbles\n"));
        using (var make = Process.Start("mkfifo", game.PathOf("positions/pipe.yaml")))
        {
            make.WaitForExit();
        }

        File.CreateSymbolicLink(game.PathOf("positions/link.yaml"), "pipe.yaml");

        Told told = Told.By("tally", game.Folder, position);

        Assert.Equal((2, $"rostrum: '{position}' is no plain file but a pipe or a device.\n"), (told.Code, told.Talk));
    }

    public static TheoryData<string, string> Bombs() => new()
    {
        { "deep brackets", "rule sheet: 1\ngame: " + new string('[', 100_000) },
        { "deep braces", "rule sheet: 1\ngame: x\nwords: " + string.Concat(Enumerable.Repeat("{a: ", 20_000)) },
        { "deep indentation", "rule sheet: 1\n" + string.Concat(Enumerable.Range(0, 2_000).Select(i => new string(' ', i) + "a:\n")) },
        { "deep formula", TempGame.ScoringOnly.Replace("count(my heap)", new string('(', 50_000) + "1" + new string(')', 50_000)) },
        { "long sum", TempGame.ScoringOnly.Replace("count(my heap)", string.Join(" + ", Enumerable.Repeat("1", 50_000))) },
        { "aliases", "rule sheet: 1\na: &a [x, x]\n" + string.Concat(Enumerable.Range('b', 20).Select(c => $"{(char)c}: &{(char)c} [*{(char)(c - 1)}, *{(char)(c - 1)}]\n")) },
        { "no outline at all", "}{ : - ] @ ` % & * !\n\t\t: :\n- - -\n" },
        { "a programme", "#include <stdio.h>\nint main(void) { return 0; }\n" },
    };

    [Theory]
    [MemberData(nameof(Bombs))]
    public void Hostile_sheet_is_answered_with_problems_and_soon(string what, string sheet)
    {
        using var game = new TempGame(("sheet.yaml", sheet));
        var clock = Stopwatch.StartNew();

        Told told = Told.By("check", game.Folder);

        Assert.True(told.Code == 1, $"{what}: code {told.Code}: {told.Talk}");
        Assert.True(clock.Elapsed < Patience, $"{what}: {clock.Elapsed}");
    }

    [Fact]
    public void Problems_beyond_those_that_are_kept_are_counted()
    {
        string clauses = string.Concat(Enumerable.Range(0, 1200).Select(i => $"  c{i}: zebra{i}\n"));
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly + "\n" + clauses));

        Told told = Told.By("check", game.Folder);

        Assert.Contains("… and 1180 more (the first 1000 with --json)", told.Output);
        Assert.Contains("1200 errors", told.Talk);
    }

    [Fact]
    public void Signs_that_steer_a_terminal_never_reach_it()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly.Replace("Pebbles", "Peb\u001b[2Jbles\u202E")), ("positions/few.yaml", "seat 1:\n  heap: 3 pebbles\n"));

        Told told = Told.By("check", game.Folder);

        Assert.DoesNotContain('\u001b', told.Output + told.Talk);
        Assert.DoesNotContain('\u202E', told.Output + told.Talk);
    }

    [Fact]
    public void Json_keeps_letters_of_any_script_as_they_are()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly.Replace("game: Pebbles", "game: Ψήφοι & <石>")), ("positions/few.yaml", "seat 1:\n  heap: 3 pebbles\n"));

        Told told = Told.By("tally", game.Folder, "few", "--json");

        Assert.Contains("\"game\": \"Ψήφοι & <石>\"", told.Output);
        Assert.Equal(JsonValueKind.Object, told.Json.ValueKind);
    }
}
