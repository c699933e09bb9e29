using System.Text;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Chapters;

namespace Rostrum.Lessons.Tests.Film.Chapters;

/// <summary>From bytes to chapters, whatever the form.</summary>
public sealed class ChapterReaderTests
{
    private static readonly ChapterList List = new([Of(0, "The aim"), Of(10, "Grün 🎲"), Of(20, "Scoring")], null);

    public static TheoryData<string, byte[]> Forms => new()
    {
        { "lines", Encoding.UTF8.GetBytes(ChapterLines.Write(List)) },
        { "lines with a byte order sign", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(ChapterLines.Write(List))] },
        { "FFmpeg", Encoding.UTF8.GetBytes(FfMetadataWriter.Write(List, [])) },
        { "Matroska", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(MatroskaChapters.Write(List, MatroskaLanguage.Undetermined))] },
        { "Matroska in UTF-16", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(MatroskaChapters.Write(List, MatroskaLanguage.English))] },
    };

    [Theory]
    [MemberData(nameof(Forms))]
    public void A_file_says_itself_which_form_it_has(string form, byte[] bytes)
    {
        PlacedChapters read = ChapterReader.Read("a file", bytes.Length, () => bytes);

        Assert.Equal((form, List), (form, read.List));
        Assert.Empty(read.Check());
    }

    [Fact]
    public void A_file_of_50_MB_is_refused_unread()
    {
        PlacedChapters read = ChapterReader.Read("film.mp4", 50L * 1024 * 1024, () => throw new InvalidOperationException("It was read."));

        Assert.Equal("This file is 50 MB long, and no file of chapters, corrections or shots is longer than 20 MB.", Assert.Single(read.Check()).Message);
        Assert.True(read.IsRefused);
    }

    [Fact]
    public void A_file_that_grew_is_refused() =>
        Assert.Equal("ROS0681", Assert.Single(ChapterReader.Read("a", 1, () => new byte[FilmFile.LargestBytes + 1]).Problems).Id);

    private static Chapter Of(int seconds, string title) => new(TimeSpan.FromSeconds(seconds), title);
}
