using Rostrum.Pictures.Positions;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Pictures.Tests;

/// <summary>The pages of <c>docs/diagnostics</c> whose examples are sheets held against the catalogues of this room.</summary>
public sealed class AppearancePageTests
{
    public static TheoryData<string, bool, string> Examples => [.. DiagnosticPage.ExamplesIn("pictured").Select(e => (e.Id, e.IsRight, e.Content))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Sheet_gives_what_its_page_says(string id, bool isRight, string content)
    {
        var example = new PageExample(id, "pictured", isRight, content);
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("test", (SheetReader.FileName, content)), IdiomLibrary.Empty, []);

        Diagnostic[] problems = [.. reading.Problems, .. AppearanceCheck.Of(reading.Sheet!)];

        Assert.Equal(example.Expected, problems.Select(p => p.Id).Distinct());
        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In)));
    }
}
