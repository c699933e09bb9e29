using System.Text.RegularExpressions;
using Rostrum.Testing;
using Rostrum.Text.Outline;
using Rostrum.Text.Tables;
using Rostrum.Text.Tests.Outline;

namespace Rostrum.Text.Tests;

/// <summary>The pages of <c>docs/diagnostics</c>: form, and the examples that this room can run.</summary>
public sealed partial class DiagnosticPageTests
{
    public static TheoryData<string, bool, string> Outlines => ExamplesIn("outline");

    public static TheoryData<string, bool, string> Tables => ExamplesIn("csv");

    public static TheoryData<string> Pages => [.. DiagnosticPage.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Outlines))]
    public void Outline_gives_what_its_page_says(string id, bool isRight, string content)
    {
        var example = new PageExample(id, "outline", isRight, content);

        Assert.Equal(example.Expected, Reading.Of(content).Ids.Distinct());
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Table_gives_what_its_page_says(string id, bool isRight, string content)
    {
        var example = new PageExample(id, "csv", isRight, content);
        var problems = new DiagnosticBag();

        CsvReader.Read(new SourceText("commissions.csv", content), problems);

        Assert.Equal(example.Expected, problems.InOrder().Select(p => p.Id).Distinct());
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Page_shows_a_wrong_and_a_right_example_and_uses_plain_words(string id)
    {
        DiagnosticPage page = DiagnosticPage.All.Single(p => p.Id == id);

        Assert.Contains(page.Examples, e => !e.IsRight);
        Assert.Contains(page.Examples, e => e.IsRight);
        Assert.NotEmpty(page.Words);
        Assert.False(page.Title.EndsWith('.'));
        Assert.Empty(BannedWords.In(page.Title).Concat(BannedWords.In(page.Words)));
    }

    [Fact]
    public void Every_id_of_this_room_has_a_page()
    {
        string[] given = [.. EveryMessage.Of(typeof(SourceText).Assembly, "Rostrum.Text").Select(p => p.Id).Distinct().Order(StringComparer.Ordinal)];

        Assert.Equal(33, given.Length);
        Assert.Empty(given.Except(DiagnosticPage.All.Select(p => p.Id)));
    }

    [Fact]
    public void Every_page_is_about_an_id_that_the_sources_give()
    {
        string[] given = [.. TestFiles.In("src", "*.cs").SelectMany(f => Id().Matches(TestFiles.Read(f))).Select(m => m.Groups[1].Value)];

        Assert.Empty(DiagnosticPage.All.Select(p => p.Id).Except(given));
    }

    [Fact]
    public void No_message_of_this_room_uses_a_banned_word()
    {
        Diagnostic[] problems = [.. EveryMessage.Of(typeof(SourceText).Assembly, "Rostrum.Text")];

        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In).Select(w => $"{p.Id}: {w}")));
        Assert.All(problems, p => Assert.DoesNotContain("", EveryMessage.SaidBy(p)));
    }

    [Fact]
    public void No_message_of_a_wrong_example_uses_a_banned_word()
    {
        IEnumerable<Diagnostic> problems = DiagnosticPage.ExamplesIn("outline").SelectMany(e => Reading.Of(e.Content).Problems);

        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In).Select(w => $"{p.Id}: {w}")));
    }

    private static TheoryData<string, bool, string> ExamplesIn(string kind)
    {
        var cases = new TheoryData<string, bool, string>();
        foreach (PageExample example in DiagnosticPage.ExamplesIn(kind))
        {
            cases.Add(example.Id, example.IsRight, example.Content);
        }

        return cases;
    }

    [GeneratedRegex(@"""(ROS\d{4})""")]
    private static partial Regex Id();
}
