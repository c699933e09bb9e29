namespace Rostrum.Cli.Tests;

/// <summary>What scripts and people are told where there is no answer: code 2.</summary>
public class RefusalTests
{
    private static string Kiln => TempGame.KilnNight;

    [Theory]
    [InlineData("check", "no-such-game")]
    [InlineData("frobnicate")]
    [InlineData("tally", "{kiln}")]
    [InlineData("tally", "{kiln}", "no such position")]
    [InlineData("tally", "{kiln}", "E1", "--seat", "2")]
    [InlineData("tally", "{kiln}", "E1", "--seat", "zero")]
    [InlineData("tally", "{kiln}", "E1", "--variant", "moonlight")]
    [InlineData("check", "{kiln}", "--jsn")]
    [InlineData("read", "{kiln}", "--section", "Nowhere")]
    [InlineData("lesson", "{kiln}", "--pace", "fast")]
    [InlineData("draw", "{kiln}", "E1")]
    [InlineData("draw", "{kiln}", "E1", "-o", "picture.bmp")]
    [InlineData("draw", "{kiln}", "E1", "-o", "{kiln}/sheet.yaml/E1.svg")]
    [InlineData("pack", "{kiln}", "-o", "")]
    public void Refusal_is_an_answer_in_json_too(params string[] args)
    {
        Told told = Told.By([.. args.Select(a => a.Replace("{kiln}", Kiln, StringComparison.Ordinal)), "--json"]);

        string refused = told.Json.GetProperty("refused").GetString()!;
        Assert.Equal(2, told.Code);
        Assert.Equal(1, told.Json.GetProperty("format").GetInt32());
        Assert.Equal(refused, string.Join(' ', told.Talk.TrimEnd('\n').Split('\n').Select(l => l["rostrum: ".Length..])));
    }

    [Fact]
    public void Game_without_a_lesson_is_a_refusal_in_json()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly));

        Assert.Equal("The game has no lesson.md that can be read.", Told.By("lesson", game.Folder, "--json").Json.GetProperty("refused").GetString());
    }

    [Fact]
    public void Misspelt_command_is_told_before_its_options() => Assert.StartsWith("rostrum: There is no command 'taly'.", Told.By("taly", Kiln, "E1", "--json").Talk);

    [Fact]
    public void Words_of_a_question_that_are_not_understood_are_problems_with_places() =>
        Assert.NotEmpty(Told.By("rule", Kiln, "E1", "sing a song", "--json").Json.GetProperty("problems").EnumerateArray());

    [Fact]
    public void Pack_never_goes_into_the_folder_of_a_game()
    {
        using var game = TempGame.OfKilnNight();
        string[] before = [.. Directory.EnumerateFileSystemEntries(game.Folder)];

        Told told = Told.By("pack", game.Folder, "-o", game.Folder + "/");

        Assert.Equal(2, told.Code);
        Assert.Contains("is the folder of a game, and a pack is published", told.Talk);
        Assert.Equal(before, Directory.EnumerateFileSystemEntries(game.Folder));
    }

    [Fact]
    public void Pack_and_drawing_go_where_the_user_names_a_place_in_the_games_folder()
    {
        using var game = TempGame.OfKilnNight();

        Assert.Equal(0, Told.By("pack", game.Folder, "-o", game.PathOf("pack")).Code);
        Assert.Equal(0, Told.By("draw", game.Folder, "E1", "-o", game.PathOf("E1.svg")).Code);
        Assert.True(File.Exists(game.PathOf("pack/lesson.html")) && File.Exists(game.PathOf("E1.svg")));
    }

    [Fact]
    public void Place_that_takes_no_file_is_told_in_our_words() =>
        Assert.Equal("rostrum: '/proc/x.svg' cannot be written: no file can be made in that folder.\n", Told.By("draw", Kiln, "E1", "-o", "/proc/x.svg").Talk);

    [Fact]
    public void Name_that_is_too_long_is_told_in_our_words()
    {
        using var game = new TempGame(("here", ""));

        Assert.EndsWith("cannot be written: its name is too long.\n", Told.By("draw", Kiln, "E1", "-o", game.PathOf($"{new string('x', 300)}.svg")).Talk);
    }

    [Theory]
    [InlineData(28, "the disk is full.")]
    [InlineData(30, "the disk may only be read.")]
    [InlineData(32, "nobody reads it any more.")]
    [InlineData(5, "the system says 'Input/output error'.")]
    public void Trouble_with_a_disk_is_told_in_our_words(int error, string words) =>
        Assert.Equal(words, Disk.DiskTrouble.Of(new IOException("Input/output error.", error)));

    [Fact]
    public void Missing_permission_is_told_in_our_words() =>
        Assert.Equal("you have no permission to write there.", Disk.DiskTrouble.Of(new UnauthorizedAccessException(), "/nowhere/E1.svg"));
}
