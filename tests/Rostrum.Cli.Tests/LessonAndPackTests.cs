using System.Text;
using System.Text.Json;

namespace Rostrum.Cli.Tests;

public class LessonAndPackTests
{
    [Fact]
    public void Lesson_of_the_demo_game_is_right_in_every_number()
    {
        Told told = Told.By("lesson", TempGame.KilnNight, "--json");

        JsonElement claims = told.Json.GetProperty("claims");
        Assert.Equal(0, told.Code);
        Assert.True(claims.GetProperty("right").GetInt32() > 20);
        Assert.Equal(0, claims.GetProperty("wrong").GetInt32());
    }

    [Fact]
    public void Json_has_every_key_that_scripts_rely_on()
    {
        JsonElement report = Told.By("lesson", TempGame.KilnNight, "--json").Json;

        Assert.Equal(["format", "game", "title", "claims", "shots", "wordsAMinute", "topics", "findings"], report.EnumerateObject().Select(p => p.Name));
        Assert.Equal(["topic", "seconds", "words"], report.GetProperty("topics")[0].EnumerateObject().Select(p => p.Name));
    }

    [Fact]
    public void Half_the_pace_lasts_twice_as_long()
    {
        int slow = SecondsOfFirstTopic("--pace", "100");
        int fast = SecondsOfFirstTopic("--pace", "200");

        Assert.InRange(slow, (2 * fast) - 1, (2 * fast) + 1);
    }

    [Fact]
    public void Wrong_number_is_a_finding_with_its_reason()
    {
        using var game = TempGame.OfKilnNight();
        game.Change("lesson.md", "[35](tally:E1/total)", "[36](tally:E1/total)");

        Told told = Told.By("lesson", game.Folder);

        Assert.Equal(1, told.Code);
        Assert.Contains("The lesson says '36', and the sheet says 35.", told.Output);
    }

    [Fact]
    public void Game_without_a_lesson_is_told_so()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly));

        Assert.Equal(2, Told.By("lesson", game.Folder).Code);
        Assert.Contains("has no lesson.md", Told.By("pack", game.Folder, "-o", game.PathOf("pack")).Talk);
    }

    [Fact]
    public void Pack_lists_exactly_the_files_that_it_wrote()
    {
        using var game = new TempGame();
        string folder = game.PathOf("pack");

        Told told = Told.By("pack", TempGame.KilnNight, "-o", folder, "--json");

        string[] listed = [.. told.Json.GetProperty("files").EnumerateArray().Select(f => f.GetProperty("name").GetString()!).Order(StringComparer.Ordinal)];
        string[] written = [.. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f)).Order(StringComparer.Ordinal)];
        Assert.Equal(0, told.Code);
        Assert.Equal(listed, written);
        Assert.Contains("lesson.html", listed);
    }

    [Theory]
    [InlineData("E1.svg", "<svg")]
    [InlineData("E1.png", "PNG")]
    public void Drawing_is_what_its_ending_says(string name, string sign)
    {
        using var game = new TempGame();
        string path = game.PathOf(name);

        Told told = Told.By("draw", TempGame.KilnNight, "E1", "-o", path);

        Assert.Equal(0, told.Code);
        Assert.Contains(sign, Encoding.Latin1.GetString(File.ReadAllBytes(path)[..400]));
        Assert.Equal([path], Directory.EnumerateFiles(game.Folder));
    }

    [Fact]
    public void Drawing_of_a_position_that_says_what_it_shows_bears_no_file_name()
    {
        using var game = new TempGame();
        Told.By("draw", TempGame.KilnNight, "jugs-near", "-o", game.PathOf("jugs.svg"));

        string drawing = File.ReadAllText(game.PathOf("jugs.svg"));

        Assert.Contains("sees only two glazes", drawing);
        Assert.DoesNotContain("jugs-near", drawing);
    }

    [Fact]
    public void Drawing_that_cannot_be_written_is_2_and_leaves_nothing()
    {
        using var game = new TempGame(("taken", "a file where a folder is wanted"));

        Told told = Told.By("draw", TempGame.KilnNight, "E1", "-o", Path.Combine(game.PathOf("taken"), "E1.svg"));

        Assert.Equal(2, told.Code);
        Assert.Contains("cannot be written", told.Talk);
        Assert.Equal([game.PathOf("taken")], Directory.EnumerateFileSystemEntries(game.Folder));
    }

    [Fact]
    public void Folder_in_place_of_the_file_is_2_and_leaves_nothing()
    {
        using var game = new TempGame(("E1.svg/inside", "x"));

        Told told = Told.By("draw", TempGame.KilnNight, "E1", "-o", game.PathOf("E1.svg"));

        Assert.Equal(2, told.Code);
        Assert.Equal([game.PathOf("E1.svg")], Directory.EnumerateFileSystemEntries(game.Folder));
    }

    [Fact]
    public void Game_without_a_board_has_nothing_to_draw()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly), ("positions/few.yaml", "seat 1:\n  heap: 3 pebbles\n"));

        Told told = Told.By("draw", game.Folder, "few", "-o", game.PathOf("few.svg"));

        Assert.Equal(2, told.Code);
        Assert.Contains("has no board", told.Talk);
    }

    private static int SecondsOfFirstTopic(params string[] pace) =>
        Told.By(["lesson", TempGame.KilnNight, "--json", .. pace]).Json.GetProperty("topics")[0].GetProperty("seconds").GetInt32();
}
