using Rostrum.Text;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>Holds chapters against the limits of a platform and the length of the video.</summary>
internal static class ChapterCheck
{
    // Less is the work of rounding, or a second of black at the end.
    private static readonly TimeSpan Leeway = TimeSpan.FromSeconds(2);

    // A share of the length: how far an estimate from the words may be off before it is worth a word.
    private const double EstimateLeeway = 0.1;

    /// <summary>What is wrong, chapter by chapter; what concerns all of them comes last.</summary>
    /// <param name="chapters">The chapters.</param>
    /// <param name="video">How long the video is; null where that is not known.</param>
    public static IEnumerable<Diagnostic> Of(PlacedChapters chapters, TimeSpan? video)
    {
        if (chapters.List.Chapters is [{ } first, ..] && Seconds(first.Start) != 0)
        {
            yield return FilmProblems.FirstNotAtZero(chapters.Places[0], FilmTime.Write(first.Start));
        }

        for (int i = 0; i < chapters.List.Chapters.Length; i++)
        {
            foreach (Diagnostic problem in OfOne(chapters, i, video))
            {
                yield return problem;
            }
        }

        if (chapters.List.Chapters.Length < ChapterLimits.Fewest)
        {
            yield return FilmProblems.TooFew(chapters.Whole, chapters.List.Chapters.Length);
        }

        if (video is { } filmed && chapters.List.Length is { } told && IsFarFrom(filmed, told, chapters.IsEstimate) && !chapters.List.Chapters.Any(c => c.Start >= filmed))
        {
            yield return FilmProblems.OtherLength(chapters.Whole, FilmTime.Write(told), FilmTime.Write(filmed), chapters.IsEstimate);
        }
    }

    private static IEnumerable<Diagnostic> OfOne(PlacedChapters chapters, int i, TimeSpan? video)
    {
        (Chapter chapter, SourceSpan at) = (chapters.List.Chapters[i], chapters.Places[i]);
        int characters = ChapterLimits.ShownCharacters(chapter.Title);
        if (characters == 0)
        {
            yield return FilmProblems.Untitled(at, FilmTime.Write(chapter.Start));
        }

        if (characters > ChapterLimits.ShownOnBar)
        {
            yield return FilmProblems.LongTitle(at, characters, ChapterLimits.Clip(chapter.Title, ChapterLimits.ShownOnBar), characters > ChapterLimits.ShownInList);
        }

        if (video is { } end && chapter.Start >= end)
        {
            yield return FilmProblems.BehindTheEnd(at, FilmTime.Write(chapter.Start), FilmTime.Write(end));
        }
        else if (TimeProblem(chapters, i, video) is { } problem)
        {
            yield return problem;
        }
    }

    // The platform reads whole seconds, so these are compared.
    private static Diagnostic? TimeProblem(PlacedChapters chapters, int i, TimeSpan? video)
    {
        Chapter chapter = chapters.List.Chapters[i];
        if (i > 0 && Seconds(chapters.List.Chapters[i - 1].Start) is var before && before >= Seconds(chapter.Start))
        {
            return FilmProblems.NotAscending(chapters.Places[i], FilmTime.Write(chapter.Start), FilmTime.Write(chapters.List.Chapters[i - 1].Start));
        }

        TimeSpan? end = i + 1 < chapters.List.Chapters.Length ? chapters.List.Chapters[i + 1].Start : video ?? chapters.List.Length;
        return end is { } known && Seconds(known) - Seconds(chapter.Start) is var seconds and >= 0 and < ChapterLimits.ShortestSeconds && known > chapter.Start
            ? FilmProblems.TooShort(chapters.Places[i], chapter.Title, seconds, chapters.IsEstimate)
            : null;
    }

    private static bool IsFarFrom(TimeSpan filmed, TimeSpan told, bool isEstimate) =>
        (filmed - told).Duration() > (isEstimate ? filmed * EstimateLeeway : Leeway);

    private static long Seconds(TimeSpan time) => time.Ticks / TimeSpan.TicksPerSecond;
}
