using CsCheck;
using Rostrum.Testing;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film.Corrections;

/// <summary>Corrections as lines of a description, and as a comment.</summary>
public sealed class CorrectionLinesTests
{
    private static readonly Correction Jug = new(TimeSpan.FromSeconds(192), "A jug stands\non a plate too.");

    private static readonly Correction Bowl = new(TimeSpan.FromSeconds(65), "Bowls score 6, not 5.");

    [Fact]
    public void Corrections_stand_below_their_heading_in_the_order_of_their_times()
    {
        Assert.Equal("Corrections:\n1:05 Bowls score 6, not 5.\n3:12 A jug stands on a plate too.\n", CorrectionLines.Write([Jug, Bowl]));
        Assert.Equal("Correction:\n1:05 Bowls score 6, not 5.\n", CorrectionLines.Write([Bowl]));
        Assert.Equal("", CorrectionLines.Write([]));
    }

    [Fact]
    public void The_comment_says_which_lesson_and_up_to_which_day()
    {
        Assert.Equal(
            "Corrections to “Kiln Night”:\n\n1:05 Bowls score 6, not 5.\n3:12 A jug stands on a plate too.\n\nCorrect as of 2026-11-25.\n",
            CorrectionLines.PinnedComment("Kiln\nNight", [Jug, Bowl], "2026-11-25"));
        Assert.Equal("Correction to “Kiln Night”:\n\n1:05 Bowls score 6, not 5.\n", CorrectionLines.PinnedComment("Kiln Night", [Bowl], ""));
        Assert.Equal("", CorrectionLines.PinnedComment("Kiln Night", [], "2026-11-25"));
    }

    [Theory]
    [InlineData("Corrections:")]
    [InlineData("CORRECTION")]
    [InlineData("  correction : ")]
    public void Corrections_are_found_in_a_whole_description(string heading)
    {
        string text = $"How to play.\n0:00 The aim\n0:40 Scoring\n{heading}\n\n1:05 - Bowls score 6, not 5.\n\n3:12 A jug stands on a plate too.\n\nMusic: none.\n9:99 no line of ours\n";

        PlacedCorrections read = CorrectionLines.Read(new SourceText("a", text));

        Assert.Equal([Bowl, Jug], read.Corrections);
        Assert.Equal([6, 8], read.Places.Select(p => p.StartPosition.Line));
        Assert.Empty(read.Problems);
    }

    [Theory]
    [InlineData("Corrections:\nBowls score 6.\n1:05 x", "ROS0688 2,1 This correction begins with no time, so no viewer is shown it.")]
    [InlineData("Corrections:\n1:05 x\n\n1:10 y\nmore of it", "ROS0688 5,1 This correction begins with no time, so no viewer is shown it.")]
    [InlineData("Corrections:\n1:05 x\n1:75 y", "ROS0678 3,1 '1:75' is no time, so this line is left out.")]
    [InlineData("Corrections:\n1:05", "ROS0689 2,1 The correction at 1:05 says nothing.")]
    [InlineData("Errata:\n1:05 x", "")]
    [InlineData("Corrections:", "")]
    public void Lines_that_no_viewer_is_shown_are_told(string text, string told) => Assert.Equal(
        told,
        string.Join("; ", CorrectionLines.Read(new SourceText("a", text)).Problems.Select(p => $"{p.Id} {p.At.StartPosition} {p.Message}")));

    [Fact]
    public void Written_lines_are_read_back_and_chapters_before_them_stay_chapters() => Gen.Select(FilmGen.Ordered, FilmGen.Corrections).Hold((chapters, corrections) =>
    {
        string description = $"{ChapterLines.Write(chapters)}\n{CorrectionLines.Write(corrections)}";

        Assert.Equal(corrections, CorrectionLines.Read(new SourceText("a", description)).Corrections);
        Assert.Equal(chapters.Chapters.Select(c => c.Title), ChapterLines.Read(new SourceText("a", description)).List.Chapters.Select(c => c.Title));
    });
}
