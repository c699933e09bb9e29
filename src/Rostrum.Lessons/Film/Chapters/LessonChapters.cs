using System.Collections.Immutable;
using Rostrum.Lessons.Scripts;
using Rostrum.Text;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>The chapters of a lesson: one for each topic.</summary>
public static class LessonChapters
{
    /// <summary>With times worked out from the words, at the pace of the lesson.</summary>
    /// <param name="lesson">The lesson.</param>
    public static PlacedChapters Estimate(Lesson lesson)
    {
        LessonClock clock = LessonClock.Of(lesson);
        return At(lesson, [.. clock.Topics.Select(t => t.Start)], clock.Length, isEstimate: true);
    }

    /// <summary>With times that were taken from the film.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="starts">When each topic begins, in the order of the lesson; whether they ascend is for <see cref="PlacedChapters.Check"/> to say.</param>
    /// <param name="length">How long the film is; null where that is not known.</param>
    /// <exception cref="ArgumentException">There are more or fewer times than topics.</exception>
    public static PlacedChapters At(Lesson lesson, ImmutableArray<TimeSpan> starts, TimeSpan? length)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return starts.Length == lesson.Topics.Length
            ? At(lesson, starts, length, isEstimate: false)
            : throw new ArgumentException($"{starts.Length} times for {lesson.Topics.Length} topics.", nameof(starts));
    }

    private static PlacedChapters At(Lesson lesson, ImmutableArray<TimeSpan> starts, TimeSpan? length, bool isEstimate)
    {
        var list = new ChapterList([.. lesson.Topics.Zip(starts, (t, start) => new Chapter(start, t.Title))], length);
        SourceText source = lesson.Source;
        return new PlacedChapters(list, [.. lesson.Topics.Select(t => t.At)], source.Span(0, source.LineEnd(0)), []) { IsEstimate = isEstimate };
    }
}
