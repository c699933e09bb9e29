using System.Globalization;
using Rostrum.Lessons.Captions;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Captions;

/// <summary>The pages of <c>docs/diagnostics</c> whose examples are caption files.</summary>
public sealed class CaptionPageExampleTests
{
    public static TheoryData<string, bool, string, string> Examples =>
        [.. new[] { "captions", "western", "length" }.SelectMany(DiagnosticPage.ExamplesIn).Select(e => (e.Id, e.IsRight, e.Kind, e.Content))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Captions_give_what_their_page_says(string id, bool isRight, string kind, string content)
    {
        var example = new PageExample(id, kind, isRight, content);

        Diagnostic[] problems = [.. Read(kind, content).Problems];

        Assert.Equal(example.Expected, problems.Select(p => p.Id).Distinct());
        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In).Select(w => $"{p.Id}: {w}")));
    }

    // Letters of Western Europe are single bytes below 256, as are these characters.
    private static CaptionFile Read(string kind, string content) => kind switch
    {
        "length" => CaptionReader.Read("lesson.vtt", long.Parse(content, CultureInfo.InvariantCulture), () => "WEBVTT\n\n00:01.000 --> 00:02.000\na"u8.ToArray()),
        "western" => CaptionReader.Read("lesson.vtt", content.Select(c => (byte)c).ToArray()),
        _ => CaptionReader.Read(new SourceText("lesson.vtt", content)),
    };
}
