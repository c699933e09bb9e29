using System.Text.RegularExpressions;
using Rostrum.Testing;

namespace Rostrum.Cli.Tests.House;

/// <summary>Every id that the sources give has one page, every page is about such an id, and every page keeps the form of the README.</summary>
public sealed partial class DiagnosticPageTests
{
    private static readonly string[] KindsOfExamples =
        ["outline", "csv", "drawing", "formula", "trio", "step", "phrase", "action", "sheet", "position", "trail", "checked", "question", "lesson", "demo", "dismissed", "published", "videos", "captions", "western", "length", "chapters", "heard", "ffmetadata", "matroska", "filmed",
            "corrections", "timeline", "bytes", "pictured", "played"];

    private static readonly string[] Given =
        [.. TestFiles.In("src", "*.cs").SelectMany(f => Id().Matches(TestFiles.Read(f))).Select(m => m.Groups[1].Value).Distinct().Order(StringComparer.Ordinal)];

    public static TheoryData<string> Pages => [.. DiagnosticPage.All.Select(p => p.Id)];

    [Fact]
    public void Every_id_of_the_sources_has_one_page_and_every_page_an_id() => Assert.Equal(Given, DiagnosticPage.All.Select(p => p.Id));

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_shows_a_wrong_and_a_right_example_that_some_test_runs(string id)
    {
        DiagnosticPage page = DiagnosticPage.All.Single(p => p.Id == id);

        Assert.Contains(page.Examples, e => !e.IsRight);
        Assert.Contains(page.Examples, e => e.IsRight);
        Assert.All(page.Examples, e => Assert.Contains(e.Kind, KindsOfExamples));
        Assert.NotEmpty(page.Words);
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_uses_plain_words(string id)
    {
        DiagnosticPage page = DiagnosticPage.All.Single(p => p.Id == id);

        Assert.Empty(BannedWords.In(page.Title).Concat(BannedWords.In(page.Words)));
        Assert.False(page.Title.EndsWith('.'));
    }

    [Fact]
    public void Every_kind_of_example_stands_on_some_page() =>
        Assert.All(KindsOfExamples, k => Assert.NotEmpty(DiagnosticPage.ExamplesIn(k)));

    [GeneratedRegex(@"""(ROS\d{4})""")]
    private static partial Regex Id();
}
