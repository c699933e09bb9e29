using System.Collections.Immutable;
using Rostrum.Lessons.Pack;
using Rostrum.Lessons.Page;
using Rostrum.Rulings.Games;
using Rostrum.Testing;

namespace Rostrum.Lessons.Tests.Pack;

/// <summary>The open questions and conflicts of Kiln Night as readers of the page meet them (games/kiln-night/rulebook.md, publishers-note.md).</summary>
public sealed class QuestionListTests
{
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");
    private static readonly ImmutableArray<PageQuestion> Questions = [.. QuestionList.Of(Kiln, Kiln.Sheet().Sheet!, Kiln.Sheet().Sheet!.Variants.Select(v => v.Name))];

    [Fact]
    public void A_conflict_tells_what_each_source_says_which_is_followed_and_why()
    {
        PageQuestion question = Questions.Single(q => q.Title == "Worth of Commission 11");

        Assert.Equal("Two sources disagree.", question.Words);
        Assert.Equal([new("Rulebook, page 12:", "6.", true), new("Commission cards:", "7.", false)], question.Answers);
        Assert.Equal("The publisher's note says that the list is right.", question.Why);
    }

    [Fact]
    public void A_question_about_readings_is_told_once_with_its_readings_in_sentences()
    {
        PageQuestion question = Assert.Single(Questions, q => q.Words.Contains("run of five or six", StringComparison.Ordinal));

        Assert.Equal(["As for four.", "Growing on.", "Best split."], question.Answers.Select(a => a.Who));
        Assert.Equal("A longer run scores 10, as four do.", question.Answers[0].Says);
        Assert.True(question.IsOpen);
    }

    [Fact]
    public void No_question_stands_twice() => Assert.Equal(Questions.Length, Questions.Select(q => q.Words + q.Title).Distinct().Count());

    [Fact]
    public void Sentences_end_and_nothing_of_the_sheets_own_writing_is_shown()
    {
        string[] sentences = [.. Questions.SelectMany(q => q.Answers.Select(a => a.Says).Concat([q.Words, q.Why])).Where(s => s.Length > 0)];

        Assert.All(sentences, s => Assert.Contains(s[^1], ".?"));
        Assert.DoesNotContain(sentences.Concat(Questions.SelectMany(q => q.Answers.Select(a => a.Who))), s => s.Contains("book 1", StringComparison.Ordinal) || s.Contains("book 7", StringComparison.Ordinal) || s.Contains("run points", StringComparison.Ordinal));
    }

    [Fact]
    public void What_only_a_variant_asks_bears_its_name() =>
        Assert.Equal("guild marks", Questions.Single(q => q.Title == "Stoker's moment").Variant);
}
