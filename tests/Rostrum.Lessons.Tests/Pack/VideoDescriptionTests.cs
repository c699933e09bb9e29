using System.Text;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Pack;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Pack;

public sealed class VideoDescriptionTests
{
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");
    private static readonly LessonReport Report = LessonCheck.Of(Kiln)!;

    [Fact]
    public void Everything_stands_in_the_order_in_which_viewers_want_it()
    {
        string text = Of(Report, Given("0:00 A\n0:30 B\n1:00 C\n\nCorrections:\n0:40 Three, not four.\n"));

        string[] parts = ["How to play Kiln Night\n", "Potters of one village", "Follows the first printing. Correct as of 25 November 2026.", "\nChapters\n0:00 A\n", "\nCorrection:\n0:40 Three, not four.\n", "\nSources\n", "Rulebook, first printing: pages 1 to 8, 12\n", "Taught by Oona Tarrow.", "Unofficial:"];
        int[] places = [.. parts.Select(p => text.IndexOf(p, StringComparison.Ordinal))];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public void Our_own_readers_find_the_chapters_and_corrections_in_it()
    {
        var text = new SourceText("description.txt", Of(Report, Given("0:00 A\n0:30 B\n1:00 C\n\nCorrections:\n0:40 Three, not four.\n")));

        Assert.Equal(["A", "B", "C"], ChapterLines.Read(text).List.Chapters.Select(c => c.Title));
        Assert.Equal([new Correction(TimeSpan.FromSeconds(40), "Three, not four.")], CorrectionLines.Read(text).Corrections);
        Assert.Empty(CorrectionLines.Read(text).Problems);
    }

    [Fact]
    public void What_is_left_to_the_presenter_stands_in_square_brackets()
    {
        string[] asked = [.. Of(Report, FinishedFilm.None).Split('\n').Where(l => l.StartsWith('['))];

        Assert.Equal(2, asked.Length);
        Assert.StartsWith("[The times are estimates", asked[0], StringComparison.Ordinal);
        Assert.Contains("your law", asked[1], StringComparison.Ordinal);
        Assert.All(asked, a => Assert.EndsWith("]", a, StringComparison.Ordinal));
    }

    [Fact]
    public void With_real_times_and_a_disclosure_nothing_is_left_to_do()
    {
        LessonReport said = LessonCheck.Of(Kiln, new SourceText("lesson.md", "---\ntitle: Kilns\ndisclosure: The publisher gave me a copy.\n---\n\n## A\n\nHello.\n"));

        string text = Of(said, Given("0:00 A\n0:30 B\n1:00 C\n"));

        Assert.DoesNotContain("[", text, StringComparison.Ordinal);
        Assert.EndsWith("\nThe publisher gave me a copy.\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_description_longer_than_a_platform_takes_is_told()
    {
        Assert.Null(VideoDescription.Remark(new string('a', VideoDescription.LongestCharacters)));
        Assert.StartsWith("description.txt has 5001 characters", VideoDescription.Remark(new string('a', VideoDescription.LongestCharacters + 1)), StringComparison.Ordinal);
    }

    private static string Of(LessonReport report, FinishedFilm film) =>
        Encoding.UTF8.GetString(LessonPack.Make(Kiln, report, film).Files.Single(f => f.Name == "description.txt").Bytes.AsSpan());

    private static FinishedFilm Given(string times)
    {
        GivenTimes given = GivenTimes.Read("times.txt", 1, () => Encoding.UTF8.GetBytes(times));
        return new FinishedFilm { Chapters = given.Chapters, Corrections = given.Corrections };
    }
}
