using Rostrum.Lessons.Pack;
using Rostrum.Lessons.Page;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Pack;

/// <summary>What is published of a game that is not the demo game.</summary>
public sealed class FerryMarketTests
{
    [Fact]
    public void The_game_is_sound() => Assert.Empty(FerryMarket.Game.Sheet().Problems);

    [Fact]
    public void A_source_without_a_rank_shows_none()
    {
        string page = FerryMarket.Pack("lesson.html", "Come in.");

        Assert.DoesNotContain("99", FerryMarket.Words("Come in."), StringComparison.Ordinal);
        Assert.DoesNotContain(">Rank<", page, StringComparison.Ordinal);
        Assert.Contains("<td>2 May 2026</td>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_conflict_shows_what_every_source_says_followed_or_not()
    {
        string words = FerryMarket.Words("Come in.");

        Assert.Contains("Worth of Baker Two sources disagree. Publisher's web page: 6. Followed here. Rules leaflet, page 2: 4. The web page is newer.", words, StringComparison.Ordinal);
        Assert.Contains("Worth of Innkeeper Two sources disagree. Publisher's web page: 8. Rules leaflet, page 2: 5.", words, StringComparison.Ordinal);
    }

    [Fact]
    public void What_only_a_variant_asks_stays_with_the_presenter_until_the_lesson_shows_the_variant()
    {
        Assert.DoesNotContain("Does a buyer pay twice too?", FerryMarket.Words("![](position:evening)"), StringComparison.Ordinal);
        Assert.Contains("Only with market day", FerryMarket.Words("![](position:busy)"), StringComparison.Ordinal);
        Assert.Contains("Only with market day", FerryMarket.Words("Two coins are [one](tally:busy/purse)."), StringComparison.Ordinal);
        Assert.Contains("Does a buyer pay twice too? (Rules leaflet, page 4; only with market day)", FerryMarket.Pack("notes.md", "Come in."), StringComparison.Ordinal);
    }

    [Fact]
    public void Questions_for_the_publisher_say_what_they_are_about() =>
        Assert.Contains("- Quinces: This can be read in two ways. With corners. Corners count as beside. Sides only. (Rules leaflet, page 3)", FerryMarket.Pack("notes.md", "Come in."), StringComparison.Ordinal);

    [Fact]
    public void What_is_wrong_and_what_is_not_understood_are_counted_apart() => Assert.Contains(
        "2 statements held against the rules: 1 agrees, 1 does not; 1 more not understood.",
        FerryMarket.Words("[Three](fact:fruits) fruits, [nine](fact:planks) planks, [four](fact:boats) boats."), StringComparison.Ordinal);

    [Fact]
    public void Points_on_a_table_of_several_seats_say_whose_they_are()
    {
        string words = FerryMarket.Words("![In the evening](position:evening)\n\nThat is [two](tally:evening/purse), and [one](<tally:evening seat 2/purse>).");

        Assert.Contains("In the evening, seat 1", words, StringComparison.Ordinal);
        Assert.Contains("In the evening, seat 2", words, StringComparison.Ordinal);
        Assert.Contains("Seat 2's purse: 2 coins.", words, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_card_is_worth_stands_where_the_cards_stand() =>
        Assert.Contains("Rules leaflet, page 2 Worth of Baker 6", FerryMarket.Words("The Baker is worth [six](<value:worth of Baker>)."), StringComparison.Ordinal);

    [Fact]
    public void The_aid_has_no_section_without_a_clause_and_tells_readings_in_English()
    {
        PlayerAid aid = AidMaker.Make(FerryMarket.Game, LessonCheck.Of(FerryMarket.Game, new SourceText("lesson.md", "## A\n")));

        Assert.Equal(["In the box", "Scoring"], aid.Sections.Select(s => s.Title));
        Assert.Equal("The rules leave open: this can be read as ‘with corners’ or ‘sides only’.", aid.Sections[1].Clauses[0].Note);
    }

    [Theory]
    [InlineData("Two quinces may not stand together.", null)]
    [InlineData("Look, purse, 2.", "[2](tally:evening/purse)")]
    [InlineData("The purse makes two.", "[two](tally:evening/purse)")]
    [InlineData("Two purses, that is a rule.", null)]
    [InlineData("Two purse points.", "[Two](tally:evening/purse)")]
    public void A_line_of_the_position_is_proposed_for_points_and_not_for_things(string spoken, string? write)
    {
        LessonReport report = LessonCheck.Of(FerryMarket.Game, new SourceText("lesson.md", $"## A\n\n![In the evening](position:evening)\n\n{spoken}\n"));

        Assert.Equal(write, Assert.Single(report.Unchecked).Write);
    }
}
