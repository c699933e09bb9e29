using System.Text;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Review;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Testing.Speech;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Review;

// The lesson of Kiln Night as its presenter would read it from the screen.
public sealed class ScriptReviewTests
{
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");
    private static readonly Lesson Script = LessonReader.Read(Kiln.Folder.Read("lesson.md").Text!, new DiagnosticBag());
    private static readonly string[] Said = [.. ScriptSpeech.Of(Script).Sentences.Where(s => !s.IsCaption).Select(s => s.Words)];

    [Fact]
    public void A_script_that_is_read_aloud_has_no_findings_and_every_rule_is_heard()
    {
        RecordingReport report = Review(Said);

        Assert.Empty(report.Certain);
        Assert.All(report.Coverage, rule => Assert.NotNull(rule.Time));
    }

    [Theory]
    [InlineData("four commissions face up", "five commissions face up", 5, 4, "open commissions")]
    [InlineData("In any case, Plates, 9", "In any case, Plates, 8", 8, 9, "plates")]
    [InlineData("This chamber is worth 35 points", "This chamber is worth 36 points", 36, 35, "the lesson")]
    public void A_number_in_the_place_of_the_scripts_is_found_with_the_clause_that_it_states(string right, string wrong, long heard, long meant, string clause)
    {
        (right, wrong) = (right.Replace("In any case, ", "", StringComparison.Ordinal), wrong.Replace("In any case, ", "", StringComparison.Ordinal));
        string whole = string.Join('\n', Said);
        Assert.Contains(right, whole, StringComparison.Ordinal);

        Finding finding = Assert.Single(Review(whole.Replace(right, wrong, StringComparison.Ordinal).Split('\n')).Certain);

        Assert.Equal((heard, meant, clause), (finding.Heard!.Value, finding.Right!.Value, finding.Clause));
    }

    [Theory]
    [InlineData("copper and ash", "copper never stands beside ash")]
    [InlineData("nothing on a lamp", "nothing stands on a lamp")]
    public void A_passage_that_is_left_out_is_a_rule_that_was_never_said(string rule, string words)
    {
        string[] without = [.. Said.Where(s => !s.Contains(words, StringComparison.OrdinalIgnoreCase))];
        Assert.True(without.Length < Said.Length);

        Assert.Contains(Review(without).Certain, f => f.Kind == FindingKind.NeverSaid && f.Clause == rule);
    }

    [Fact]
    public void Of_rules_told_in_one_breath_the_one_that_is_left_out_is_told()
    {
        string whole = string.Join('\n', Said);
        string without = Regex.Replace(whole, @"or none takes ware any more, because each is full or ends in a lamp;?\s*", "");
        Assert.NotEqual(whole, without);

        Assert.Equal(["no bay takes ware"], Review(without.Split('\n')).Certain.Where(f => f.Kind == FindingKind.NeverSaid).Select(f => f.Clause));
    }

    [Fact]
    public void Rule_that_is_said_in_other_words_at_its_place_is_not_told()
    {
        string whole = string.Join('\n', Said);
        string otherwise = whole.Replace("copper never stands beside ash", "do not put any ash beside your copper", StringComparison.OrdinalIgnoreCase);
        Assert.NotEqual(whole, otherwise);

        Assert.DoesNotContain(Review(otherwise.Split('\n')).Certain, f => f.Clause == "copper and ash");
    }

    [Fact]
    public void Forbidden_name_in_the_place_of_the_right_one_is_certain()
    {
        string whole = string.Join('\n', Said);
        string wrong = whole.Replace("A ware goes on the lowest free shelf", "A tile goes on the lowest free shelf", StringComparison.Ordinal);
        Assert.NotEqual(whole, wrong);

        Assert.Equal("ware", Assert.Single(Review(wrong.Split('\n')).Certain).Clause);
    }

    [Fact]
    public void Number_before_a_word_that_sounds_like_one_is_heard()
    {
        string whole = string.Join('\n', Said);
        string wrong = whole.Replace("Jugs, 4.", "Jugs, five, for you.", StringComparison.Ordinal);
        Assert.NotEqual(whole, wrong);

        Finding finding = Assert.Single(Review(wrong.Split('\n')).Certain);

        Assert.Equal(("jugs", 5L, 4L), (finding.Clause, finding.Heard, finding.Right));
    }

    [Fact]
    public void Row_of_a_table_that_the_script_has_and_nobody_says_is_told()
    {
        string whole = string.Join('\n', Said);
        string without = whole.Replace("1, 3, 6, 10", "1, 3, 10", StringComparison.Ordinal);
        Assert.NotEqual(whole, without);

        Assert.Contains(Review(without.Split('\n')).Certain, f => f.Kind == FindingKind.RowMissing && f.Clause == "run points");
    }

    [Fact]
    public void Topics_may_be_filmed_in_another_order()
    {
        int[] topics = [.. ScriptSpeech.Of(Script).Sentences.Where(s => !s.IsCaption).Select(s => s.Topic)];
        string[] moved = [.. Said.Where((_, i) => topics[i] != 3), .. Said.Where((_, i) => topics[i] == 3)];

        Assert.Empty(Review(moved).Certain);
    }

    [Fact]
    public void A_repair_takes_the_number_that_counts()
    {
        string whole = string.Join('\n', Said).Replace("four commissions face up", "five, no, wait, four commissions face up", StringComparison.OrdinalIgnoreCase);

        Assert.DoesNotContain(Review(whole.Split('\n')).Certain, f => f.Kind == FindingKind.WrongValue);
    }

    [Fact]
    public void A_talk_in_other_words_is_held_against_the_sheet_alone()
    {
        var script = new ScriptAlignment(ScriptSpeech.Of(Script), Statements.Spoken("I bake bread on Sundays and my neighbour brings the butter and twelve plates"));

        Assert.All(Enumerable.Range(0, script.Tokens.Length).GroupBy(i => script.Tokens[i].Sentence / 20), part => Assert.True(script.Followed(part) < 0.3));
    }

    private static RecordingReport Review(IEnumerable<string> said)
    {
        var talk = new SpokenLesson("read", "kiln-night", [], [], [.. said.SelectMany(s => s.Split(' ', StringSplitOptions.RemoveEmptyEntries))], []);
        string captions = PlatformCaptions.Of(talk, CaptionNoise.Usual, 150, 7).Text;
        return RecordingReview.Of(Kiln, CaptionReader.Read("read.vtt", Encoding.UTF8.GetBytes(captions)), Script);
    }
}
