using System.Collections.Immutable;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Captions.Breaking;
using Rostrum.Lessons.Captions.Words;
using Rostrum.Lessons.Captions.Writing;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Film.Timelines;
using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Pack;

/// <summary>Makes the files of a pack that go to editors and platforms.</summary>
internal static class FilmFiles
{
    /// <summary>Chapters in three forms, the shot list, the description.</summary>
    public static IEnumerable<PackFile> Of(LessonReport report, LessonPage page, FilmChapters chapters, FinishedFilm film)
    {
        yield return PackFile.OfText("description.txt", "what goes below the video", VideoDescription.Write(page, report.Lesson.Disclosure, chapters, film.Corrections?.Corrections ?? []));
        yield return PackFile.OfText("chapters.txt", "the chapters as lines of a description", ChapterLines.Write(chapters.List));
        yield return PackFile.OfText("chapters.ffmeta", "the chapters for FFmpeg", FfMetadataWriter.Write(chapters.List, [new FfTag("title", report.Lesson.Title)]));
        yield return PackFile.OfText("chapters.xml", "the chapters for Matroska", MatroskaChapters.Write(chapters.List, MatroskaLanguage.English));
        yield return PackFile.OfText("shots.otio", "the shots for an editing program, with call-outs and pick-ups", ShotList.Of(report).Write());
    }

    /// <summary>Captions broken after the guide, in both formats; none where none are given.</summary>
    /// <param name="film">The film.</param>
    /// <param name="remarks">Receives what the guide asks and the speech does not allow.</param>
    public static IEnumerable<PackFile> Captions(FinishedFilm film, ImmutableArray<string>.Builder remarks)
    {
        if (film.Captions is not { } given)
        {
            return [];
        }

        BrokenCaptions broken = CaptionBreaker.Break(SpokenWords.Of(given), CaptionGuide.EnglishTemplate);
        remarks.AddRange(broken.Remarks);
        return
        [
            PackFile.OfText("captions.vtt", "the captions, cleaned and broken into lines", CaptionWriter.Write(broken.ToFile(CaptionFormat.WebVtt))),
            PackFile.OfText("captions.srt", "the same as SubRip", CaptionWriter.Write(broken.ToFile(CaptionFormat.SubRip))),
        ];
    }
}
