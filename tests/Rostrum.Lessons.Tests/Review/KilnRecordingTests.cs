using Rostrum.Lessons.Film;
using Rostrum.Testing;

namespace Rostrum.Lessons.Tests.Review;

/// <summary>What both recordings of Kiln Night have in common.</summary>
public sealed class KilnRecordingTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Captions_are_those_that_are_made_of_the_speech(bool isFree)
    {
        KilnRecording recording = isFree ? KilnRecording.Free : KilnRecording.AlongTheScript;

        Assert.Equal(recording.Text, recording.Shipped());
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void List_of_slips_tells_each_with_its_time(bool isFree)
    {
        KilnRecording recording = isFree ? KilnRecording.Free : KilnRecording.AlongTheScript;
        string page = TestFiles.Read("games/kiln-night/recording-slips.md");

        Assert.All(recording.Speech.Slips, s => Assert.Contains($"| {FilmTime.Write(recording.Times[s.Word])} |", page));
        Assert.Contains("invented", page);
        Assert.Empty(BannedWords.In(page));
    }
}
