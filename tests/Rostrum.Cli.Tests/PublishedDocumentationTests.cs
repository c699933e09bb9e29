using System.Text.RegularExpressions;
using Rostrum.Lessons.Published;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Cli.Tests;

/// <summary>The page <c>docs/published.md</c> is carried out: files are read, changes are made to a copy of Kiln Night, answers are what stands there.</summary>
public sealed partial class PublishedDocumentationTests
{
    private const string Game = "games/kiln-night";
    private const string Cut = "\n…";

    private static readonly string Page = TestFiles.Read("docs/published.md");

    public static TheoryData<string, string> Files => [.. Fence().Matches(Page).Where(f => f.Groups["kind"].Value == "published").Select(f => (f.Groups["id"].Value, f.Groups["content"].Value))];

    // Every answer with the change above it, or with none.
    public static TheoryData<string, string> Answers
    {
        get
        {
            var answers = new TheoryData<string, string>();
            string change = "";
            foreach (Match fence in Fence().Matches(Page).Where(f => f.Groups["kind"].Value is "change" or "console"))
            {
                if (fence.Groups["kind"].Value == "console")
                {
                    answers.Add(change, fence.Groups["content"].Value);
                }

                change = fence.Groups["kind"].Value == "change" ? fence.Groups["content"].Value : "";
            }

            return answers;
        }
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void File_gives_what_the_page_says(string id, string content)
    {
        PublishedFile file = PublishedFile.Read(new SourceText(PublishedFile.FileName, content + "\n"));

        Assert.Equal(id, string.Join(' ', file.Problems.Select(p => p.Id).Distinct()));
        Assert.Equal(id.Length == 0 ? 1 : 0, file.Videos.Length - (id is "ROS0693" or "ROS0691" ? 1 : 0));
    }

    [Theory]
    [MemberData(nameof(Answers))]
    public void Answer_is_what_the_page_shows(string change, string content)
    {
        using var game = TempGame.OfKilnNight();
        foreach (Match edit in Edit().Matches(change))
        {
            game.Change("sheet.yaml", Lines(edit.Groups["old"].Value), Lines(edit.Groups["new"].Value));
        }

        string[] lines = content.Split('\n', 2);
        Told told = Told.By([.. lines[0]["$ rostrum ".Length..].Split(' ').Select(w => w.Replace(Game, game.Folder, StringComparison.Ordinal))]);

        Assert.StartsWith(lines[1].Split(Cut)[0], told.Output + told.Talk, StringComparison.Ordinal);
        Assert.Equal(change.Length == 0 ? 0 : 1, told.Code);
    }

    [Fact]
    public void Page_is_in_plain_words_and_shows_some_of_each()
    {
        Assert.Empty(BannedWords.In(Fence().Replace(Page, "")));
        Assert.True(Files.Count > 3);
        Assert.True(Answers.Count > 2);
    }

    private static string Lines(string marked) => string.Concat(marked.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l[2..] + "\n"));

    [GeneratedRegex(@"^```(?<kind>\w+) ?(?<id>[\w ]*)\n(?<content>.*?)\n```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();

    [GeneratedRegex(@"(?<old>(?:^- .*\n?)+)(?<new>(?:^\+ .*\n?)+)", RegexOptions.Multiline)]
    private static partial Regex Edit();
}
