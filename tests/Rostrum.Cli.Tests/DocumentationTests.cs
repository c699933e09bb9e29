using System.CommandLine.Parsing;
using System.Text.RegularExpressions;
using Rostrum.Testing;

namespace Rostrum.Cli.Tests;

/// <summary>The examples of <c>docs/commands.md</c> are carried out: what stands there is what comes out.</summary>
public class DocumentationTests
{
    private const string Begin = "```console\n$ rostrum ";
    private const string Cut = "\n…";

    // What stands before it is typed.
    private const string Pasted = "^D\n";

    // The folder that an example makes.
    private const string New = "lamp-market";

    public static TheoryData<string, string> Examples() => [.. TestFiles.Read("docs/commands.md")
        .Split(Begin)[1..]
        .Select(block => block.Split("\n```")[0].Split('\n', 2))
        .Select(parts => (parts[0], parts[1]))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_gives_what_the_page_shows(string words, string shown)
    {
        using var made = new TempGame();
        string[] args = [.. CommandLineParser.SplitCommandLine(words).Select(w => w.Replace("games/", Path.Combine(TestFiles.Root, "games") + "/", StringComparison.Ordinal).Replace(New, made.Folder, StringComparison.Ordinal))];
        string answer = shown.Split(Pasted)[^1];

        Told told = Told.From(shown[..^answer.Length].Replace(Pasted, "", StringComparison.Ordinal), args);

        Assert.StartsWith(WithoutCounts(answer.Split(Cut)[0]), WithoutCounts(told.Output + told.Talk).Replace(made.Folder, New, StringComparison.Ordinal));
    }

    [Fact]
    public void Page_tells_of_every_command() =>
        Assert.All(["new", "check", "read", "tally", "rule", "count", "play", "threats", "draw", "lesson", "review", "pack", "publish"], command => Assert.Contains($"\n## {command}\n", TestFiles.Read("docs/commands.md")));

    // Each new position of the demo game changes these two numbers, and nobody would look at the page for them.
    private static string WithoutCounts(string text) => Regex.Replace(text, @"\d+ (?=positions|expectations)", "N ");
}
