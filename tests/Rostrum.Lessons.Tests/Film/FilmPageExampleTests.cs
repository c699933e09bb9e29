using System.Globalization;
using System.Text;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Film.Timelines;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film;

/// <summary>The pages of <c>docs/diagnostics</c> whose examples are chapters, corrections and timelines.</summary>
public sealed class FilmPageExampleTests
{
    private static readonly Dictionary<string, Func<string, IEnumerable<Diagnostic>>> Readers = new()
    {
        ["chapters"] = content => ChapterReader.Read(new SourceText("chapters", content)).Check(),
        ["filmed"] = content => Filmed(content.Split('\n', 2)),
        ["ffmetadata"] = content => FfMetadataReader.Read(new SourceText("chapters.ffmeta", content)).Chapters.Check(),
        ["matroska"] = content => MatroskaChapters.Read(new SourceText("chapters.xml", content)).Check(),
        ["timeline"] = content => OtioReader.Read("shots.otio", Encoding.UTF8.GetBytes(content)).Problems,
        ["corrections"] = content => CorrectionLines.Read(new SourceText("description.txt", content)).Problems,
        ["bytes"] = content => ChapterReader.Read("chapters.txt", long.Parse(content, CultureInfo.InvariantCulture), () => "0:00 a\n0:10 b\n0:20 c"u8.ToArray()).Check(),
    };

    public static TheoryData<string, bool, string, string> Examples =>
        [.. Readers.Keys.SelectMany(DiagnosticPage.ExamplesIn).Select(e => (e.Id, e.IsRight, e.Kind, e.Content))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Film_gives_what_its_page_says(string id, bool isRight, string kind, string content)
    {
        var example = new PageExample(id, kind, isRight, content);

        Diagnostic[] problems = [.. Readers[kind](content)];

        Assert.Equal(example.Expected, problems.Select(p => p.Id).Distinct());
        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In).Select(w => $"{p.Id}: {w}")));
    }

    // The first line says how long the video is.
    private static IEnumerable<Diagnostic> Filmed(string[] parts) =>
        ChapterReader.Read(new SourceText("chapters", parts[1])).Check(FilmTime.Read(parts[0]["video ".Length..]));
}
