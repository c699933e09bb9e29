using System.Text;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Games;

/// <summary>A sheet is useful long before it is complete, and no sheet brings an answer down.</summary>
public sealed class SmallSheetTests
{
    [Fact]
    public void Six_lines_of_scoring_answer_a_tally()
    {
        Sheet sheet = Game.Of("""
            pieces: {coin: {count: 40}, gem: {count: 9}}
            places: {coins: {heap of: coin, of: each player}, gems: {heap of: gem, of: each player}}
            score:
              coins: down(count(my coins), by 3)
              gems: {points: 4 times count(my gems), at most: 10}
              rooms: not modelled, at least 0
            """);

        Tally tally = Tally.Of(Game.Position(sheet, "seat 1:\n  coins: 8\n  gems: 3\n"), 0);

        Assert.Equal(["coins 2", "gems 10", "rooms at least 0"], tally.Lines.Select(l => $"{l.Clause} {l.Points.InWords}"));
        Assert.Equal("at least 12", tally.Total.InWords);
    }

    [Fact]
    public void A_table_that_is_not_modelled_is_named_by_what_needs_it()
    {
        Sheet sheet = Game.Of("pieces: {coin: {}}\nplaces: {coins: {heap of: coin, of: each player}}\ntables: {worth: not modelled}\nscore: {coins: worth of count(my coins)}\n");

        Tally tally = Tally.Of(Game.Position(sheet, "seat 1:\n  coins: 8\n"), 0);

        Assert.True(tally.Lines[0].Points.IsUnknown);
    }

    [Theory]
    [InlineData("book", 1)]
    [InlineData("card", 5)]
    public void A_conflict_of_a_clause_scores_as_it_is_followed(string followed, long points)
    {
        Sheet sheet = Game.Of($"sources: {{book: Rulebook, card: Cards}}\nscore:\n  jugs:\n    cite: book\n    points: 1\n    conflict:\n      book: {{}}\n      card: {{points: 5}}\n      follow: {followed}\n      why: It weighs more.\n");

        Assert.Equal(points, Tally.Of(Game.Position(sheet, "seat 1: {}\n"), 0).Total.Certain);
    }

    [Fact]
    public void Conflicts_of_wording_change_no_points()
    {
        Sheet sheet = Game.Of("sources: {book: Rulebook, card: Cards}\nscore:\n  jugs: {cite: book, points: 1, conflict: {book: one each, card: 1 for each}}\n");

        Assert.Equal(1, Tally.Of(Game.Position(sheet, "seat 1: {}\n"), 0).Total.Certain);
    }

    [Fact]
    public void The_deepest_sheet_that_may_be_written_is_answered()
    {
        var sheet = new StringBuilder("words:\n");
        for (int i = 0; i < 36; i++)
        {
            sheet.Append($"  deep {i}: {new string('(', 28)}deep {i + 1}{string.Concat(Enumerable.Repeat(" + 1", 60))}{new string(')', 28)}\n");
        }

        sheet.Append("  deep 36: 1\nscore: {all: deep 0}\n");
        Position position = Game.Position(Game.Of(sheet.ToString()), "seat 1: {}\n");

        Assert.Equal((36 * 60) + 1, Tally.Of(position, 0).Total.Certain);
        Assert.Equal("yes", Ruling.On(position, "deep 0 is more than 2000").Ruling!.Verdict);
    }
}
