using Rostrum.Lessons.Film.Chapters;

namespace Rostrum.Lessons.Review;

/// <summary>A stretch of words that speaks of one topic.</summary>
/// <param name="Topic">0-based.</param>
/// <param name="From">The first word.</param>
/// <param name="To">The word behind the last.</param>
internal readonly record struct TopicRun(int Topic, int From, int To);

/// <summary>Cuts a recording into topics, in any order, so that its words fit best.</summary>
/// <remarks>The best path through topics, word by word (A. J. Viterbi, IEEE Transactions on Information Theory 13, 1967): a change of topic costs, less
/// where the script goes on with that topic, less behind a pause. A stretch that is shorter than a chapter is closed to its topic, and the path is sought
/// anew; so is one that only touches on a topic which is told at length elsewhere.</remarks>
/// <param name="scores">How words fit topics.</param>
/// <param name="words">How many words there are.</param>
/// <param name="topics">How many topics there are.</param>
/// <param name="seconds">How long a stretch lasts.</param>
internal sealed class TopicAlignment(TopicScores scores, int words, int topics, Func<TopicRun, double> seconds)
{
    private const double ToNext = 5;
    private const double ToOther = 8;
    private const double Closed = -1e6;

    // Who comes back to a topic for less only mentions it: our choice, on talks that no figure is taken from.
    private const double ShortestReturn = 25;

    // Each round closes at least one stretch; so many are enough for any talk, and a file that is none must come to an end.
    private const int MostRounds = 60;

    private readonly List<TopicRun> _closed = [];

    /// <summary>The stretches in order.</summary>
    public IReadOnlyList<TopicRun> Runs()
    {
        if (words == 0 || topics == 0)
        {
            return [];
        }

        for (int round = 1; ; round++)
        {
            List<TopicRun> runs = Path();
            TopicRun[] close = [.. Unwanted(runs)];
            if (close.Length == 0 || round == MostRounds)
            {
                return [.. runs.Except(close)];
            }

            _closed.AddRange(close);
        }
    }

    private IEnumerable<TopicRun> Unwanted(List<TopicRun> runs)
    {
        TopicRun[] brief = [.. runs.Where(r => runs.Count > 1 && seconds(r) < ChapterLimits.ShortestSeconds)];
        return brief.Length > 0
            ? brief.OrderBy(Worth).Take(1)
            : runs.GroupBy(r => r.Topic).SelectMany(g => g.OrderByDescending(Worth).Skip(1)).Where(r => seconds(r) < ShortestReturn);
    }

    private double Worth(TopicRun run)
    {
        double sum = 0;
        for (int i = run.From; i < run.To; i++)
        {
            sum += scores.Of(i, run.Topic);
        }

        return sum;
    }

    private List<TopicRun> Path()
    {
        var from = new short[words, topics];
        var closed = new int[topics, words];
        foreach (TopicRun run in _closed)
        {
            for (int i = run.From; i < run.To; i++)
            {
                closed[run.Topic, i] = 1;
            }
        }

        double[] best = [.. Enumerable.Range(0, topics).Select(k => scores.Of(0, k) + (closed[k, 0] * Closed) - (k == 0 ? 0 : 1))];
        for (int i = 1; i < words; i++)
        {
            int leader = Array.IndexOf(best, best.Max());
            var next = new double[topics];
            for (int k = 0; k < topics; k++)
            {
                (double value, int before) = Arrive(best, leader, k, scores.Break(i));
                next[k] = value + scores.Of(i, k) + (closed[k, i] * Closed);
                from[i, k] = (short)before;
            }

            best = next;
        }

        return Traced(from, Array.IndexOf(best, best.Max()));
    }

    private static (double Value, int Before) Arrive(double[] best, int leader, int topic, double ease)
    {
        (double value, int before) = (best[topic], topic);
        if (best[leader] - ToOther + ease > value)
        {
            (value, before) = (best[leader] - ToOther + ease, leader);
        }

        return topic > 0 && best[topic - 1] - ToNext + ease > value ? (best[topic - 1] - ToNext + ease, topic - 1) : (value, before);
    }

    private List<TopicRun> Traced(short[,] from, int last)
    {
        var runs = new List<TopicRun>();
        int end = words;
        int topic = last;
        for (int i = words - 1; i > 0; i--)
        {
            if (from[i, topic] != topic)
            {
                runs.Add(new TopicRun(topic, i, end));
                end = i;
                topic = from[i, topic];
            }
        }

        runs.Add(new TopicRun(topic, 0, end));
        runs.Reverse();
        return runs;
    }
}
