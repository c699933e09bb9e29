using System.Text.RegularExpressions;
using Rostrum.Testing;

namespace Rostrum.Rulings.Tests.Schemas;

/// <summary>Every sheet and every position of the repository that is right: of games, tests and pages.</summary>
internal static partial class WrittenTexts
{
    // Files of the tests that hold a position instead of a sheet.
    private static readonly string[] PositionSamples = ["tests/Rostrum.Text.Tests/Samples/position.yaml"];

    /// <summary>Sheets and parts of sheets.</summary>
    public static IReadOnlyList<(string Name, string Content)> Sheets { get; } =
    [
        .. Files("games", "sheet.yaml"),
        .. TestFiles.In("tests", "*.yaml").Where(f => f.Contains("/Samples/", StringComparison.Ordinal) && !PositionSamples.Contains(f)).Select(f => (f, TestFiles.Read(f))),
        ("the bench game", BenchGame.SheetText), ("the trail game", TrailGame.SheetText), ("the table bench", TableBench.SheetText),
        .. Fences("docs/language.md").Where(f => f.Kind is "sheet" or "clauses").Select(f => (f.Name, f.Content)),
        .. Course("sheet.yaml"),
        .. DiagnosticPage.ExamplesIn("sheet").Where(e => e.IsRight).Select((e, i) => ($"{e.Id}, right sheet {i}", e.Content)),
    ];

    /// <summary>Positions and parts of positions.</summary>
    public static IReadOnlyList<(string Name, string Content)> Positions { get; } =
    [
        .. TestFiles.In("games", "*.yaml").Where(f => f.Contains("/positions/", StringComparison.Ordinal)).Select(f => (f, TestFiles.Read(f))),
        .. PositionSamples.Select(f => (f, TestFiles.Read(f))),
        ("the bench", BenchGame.PositionText),
        .. Fences("docs/language.md").Where(f => f.Kind is "position" or "position of the sheet").Select(f => (f.Name, f.Content)),
        .. Course("positions/"),
        .. new[] { "position", "trail" }.SelectMany(DiagnosticPage.ExamplesIn).Where(e => e.IsRight).Select((e, i) => ($"{e.Id}, right position {i}", e.Content)),
    ];

    private static IEnumerable<(string, string)> Files(string folder, string pattern) => TestFiles.In(folder, pattern).Select(f => (f, TestFiles.Read(f)));

    // The steps of the course: whole files, or what is added at the end of the file or of a section.
    private static IEnumerable<(string, string)> Course(string file) =>
        from fence in Fences("docs/sheet.md")
        let words = fence.Kind.Split(' ')
        where words.Length > 1 && words[0] == "yaml" && words[1].Contains($"/{file}", StringComparison.Ordinal)
        let section = string.Join(' ', words[2..])
        select (fence.Name, section is "" or "+" ? fence.Content : $"{section}:\n{fence.Content}");

    private static IEnumerable<(string Name, string Kind, string Content)> Fences(string page) =>
        Fence().Matches(TestFiles.Read(page).ReplaceLineEndings("\n")).Select((m, i) => ($"{page}, example {i + 1}", m.Groups["kind"].Value, m.Groups["content"].Value));

    [GeneratedRegex(@"^```(?<kind>[^\n]+)\n(?<content>.*?)\n```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();
}
