using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>Readings and conflicts on clauses, words, tables and single cells; gaps.</summary>
public sealed class ReadingTests
{
    private const string Sources = "sources: {book: {pages: 9}, card: Cards}\n";

    [Fact]
    public void A_clause_has_one_meaning_for_each_reading()
    {
        ScoreClause clause = Loaded.Of("score: {jugs: {points: 1, readings: {few: {}, many: {points: 5, at most: 3}}}}").Sheet.Score[0];

        Assert.Equal([1L, 5L], clause.Bodies.Select(b => ((Term.Number)b.Points).Amount));
        Assert.Equal([false, true], clause.Bodies.Select(b => b.AtMost is not null));
        Assert.Equal(("jugs", true, ChoiceCause.Reading), (clause.Choice!.Owner, clause.Choice.IsOpen, clause.Choice.Cause));
    }

    [Theory]
    [InlineData("score: {jugs: {points: 1, cite: book 2, conflict: {book 2: one, card: two, follow: book 2, why: It weighs more.}}}")]
    [InlineData("score: {jugs: {points: 1, cite: book 2, conflict: {book 2: {}, card: {points: 2}, follow: book 2, why: It weighs more.}}}")]
    [InlineData("tables: {worth: {rows: {1: 1}, cite: book 2, conflict: {book 2: {}, card: {rows: {1: 2}}, follow: book 2, why: It weighs more.}}}")]
    [InlineData("actions: {lay: {do: nothing}}\nlaws: {free: {binds: lay, needs: 1 is 1, cite: book 2, conflict: {book 2: {}, card: {needs: 1 is 2}, follow: book 2, why: It weighs more.}}}")]
    [InlineData("words: {worth: {means: 1, cite: book 2, conflict: {book 2: {}, card: {means: 2}, follow: book 2, why: It weighs more.}}}")]
    [InlineData("words: {worth: {cite: book 2, conflict: {book 2: 1, card: 2, follow: book 2, why: It weighs more.}}}")]
    [InlineData("end: {full: {if: 1 is 1, cite: book 2, conflict: {book 2: at once, card: one more round, follow: book 2, why: It weighs more.}}}")]
    [InlineData("score: {jugs: {points: {conflict: {book 2: 1, card: 2, follow: book 2, why: It weighs more.}}, cite: book 2}}")]
    public void A_conflict_is_a_choice_that_names_what_is_followed_and_why(string text)
    {
        Loaded loaded = Loaded.Of(Sources + text);
        Choice choice = Assert.Single(loaded.Sheet.Choices);

        Assert.Empty(loaded.Told);
        Assert.Equal((ChoiceCause.Conflict, 0, "It weighs more."), (choice.Cause, choice.Followed, choice.Why));
        Assert.Equal(["book 2", "card"], choice.Names);
    }

    [Fact]
    public void Of_sources_that_disagree_the_weightiest_comes_first()
    {
        const string Ranked = "sources: {book: {title: Book, pages: 9, rank: 2}, note: {title: Note, pages: 1, rank: 1}}\n";

        ScoreClause clause = Loaded.Of(Ranked + "score: {jugs: {points: 1, conflict: {book 2: {}, note 1: {points: 2}}}}").Sheet.Score[0];

        Assert.Equal(["note 1", "book 2"], clause.Choice!.Names);
        Assert.Equal([2L, 1L], clause.Bodies.Select(b => ((Term.Number)b.Points).Amount));
    }

    [Fact]
    public void A_cell_of_a_card_may_have_two_values()
    {
        Sheet sheet = Loaded.Of(Sources + "cards:\n  order:\n    file: orders.csv\n    columns: {pay: number}\n    changes:\n      First order:\n        pay: {conflict: {card: 3, book 4: 6}}\n").Sheet;

        Assert.Equal([3L, 6L], ((Term.Fork)sheet.CardTables[0].Rows[0].Cells[0]).Alternatives.Select(a => ((Term.Number)a).Amount));
        Assert.True(sheet.Choices.Single().IsOpen);
    }

    [Fact]
    public void A_reading_may_be_followed_with_a_reason()
    {
        Choice choice = Loaded.Of("words: {near: {readings: {one: {means: 1}, two: {means: 2}}, follow: two, why: Page 3 shows it.}}").Sheet.Choices.Single();

        Assert.Equal((1, "Page 3 shows it."), (choice.Followed, choice.Why));
    }

    [Theory]
    [InlineData("score: {jugs: {points: 1, readings: {few: {says: Each scores one.}, many: {points: 5}}}}", "Each scores one.|")]
    [InlineData("score: {jugs: {points: 1, cite: book 2, conflict: {book 2: at  once, card: never}}}", "at once|never")]
    [InlineData("words: {worth: {conflict: {book 2: 1, card: 2}}}", "1|2")]
    public void A_choice_keeps_what_each_alternative_says(string text, string says) =>
        Assert.Equal(says, string.Join('|', Loaded.Of(Sources + text).Sheet.Choices.Single().Says));

    [Fact]
    public void A_question_may_say_whose_readings_it_asks_about()
    {
        const string Score = "score: {jugs: {points: 1, readings: {few: {}, many: {points: 5}}}}\n";

        Assert.Equal("jugs", Loaded.Of(Score + "open questions: {how many: {says: How many?, about: jugs}}").Sheet.Questions.Single().About);
        Assert.Equal(["ROS0201 2,53 jug"], Loaded.Of(Score + "open questions: {how many: {says: How many?, about: jug}}").Told);
    }

    [Theory]
    [InlineData("score: {jugs: {points: 1, conflict: {book 2: one, card: two, follow: bok 2}}}", "ROS0504", "bok 2")]
    [InlineData("score: {jugs: {points: 1, conflict: {book 12: one, card: two}}}", "ROS0502", "book 12")]
    [InlineData("score: {jugs: {points: 1, readings: one}}", "ROS0811", "one")]
    [InlineData("score: {jugs: {points: 1, readings: {a: {point: 2}, b: {}}}}", "ROS0201", "point")]
    public void A_slip_in_a_choice_is_told_at_its_place(string text, string id, string words)
    {
        Diagnostic problem = Loaded.Problem(Sources + text.Replace("points: 1,", "points: 1, cite: book 1,", StringComparison.Ordinal));

        Assert.Equal((id, words), (problem.Id, problem.At.Text));
    }

    [Fact]
    public void A_part_that_is_not_modelled_stands_in_the_tree_with_its_bounds()
    {
        Sheet sheet = Loaded.Of("score: {a: not modelled, b: 'not modelled, at least 0', c: 'not modelled, at most 3'}\nwords: {w: not modelled}").Sheet;

        Assert.Equal([(null, null), (0L, null), (null, 3L)], sheet.Score.Select(s => (Term.NotModelled)s.Bodies[0].Points).Select(g => (g.Low, g.High)));
        Assert.Equal("w", ((Term.NotModelled)sheet.Meanings[0].Body).What);
    }
}
