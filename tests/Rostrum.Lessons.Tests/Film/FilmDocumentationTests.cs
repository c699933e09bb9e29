using System.Text.RegularExpressions;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Scripts;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film;

/// <summary>What <c>docs/film.md</c> shows is what is written.</summary>
public sealed partial class FilmDocumentationTests
{
    private const string Name = "docs/film.md";

    private static readonly string Page = TestFiles.Read(Name);

    private static readonly ChapterList Kiln =
        LessonChapters.Estimate(LessonReader.Read(new SourceText("lesson.md", TestFiles.Read("games/kiln-night/lesson.md")), new DiagnosticBag())).List;

    private static readonly Dictionary<string, string> Made = new()
    {
        ["chapters"] = ChapterLines.Write(Kiln),
        ["ffmetadata"] = Beginning(FfMetadataWriter.Write(Kiln, []), 11),
        ["matroska"] = Beginning(MatroskaChapters.Write(Kiln, MatroskaLanguage.English), 15),
        ["corrections"] = CorrectionLines.Write(CorrectionLines.Read(new SourceText("a", Shown("corrections"))).Corrections),
    };

    [Fact]
    public void Page_shows_what_is_written_of_the_demo_lesson()
    {
        string made = Fence().Replace(Page, f => $"```{f.Groups["kind"].Value}\n{Made[f.Groups["kind"].Value]}```");

        Assert.Equal(made, TestFiles.Made(Name, made));
        Assert.Equal(Made.Keys, Fence().Matches(made).Select(f => f.Groups["kind"].Value));
    }

    [Fact]
    public void Page_is_in_plain_words() => Assert.Empty(BannedWords.In(Fence().Replace(Page, "")));

    private static string Beginning(string file, int lines) => string.Join('\n', file.Split('\n').Take(lines)) + "\n…\n";

    private static string Shown(string kind) => Fence().Matches(Page).Single(f => f.Groups["kind"].Value == kind).Groups["content"].Value;

    [GeneratedRegex(@"^```(?<kind>\w+)\n(?<content>.*?\n)```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Fence();
}
