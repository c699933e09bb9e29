using System.Collections.Immutable;
using Rostrum.Pictures;
using Rostrum.Pictures.Positions;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;

namespace Rostrum.Lessons.Shots;

/// <summary>Draws a shot: the position, with the spaces of a clause pointed out where the shot asks for it.</summary>
public static class ShotPicture
{
    /// <summary>The scene of a shot whose position is known.</summary>
    /// <param name="shot">The shot.</param>
    /// <param name="shelf">The width of a space, in pixels.</param>
    /// <param name="showsTitle">False where the words around it say its caption already.</param>
    public static Scene Of(CheckedShot shot, double shelf = 48, bool showsTitle = true)
    {
        ArgumentNullException.ThrowIfNull(shot);
        return TablePainter.Paint(PositionPicture.Of(shot.Position!, new PictureWish(shot.Shot.Caption, null, Marks(shot)) { ShowsTitle = showsTitle }), shelf);
    }

    private static ImmutableArray<(string Space, MarkKind Kind, string Label)> Marks(CheckedShot shot)
    {
        if (shot.Clause is null)
        {
            return [];
        }

        IEnumerable<TallyPart> parts = Counted(shot.Position!, shot.Clause).Where(p => shot.Space is null || p.Spaces.Contains(shot.Space));
        return [.. parts.SelectMany(p => p.Spaces).Distinct().Select(s => (s, MarkKind.Good, ""))];
    }

    /// <summary>What a clause counts on a table: each part of its line that gives or costs points.</summary>
    internal static IEnumerable<TallyPart> Counted(Position position, string clause) =>
        Tally.Of(position, position.Me, new HashSet<string> { clause }).Lines[0].Because.Where(b => b.Points.Certain is not 0);
}
