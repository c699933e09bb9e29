using System.Text;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Review;
using Rostrum.Testing;

namespace Rostrum.Lessons.Tests.Review;

/// <summary>A recording held against the sheet alone, on sentences that speak plainly.</summary>
public sealed class RecordingReviewTests
{
    private const string Filler = "each player has a chamber with bays and tiers and places ware such as bowls and jugs and plates and lamps on the shelves of that chamber while the crate and the commissions and the drying boards and the sticks stay in the middle of the table for everybody";

    [Theory]
    [InlineData("This is for one to four players.", "This is for one to five players.", 5, 4)]
    [InlineData("Once three bays are full, dawn is near.", "Once four full bays are there dawn is near.", 4, 3)]
    [InlineData("To burn for a swap costs two sticks.", "To burn for a swap costs three sticks.", 3, 2)]
    [InlineData("A bowl alone is 1, two bowls 3, three bowls 6, four bowls 10.", "A run: one bowl 1, two bowls 3, three bowls 7, four bowls 10.", 7, 6)]
    public void A_wrong_number_is_found_and_the_right_one_is_not(string right, string wrong, long heard, long meant)
    {
        Assert.DoesNotContain(Of(right).Certain, f => f.Kind == FindingKind.WrongValue);

        Finding finding = Assert.Single(Of(wrong).Certain, f => f.Kind == FindingKind.WrongValue);
        Assert.Equal((heard, meant), (finding.Heard, finding.Right));
        Assert.NotNull(finding.Cite);
    }

    [Theory]
    [InlineData("Now the fire dice. How many? Three, all in one throw.", "Now the fire dice. How many? Four, all in one throw.", 4)]
    [InlineData("You can play it with as many as four people.", "You can play it with as many as six people.", 6)]
    [InlineData("For players the most it takes is four.", "For players the most it takes is five.", 5)]
    [InlineData("A game takes about thirty minutes.", "A game takes about forty-five minutes.", 45)]
    [InlineData("So six sticks are three swaps: a swap is two sticks.", "So six sticks are two swaps: a swap is three sticks.", 3)]
    [InlineData("Everybody takes drying boards. Oh yes, there are three of them.", "Everybody takes drying boards. Oh yes, there are four of them.", 4)]
    public void What_a_number_counts_may_be_named_before_it(string right, string wrong, long heard)
    {
        Assert.DoesNotContain(Of(right).Certain, f => f.Kind == FindingKind.WrongValue);
        Assert.Contains(Of(wrong).Certain, f => f.Heard == heard);
    }

    [Fact]
    public void A_number_of_a_variant_is_right_though_the_variant_is_not_named_again() =>
        Assert.DoesNotContain(Of("The climbing chamber has bays of different heights. There dawn is near once four bays are full.").Certain, f => f.Kind == FindingKind.WrongValue);

    [Theory]
    [InlineData("Most points wins. In a tie it is whoever has fewer shards, then more sticks, and then they share the victory.", "")]
    [InlineData("Most points wins. In a tie it is whoever has fewer shards, and then they share the victory.", "more sticks")]
    [InlineData("Most points wins. In a tie it is whoever has fewer shards, and then whoever has more sticks.", "shared")]
    public void A_step_of_breaking_ties_that_is_passed_over_is_told(string said, string missing)
    {
        string[] told = [.. Of(said).Certain.Concat(Of(said).Listen).Where(f => f.Kind == FindingKind.NeverSaid).Select(f => f.Clause)];

        Assert.Equal(missing, string.Join(' ', told.Where(c => c is "fewer shards" or "more sticks" or "shared")));
    }

    [Fact]
    public void Numbers_that_follow_from_the_sheet_are_known()
    {
        const string Talk = "plain tricks is a game for four players with cards and suits clubs diamonds hearts and spades where you follow suit and the strongest card takes the trick and leads next while trumps beat everything else and each trick scores points at the end of the round for the winner";
        RecordingReport report = RecordingReview.Of(ShippedGames.Open("traditional/tricks"), Captions($"{Talk}. In each suit there are nine cards."));

        Assert.Null(report.Refused);
        Assert.Contains(report.Certain, f => (f.Heard, f.Right) == (9, 8));
    }

    [Theory]
    [InlineData("One bowl is 1, two bowls are 3, four bowls are 10.")]
    [InlineData("Bowls score 1 point for one bowl, 3 for two bowls and 10 for four bowls.")]
    [InlineData("In one bay it is 1 point for one bowl, 3 for two and 10 for four.")]
    public void A_row_that_is_passed_over_is_told(string said)
    {
        Finding finding = Assert.Single(Of(said).Certain, f => f.Kind == FindingKind.RowMissing);

        Assert.Equal("run points", finding.Clause);
    }

    [Fact]
    public void A_number_that_is_taken_back_is_not_told() =>
        Assert.DoesNotContain(Of("To burn for a swap costs three, no sorry, two sticks.").Certain, f => f.Kind == FindingKind.WrongValue);

    [Theory]
    [InlineData("Heute zeige ich euch ein Spiel bei dem wir auf einem langen Weg Steine legen und am Ende gewinnt wer die meisten davon behalten hat aber vorher muss jeder noch seine Wolle verkaufen und das Wetter abwarten bis alle wieder zu Hause sind und schlafen")]
    [InlineData("Welcome back everybody today we bake a sourdough loaf so warm the water feed the starter mix flour and salt fold the dough every half hour and then leave it overnight in the fridge before you heat the oven as hot as it gets and bake until brown")]
    public void Another_language_or_another_matter_is_refused_in_one_sentence(string said)
    {
        RecordingReport report = RecordingReview.Of(ShippedGames.Open("kiln-night"), Captions(said));

        Assert.NotNull(report.Refused);
        Assert.Empty(report.Certain);
        Assert.Empty(report.Listen);
    }

    [Fact]
    public void A_few_words_are_refused() => Assert.NotNull(RecordingReview.Of(ShippedGames.Open("kiln-night"), Captions("a jug scores nine points")).Refused);

    private static RecordingReport Of(string said) => RecordingReview.Of(ShippedGames.Open("kiln-night"), Captions($"{Filler}. {said}"));

    private static CaptionFile Captions(string said)
    {
        string[] words = said.Split(' ');
        var text = new StringBuilder("WEBVTT\n");
        for (int i = 0; i < words.Length; i += 8)
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"\n{Time(i)} --> {Time(i + 8)}\n{string.Join(' ', words.Skip(i).Take(8))}\n");
        }

        return CaptionReader.Read("talk.vtt", Encoding.UTF8.GetBytes(text.ToString()));
    }

    private static string Time(int word) => TimeSpan.FromMilliseconds(word * 400).ToString(@"hh\:mm\:ss\.fff", System.Globalization.CultureInfo.InvariantCulture);
}
