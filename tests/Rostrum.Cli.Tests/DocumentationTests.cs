using System.CommandLine.Parsing;
using System.Text.RegularExpressions;
using Rostrum.Testing;

namespace Rostrum.Cli.Tests;

/// <summary>The examples of <c>docs/commands.md</c> are carried out: what stands there is what comes out.</summary>
public class DocumentationTests
{
    private const string Begin = "```console\n$ rostrum ";
    private const string Cut = "\n…";

    public static TheoryData<string, string> Examples() => [.. TestFiles.Read("docs/commands.md")
        .Split(Begin)[1..]
        .Select(block => block.Split("\n```")[0].Split('\n', 2))
        .Select(parts => (parts[0], parts[1]))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_gives_what_the_page_shows(string words, string shown)
    {
        string[] args = [.. CommandLineParser.SplitCommandLine(words).Select(w => w.Replace("games/kiln-night", TempGame.KilnNight, StringComparison.Ordinal))];

        Told told = Told.By(args);

        Assert.StartsWith(WithoutCounts(shown.Split(Cut)[0]), WithoutCounts(told.Output + told.Talk));
    }

    [Fact]
    public void Page_tells_of_every_command() =>
        Assert.All(["check", "read", "tally", "rule", "draw", "lesson", "pack"], command => Assert.Contains($"\n## {command}\n", TestFiles.Read("docs/commands.md")));

    // Each new position of the demo game changes these two numbers, and nobody would look at the page for them.
    private static string WithoutCounts(string text) => Regex.Replace(text, @"\d+ (?=positions|expectations)", "N ");
}
