using System.CommandLine.Parsing;
using System.Text.RegularExpressions;
using Rostrum.Testing;

namespace Rostrum.Cli.Tests;

/// <summary><c>docs/sheet.md</c> is carried out from top to bottom: its files are written, its commands give what the page shows.</summary>
public sealed partial class CourseTests
{
    private const string Cut = "\n…";
    private const string Typed = "^D\n";

    private static readonly string Page = TestFiles.Read("docs/sheet.md");

    private static readonly Match[] Fences = [.. Fence().Matches(Page).Cast<Match>()];

    private static readonly string[] Folders = [.. Fences.Where(f => !IsCommand(f)).Select(f => f.Groups["file"].Value.Split('/')[0]).Distinct()];

    public static TheoryData<int, string> Commands() => [.. Enumerable.Range(0, Fences.Length).Where(i => IsCommand(Fences[i])).Select(i => (i, Fences[i].Groups["body"].Value.Split('\n')[0]))];

    [Theory]
    [MemberData(nameof(Commands))]
    public void Command_gives_what_the_page_shows(int fence, string command)
    {
        using var course = new TempGame();
        string[] shown = Fences[fence].Groups["body"].Value.Split('\n', 2);
        string answer = shown[1].Split(Typed)[^1];
        foreach (Match file in Fences.Take(fence).Where(f => !IsCommand(f)))
        {
            Write(course, file.Groups["file"].Value, file.Groups["where"].Value.Trim(), file.Groups["body"].Value);
        }

        string[] words = [.. CommandLineParser.SplitCommandLine(command["$ rostrum ".Length..]).Select(w => Folders.Contains(w) ? course.PathOf(w) : w)];
        Told told = Told.From(shown[1][..^answer.Length].Replace(Typed, "", StringComparison.Ordinal), words);

        Assert.StartsWith(answer.Split(Cut)[0].TrimEnd(), told.Output + told.Talk);
    }

    [Fact]
    public void Every_example_is_a_file_or_a_command() =>
        Assert.Equal(Regex.Count(Page, "^```", RegexOptions.Multiline), 2 * Fences.Length);

    [Fact]
    public void Page_is_in_plain_words() => Assert.Empty(BannedWords.In(Fence().Replace(Page, "")));

    private static bool IsCommand(Match fence) => fence.Groups["kind"].Value == "console";

    // A whole file; `+` at its end; or at the end of one of its sections.
    private static void Write(TempGame course, string file, string where, string body)
    {
        string before = where.Length == 0 ? "" : File.ReadAllText(course.PathOf(file));
        int head = where is "" or "+" ? 0 : before.IndexOf($"\n{where}:\n", StringComparison.Ordinal) + 1;
        Match rest = Outside().Match(before, where is "" or "+" ? before.Length : head + where.Length + 2);
        course.Write(file, before.Insert(rest.Success ? rest.Index : before.Length, body + "\n"));
    }

    [GeneratedRegex(@"^```(?<kind>yaml|console)(?: (?<file>[a-z-]+/[a-z./]+))?(?<where> [^\n]*)?\n(?<body>.*?)\n```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();

    [GeneratedRegex(@"^(?! )", RegexOptions.Multiline)]
    private static partial Regex Outside();
}
