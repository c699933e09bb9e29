using Rostrum.Sheets.Drawings;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Drawings;

/// <summary>The pages of <c>docs/diagnostics</c> whose examples are drawings.</summary>
public sealed class DrawingPageTests
{
    public static TheoryData<string, bool, string> Examples
    {
        get
        {
            var cases = new TheoryData<string, bool, string>();
            foreach (PageExample example in DiagnosticPage.ExamplesIn("drawing"))
            {
                cases.Add(example.Id, example.IsRight, example.Content);
            }

            return cases;
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Drawing_gives_what_its_page_says(string id, bool isRight, string content)
    {
        var example = new PageExample(id, "drawing", isRight, content);

        Assert.Equal(example.Expected, Drawn.Of(content).Ids.Distinct());
    }

    [Fact]
    public void Every_id_of_drawings_has_a_page()
    {
        string[] given = [.. EveryMessage.Of(typeof(DrawingText).Assembly, "Rostrum.Sheets.Drawings").Select(p => p.Id).Distinct()];

        Assert.Equal(5, given.Length);
        Assert.Empty(given.Except(DiagnosticPage.All.Select(p => p.Id)));
    }

    [Fact]
    public void No_message_about_drawings_uses_a_banned_word()
    {
        IEnumerable<Diagnostic> problems = EveryMessage.Of(typeof(DrawingText).Assembly, "Rostrum.Sheets.Drawings");

        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In).Select(w => $"{p.Id}: {w}")));
    }
}
