using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Rostrum.Testing;

/// <summary>A page of <c>docs/diagnostics</c>: what one kind of problem means, with examples that tests run.</summary>
/// <param name="Id">Such as <c>ROS0108</c>.</param>
/// <param name="Title">The sentence behind the id in the first line.</param>
/// <param name="Words">What is said between the title and the examples.</param>
/// <param name="Examples">In the order of the page.</param>
public sealed partial record DiagnosticPage(string Id, string Title, string Words, ImmutableArray<PageExample> Examples)
{
    /// <summary>Where the pages lie, relative to the root of the repository.</summary>
    public const string Folder = "docs/diagnostics";

    /// <summary>All pages, by id.</summary>
    public static ImmutableArray<DiagnosticPage> All { get; } =
        [.. TestFiles.In(Folder, "ROS*.md").Select(n => Parse(Path.GetFileNameWithoutExtension(n), TestFiles.Read(n)))];

    /// <summary>The examples of all pages in one kind of fence, such as <c>outline</c>: a room's test runs those of its own kinds.</summary>
    public static IEnumerable<PageExample> ExamplesIn(string kind) => All.SelectMany(p => p.Examples).Where(e => e.Kind == kind);

    /// <summary>Reads a page.</summary>
    /// <param name="id">The id that its file name says; its first line must say the same.</param>
    /// <param name="page">The text of the page.</param>
    /// <exception cref="FormatException">The page has not the form of <c>docs/diagnostics/README.md</c>.</exception>
    public static DiagnosticPage Parse(string id, string page)
    {
        string text = page.ReplaceLineEndings("\n");
        Match title = TitleLine().Match(text);
        if (!title.Success || title.Groups[1].Value != id)
        {
            throw new FormatException($"The first line of {id}.md is not '# {id}: a sentence'.");
        }

        MatchCollection fences = Fence().Matches(text);
        int wordsEnd = fences.Count == 0 ? text.Length : fences[0].Index;
        ImmutableArray<PageExample> examples = [.. fences.Select(f => new PageExample(id, f.Groups["kind"].Value, IsRight(id, f), Visible(f.Groups["content"].Value)))];
        return new DiagnosticPage(id, title.Groups[2].Value, text[title.Length..wordsEnd].Trim(), examples);
    }

    // Said behind the kind, or in a line of its own above the fence.
    private static bool IsRight(string id, Match fence) => (fence.Groups["above"].Value + fence.Groups["rest"].Value).TrimStart().ToLowerInvariant() switch
    {
        "right" => true,
        "wrong" => false,
        string said when said.StartsWith("right for ", StringComparison.Ordinal) => true,
        string said when said.StartsWith("wrong for ", StringComparison.Ordinal) => false,
        string other => throw new FormatException($"A fence of {id}.md says '{other}' instead of 'wrong' or 'right'."),
    };

    // A tab, or a character that nobody can see, is written \u{9} in an example.
    private static string Visible(string example) =>
        HiddenCharacter().Replace(example, m => ((Rune)int.Parse(m.Groups[1].ValueSpan, NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToString());

    [GeneratedRegex(@"\A# (ROS\d{4}): (.+)\n")]
    private static partial Regex TitleLine();

    [GeneratedRegex(@"(?:^(?<above>Wrong|Right):\n\n)?^```(?<kind>\w+)(?<rest>[^\n]*)\n(?<content>.*?)\n?```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();

    [GeneratedRegex(@"\\u\{([0-9A-Fa-f]+)\}")]
    private static partial Regex HiddenCharacter();
}

/// <summary>An example of a page.</summary>
/// <param name="Id">The id of its page: what a wrong example gives, and nothing else.</param>
/// <param name="Kind">What it is: <c>outline</c>, <c>csv</c>, <c>drawing</c>, <c>sheet</c>, <c>position</c>, <c>lesson</c>, <c>play</c>.</param>
/// <param name="IsRight">True where it gives no problem at all.</param>
/// <param name="Content">The example without a line end at its end.</param>
public sealed record PageExample(string Id, string Kind, bool IsRight, string Content)
{
    /// <summary>The ids that reading it must give, each once.</summary>
    public IEnumerable<string> Expected => IsRight ? [] : [Id];
}
