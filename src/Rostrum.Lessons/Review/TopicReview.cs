using System.Collections.Immutable;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Scripts;
using Rostrum.Sheets.Model;

namespace Rostrum.Lessons.Review;

/// <summary>Finds which topics were filmed, when, in which order and how fast.</summary>
internal static class TopicReview
{
    // More topics than any lesson has; a file that is none must not take for ever.
    private const int MostTopics = 60;

    /// <summary>The topics as filmed.</summary>
    /// <param name="sheet">Gives the topics where there is no lesson.</param>
    /// <param name="lesson">Gives the topics; null where there is none.</param>
    /// <param name="words">What was heard.</param>
    public static FilmedTopics Of(Sheet sheet, Lesson? lesson, ImmutableArray<TimedWord> words)
    {
        bool isOfLesson = lesson is { Topics.Length: > 1 and <= MostTopics };
        ImmutableArray<TopicWords> topics = isOfLesson ? TopicWords.Of(lesson!) : TopicWords.Of(sheet);
        if (topics.Length > MostTopics || words.IsEmpty)
        {
            return FilmedTopics.None;
        }

        var alignment = new TopicAlignment(new TopicScores(topics, words), words.Length, topics.Length, r => Lasts(r, words).TotalSeconds);
        TopicRun[] runs = [.. alignment.Runs()];
        TopicRun[] main = [.. runs.GroupBy(r => r.Topic).Select(g => g.MaxBy(r => r.To - r.From)).OrderBy(r => r.From)];
        HashSet<int> inOrder = InOrder([.. main.Select(r => r.Topic)]);
        IEnumerable<FilmedTopic> filmed = runs.Select((r, i) => Filmed(topics[r.Topic].Title, r, i + 1 < runs.Length ? runs[i + 1].From : words.Length, words) with
        {
            IsMoved = isOfLesson && main.Contains(r) && !inOrder.Contains(r.Topic),
            IsAgain = runs.Take(i).Any(e => e.Topic == r.Topic),
        });
        return new FilmedTopics([.. filmed], [.. Enumerable.Range(0, topics.Length).Except(runs.Select(r => r.Topic)).Select(k => topics[k].Title)], isOfLesson);
    }

    private static FilmedTopic Filmed(string title, TopicRun run, int end, ImmutableArray<TimedWord> words) =>
        new(title, run.Topic, words[run.From].Start, end < words.Length ? words[end].Start : words[^1].End, end - run.From);

    private static TimeSpan Lasts(TopicRun run, ImmutableArray<TimedWord> words) => words[run.To - 1].End - words[run.From].Start;

    // The longest sequence of topics that rises: all others were moved.
    private static HashSet<int> InOrder(int[] filmed)
    {
        var length = new int[filmed.Length];
        var before = new int[filmed.Length];
        for (int i = 0; i < filmed.Length; i++)
        {
            before[i] = Enumerable.Range(0, i).Where(j => filmed[j] < filmed[i]).OrderByDescending(j => length[j]).FirstOrDefault(-1);
            length[i] = before[i] < 0 ? 1 : length[before[i]] + 1;
        }

        var kept = new HashSet<int>();
        for (int i = filmed.Length == 0 ? -1 : Array.IndexOf(length, length.Max()); i >= 0; i = before[i])
        {
            kept.Add(filmed[i]);
        }

        return kept;
    }
}
