using CsCheck;
using Rostrum.Testing;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film.Chapters;

/// <summary>Chapters as lines of a description.</summary>
public sealed class ChapterLinesTests
{
    [Fact]
    public void A_chapter_is_a_line_with_hours_where_there_are_any() => Assert.Equal(
        "0:00 The aim\n12:05 - - x\n1:02:03 שלום 🎲\n",
        ChapterLines.Write(new ChapterList([Of(0, "The aim"), Of(3723, "שלום 🎲"), Of(725, "- x")], null)));

    [Fact]
    public void No_chapters_are_no_lines() => Assert.Equal("", ChapterLines.Write(new ChapterList([], null)));

    [Theory]
    [InlineData("0:00 The aim")]
    [InlineData("00:00 - The aim")]
    [InlineData("  • 0:00:00 – The aim  ")]
    [InlineData("(0:00) The aim")]
    [InlineData("[0:00] The aim")]
    [InlineData("1. 0:00 The aim")]
    [InlineData("0:00: The aim")]
    [InlineData("0:00 | The aim")]
    [InlineData("\uFEFF0:00\tThe  aim")]
    public void Lines_are_read_as_people_write_them(string line) =>
        Assert.Equal([Of(0, "The aim")], Read(line).List.Chapters);

    [Fact]
    public void Other_words_of_a_description_are_no_chapters()
    {
        PlacedChapters read = Read("How to play.\r\nFilmed at 10:30 in one take.\r\n2:1 is the ratio\r\n\r\n0:00 The aim\r\n1:10 Scoring\r\n\r\nCorrections:\r\n3:12 A jug.\r\n");

        Assert.Equal([Of(0, "The aim"), Of(70, "Scoring")], read.List.Chapters);
        Assert.Equal(["0:00 The aim", "1:10 Scoring"], read.Places.Select(p => p.Text));
        Assert.Empty(read.Problems);
    }

    [Fact]
    public void Written_lines_are_read_back() => FilmGen.Any.Hold(list => Assert.Equal(
        list.Ordered.Select(c => Of((int)c.Start.TotalSeconds, c.Title)),
        Read(ChapterLines.Write(list)).List.Chapters));

    [Fact]
    public void Whatever_is_read_is_written_and_read_again_the_same() => FilmGen.Title.Array[0, 8].Select(lines => string.Join('\n', lines)).Hold(text =>
    {
        ChapterList read = Read(text).List;

        Assert.Equal([.. read.Ordered.Select(c => new Chapter(TimeSpan.FromSeconds((long)c.Start.TotalSeconds), c.Title))], Read(ChapterLines.Write(read)).List.Chapters);
    });

    private static Chapter Of(int seconds, string title) => new(TimeSpan.FromSeconds(seconds), title);

    private static PlacedChapters Read(string lines) => ChapterLines.Read(new SourceText("description.txt", lines));
}
