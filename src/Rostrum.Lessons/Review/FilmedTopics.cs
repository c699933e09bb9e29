using System.Collections.Immutable;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Chapters;

namespace Rostrum.Lessons.Review;

/// <summary>A topic as it was filmed.</summary>
/// <param name="Title">The heading in the lesson; without a lesson a plain word for that part of the rules.</param>
/// <param name="Place">Its 0-based place in the lesson.</param>
/// <param name="Start">When its first word is said.</param>
/// <param name="End">When the next topic begins; for the last one when the last word ends.</param>
/// <param name="Words">How many words are said in it.</param>
public sealed record FilmedTopic(string Title, int Place, TimeSpan Start, TimeSpan End, int Words)
{
    /// <summary>True where it was filmed at another place than the lesson gives it; the fewest topics are told so that leave the others in order.</summary>
    public bool IsMoved { get; init; }

    /// <summary>True where the film had come to this topic before and returns to it.</summary>
    public bool IsAgain { get; init; }

    /// <summary>What the chapter is called.</summary>
    public string Chapter => IsAgain ? $"{Title} (again)" : Title;

    /// <summary>How fast it was spoken; 0 where it lasts no time.</summary>
    public double WordsAMinute => End > Start ? Words / (End - Start).TotalMinutes : 0;
}

/// <summary>The topics of a recording in the order in which they were filmed.</summary>
/// <param name="Topics">In the order of their times; one to which the film returns for long stands there again.</param>
/// <param name="NotFound">Headings of topics that were not heard, or not for as long as a chapter lasts; in the order of the lesson.</param>
/// <param name="IsOfLesson">True where they are the topics of the lesson; false where there is none and they are the parts of the rules.</param>
public sealed record FilmedTopics(ImmutableArray<FilmedTopic> Topics, ImmutableArray<string> NotFound, bool IsOfLesson)
{
    /// <summary>Nothing was heard.</summary>
    public static FilmedTopics None { get; } = new([], [], false);

    /// <summary>The chapters of the video: the first begins at 0:00, whatever is said before its first word.</summary>
    public ChapterList Chapters => new([.. Topics.Select((t, i) => new Chapter(i == 0 ? TimeSpan.Zero : Bounded(t.Start), t.Chapter))], Topics is [.., { } last] ? last.End : null);

    /// <summary>Why no platform would show the chapters, as a sentence; null where it would.</summary>
    public string? NoChapters => Topics.Length >= ChapterLimits.Fewest ? null : $"Only {Text.Prose.Word(Topics.Length)} {(Topics.Length == 1 ? "topic was" : "topics were")} heard, and a platform shows chapters only from {Text.Prose.Word(ChapterLimits.Fewest)} on.";

    // A file may hold any time.
    private static TimeSpan Bounded(TimeSpan time) => time > FilmTime.Latest ? FilmTime.Latest : time;
}
