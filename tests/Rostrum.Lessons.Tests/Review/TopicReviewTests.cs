using System.Collections.Immutable;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Review;
using Rostrum.Lessons.Scripts;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Review;

/// <summary>Topics found again in what was filmed: a lesson read aloud in some order of its topics.</summary>
public sealed class TopicReviewTests
{
    private static readonly Sheet Sheet = ShippedGames.Open("kiln-night").Sheet().Sheet!;

    private static readonly Lesson Script = LessonReader.Read(new SourceText("lesson.md", TestFiles.Read("games/kiln-night/lesson.md")), new DiagnosticBag());

    [Theory]
    [InlineData("0 1 2 3 4 5 6 7 8", "")]
    [InlineData("0 1 8 2 3 4 5 6 7", "8")]
    [InlineData("7 8 0 1 2 3 4 5 6", "7 8")]
    [InlineData("0 6 5 4", "6 5")]
    public void Topics_read_aloud_in_any_order_are_found_in_it(string order, string moved)
    {
        int[] filmed = [.. order.Split(' ').Select(int.Parse)];

        FilmedTopics topics = TopicReview.Of(Sheet, Script, Read(filmed));

        Assert.Equal(filmed, topics.Topics.Select(t => t.Place));
        Assert.Equal(moved.Length == 0 ? 0 : moved.Split(' ').Length, topics.Topics.Count(t => t.IsMoved));
        Assert.Equal(Script.Topics.Length - filmed.Length, topics.NotFound.Length);
    }

    [Fact]
    public void Nothing_heard_is_no_topic() => Assert.Same(FilmedTopics.None, TopicReview.Of(Sheet, Script, []));

    [Fact]
    public void Too_few_topics_are_no_chapters() =>
        Assert.Equal("Only two topics were heard, and a platform shows chapters only from three on.", TopicReview.Of(Sheet, Script, Read([4, 8])).NoChapters);

    [Fact]
    public void Return_to_a_topic_is_one_and_the_words_of_all_are_the_words_of_the_talk()
    {
        ImmutableArray<TimedWord> words = Read([1, 3, 4, 1, 3, 4]);

        FilmedTopics topics = TopicReview.Of(Sheet, Script, words);

        Assert.Equal([1, 3, 4, 1, 3, 4], topics.Topics.Select(t => t.Place));
        Assert.Equal([false, false, false, true, true, true], topics.Topics.Select(t => t.IsAgain));
        Assert.Equal("What is on the table (again)", topics.Topics[3].Chapter);
        Assert.Equal(words.Length, topics.Topics.Sum(t => t.Words));
    }

    private static ImmutableArray<TimedWord> Read(int[] topics)
    {
        IEnumerable<string> said = topics.SelectMany(t => Script.Topics[t].Blocks.SelectMany(b => b.Passages)).SelectMany(p => Prose.WordsOf(string.Concat(p.Select(r => r.Words)))).Where(w => w.Any(char.IsLetterOrDigit));
        return [.. said.Select((w, i) => new TimedWord(w.ToLowerInvariant().TrimEnd('.', ','), TimeSpan.FromMilliseconds(380 * i), TimeSpan.FromMilliseconds(380 * (i + 1)), 0, true))];
    }
}
