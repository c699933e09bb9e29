using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play;

/// <summary>What keeps a game from being played, as problems that the heads show with their place in the sheet.</summary>
public static class PlayProblems
{
    /// <summary>The game, or what comes next in it, cannot be played.</summary>
    /// <param name="why">What play ran into.</param>
    /// <param name="sheet">The sheet; where no place is known, the problem stands at its name.</param>
    public static Diagnostic NotPlayable(NotPlayableException why, Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(why);
        ArgumentNullException.ThrowIfNull(sheet);
        return new Diagnostic("ROS0901", Severity.Error, why.At ?? sheet.Tree.Find("game")?.Key.Span ?? sheet.Tree.Span, why.Message, "Rulings and tallies are answered all the same; whole games need it.");
    }
}
