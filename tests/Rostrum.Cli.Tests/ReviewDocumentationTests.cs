using System.Text;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Captions.Words;
using Rostrum.Testing;

namespace Rostrum.Cli.Tests;

/// <summary>What <c>docs/review.md</c> shows is what the command answers on the demo recording, and its captions are read.</summary>
public sealed partial class ReviewDocumentationTests
{
    private const string Name = "docs/review.md";
    private const string Typed = "review games/kiln-night games/kiln-night/recording.vtt";

    private static readonly string Page = TestFiles.Read(Name);

    [Fact]
    public void Page_shows_what_the_command_answers()
    {
        using var made = new TempGame();
        Told told = Told.By([.. Typed.Split(' ').Select(w => w.Replace("games/", Path.Combine(TestFiles.Root, "games") + "/", StringComparison.Ordinal))]);
        _ = Told.By("review", TempGame.KilnNight, Path.Combine(TempGame.KilnNight, "recording.vtt"), "-o", made.Folder);
        var shown = new Dictionary<string, string>
        {
            ["console"] = $"$ rostrum {Typed}\n{told.Output}{told.Talk}",
            ["corrections"] = File.ReadAllText(made.PathOf("corrections.txt")),
            ["pinned"] = File.ReadAllText(made.PathOf("pinned-comment.txt")),
            ["chapters"] = File.ReadAllText(made.PathOf("chapters.txt")),
        };

        string page = Made().Replace(Page, f => $"```{f.Groups["kind"].Value}\n{shown[f.Groups["kind"].Value]}```");

        Assert.Equal(page, TestFiles.Made(Name, page));
        Assert.Equal(shown.Keys, Made().Matches(page).Select(f => f.Groups["kind"].Value));
    }

    [Theory]
    [InlineData("vtt", "unless you burn two sticks")]
    [InlineData("srt", "Unless you burn two sticks, and save it.")]
    public void Captions_of_the_page_are_read(string kind, string said)
    {
        Match fence = Assert.Single(Regex.Matches(Page, $@"^```{kind}\n(?<content>.*?)```$", RegexOptions.Multiline | RegexOptions.Singleline));

        CaptionFile file = CaptionReader.Read($"page.{kind}", Encoding.UTF8.GetBytes(fence.Groups["content"].Value));

        Assert.Empty(file.Problems);
        Assert.Equal(said, string.Join(' ', SpokenWords.Of(file).Select(w => w.Text)));
    }

    [Fact]
    public void Page_is_in_plain_words() => Assert.Empty(BannedWords.In(Made().Replace(Page, "")));

    [GeneratedRegex(@"^```(?<kind>console|corrections|pinned|chapters)\n(?<content>.*?)```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Made();
}
