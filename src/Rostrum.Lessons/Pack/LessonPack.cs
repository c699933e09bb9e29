using System.Collections.Immutable;
using System.Text;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.HandOuts;
using Rostrum.Lessons.Page;
using Rostrum.Lessons.Prompter;
using Rostrum.Lessons.Shots;
using Rostrum.Pictures;
using Rostrum.Rulings.Games;

namespace Rostrum.Lessons.Pack;

/// <summary>Makes everything that is published with a lesson. Nothing is written to disk here.</summary>
public static class LessonPack
{
    private const double PngScale = 2;

    /// <summary>The files of the pack of a lesson whose film is not shot yet.</summary>
    /// <param name="game">The game; its sheet must be sound.</param>
    /// <param name="report">Its checked lesson; it must say something.</param>
    public static ImmutableArray<PackFile> Of(Game game, LessonReport report) => Make(game, report, FinishedFilm.None).Files;

    /// <summary>The pack: its first page; teleprompter, notes; the shot list; chapters, description and captions; the lesson's page, the player aid as page and for
    /// paper; each shot as a drawing and as pixels, light and dark.</summary>
    /// <param name="game">The game; its sheet must be sound.</param>
    /// <param name="report">Its checked lesson.</param>
    /// <param name="film">What is known of the film.</param>
    /// <returns>No files where <see cref="FilmChapters.IsRefused"/>.</returns>
    public static MadePack Make(Game game, LessonReport report, FinishedFilm film)
    {
        ArgumentNullException.ThrowIfNull(game);
        ArgumentNullException.ThrowIfNull(report);
        var chapters = FilmChapters.Of(report.Lesson, film);
        if (chapters.IsRefused)
        {
            return new MadePack([], chapters, []);
        }

        PageAssets assets = Assets();
        var files = ImmutableArray.CreateBuilder<PackFile>();
        var remarks = ImmutableArray.CreateBuilder<string>();
        LessonPage page = new PageMaker(game, report).Make();
        files.AddRange(Pages(game, report, page, assets));
        files.AddRange(FilmFiles.Of(report, page, chapters, film));
        files.AddRange(FilmFiles.Captions(film, remarks));
        files.AddRange(PictureNames.Of(report).SelectMany(p => Pictures(p.Shot, p.Name)));
        remarks.AddRange(files.Where(f => f.Name == "description.txt").Select(f => VideoDescription.Remark(Encoding.UTF8.GetString(f.Bytes.AsSpan()))).OfType<string>());
        files.Insert(0, PackFile.OfText(PackIndex.FileName, "what lies in the pack and what to do with it; begin here", PackIndex.Write(page, files.Select(f => f.Name), chapters.Times, assets)));
        return new MadePack(files.ToImmutable(), chapters, remarks.ToImmutable());
    }

    private static PageAssets Assets() => new(
    [
        new PageFont(400, false, ShippedFonts.Faces(FontWeight.Regular)[0].Bytes),
        new PageFont(700, false, ShippedFonts.Faces(FontWeight.Bold)[0].Bytes),
    ]) { PictureStyle = PaletteCss.Write() };

    private static IEnumerable<PackFile> Pages(Game game, LessonReport report, LessonPage page, PageAssets assets)
    {
        PlayerAid aid = AidMaker.Make(game, report);
        HandOut handOut = HandOutMaker.Make(report, aid);
        string sides = PlayerAidWriter.FitsOnePage(aid, assets) ? "one side" : "more than one side";
        yield return PackFile.OfText("lesson.html", "the lesson's page", LessonPageWriter.Write(page, assets));
        yield return PackFile.OfText("player-aid.html", $"the player aid, {sides} of paper when printed", PlayerAidWriter.Write(aid, assets));
        foreach (PaperSize paper in new[] { PaperSize.A4, PaperSize.Letter })
        {
            yield return new PackFile($"hand-out-{paper.Name}.pdf", $"the player aid for paper, {paper.Title}", [.. HandOutWriter.Write(handOut, paper)]);
        }

        yield return PackFile.OfText("teleprompter.html", "what you say, to be read at the lens", PrompterWriter.Write(PrompterMaker.Make(report), assets));
        yield return PackFile.OfText("notes.md", "for you before you publish, not to be published", PresenterNotes.Write(game, report, page));
    }

    private static IEnumerable<PackFile> Pictures(CheckedShot shot, string name)
    {
        Scene scene = ShotPicture.Of(shot);
        yield return PackFile.OfText($"{name}.svg", shot.Shot.Caption, SvgWriter.Write(scene, SvgOptions.StandAlone(Palette.Light)));
        yield return new PackFile($"{name}.png", shot.Shot.Caption, [.. PngWriter.Write(scene, PngScale, Palette.Light)]);

        // Light as in the page; dark for a film, where a light picture would dazzle after the dim table.
        yield return new PackFile($"{PictureNames.Folder}dark/{name[PictureNames.Folder.Length..]}.png", $"{shot.Shot.Caption}, dark", [.. PngWriter.Write(scene, PngScale, Palette.Dark)]);
    }
}
