using System.Collections.Immutable;
using System.Text;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Review;
using Rostrum.Lessons.Scripts;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Testing.Speech;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Review;

/// <summary>The recording of Kiln Night that is shipped as a demonstration: its presenter films her lesson.</summary>
public sealed class DemoRecordingTests
{
    private const double WordsAMinute = 176;
    private const ulong Seed = 7;

    private static readonly TimeSpan Near = TimeSpan.FromSeconds(2.5);
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");
    private static readonly Lesson Lesson = LessonReader.Read(Kiln.Folder.Read("lesson.md").Text!, new DiagnosticBag());
    private static readonly SpokenLesson Speech = SpokenLesson.Read("kiln-night", TestFiles.Read("games/kiln-night/recording.txt"));
    private static readonly (string Text, ImmutableArray<TimeSpan> Times) Made = PlatformCaptions.Of(Speech, CaptionNoise.Usual, WordsAMinute, Seed);
    private static readonly RecordingReport Report = Of(Made.Text);

    [Fact]
    public void Captions_are_those_that_are_made_of_the_speech() =>
        Assert.Equal(Made.Text, TestFiles.Made("games/kiln-night/recording.vtt", Made.Text));

    [Fact]
    public void Everything_that_was_planted_is_found_with_its_time_and_nothing_else_is_certain()
    {
        foreach (PlantedSlip slip in Speech.Slips)
        {
            Assert.Single(Report.Certain, f => f.Kind == (slip.IsTerm ? FindingKind.WrongTerm : FindingKind.WrongValue) && f.Time is { } at && (at - Made.Times[slip.Word]).Duration() < Near && f.Cite is not null);
        }

        Assert.Equal(["no bay takes ware"], Report.Certain.Where(f => f.Kind == FindingKind.NeverSaid).Select(f => f.Clause));
        Assert.Equal(Speech.Slips.Length + 1, Report.Certain.Length);
    }

    [Fact]
    public void Recording_without_its_slips_has_no_certain_finding_but_the_rule_that_is_never_said()
    {
        RecordingReport right = Of(PlatformCaptions.Of(Speech.Mended(), CaptionNoise.Usual, WordsAMinute, Seed).Text);

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
        (string text, ImmutableArray<TimeSpan> times) = PlatformCaptions.Of(speech with { Words = speech.Words.SetItem(changed, wrong.Split(' ')[changed - at]) }, CaptionNoise.Usual, WordsAMinute, Seed);

        Finding finding = Assert.Single(Of(text).Certain, f => f.Clause != "no bay takes ware");

        Assert.Equal((clause, page), (finding.Clause, finding.Cite?.InWords));
        Assert.True((finding.Time!.Value - times[changed]).Duration() < Near);
    }

    [Fact]
    public void List_of_slips_tells_each_with_its_time()
    {
        string page = TestFiles.Read("games/kiln-night/recording-slips.md");

        Assert.All(Speech.Slips, s => Assert.Contains($"| {FilmTime.Write(Made.Times[s.Word])} |", page));
        Assert.Contains("invented", page);
        Assert.Empty(BannedWords.In(page));
    }

    [Fact]
    public void Topics_are_found_in_the_order_in_which_they_were_filmed()
    {
        string[] titles = [.. Lesson.Topics.Select(t => t.Title)];
        (int burning, int commissions) = (Array.IndexOf(titles, "Burning sticks"), Array.IndexOf(titles, "Commissions"));
        (titles[burning], titles[commissions]) = (titles[commissions], titles[burning]);

        Assert.Equal(titles, Report.Topics.Topics.Select(t => t.Title));
        Assert.Empty(Report.Topics.NotFound);
    }

    [Fact]
    public void Corrections_are_lines_that_a_description_holds() =>
        Assert.Equal(Speech.Slips.Length, CorrectionLines.Write(ReviewCorrections.Of(Report)).Split('\n').Count(l => l.Length > 0 && char.IsDigit(l[0])));

    private static string Bare(string? word) => (word ?? "").Trim('.', ',', ':');

    private static RecordingReport Of(string captions) => RecordingReview.Of(Kiln, CaptionReader.Read("recording.vtt", Encoding.UTF8.GetBytes(captions)), Lesson);
}
