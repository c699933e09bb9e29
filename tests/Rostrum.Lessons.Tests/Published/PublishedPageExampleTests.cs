using System.Globalization;
using System.Text;
using Rostrum.Lessons.Published;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Published;

/// <summary>The pages of <c>docs/diagnostics</c> whose examples are files of published videos.</summary>
public sealed class PublishedPageExampleTests
{
    private static readonly Dictionary<string, Func<string, string>> Files = new()
    {
        ["published"] = content => content,
        ["videos"] = content => Saying(int.Parse(content, CultureInfo.InvariantCulture)),
    };

    public static TheoryData<string, bool, string, string> Examples =>
        [.. Files.Keys.SelectMany(DiagnosticPage.ExamplesIn).Select(e => (e.Id, e.IsRight, e.Kind, e.Content))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void File_gives_what_its_page_says(string id, bool isRight, string kind, string content)
    {
        var example = new PageExample(id, kind, isRight, content);

        PublishedFile file = PublishedFile.Read(new SourceText(PublishedFile.FileName, Files[kind](content) + "\n"));

        Assert.Equal(example.Expected, file.Problems.Select(p => p.Id).Distinct());
        Assert.Empty(file.Problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In).Select(w => $"{p.Id}: {w}")));
    }

    private static string Saying(int rules)
    {
        var file = new StringBuilder("format: 1\nvideos:\n  - title: Long\n    date: 2026-01-02\n    rules:\n");
        for (int i = 0; i < rules; i++)
        {
            file.Append(CultureInfo.InvariantCulture, $"      - clause: laws/{i}\n        at: 0:01\n        says: It is so.\n");
        }

        return file.ToString();
    }
}
