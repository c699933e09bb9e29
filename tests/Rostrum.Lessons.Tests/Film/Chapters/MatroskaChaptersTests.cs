using System.Globalization;
using System.Text.Json;
using CsCheck;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film.Chapters;

/// <summary>Chapters as XML for Matroska. Source: <c>Reference/matroska_chapters_basic.xml</c> and <c>matroska_chapter_facts.json</c>.</summary>
public sealed class MatroskaChaptersTests
{
    private const string Folder = "tests/Rostrum.Lessons.Tests/Reference";

    public static TheoryData<long, long, bool> Times => [.. JsonDocument.Parse(TestFiles.Read($"{Folder}/matroska_chapter_facts.json")).RootElement
        .GetProperty("chapter_time_examples").EnumerateArray()
        .Select(e => (e.GetProperty("start").GetInt64(), e.GetProperty("end").GetInt64(), e.GetProperty("valid").GetBoolean()))];

    [Theory]
    [InlineData("eng", "Intro|Before the crime|The crime|After the crime|Credits")]
    [InlineData("fra", "Intro|Avant le crime|Le crime|Apres le crime|Generique")]
    public void Published_example_is_read_in_the_language_that_is_wanted(string language, string titles)
    {
        PlacedChapters read = MatroskaChapters.Read(new SourceText("a.xml", TestFiles.Read($"{Folder}/matroska_chapters_basic.xml")), language);

        Assert.Equal(titles.Split('|'), read.List.Chapters.Select(c => c.Title));
        Assert.Equal([0, 5, 25, 27.5, 38], read.List.Chapters.Select(c => c.Start.TotalSeconds));
        Assert.Equal(TimeSpan.FromSeconds(43), read.List.Length);
        Assert.Empty(read.Problems);
    }

    [Theory]
    [MemberData(nameof(Times))]
    public void An_end_before_the_start_is_told(long start, long end, bool isValid)
    {
        PlacedChapters read = Read(string.Create(CultureInfo.InvariantCulture, $"<ChapterAtom><ChapterTimeStart>{start}</ChapterTimeStart><ChapterTimeEnd>{end}</ChapterTimeEnd></ChapterAtom>"));

        Assert.Equal(isValid ? [] : ["ROS0684"], read.Problems.Select(p => p.Id));
        Assert.Equal(start / 1_000_000, Assert.Single(read.List.Chapters).Start.TotalMilliseconds);
    }

    [Fact]
    public void Chapters_are_written_as_mkvmerge_reads_them_and_always_alike()
    {
        var list = new ChapterList([Of(0, "a < b"), Of(3_723_004, "c")], null);

        string[] lines = MatroskaChapters.Write(list, MatroskaLanguage.English).Split('\n');

        Assert.Equal("<?xml version=\"1.0\" encoding=\"UTF-8\"?>", lines[0]);
        Assert.Contains("      <ChapterTimeStart>01:02:03.004000000</ChapterTimeStart>", lines);
        Assert.Contains("        <ChapterString>a &lt; b</ChapterString>", lines);
        Assert.Single(lines, l => l.Contains("ChapterTimeEnd", StringComparison.Ordinal));
        Assert.Equal(lines, MatroskaChapters.Write(list, MatroskaLanguage.English).Split('\n'));
    }

    [Fact]
    public void Numbers_that_tell_chapters_apart_are_all_different() => FilmGen.Any.Hold(list =>
    {
        string[] numbers = [.. MatroskaChapters.Write(list, MatroskaLanguage.English).Split('\n').Where(l => l.Contains("UID>", StringComparison.Ordinal)).Select(l => l.Trim())];

        Assert.Equal(list.Chapters.Length + 1, numbers.Distinct().Count());
    });

    [Fact]
    public void Written_files_are_read_back() => FilmGen.Ordered.Where(l => !l.Chapters.IsEmpty).Hold(list =>
        Assert.Equal(list, MatroskaChapters.Read(new SourceText("a.xml", MatroskaChapters.Write(list, MatroskaLanguage.English))).List));

    [Theory]
    [InlineData("<!DOCTYPE Chapters SYSTEM \"matroskachapters.dtd\"><Chapters/>")]
    [InlineData("<?xml version=\"1.0\"?>\n<!DOCTYPE c [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;\">]>\n<Chapters>&b;</Chapters>")]
    [InlineData("<!-- x --><!DOCTYPE c [<!ENTITY a SYSTEM \"file:///etc/passwd\">]><Chapters><EditionEntry>&a;</EditionEntry></Chapters>")]
    public void A_document_type_is_refused(string content)
    {
        PlacedChapters read = MatroskaChapters.Read(new SourceText("a.xml", content));

        Assert.Equal("ROS0683", Assert.Single(read.Problems).Id);
        Assert.True(read.IsRefused);
        Assert.StartsWith("DOCTYPE", read.Problems[0].At.Text.TrimStart('<', '!'), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<Chapters><EditionEntry></Chapters>", "ROS0682 1,27")]
    [InlineData("\n\n<Chapters>\n  <EditionEntry>&unknown;</EditionEntry></Chapters>", "ROS0682 4,18")]
    [InlineData("<a/>", "ROS0682 1,1")]
    [InlineData("<Chapters/>", "ROS0682 1,1")]
    public void What_holds_no_chapters_is_refused(string content, string told)
    {
        Diagnostic problem = Assert.Single(MatroskaChapters.Read(new SourceText("a.xml", content)).Problems);

        Assert.Equal(told, $"{problem.Id} {problem.At.StartPosition}");
    }

    [Fact]
    public void The_default_edition_counts_and_hidden_chapters_do_not()
    {
        const string Content = """
            <Chapters>
              <EditionEntry><ChapterAtom><ChapterTimeStart>0</ChapterTimeStart></ChapterAtom></EditionEntry>
              <EditionEntry><EditionFlagDefault>1</EditionFlagDefault>
                <ChapterAtom><ChapterTimeStart>00:01.5</ChapterTimeStart><ChapterAtom><ChapterTimeStart>2000000000</ChapterTimeStart></ChapterAtom></ChapterAtom>
                <ChapterAtom><ChapterFlagHidden>1</ChapterFlagHidden><ChapterTimeStart>3000000000</ChapterTimeStart></ChapterAtom>
                <ChapterAtom><ChapterFlagEnabled>0</ChapterFlagEnabled><ChapterTimeStart>4000000000</ChapterTimeStart></ChapterAtom>
                <ChapterAtom><ChapterTimeStart>99999999999999999999</ChapterTimeStart></ChapterAtom>
              </EditionEntry>
            </Chapters>
            """;

        PlacedChapters read = MatroskaChapters.Read(new SourceText("a.xml", Content));

        Assert.Equal([Of(1500, ""), Of(2000, "")], read.List.Chapters);
        Assert.Equal(("ROS0684", 7), (Assert.Single(read.Problems).Id, read.Problems[0].At.StartPosition.Line));
    }

    [Fact]
    public void Chapters_a_hundred_thousand_deep_are_refused()
    {
        string deep = string.Concat(Enumerable.Repeat("<ChapterAtom>", 100_000)) + string.Concat(Enumerable.Repeat("</ChapterAtom>", 100_000));

        Assert.Equal("Chapters of this file lie more than 100 deep in each other, so it is not read.", Assert.Single(Read(deep).Problems).Message);
    }

    private static PlacedChapters Read(string atoms) =>
        MatroskaChapters.Read(new SourceText("a.xml", $"<Chapters><EditionEntry>{atoms}</EditionEntry></Chapters>"));

    private static Chapter Of(long milliseconds, string title) => new(TimeSpan.FromMilliseconds(milliseconds), title);
}
