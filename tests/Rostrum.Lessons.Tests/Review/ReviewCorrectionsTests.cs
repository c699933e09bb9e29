using System.Collections.Immutable;
using System.Text;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Review;
using Rostrum.Sheets.Model;
using Rostrum.Testing;

namespace Rostrum.Lessons.Tests.Review;

/// <summary>What findings become below a film that is out.</summary>
public sealed class ReviewCorrectionsTests
{
    private static readonly Citation Page5 = ShippedGames.Open("kiln-night").Sheet().Sheet!.Laws.First(l => l.Name == "jugs").Cite!;

    [Theory]
    [InlineData("Points for a plate: 3.", "3:12 Points for a plate: 3, not 2 (Rulebook, page 5).")]
    [InlineData("Plates score 3 each.", "3:12 Plates score 3 each: 3, not 2 (Rulebook, page 5).")]
    public void Wrong_value_says_what_is_right_and_what_was_heard(string sheet, string line) =>
        Assert.Equal($"Correction:\n{line}\n", Lines(Certain(FindingKind.WrongValue, sheet, TimeSpan.FromSeconds(192.4)) with { Heard = 2, Right = 3 }));

    [Fact]
    public void Other_findings_say_the_sentence_of_the_sheet() =>
        Assert.Equal("Correction:\n0:00 A run scores 1, 3, 6, 10 (Rulebook, page 5).\n", Lines(Certain(FindingKind.RowMissing, "A run scores 1, 3, 6, 10.", TimeSpan.Zero)));

    [Fact]
    public void Finding_without_a_page_names_none() => Assert.Equal("Correction:\n0:00 A jug stands on a plate.\n", Lines(Certain(FindingKind.WrongTerm, "A jug stands on a plate.", TimeSpan.Zero) with { Cite = null }));

    [Fact]
    public void Time_beyond_any_film_is_the_latest_one() =>
        Assert.Equal(FilmTime.Latest, Assert.Single(ReviewCorrections.Of(Report(Certain(FindingKind.WrongTerm, "A.", TimeSpan.FromHours(5000))))).Time);

    [Fact]
    public void Two_findings_of_one_second_and_one_sentence_are_one_line()
    {
        Finding finding = Certain(FindingKind.WrongTerm, "A.", TimeSpan.FromSeconds(3));

        Assert.Single(ReviewCorrections.Of(Report(finding, finding with { Time = TimeSpan.FromSeconds(3.5) })));
    }

    [Fact]
    public void Rule_that_was_never_said_has_no_line_and_stands_in_the_comment()
    {
        Finding unsaid = Certain(FindingKind.NeverSaid, "Nothing stands on a lamp.", null);

        Assert.Empty(Lines(unsaid));
        Assert.Equal("Not said in “Kiln Night”:\n\n- Nothing stands on a lamp (Rulebook, page 5).\n", ReviewCorrections.PinnedComment(Report(unsaid), null, "Kiln Night"));
        Assert.Equal(
            "Correction to “Kiln Night”:\n\n0:07 B (Rulebook, page 5).\n\nNot said in the film:\n\n- Nothing stands on a lamp (Rulebook, page 5).\n",
            ReviewCorrections.PinnedComment(Report(unsaid, Certain(FindingKind.WrongTerm, "B.", TimeSpan.FromSeconds(7))), null, "Kiln Night"));
    }

    [Fact]
    public void Nothing_found_is_nothing_to_publish() => Assert.Empty(Lines() + ReviewCorrections.PinnedComment(Report(), null, "Kiln Night"));

    [Fact]
    public void More_words_than_ten_hours_have_are_refused()
    {
        string words = string.Join(' ', Enumerable.Repeat("bowl jug plate lamp shelf", 20_001));
        CaptionFile captions = CaptionReader.Read("talk.vtt", Encoding.UTF8.GetBytes($"WEBVTT\n\n00:00:00.000 --> 10:00:00.000\n{words}\n"));

        Assert.Equal("100005 words were heard, and a recording has 100000 at the most: more than ten hours of speech.", RecordingReview.Of(ShippedGames.Open("kiln-night"), captions).Refused);
    }

    private static string Lines(params ImmutableArray<Finding> certain) => CorrectionLines.Write(ReviewCorrections.Of(Report(certain)));

    private static RecordingReport Report(params ImmutableArray<Finding> certain) => new(certain, [], [], null, 100, TimeSpan.FromMinutes(1));

    private static Finding Certain(FindingKind kind, string sheet, TimeSpan? time) => new(kind, time, "words", sheet, "clause", Page5, 0.9, "why");
}
