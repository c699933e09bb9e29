using Rostrum.Lessons.Published;
using Rostrum.Sheets.Model;

namespace Rostrum.Lessons.Tests.Published;

/// <summary>What counts as a change of a rule.</summary>
public sealed class RuleChangeTests
{
    [Theory]
    // The meaning is as it was: words do not count.
    [InlineData("Plates score 3 each.", "each = 3", "Every plate scores three.", "each = 3", ChangeKind.None)]
    [InlineData("A pair of ware may be swapped.", "do = swap", "Two ware may be swapped.", "do = swap", ChangeKind.None)]
    [InlineData("Each jug scores 1 point.", "each = 1", "Each jug scores a point.", "each = 1", ChangeKind.None)]
    // The sentence is mended and the formula is not.
    [InlineData("Once three bays are full.", "if = a", "Once four bays are full.", "if = a", ChangeKind.Value)]
    // The numbers are others.
    [InlineData("Plates score 3 each.", "idiom = x; each = 3", "Plates score 4 each.", "idiom = x; each = 4", ChangeKind.Value)]
    [InlineData("Plates score.", "points = 3 times p", "Plates score.", "points = 4 times p", ChangeKind.Value)]
    [InlineData("Plates score by the table.", "rows = (1 = 1, 2 = 3)", "Plates score by the table.", "rows = (1 = 1, 2 = 4)", ChangeKind.Value)]
    [InlineData("Each tier scores 1 point.", "idiom = x; points = 1", "Each tier scores 2 points.", "idiom = x; points = 2", ChangeKind.Value)]
    // The rule is another.
    [InlineData("Jugs stand on plates.", "needs = a", "Jugs stand on lamps.", "needs = b", ChangeKind.Rule)]
    // The sheet is written otherwise and says the same.
    [InlineData("At most three lie there.", "needs = count(a) is less than 3", "At most three lie there.", "needs = count(a) is at most 2", ChangeKind.WrittenOtherwise)]
    [InlineData("Jugs stand on plates.", "needs = a", "A jug stands on a plate.", "needs = b", ChangeKind.WrittenOtherwise)]
    // Only a sentence says it.
    [InlineData("Fewer shards.", "", "fewer shards", "", ChangeKind.None)]
    [InlineData("Fewer shards.", "", "More sticks.", "", ChangeKind.Rule)]
    [InlineData("For 2 to 4 players.", "", "For 2 to 5 players.", "", ChangeKind.Value)]
    public void A_change_is_told_by_meaning(string then, string meant, string now, string means, ChangeKind kind) =>
        Assert.Equal(kind, RuleChange.Of(Then(then, meant, ""), Now(now, means, "")));

    [Theory]
    [InlineData("open: a or b", "decided: a (The note says so)", ChangeKind.Decided)]
    [InlineData("open: a or b", "", ChangeKind.Decided)]
    [InlineData("decided: a (We think so)", "decided: a (The note says so)", ChangeKind.None)]
    [InlineData("decided: a (We think so)", "decided: b (We think so)", ChangeKind.Decided)]
    [InlineData("", "open: a or b", ChangeKind.Opened)]
    [InlineData("", "decided: a", ChangeKind.None)]
    [InlineData("open: a or b", "open: a or b", ChangeKind.None)]
    public void What_is_open_and_what_is_followed_counts(string then, string now, ChangeKind kind) =>
        Assert.Equal(kind, RuleChange.Of(Then("It is so.", "m", then), Now("It is so.", "m", now)));

    [Fact]
    public void A_rule_that_is_not_there_is_gone_and_one_on_another_page_has_moved()
    {
        Assert.Equal(ChangeKind.Gone, RuleChange.Of(Then("It is so.", "m", ""), null));
        Assert.Equal(ChangeKind.Moved, RuleChange.Of(Then("It is so.", "m", "") with { Cite = "Rulebook, page 3" }, Now("It is so.", "m", "")));
    }

    [Theory]
    [InlineData("Plates score three each, in 2 tiers.", new long[] { 2, 3 })]
    [InlineData("Thirty-five points, one more, no bay.", new long[] { 35 })]
    [InlineData("otherwise minus 2", new long[] { -2 })]
    public void Numbers_are_read_in_digits_and_words(string words, long[] numbers) => Assert.Equal(numbers, RuleChange.NumbersIn(words));

    private static PublishedRule Then(string says, string means, string status) => new("score/x", [VideoTime.Of(TimeSpan.Zero, false)], says, means, status, Citation.Tell(null));

    private static RuleState Now(string says, string means, string status) => new("score/x", says, means, null, null, status, null);
}
