using System.Collections.Immutable;
using Rostrum.Lessons.Scripts;

namespace Rostrum.Lessons.Film;

/// <summary>A stretch of the film that belongs to something of the lesson.</summary>
/// <typeparam name="T">What it belongs to: a topic, a shot, a statement.</typeparam>
/// <param name="Of">The thing.</param>
/// <param name="Start">From the beginning of the film, in whole milliseconds.</param>
/// <param name="End">Not before <paramref name="Start"/>.</param>
public sealed record Stretch<T>(T Of, TimeSpan Start, TimeSpan End);

/// <summary>When each thing of a lesson comes, estimated from the words that are spoken before it.</summary>
/// <param name="Topics">Each topic, in order; one ends where the next begins, the last with the film.</param>
/// <param name="Shots">Each shot, in order: from where it stands to the next shot, or to the end of its topic.</param>
/// <param name="Claims">Each statement that can be checked, in order, for as long as it is said.</param>
/// <remarks>Every word takes the same time, so that the length of a topic is its words by the pace. A shot with no words behind it is held for
/// <see cref="HoldSeconds"/>. Sums are rounded, not steps, so that an error does not grow.</remarks>
public sealed record LessonClock(
    ImmutableArray<Stretch<LessonTopic>> Topics, ImmutableArray<Stretch<LessonBlock.Shot>> Shots, ImmutableArray<Stretch<LessonRun.Claim>> Claims)
{
    /// <summary>How long a shot is held that nothing is said to, in seconds: our choice, long enough to be seen.</summary>
    public const int HoldSeconds = 3;

    /// <summary>How long the film is.</summary>
    public TimeSpan Length => Topics is [.., { } last] ? last.End : TimeSpan.Zero;

    /// <summary>The times of a lesson at its own pace.</summary>
    /// <param name="lesson">The lesson.</param>
    public static LessonClock Of(Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return new LessonWalk(lesson.WordsAMinute).Along(lesson);
    }
}
