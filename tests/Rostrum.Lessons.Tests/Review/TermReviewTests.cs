using System.Collections.Immutable;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Review;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Review;

/// <summary>Names that the sheet forbids, heard in a talk.</summary>
public sealed class TermReviewTests
{
    private const string Ware = "    never: [tile]\n";

    [Theory]
    [InlineData("then you take both tiles from the board and place each tile on a shelf of your chamber")]
    [InlineData("a copper tile never stands beside an ash bowl in the same tier")]
    [InlineData("you place the tiles in your chamber on the lowest shelf of a bay")]
    public void Forbidden_name_of_a_thing_is_certain(string said) => Assert.True(Assert.Single(Of(said)).Confidence > 0.6);

    [Theory]
    [InlineData("my kitchen floor has tiles and I dropped the box on it yesterday evening which was loud")]
    [InlineData("we tiled the wall behind me last summer and it looks much better now on camera")]
    public void Forbidden_name_in_other_talk_is_never_certain(string said) => Assert.All(Of(said), f => Assert.True(f.Confidence < 0.6));

    [Theory]
    [InlineData("please don't call them tiles they are ware in this game and a bowl is a ware")]
    [InlineData("place both tiles sorry both ware on a shelf of your chamber in a bay")]
    [InlineData("these bowls and jugs are called ware and not tiles in the rules of the chamber")]
    [InlineData("place both ware on a shelf of your chamber")]
    [InlineData("a turntable and a versatile table with a textile cloth stand beside the shelf and the bay and the tier")]
    public void Name_that_is_put_right_or_not_said_is_not_told(string said) => Assert.Empty(Of(said));

    [Theory]
    [InlineData("    never: [turn]\n", "in your turn you place a bowl or a jug on a shelf of your chamber")]
    [InlineData("    never: [plate]\n", "you place a plate on a shelf of your chamber beside a jug")]
    public void Word_of_daily_talk_and_name_of_another_thing_are_only_to_be_listened_to(string never, string said) => Assert.All(Of(said, never), f => Assert.True(f.Confidence < 0.6));

    [Theory]
    [InlineData("place both ware on a shelf of your chamber", 0)]
    [InlineData("place both wares on a shelf of your chamber", 1)]
    public void Forbidden_form_of_the_name_itself_is_told_only_where_it_is_said(string said, int findings) => Assert.Equal(findings, Of(said, "    never: [wares]\n").Count());

    [Fact]
    public void Name_of_two_words_is_certain() => Assert.True(Assert.Single(Of("then you take a clay thing and put it down", "    never: [clay thing]\n")).Confidence > 0.6);

    [Fact]
    public void Name_that_is_said_often_is_one_finding_with_its_times()
    {
        Finding finding = Assert.Single(Of("place both tiles in your chamber and look at the bowl tile on the shelf of the bay and the jug tile on the tier of the chamber"));

        Assert.Equal(TimeSpan.FromSeconds(0.8), finding.Time);
        Assert.Contains("said 3 times, at 0:00", finding.Because);
    }

    [Fact]
    public void Another_name_is_to_be_listened_to_only_where_the_name_of_the_rules_is_never_said()
    {
        const string Called = "    called: [pot]\n";

        Assert.Equal("It is called 'ware'.", Assert.Single(Of("take both pots and place each pot in the chamber", Called)).Sheet);
        Assert.Empty(Of("take both pots and place each ware in the chamber", Called));
    }

    private static IEnumerable<Finding> Of(string said, string names = Ware) => TermReview.Of(SheetWith(names), Words(said), null);

    private static Sheet SheetWith(string names)
    {
        string sheet = TestFiles.Read("games/kiln-night/sheet.yaml");
        Assert.Contains(Ware, sheet);
        return new Game(ShippedGames.Folder("games/kiln-night", ("sheet.yaml", sheet.Replace(Ware, names, StringComparison.Ordinal))), ShippedGames.Idioms).Sheet().Sheet!;
    }

    private static ImmutableArray<TimedWord> Words(string said) =>
        [.. said.Split(' ').Select((w, i) => new TimedWord(w, TimeSpan.FromMilliseconds(400 * i), TimeSpan.FromMilliseconds(400 * (i + 1)), 0, true))];
}
