using System.Collections.Immutable;
using Rostrum.Lessons.Captions.Words;
using Rostrum.Lessons.Review;
using Rostrum.Lessons.Scripts;
using Rostrum.Text;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>Where the times of chapters come from.</summary>
public enum ChapterTimes
{
    /// <summary>Worked out from the words of the lesson at its pace.</summary>
    Estimated,

    /// <summary>Found in the captions of the film.</summary>
    Heard,

    /// <summary>Given by the presenter.</summary>
    Given,
}

/// <summary>The chapters of a film, as well as its times are known.</summary>
/// <param name="List">The chapters.</param>
/// <param name="Times">Where their times come from.</param>
/// <param name="Problems">What is wrong with them: limits of platforms, and what does not go together.</param>
public sealed record FilmChapters(ChapterList List, ChapterTimes Times, ImmutableArray<Diagnostic> Problems)
{
    /// <summary>True where a file that was given cannot be used, or the lesson says nothing: then nothing is published, and there are no chapters.</summary>
    public bool IsRefused { get; init; }

    // Of captions of other words less is heard; of those that machines wrote of this lesson, nearly all.
    private const int LeastPercent = 20;

    // Who speaks along the script is placed by its words; who speaks freely by what each topic is about.
    private const int SpokenPercent = 50;

    /// <summary>The chapters that the presenter gives; else those of the lesson with the times at which its topics are heard in the captions; else with estimated times.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="film">What is known of the film.</param>
    public static FilmChapters Of(Lesson lesson, FinishedFilm film)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(film);
        ImmutableArray<Diagnostic> before = [.. film.Captions?.Problems ?? [], .. film.Corrections?.Problems ?? []];
        ImmutableArray<Diagnostic> given = film.Chapters?.Check(film.Length) ?? [];
        ImmutableArray<Diagnostic> silent = lesson.Topics.IsEmpty ? [FilmProblems.NoTopics(lesson.Source.Span(0, 0))] : [];
        if (before.Concat(given).Concat(silent).Any(p => p.Severity == Severity.Error))
        {
            return new FilmChapters(new ChapterList([], null), ChapterTimes.Estimated, [.. before, .. given, .. silent]) { IsRefused = true };
        }

        FilmChapters made = film switch
        {
            { Chapters: { } chapters } => new FilmChapters(chapters.List with { Length = film.Length ?? chapters.List.Length }, ChapterTimes.Given, given),
            { Captions: null } => Estimated(lesson, null, []),
            _ => Heard(lesson, film),
        };
        return made with { Problems = [.. before, .. made.Problems] };
    }

    private static FilmChapters Heard(Lesson lesson, FinishedFilm film)
    {
        var heard = new HeardTopics(lesson, SpokenWords.Of(film.Captions!));
        if (heard.Percent < SpokenPercent && film.Topics is { IsOfLesson: true, NoChapters: null } topics)
        {
            return Filmed(lesson, film, topics);
        }

        if (heard.Percent < LeastPercent)
        {
            SourceSpan head = lesson.Source.Span(0, lesson.Source.LineEnd(0));
            return Estimated(lesson, film.Length, [FilmProblems.OtherFilm(head, film.CaptionsName, heard.Percent)]);
        }

        ImmutableArray<(TimeSpan Start, bool IsHeard)> times = heard.Times();
        PlacedChapters chapters = LessonChapters.At(lesson, [.. times.Select(t => t.Start)], film.Length);
        var problems = new DiagnosticBag();
        problems.AddRange(lesson.Topics.Zip(times).Where(t => !t.Second.IsHeard).Select(t => FilmProblems.NotHeard(t.First.At, t.First.Title, FilmTime.Write(t.Second.Start))));
        problems.AddRange(chapters.Check(film.Length));
        return new FilmChapters(chapters.List, ChapterTimes.Heard, problems.InOrder());
    }

    // In the order in which they were filmed; what is not in the film has no chapter.
    private static FilmChapters Filmed(Lesson lesson, FinishedFilm film, FilmedTopics topics)
    {
        ChapterList list = topics.Chapters with { Length = film.Length };
        var problems = new DiagnosticBag();
        problems.AddRange(lesson.Topics.Where(t => topics.NotFound.Contains(t.Title)).Select(t => FilmProblems.NotHeard(t.At, t.Title, null)));
        var places = topics.Topics.Select(t => lesson.Topics.First(l => l.Title == t.Title).At).ToImmutableArray();
        problems.AddRange(new PlacedChapters(list, places, lesson.Source.Span(0, lesson.Source.LineEnd(0)), []).Check(film.Length));
        return new FilmChapters(list, ChapterTimes.Heard, problems.InOrder());
    }

    private static FilmChapters Estimated(Lesson lesson, TimeSpan? video, ImmutableArray<Diagnostic> before)
    {
        PlacedChapters chapters = LessonChapters.Estimate(lesson);
        return new FilmChapters(chapters.List, ChapterTimes.Estimated, [.. before, .. chapters.Check(video)]);
    }
}
