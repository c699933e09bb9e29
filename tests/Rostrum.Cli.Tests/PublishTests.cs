using System.Text;
using System.Text.Json;
using Rostrum.Lessons.Published;
using Rostrum.Testing;

namespace Rostrum.Cli.Tests;

/// <summary><c>rostrum publish</c> remembers a video, <c>rostrum check --published</c> finds what became wrong in it.</summary>
public class PublishTests
{
    private const string Shipped = "games/kiln-night/published.yaml";

    [Fact]
    public void Shipped_file_is_what_the_command_writes_today()
    {
        using var game = TempGame.OfKilnNight();
        string shipped = TestFiles.Read(Shipped);
        game.Write(PublishedFile.FileName, shipped[..(shipped.IndexOf("videos:\n", StringComparison.Ordinal) + "videos:\n".Length)]);

        Told told = Told.By("publish", game.Folder, "--address", "https://example.org/kiln-night");

        string made = File.ReadAllText(game.PathOf(PublishedFile.FileName));
        Assert.Equal(0, told.Code);
        Assert.Equal(TestFiles.Made(Shipped, made), made);
    }

    [Fact]
    public void First_video_makes_the_file_and_the_next_one_leaves_it_as_it_is()
    {
        using var game = Unpublished();

        Told first = Told.By("publish", game.Folder);
        string before = File.ReadAllText(game.PathOf(PublishedFile.FileName)) + "    # my own remark\n";
        game.Write(PublishedFile.FileName, before);
        Told second = Told.By("publish", game.Folder, "--title", "The same, shorter", "--date", "2026-12-01", "--length", "4:10");
        string after = File.ReadAllText(game.PathOf(PublishedFile.FileName));

        Assert.Equal((0, 0), (first.Code, second.Code));
        Assert.StartsWith(before, after, StringComparison.Ordinal);
        Assert.Contains("  - title: The same, shorter\n    date: 2026-12-01\n    length: 4:10\n", after, StringComparison.Ordinal);
        Assert.Contains("published.yaml holds 2 videos. Its times are estimates", second.Talk, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("stands in 'published.yaml' already", "--date", "2026-11-25")]
    [InlineData("'soon' is no day", "--date", "soon")]
    [InlineData("'long' is no time", "--length", "long")]
    [InlineData("There is no file 'film.vtt'.", "--captions", "film.vtt")]
    [InlineData("The video needs a title", "--title", " ")]
    public void Refusal_is_a_sentence_and_leaves_the_file_alone(string sentence, params string[] more)
    {
        using var game = TempGame.OfKilnNight();

        Told told = Told.By(["publish", game.Folder, .. more]);

        Assert.Equal(2, told.Code);
        Assert.Contains(sentence, told.Talk, StringComparison.Ordinal);
        Assert.Equal(TestFiles.Read(Shipped), File.ReadAllText(game.PathOf(PublishedFile.FileName)));
    }

    [Fact]
    public void File_with_an_error_is_told_and_nothing_is_added()
    {
        using var game = TempGame.OfKilnNight();
        game.Change(PublishedFile.FileName, "    date: 2026-11-25", "    date: tomorrow");
        string before = File.ReadAllText(game.PathOf(PublishedFile.FileName));

        Told publish = Told.By("publish", game.Folder, "--title", "Another");
        Told check = Told.By("check", game.Folder, "--published");
        Told whole = Told.By("check", game.Folder);

        Assert.All([publish, check, whole], t => Assert.Equal(1, t.Code));
        Assert.All([publish.Talk, check.Talk, whole.Output], t => Assert.Contains("published.yaml(8,11): error ROS0694: 'tomorrow' is no day.", t, StringComparison.Ordinal));
        Assert.Equal(before, File.ReadAllText(game.PathOf(PublishedFile.FileName)));
    }

    [Fact]
    public void File_that_is_no_text_or_lies_elsewhere_is_refused()
    {
        using var game = Unpublished();
        File.WriteAllBytes(game.PathOf(PublishedFile.FileName), [0xC3, 0x28]);
        Told noText = Told.By("check", game.Folder, "--published");
        File.Delete(game.PathOf(PublishedFile.FileName));
        string outside = Path.Combine(game.Outside, "elsewhere.yaml");
        File.WriteAllText(outside, "format: 1\n");
        File.CreateSymbolicLink(game.PathOf(PublishedFile.FileName), outside);

        Told elsewhere = Told.By("publish", game.Folder);

        Assert.Equal((2, 2), (noText.Code, elsewhere.Code));
        Assert.Contains("is not a text in UTF-8", noText.Talk, StringComparison.Ordinal);
        Assert.Equal("format: 1\n", File.ReadAllText(outside));
    }

    [Fact]
    public void Folder_that_takes_nothing_gives_a_sentence()
    {
        using var game = Unpublished();
        Directory.CreateDirectory(game.PathOf(PublishedFile.FileName));

        Told told = Told.By("publish", game.Folder);

        Assert.Equal(2, told.Code);
        Assert.Contains("it is a folder", told.Talk, StringComparison.Ordinal);
    }

    [Fact]
    public void Captions_give_times_and_those_of_another_game_are_refused()
    {
        using var game = Unpublished();
        string film = Path.Combine(game.Outside, "film.vtt");
        File.WriteAllText(film, Captions(File.ReadAllText(game.PathOf("lesson.md")).Split("\n---\n")[1]));
        string other = Path.Combine(game.Outside, "other.vtt");
        File.WriteAllText(other, Captions(string.Join(' ', Enumerable.Repeat("warm the water feed the starter mix flour and salt fold the dough every half hour", 8))));

        Told refused = Told.By("publish", game.Folder, "--captions", other);
        Assert.False(File.Exists(game.PathOf(PublishedFile.FileName)));
        Told told = Told.By("publish", game.Folder, "--captions", film, "--json");

        Assert.Equal((2, 0), (refused.Code, told.Code));
        Assert.Equal(["format", "file", "title", "date", "rules", "sentences", "estimated", "unheard", "videos"], told.Json.EnumerateObject().Select(p => p.Name));
        Assert.True(told.Json.GetProperty("estimated").GetInt32() < told.Json.GetProperty("sentences").GetInt32() / 2);
    }

    [Fact]
    public void Change_of_a_value_ends_with_code_1_and_every_key_that_scripts_rely_on()
    {
        using var game = TempGame.OfKilnNight();
        game.Change("sheet.yaml", "points for a plate: {is: 3", "points for a plate: {is: 4");

        Told told = Told.By("check", game.Folder, "--published", "--json");
        JsonElement report = told.Json;
        JsonElement wrong = Assert.Single(report.GetProperty("published").EnumerateArray());

        Assert.Equal(1, told.Code);
        Assert.Equal(["format", "game", "videos", "published", "notes"], report.EnumerateObject().Select(p => p.Name));
        Assert.Equal(["title", "date", "address", "wrong", "corrections"], report.GetProperty("videos")[0].EnumerateObject().Select(p => p.Name));
        Assert.Equal(["video", "date", "time", "estimated", "clause", "kind", "then", "now", "cite", "correction", "because"], wrong.EnumerateObject().Select(p => p.Name));
        Assert.Equal("6:29 Plates score 4 each, in the tier that shows most (instead of three; Rulebook, page 8).", wrong.GetProperty("correction").GetString());
        Assert.True(wrong.GetProperty("estimated").GetBoolean());
    }

    [Fact]
    public void Game_without_the_file_has_nothing_published_and_one_with_a_broken_sheet_no_answer()
    {
        using var game = Unpublished();
        Told none = Told.By("check", game.Folder, "--published");
        game.Change("sheet.yaml", "    needs: spot is open", "    needs: spot is opne");
        Told broken = Told.By("check", game.Folder, "--published");

        Assert.Equal((0, 1), (none.Code, broken.Code));
        Assert.Contains("there is no 'published.yaml'; 'rostrum publish' writes it", none.Talk, StringComparison.Ordinal);
        Assert.Contains("opne", broken.Talk, StringComparison.Ordinal);
    }

    private static TempGame Unpublished()
    {
        TempGame game = TempGame.OfKilnNight();
        File.Delete(game.PathOf(PublishedFile.FileName));
        return game;
    }

    // The words of the script, eight to a caption, without the targets of its links.
    private static string Captions(string words)
    {
        string[] said = [.. System.Text.RegularExpressions.Regex.Replace(words, @"\]\((?:<[^>]*>|[^)]*)\)|[\[#]|!\[[^\n]*|<!--.*?-->", " ").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)];
        var text = new StringBuilder("WEBVTT\n");
        for (int i = 0; i < said.Length; i += 8)
        {
            text.Append('\n').Append($"{TimeSpan.FromSeconds(i / 2):hh\\:mm\\:ss}.000 --> {TimeSpan.FromSeconds((i / 2) + 4):hh\\:mm\\:ss}.000\n").AppendJoin(' ', said.Skip(i).Take(8)).Append('\n');
        }

        return text.ToString();
    }
}
