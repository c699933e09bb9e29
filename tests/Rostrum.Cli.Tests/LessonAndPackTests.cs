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

        Assert.Equal(["format", "game", "title", "claims", "shots", "shotsWanted", "wordsAMinute", "topics", "unchecked", "findings", "dismissed", "clauses", "order", "figures", "readingEase", "grade"], report.EnumerateObject().Select(p => p.Name));
        Assert.Equal(["topic", "seconds", "words", "readingEase", "grade", "clauses"], report.GetProperty("topics")[0].EnumerateObject().Select(p => p.Name));
    }

    [Fact]
    public void Shipped_lesson_says_or_leaves_out_every_rule_and_nothing_is_found()
    {
        JsonElement report = Told.By("lesson", TempGame.KilnNight, "--json").Json;

        Assert.Empty(report.GetProperty("findings").EnumerateArray());
        Assert.All(report.GetProperty("clauses").EnumerateArray(), c => Assert.Contains(c.GetProperty("status").GetString(), (string[])["said", "left out"]));
        Assert.True(report.GetProperty("order").GetProperty("exact").GetBoolean());
        Assert.True(report.GetProperty("figures").GetProperty("exact").GetInt32() > report.GetProperty("figures").GetProperty("simulated").GetInt32());
    }

    [Fact]
    public void Rule_that_is_never_said_is_a_finding_with_clause_page_and_words_to_dismiss_it()
    {
        using var game = TempGame.OfKilnNight();
        game.Change("lesson.md", "On a tie, fewer shards win, then more sticks. After that, you share.", "");
        game.Write("dismissed.yaml", "ROS0611:\n  more sticks: Nobody ever needs it.\n");

        JsonElement report = Told.By("lesson", game.Folder, "--json").Json;
        JsonElement finding = report.GetProperty("findings")[0];

        Assert.Equal(("ROS0611", "fewer shards", "fewer shards", "no page"), (Words(finding, "id"), Words(finding, "concerns"), Words(finding, "clause"), Words(finding, "cite")));
        Assert.Equal("Nobody ever needs it.", report.GetProperty("dismissed")[0].GetProperty("because").GetString());
    }

    [Fact]
    public void Pace_of_the_lesson_holds_unless_another_is_asked_for()
    {
        using var game = TempGame.OfKilnNight();
        game.Change("lesson.md", "printing: first", "printing: first\npace: 100");

        Assert.Equal(100, Told.By("lesson", game.Folder, "--json").Json.GetProperty("wordsAMinute").GetInt32());
        Assert.Equal(200, Told.By("lesson", game.Folder, "--pace", "200", "--json").Json.GetProperty("wordsAMinute").GetInt32());
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
    public void Number_without_a_check_is_listed_with_the_check_to_write_and_is_no_error()
    {
        using var game = TempGame.OfKilnNight();
        game.Change("lesson.md", "[three](fact:glazes)", "three");

        Told told = Told.By("lesson", game.Folder);
        JsonElement number = Assert.Single(Told.By("lesson", game.Folder, "--json").Json.GetProperty("unchecked").EnumerateArray());

        Assert.Equal(0, told.Code);
        Assert.Contains("'three' in line 26 is said without a check.", told.Output);
        Assert.Contains("  26,94   three               [three](fact:glazes)\n", told.Output);
        Assert.EndsWith("\n1 number is said without a check, as listed above.\n", told.Talk);
        Assert.Equal((26, 94, 26, 99), (Number(number, "line"), Number(number, "column"), Number(number, "endLine"), Number(number, "endColumn")));
        Assert.Equal(("three", "[three](fact:glazes)"), (number.GetProperty("said").GetString(), number.GetProperty("write").GetString()));
        Assert.Equal(1, Told.By("check", game.Folder, "--json").Json.GetProperty("problems").EnumerateArray().Count(p => p.GetProperty("id").GetString() == "ROS0609"));
    }

    [Fact]
    public void Mistyped_shot_is_told_counts_as_none_and_is_marked_in_the_page()
    {
        using var game = TempGame.OfKilnNight();
        game.Change("lesson.md", "![Copper beside iron](position:copper-ash)", "![Copper beside iron](position:coper-ash)");
        string folder = game.PathOf("pack");

        Told lesson = Told.By("lesson", game.Folder);
        Told pack = Told.By("pack", game.Folder, "-o", folder);

        Assert.Equal(1, lesson.Code);
        Assert.Contains("82 of 82 statements are right; 11 of 12 shots can be drawn\nBefore you film: mend the error above.\n", lesson.Talk);
        Assert.Equal(1, pack.Code);
        Assert.Contains("the lesson has 1 error, marked in its page", pack.Talk);
        Assert.Contains("No picture: There is no position &#39;coper-ash&#39;.", File.ReadAllText(Path.Combine(folder, "lesson.html")));
        Assert.False(File.Exists(Path.Combine(folder, "pictures", "copper-ash.svg")));
    }

    [Fact]
    public void Position_with_errors_is_told_as_such()
    {
        using var game = TempGame.OfKilnNight();
        game.Write("positions/E1.yaml", "seat 1: nobody knows\n");

        Assert.Contains("The position 'E1' has errors, so nothing can be asked of it.", Told.By("lesson", game.Folder).Output);
    }

    [Fact]
    public void Picture_that_is_no_shot_is_told_and_keeps_nothing_from_being_published()
    {
        using var game = TempGame.OfKilnNight();
        game.Change("lesson.md", "![Copper beside iron](position:copper-ash)", "![Copper beside iron](box.jpg)");

        Told told = Told.By("pack", game.Folder, "-o", game.PathOf("pack"));

        Assert.Equal(0, told.Code);
        Assert.Contains("1 picture is no shot of a position, and marked in the page", told.Talk);
    }

    [Fact]
    public void Json_of_a_pack_holds_what_is_wrong_with_the_lesson()
    {
        using var game = TempGame.OfKilnNight();
        game.Change("lesson.md", "[three](fact:glazes)", "[four](fact:glazes)");

        JsonElement finding = Assert.Single(Told.By("pack", game.Folder, "-o", game.PathOf("pack"), "--json").Json.GetProperty("findings").EnumerateArray());

        Assert.Equal(("ROS0601", 26), (finding.GetProperty("id").GetString(), Number(finding, "line")));
    }

    [Fact]
    public void Lesson_without_any_check_is_told_calmly_and_never_wider_than_the_screen()
    {
        using var game = TempGame.OfKilnNight();
        game.Write("lesson.md", "# A title that is far too long for one line of eighty columns, and then some\n\n## A\n\nTake " + string.Join(", ", Enumerable.Range(2, 30)) + ".\n");

        Told told = Told.By("lesson", game.Folder);

        Assert.Contains("… and 10 more (all with --json)", told.Output);
        Assert.Contains("nothing is held against the sheet yet; 0 shots\n", told.Talk);
        Assert.Contains("\n30 numbers are said without a check", told.Talk);
        Assert.All((told.Output + told.Talk).Split('\n').Where(l => !l.Contains("warning ROS")), line => Assert.True(line.Length <= 80, line));
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
    [InlineData("E1.pdf", "%PDF-")]
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
        Assert.Equal($"rostrum: '{game.PathOf("taken/E1.svg")}' cannot be written: '{game.PathOf("taken")}' is a file and no folder.\n", told.Talk);
        Assert.Equal([game.PathOf("taken")], Directory.EnumerateFileSystemEntries(game.Folder));
    }

    [Fact]
    public void Folder_in_place_of_the_file_is_2_and_leaves_nothing()
    {
        using var game = new TempGame(("E1.svg/inside", "x"));

        Told told = Told.By("draw", TempGame.KilnNight, "E1", "-o", game.PathOf("E1.svg"));

        Assert.Equal(2, told.Code);
        Assert.EndsWith("cannot be written: it is a folder. Name a file in it.\n", told.Talk);
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

    [Fact]
    public void A_number_far_to_the_right_stands_apart_from_its_place()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly), ("lesson.md", $"## A\n{new string('\n', 998)}{string.Concat(Enumerable.Repeat("long ", 2000))}seven\n"));

        Assert.Contains("  1000,10001 seven", Told.By("lesson", game.Folder).Output, StringComparison.Ordinal);
    }

    private static string? Words(JsonElement item, string key) => item.GetProperty(key).GetString();

    private static int Number(JsonElement item, string key) => item.GetProperty(key).GetInt32();

    private static int SecondsOfFirstTopic(params string[] pace) =>
        Told.By(["lesson", TempGame.KilnNight, "--json", .. pace]).Json.GetProperty("topics")[0].GetProperty("seconds").GetInt32();
}
