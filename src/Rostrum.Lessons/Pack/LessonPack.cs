using System.Collections.Immutable;
using System.Text;
using Rostrum.Lessons.Page;
using Rostrum.Lessons.Shots;
using Rostrum.Pictures;
using Rostrum.Rulings.Games;

namespace Rostrum.Lessons.Pack;

/// <summary>Makes everything that is published with a lesson. Nothing is written to disk here.</summary>
public static class LessonPack
{
    private const double PngScale = 2;

    /// <summary>The files of the pack: the lesson's page, the player aid, notes for the presenter, each shot as a drawing and as pixels, light and dark.</summary>
    /// <param name="game">The game; its sheet must be sound.</param>
    /// <param name="report">Its checked lesson.</param>
    public static ImmutableArray<PackFile> Of(Game game, LessonReport report)
    {
        ArgumentNullException.ThrowIfNull(game);
        ArgumentNullException.ThrowIfNull(report);
        PageAssets assets = new(
        [
            new PageFont(400, false, ShippedFonts.Faces(FontWeight.Regular)[0].Bytes),
            new PageFont(700, false, ShippedFonts.Faces(FontWeight.Bold)[0].Bytes),
        ]) { PictureStyle = PaletteCss.Write() };
        var files = ImmutableArray.CreateBuilder<PackFile>();
        LessonPage page = new PageMaker(game, report).Make();
        PlayerAid aid = AidMaker.Make(game, report);
        string sides = PlayerAidWriter.FitsOnePage(aid, assets) ? "one side" : "more than one side";
        files.Add(Text("lesson.html", "the lesson's page", LessonPageWriter.Write(page, assets)));
        files.Add(Text("player-aid.html", $"the player aid, {sides} of paper when printed", PlayerAidWriter.Write(aid, assets)));
        files.Add(Text("notes.md", "for you before you publish, not to be published", PresenterNotes.Write(game, report, page)));
        foreach ((CheckedShot shot, string name) in PictureNames.Of(report))
        {
            Scene scene = ShotPicture.Of(shot);
            files.Add(Text($"{name}.svg", shot.Shot.Caption, SvgWriter.Write(scene, SvgOptions.StandAlone(Palette.Light))));
            files.Add(new PackFile($"{name}.png", shot.Shot.Caption, [.. PngWriter.Write(scene, PngScale, Palette.Light)]));
            // Light as in the page; dark for a film, where a light picture would dazzle after the dim table.
            files.Add(new PackFile($"{PictureNames.Folder}dark/{name[PictureNames.Folder.Length..]}.png", $"{shot.Shot.Caption}, dark", [.. PngWriter.Write(scene, PngScale, Palette.Dark)]));
        }

        return files.ToImmutable();
    }

    private static PackFile Text(string name, string says, string content) => new(name, says, [.. Encoding.UTF8.GetBytes(content)]);
}
