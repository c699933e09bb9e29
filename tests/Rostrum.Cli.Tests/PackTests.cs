using System.Text.Json;

namespace Rostrum.Cli.Tests;

/// <summary>A pack of a film that is cut: captions and times are given, and what cannot be used leaves nothing behind.</summary>
public sealed class PackTests
{
    private const string Times = "0:00 In short\n1:00 At length\n2:30 The end\n";

    [Fact]
    public void Given_times_stand_in_the_chapters_and_corrections_in_the_description()
    {
        using var game = new TempGame(("times.txt", $"{Times}\nCorrections:\n1:10 Three, not four.\n"));

        Told told = Pack(game, "--times", game.PathOf("times.txt"));

        Assert.Equal(0, told.Code);
        Assert.Equal(Times, File.ReadAllText(game.PathOf("pack/chapters.txt")));
        Assert.Contains("\nCorrection:\n1:10 Three, not four.\n", File.ReadAllText(game.PathOf("pack/description.txt")));
        Assert.DoesNotContain("estimates", told.Talk);
    }

    [Fact]
    public void Without_times_the_pack_says_that_they_are_estimates()
    {
        using var game = new TempGame();

        Told told = Pack(game);

        Assert.Equal(0, told.Code);
        Assert.Contains("rostrum: the times of the chapters are estimates from the words; '--captions' or '--times' gives those of the video.\n", told.Talk);
        Assert.Contains("[The times are estimates", File.ReadAllText(game.PathOf("pack/description.txt")));
    }

    [Fact]
    public void Captions_of_another_length_are_held_against_the_chapters_and_written_clean()
    {
        using var game = new TempGame(("film.srt", "1\n00:00:01,000 --> 00:00:04,000\nWelcome, this is quite another film.\n\n2\n00:20:00,000 --> 00:20:03,000\nThe end.\n"));

        Told told = Pack(game, "--captions", game.PathOf("film.srt"));

        Assert.Equal(0, told.Code);
        Assert.Contains("warning ROS0665", told.Talk);
        Assert.Contains("warning ROS0677", told.Talk);
        Assert.StartsWith("WEBVTT\n", File.ReadAllText(game.PathOf("pack/captions.vtt")));
        Assert.Contains("00:20:00,000 --> ", File.ReadAllText(game.PathOf("pack/captions.srt")));
    }

    [Theory]
    [InlineData("--captions", "WEBVTT\n", "ROS0653")]
    [InlineData("--captions", "\u0001\u0002 no captions", "ROS0652")]
    [InlineData("--times", "0:00 A\n0:04 B\n0:30 C\n", "ROS0673")]
    [InlineData("--times", "0:00 A\n1:04 B\n", "ROS0671")]
    [InlineData("--times", "", "ROS0671")]
    [InlineData("--times", "<!DOCTYPE x><Chapters/>", "ROS0683")]
    public void What_cannot_be_used_is_1_and_nothing_is_written(string option, string content, string id)
    {
        using var game = new TempGame(("given", content));

        Told told = Pack(game, option, game.PathOf("given"));

        Assert.Equal(1, told.Code);
        Assert.Contains($"error {id}", told.Talk);
        Assert.EndsWith("rostrum: nothing is written until this is mended.\n", told.Talk);
        Assert.False(Directory.Exists(game.PathOf("pack")));
    }

    [Fact]
    public void Chapters_that_begin_behind_the_end_of_the_captions_are_1_and_nothing_is_written()
    {
        using var game = new TempGame(("times.txt", Times), ("film.srt", "1\n00:00:01,000 --> 00:02:04,000\nHello.\n"));

        Told told = Pack(game, "--times", game.PathOf("times.txt"), "--captions", game.PathOf("film.srt"));

        Assert.Equal(1, told.Code);
        Assert.Contains("error ROS0676", told.Talk);
        Assert.False(Directory.Exists(game.PathOf("pack")));
    }

    [Theory]
    [InlineData("--captions")]
    [InlineData("--times")]
    public void File_that_is_not_there_is_2_and_nothing_is_written(string option)
    {
        using var game = new TempGame();

        Told told = Pack(game, option, game.PathOf("nowhere.vtt"));

        Assert.Equal((2, $"rostrum: There is no file '{game.PathOf("nowhere.vtt")}'.\n"), (told.Code, told.Talk));
        Assert.False(Directory.Exists(game.PathOf("pack")));
    }

    [Fact]
    public void Folder_in_place_of_a_file_is_2()
    {
        using var game = new TempGame(("given/inside", "x"));

        Told told = Pack(game, "--captions", game.PathOf("given"));

        Assert.Equal(2, told.Code);
        Assert.EndsWith("is a folder. Name a file in it.\n", told.Talk);
    }

    [Fact]
    public void Lesson_that_says_nothing_is_1_and_nothing_is_written()
    {
        using var game = TempGame.OfKilnNight();
        game.Write("lesson.md", "---\ntitle: Kiln Night\n---\n");

        Told told = Told.By("pack", game.Folder, "-o", game.PathOf("pack"));

        Assert.Equal(1, told.Code);
        Assert.Contains("error ROS0666", told.Talk);
        Assert.False(Directory.Exists(game.PathOf("pack")));
    }

    [Fact]
    public void Lesson_with_two_topics_has_its_pack_and_is_told_that_no_platform_shows_chapters()
    {
        using var game = TempGame.OfKilnNight();
        game.Write("lesson.md", "## A\n\nHello there.\n\n## B\n\nThe end.\n");

        Told told = Told.By("pack", game.Folder, "-o", game.PathOf("pack"));

        Assert.Equal(1, told.Code);
        Assert.Contains("error ROS0671", told.Talk);
        Assert.Contains("warning ROS0673", told.Talk);
        Assert.True(File.Exists(game.PathOf("pack/index.html")));
    }

    [Fact]
    public void Json_says_where_the_times_come_from_and_what_is_wrong_with_them()
    {
        using var game = new TempGame(("times.txt", $"{Times}9:99 Nothing\n"));

        JsonElement told = Pack(game, "--times", game.PathOf("times.txt"), "--json").Json;

        Assert.Equal("given", told.GetProperty("times").GetString());
        Assert.Equal("ROS0678", Assert.Single(told.GetProperty("findings").EnumerateArray()).GetProperty("id").GetString());
        Assert.Empty(told.GetProperty("remarks").EnumerateArray());
    }

    private static Told Pack(TempGame game, params string[] more) => Told.By(["pack", TempGame.KilnNight, "-o", game.PathOf("pack"), .. more]);
}
