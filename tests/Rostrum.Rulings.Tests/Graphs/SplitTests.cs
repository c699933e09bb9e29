using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Graphs;

/// <summary>The best split as a sheet says it: badges of few symbols, each with a name of its own.</summary>
public sealed class SplitTests
{
    // Worked out by hand: trios of 24 badges are 8 at the most, 5 each; a group by number is worth its square; a lonely badge costs 2.
    [Theory]
    [InlineData("trio", 24, 3, 40)]
    [InlineData("trio", 24, 6, 40)]
    [InlineData("trio", 5, 1, 4)]
    [InlineData("trio", 2, 2, 0)]
    [InlineData("fours", 12, 6, 18)]
    [InlineData("fours", 24, 4, 40)]
    [InlineData("broad", 12, 3, 36)]
    [InlineData("squares", 24, 6, 576)]
    [InlineData("pairing", 24, 6, 3)]
    [InlineData("lonely", 7, 3, 1)]
    [InlineData("lonely", 8, 3, 4)]
    [InlineData("red pairs", 12, 6, 6)]
    public void A_sheet_splits_cards_as_its_word_says(string worth, int badges, int symbols, int points)
    {
        Sheet sheet = BadgeSheet.Of(badges, symbols, worth);

        TallyLine line = Tally.Of(BadgeSheet.All(sheet, badges), 0).Lines[0];

        Assert.Equal($"{points}", line.Points.InWords);
        Assert.Equal(points, line.Because.Sum(p => p.Points.Certain));
    }

    [Fact]
    public void Each_set_is_told_with_its_worth()
    {
        Sheet sheet = BadgeSheet.Of(6, 3, "trio");

        Assert.Equal(
            ["the set Badge 1, Badge 2 and Badge 3 5", "the set Badge 4, Badge 5 and Badge 6 5"],
            Tally.Of(BadgeSheet.All(sheet, 6), 0).Lines[0].Because.Select(p => $"{p.Text} {p.Points.InWords}"));
    }

    [Fact]
    public void No_elements_are_worth_nothing() =>
        Assert.Equal("0", Tally.Of(Game.Position(BadgeSheet.Of(6, 3, "trio"), "seat 1:\n  badges: nothing\n"), 0).Lines[0].Points.InWords);

    [Theory]
    [InlineData("trio", 25, "24 things")]
    [InlineData("broad", 24, "40,000 different sets")]
    public void What_is_too_much_is_refused_with_its_limit(string worth, int badges, string limit)
    {
        Sheet sheet = BadgeSheet.Of(badges, 6, worth);

        TallyLine line = Tally.Of(BadgeSheet.All(sheet, badges), 0).Lines[0];

        Assert.True(line.Points.IsUnknown);
        Assert.Contains(limit, line.Because[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_badge_that_is_not_given_leaves_bounds_over_all_that_it_may_be()
    {
        Sheet sheet = BadgeSheet.Of(6, 3, "trio");
        Position position = Game.Position(sheet, "seat 1:\n  badges: [Badge 1, Badge 2, Badge 4, Badge 5, badge]\n");

        Assert.Equal("4 to 5", Tally.Of(position, 0).Lines[0].Points.InWords);
    }
}
