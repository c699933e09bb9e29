using System.Collections.Immutable;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Review;
using Rostrum.Testing.Speech;

namespace Rostrum.Lessons.Tests.Review;

/// <summary>The recording of Kiln Night that is shipped as a demonstration: its presenter films her lesson.</summary>
public sealed class DemoRecordingTests
{
    private static readonly TimeSpan Near = TimeSpan.FromSeconds(2.5);
    private static readonly SpokenLesson Speech = KilnRecording.AlongTheScript.Speech;
    private static readonly ImmutableArray<TimeSpan> Times = KilnRecording.AlongTheScript.Times;
    private static readonly RecordingReport Report = KilnRecording.AlongTheScript.Report;

    [Fact]
    public void Everything_that_was_planted_is_found_with_its_time_and_nothing_else_is_certain()
    {
        foreach (PlantedSlip slip in Speech.Slips)
        {
            Assert.Single(Report.Certain, f => f.Kind == (slip.IsTerm ? FindingKind.WrongTerm : FindingKind.WrongValue) && f.Time is { } at && (at - Times[slip.Word]).Duration() < Near && f.Cite is not null);
        }

        Assert.Equal(["no bay takes ware"], Report.Certain.Where(f => f.Kind == FindingKind.NeverSaid).Select(f => f.Clause));
        Assert.Equal(Speech.Slips.Length + 1, Report.Certain.Length);
    }

    [Fact]
    public void Recording_without_its_slips_has_no_certain_finding_but_the_rule_that_is_never_said()
    {
        RecordingReport right = KilnRecording.Of(KilnRecording.Spoken(Speech.Mended()).Text);

        Assert.Equal(["no bay takes ware"], right.Certain.Select(f => f.Clause));
    }

    // What a newcomer would do: change one number word, anywhere.
    [Theory]
    [InlineData("about 30 minutes", "about 40 minutes", "minutes", "Rulebook, page 1")]
    [InlineData("there are four 24 bowls", "there are four 26 bowls", "bowls in the crate", "Rulebook, page 2")]
    [InlineData("has four tiers", "has five tiers", "tiers", "Rulebook, page 2")]
    [InlineData("and takes two sticks", "and takes three sticks", "sticks to start", "Rulebook, page 3")]
    [InlineData("Lay four commissions", "Lay five commissions", "open commissions", "Rulebook, page 3")]
    [InlineData("takes one more than", "takes two more than", "more sticks each further seat", "Rulebook, page 3")]
    [InlineData("Plates score three each", "Plates score two each", "points for a plate", "Rulebook, page 8")]
    [InlineData("Bowls five", "Bowls six", "bowls", "Rulebook, page 8")]
    [InlineData("Jugs four", "Jugs five", "jugs", "Rulebook, page 8")]
    public void Number_word_that_is_changed_is_found_with_its_time_and_page_and_nothing_else_is_new(string right, string wrong, string clause, string page)
    {
        SpokenLesson speech = Speech.Mended();
        string[] words = right.Split(' ');
        int at = Enumerable.Range(0, speech.Words.Length).Single(i => words.Select((w, k) => Bare(speech.Words.ElementAtOrDefault(i + k)) == w).All(same => same));
        int changed = at + words.Zip(wrong.Split(' ')).ToList().FindIndex(p => p.First != p.Second);
        (string text, ImmutableArray<TimeSpan> times) = KilnRecording.Spoken(speech with { Words = speech.Words.SetItem(changed, wrong.Split(' ')[changed - at]) });

        Finding finding = Assert.Single(KilnRecording.Of(text).Certain, f => f.Clause != "no bay takes ware");

        Assert.Equal((clause, page), (finding.Clause, finding.Cite?.InWords));
        Assert.True((finding.Time!.Value - times[changed]).Duration() < Near);
    }

    [Fact]
    public void Topics_are_found_in_the_order_in_which_they_were_filmed()
    {
        string[] titles = [.. KilnRecording.Lesson.Topics.Select(t => t.Title)];
        (int burning, int commissions) = (Array.IndexOf(titles, "Burning sticks"), Array.IndexOf(titles, "Commissions"));
        (titles[burning], titles[commissions]) = (titles[commissions], titles[burning]);

        Assert.Equal(titles, Report.Topics.Topics.Select(t => t.Title));
        Assert.Empty(Report.Topics.NotFound);
    }

    [Fact]
    public void Corrections_are_lines_that_a_description_holds() =>
        Assert.Equal(Speech.Slips.Length, CorrectionLines.Write(ReviewCorrections.Of(Report)).Split('\n').Count(l => l.Length > 0 && char.IsDigit(l[0])));

    private static string Bare(string? word) => (word ?? "").Trim('.', ',', ':');
}
