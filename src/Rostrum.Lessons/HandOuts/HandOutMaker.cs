using Rostrum.Lessons.Page;
using Rostrum.Lessons.Shots;

namespace Rostrum.Lessons.HandOuts;

/// <summary>Makes the hand-out of a lesson: the player aid, with the table as the lesson first shows it and the first picture that points something out.</summary>
internal static class HandOutMaker
{
    /// <summary>The hand-out.</summary>
    public static HandOut Make(LessonReport report, PlayerAid aid)
    {
        CheckedShot[] shots = [.. report.Shots.Where(s => s.Position is not null)];
        CheckedShot? opening = shots.FirstOrDefault(s => s.Clause is null) ?? shots.FirstOrDefault();
        CheckedShot? pointing = shots.FirstOrDefault(s => s.Clause is not null && s != opening);
        return new HandOut(aid, [.. new[] { opening, pointing }.OfType<CheckedShot>().Select(Figure)]);
    }

    private static HandOutFigure Figure(CheckedShot shot) => new(shot.Shot.Caption, space => ShotPicture.Of(shot, space, showsTitle: false));
}
