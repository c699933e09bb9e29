using System.Globalization;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film.Chapters;

/// <summary>The limits of platforms. Figures: trade page 9to5google.com of 28 May 2020 and support.vevo.com, "YouTube Chapters".</summary>
public sealed class ChapterCheckTests
{
    private const string Sound = "0:00 The aim\n0:10 Your turn\n1:00:00 Scoring\n";

    [Theory]
    [InlineData(Sound, "")]
    [InlineData("0:01 The aim\n0:11 Your turn\n0:30 Scoring", "ROS0670 1: The first chapter begins at 0:01, and a platform shows no chapters unless the first begins at 0:00.")]
    [InlineData("0:00 The aim\n0:30 Scoring", "ROS0671 1: There are two chapters, and a platform shows none where there are fewer than three.")]
    [InlineData("", "ROS0671 1: There are no chapters, and a platform shows none where there are fewer than three.")]
    [InlineData("0:00 a\n0:40 b\n0:20 c\n0:50 d", "ROS0672 3: This chapter begins at 0:20, no later than the one before it at 0:40.")]
    [InlineData("0:00 a\n0:20 b\n0:20 c", "ROS0672 3: This chapter begins at 0:20, no later than the one before it at 0:20.")]
    [InlineData("0:00 a\n0:09 b\n0:20 c", "ROS0673 1: 'a' lasts 9 seconds, and a platform shows no chapters where one is shorter than 10.")]
    [InlineData("0:00 a\n0:10\n0:20 c", "ROS0675 2: The chapter at 0:10 has no title.")]
    [InlineData("0:00 a\n0:75 b\n0:20 c\n0:40 d", "ROS0678 2: '0:75' is no time, so this line is left out.")]
    public void Each_limit_has_a_message_of_its_own(string lines, string told) => Assert.Equal(told, Told(Read(lines).Check()));

    [Theory]
    [InlineData(49, "")]
    [InlineData(50, "ROS0674 2: This title has 50 characters, and below the picture about 49 are shown: '{48}…'.")]
    [InlineData(70, "ROS0674 2: This title has 70 characters, and below the picture about 49 are shown: '{48}…'.")]
    [InlineData(71, "ROS0674 2: This title has 71 characters, and below the picture about 49 are shown, in the list about 70: '{48}…'.")]
    public void Titles_are_clipped_at_49_and_70_characters_that_a_viewer_counts(int characters, string told)
    {
        const string Family = "👩‍👩‍👧‍👦";

        string lines = $"0:00 a\n0:10 {string.Concat(Enumerable.Repeat(Family, characters))}\n0:20 c";

        Assert.Equal(told.Replace("{48}", string.Concat(Enumerable.Repeat(Family, 48)), StringComparison.Ordinal), Told(Read(lines).Check()));
    }

    [Theory]
    [InlineData("1:00:10", "")]
    [InlineData("1:00:09", "ROS0673 3: 'Scoring' lasts 9 seconds, and a platform shows no chapters where one is shorter than 10.")]
    [InlineData("1:00:00", "ROS0676 3: This chapter begins at 1:00:00, and the video ends at 1:00:00.")]
    [InlineData("0:40", "ROS0676 3: This chapter begins at 1:00:00, and the video ends at 0:40.")]
    public void A_video_that_is_too_short_for_its_chapters_is_told(string video, string told) =>
        Assert.Equal(told, Told(Read(Sound).Check(Rostrum.Lessons.Film.FilmTime.Read(video))));

    [Theory]
    [InlineData(62, "")]
    [InlineData(63, "ROS0677 1: The chapters last 1:00 together, and the video lasts 1:03.")]
    [InlineData(57, "ROS0677 1: The chapters last 1:00 together, and the video lasts 0:57.")]
    public void A_video_of_another_length_than_the_chapters_say_is_told(int seconds, string told)
    {
        string file = FfMetadataWriter.Write(Read("0:00 a\n0:10 b\n0:20 c").List with { Length = TimeSpan.FromMinutes(1) }, []);

        Assert.Equal(told, Told(ChapterReader.Read(new SourceText("a", file)).Check(TimeSpan.FromSeconds(seconds))));
    }

    // The platform reads the seconds of the lines: 9.5 seconds between them can be 10 there.
    [Fact]
    public void Lengths_are_those_of_the_lines_that_the_platform_reads()
    {
        PlacedChapters read = ChapterReader.Read(new SourceText("a", FfMetadataWriter.Write(
            new ChapterList([At(0, "a"), At(10_900, "b"), At(20_100, "c")], null), [])));

        Assert.Equal("", Told(read.Check()));
    }

    private static Chapter At(long milliseconds, string title) => new(TimeSpan.FromMilliseconds(milliseconds), title);

    private static PlacedChapters Read(string lines) => ChapterLines.Read(new SourceText("description.txt", lines));

    private static string Told(IEnumerable<Diagnostic> problems) =>
        string.Join("; ", problems.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Id} {p.At.StartPosition.Line}: {p.Message}")));
}
