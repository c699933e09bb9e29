using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Captions.Words;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Review;
using Rostrum.Testing;
using Rostrum.Testing.Speech;

namespace Rostrum.Lessons.Tests.Review;

/// <summary>The recording of Kiln Night in which the presenter speaks freely.</summary>
public sealed partial class FreeRecordingTests
{
    private static readonly SpokenLesson Speech = KilnRecording.Free.Speech;
    private static readonly ImmutableArray<TimeSpan> Times = KilnRecording.Free.Times;
    private static readonly CaptionFile Captions = KilnRecording.Free.Captions;
    private static readonly RecordingReport Report = KilnRecording.Free.Report;

    [Fact]
    public void Captions_roll_as_those_of_a_platform_and_hold_each_word_once()
    {
        ImmutableArray<TimedWord> words = SpokenWords.Of(Captions);

        Assert.Empty(Captions.Problems);
        Assert.True(Captions.Cues.Length > 2 * words.Length / 12);
        Assert.InRange(words.Length, Speech.Words.Length, Speech.Words.Length * 21 / 20);
        Assert.Equal(words.Select(w => w.Start).Order(), words.Select(w => w.Start));
        Assert.InRange(words[^1].End, TimeSpan.FromMinutes(6), TimeSpan.FromMinutes(9));
    }

    [Fact]
    public void Number_that_is_put_right_at_once_is_not_told()
    {
        TimeSpan repair = Times[Array.IndexOf([.. Speech.Words], "wait,")];

        Assert.DoesNotContain(Report.Certain.Concat(Report.Listen), f => f.Kind == FindingKind.WrongValue && (f.Time!.Value - repair).Duration() < TimeSpan.FromSeconds(4));
    }

    [Fact]
    public void Word_that_the_sheet_forbids_is_found_with_its_time_and_page()
    {
        PlantedSlip slip = Assert.Single(Speech.Slips, s => s.IsTerm);
        Finding finding = Assert.Single(Report.Certain, f => f.Kind == FindingKind.WrongTerm);

        Assert.Equal(("ware", Times[slip.Word], "Rulebook, page 2"), (finding.Clause, finding.Time, finding.Cite?.InWords));
    }

    [Fact]
    public void Topics_are_found_in_the_order_in_which_they_were_filmed()
    {
        Assert.True(Report.Topics.IsOfLesson);
        Assert.Equal(
            ["The aim", "What is on the table", "Set-up", "Your turn", "Where a ware may stand", "Commissions", "Burning sticks", "Dawn and firing", "Scoring", "The other side of the chamber", "What the rulebook leaves open"],
            Report.Topics.Topics.Select(t => t.Title));
        Assert.Equal(["One night, counted"], Report.Topics.NotFound);
        Assert.Single(Report.Topics.Topics, t => t.IsMoved);
    }

    // Where each paragraph begins; a topic that begins within a sentence or two of it is found.
    [Theory]
    [InlineData("What is on the table", "So let's look at what's on")]
    [InlineData("Set-up", "Setting it up, that's page")]
    [InlineData("Your turn", "Now, your turn. There's one")]
    [InlineData("Where a ware may stand", "Okay, where can a ware")]
    [InlineData("Commissions", "Let me do commissions next.")]
    [InlineData("Burning sticks", "The other thing you can")]
    [InlineData("Dawn and firing", "So the night goes on")]
    [InlineData("Scoring", "Scoring, page eight. I go")]
    [InlineData("The other side of the chamber", "A word on the back")]
    [InlineData("What the rulebook leaves open", "One last thing, and I")]
    public void Topic_begins_where_its_first_sentence_is_said(string topic, string words)
    {
        string[] first = words.Split(' ');
        int at = Enumerable.Range(0, Speech.Words.Length).Single(i => first.Select((w, k) => Speech.Words.ElementAtOrDefault(i + k) == w).All(same => same));

        TimeSpan start = Report.Topics.Topics.Single(t => t.Title == topic).Start;

        Assert.InRange(start, Times[at] - TimeSpan.FromSeconds(4), Times[at] + TimeSpan.FromSeconds(8));
    }

    [Fact]
    public void Chapters_are_those_that_a_platform_shows()
    {
        Assert.Null(Report.Topics.NoChapters);
        Assert.Equal(TimeSpan.Zero, Report.Topics.Chapters.Chapters[0].Start);
        Assert.All(Report.Topics.Chapters.WithEnds(), c => Assert.True(c.End - c.Chapter.Start >= TimeSpan.FromSeconds(10)));
    }

    [Fact]
    public void Pace_is_that_of_the_speech()
    {
        Assert.InRange(Report.WordsAMinute, 150, 185);
        Assert.All(Report.Topics.Topics, t => Assert.InRange(t.WordsAMinute, 110, 230));
        Assert.Equal(Report.Words, Report.Topics.Topics.Sum(t => t.Words));
    }

    [Fact]
    public void Without_a_lesson_the_topics_are_the_parts_of_the_rules()
    {
        FilmedTopics topics = RecordingReview.Of(ShippedGames.Open("kiln-night"), Captions).Topics;

        Assert.False(topics.IsOfLesson);
        Assert.Contains("Scoring", topics.Topics.Select(t => t.Title));
        Assert.DoesNotContain(topics.Topics, t => t.IsMoved);
        Assert.Null(topics.NoChapters);
    }

    [Fact]
    public void Corrections_are_lines_that_a_description_holds()
    {
        string lines = CorrectionLines.Write(ReviewCorrections.Of(Report));

        Assert.Equal(Report.Certain.Count(f => f.Time is not null), Line().Count(lines));
        Assert.Contains("2:01 It is called 'ware' and never 'tile' (Rulebook, page 2).", lines);
    }

    [GeneratedRegex(@"^\d+:\d\d ", RegexOptions.Multiline)]
    private static partial Regex Line();
}
